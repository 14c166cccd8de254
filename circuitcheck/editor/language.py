"""The language of the window: the system's where it is spoken, English where not, or one chosen by hand."""

from __future__ import annotations

from collections.abc import Iterable
from enum import StrEnum
from pathlib import Path

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QSettings, QTranslator

from circuitcheck.editor.translating import IS_TRANSLATED, decimal_sign, tr
from circuitcheck.told import Tongue
from circuitcheck.tongues import SOURCE, tongue

KEY = "window/language"
FOLDER = Path(__file__).parent / "languages"


class Language(StrEnum):
    """What the user chose under View, Language: the value stands in the settings."""

    SYSTEM = ""
    ENGLISH = "en"
    GERMAN = "de"


NAMES = {Language.SYSTEM: "As the system", Language.ENGLISH: "English", Language.GERMAN: "Deutsch"}
"""What stands in the menu. A language is called by its own name, so that whoever reads no other finds it."""

SPOKEN = tuple(each for each in Language if each is not Language.SYSTEM)


def chosen(settings: QSettings) -> Language:
    """The remembered choice; the system's where nothing, or nothing known, is remembered."""
    name = str(settings.value(KEY, ""))
    return Language(name) if name in set(Language) else Language.SYSTEM


def choose(settings: QSettings, language: Language) -> None:
    """Remember a choice for the next start."""
    settings.setValue(KEY, language.value)


def code_of(language: Language, system: Iterable[str]) -> str:
    """The language to speak, as `de`: the one chosen, else the first of the system's that is spoken."""
    if language is not Language.SYSTEM:
        return language.value
    spoken = {each.value for each in SPOKEN}
    codes = (each.replace("_", "-").partition("-")[0] for each in system)
    return next((code for code in codes if code in spoken), SOURCE)


def locale_of(language: Language, system: QLocale) -> QLocale:
    """How numbers are written: as the system has it, unless a language of another place was chosen by hand."""
    if language is Language.SYSTEM or system.name().startswith(f"{language.value}_"):
        return system
    return QLocale(language.value)


def speak(language: Language, application: QCoreApplication) -> list[QTranslator]:
    """Let the application speak it from now on; what was made before stays as it is. Returns what was installed."""
    system = QLocale.system()
    QLocale.setDefault(locale_of(language, system))
    return install(code_of(language, system.uiLanguages()), application)


def shown_code() -> str:
    """The language that the window speaks, as `de`."""
    name = tr(IS_TRANSLATED)
    return next((each.value for each in SPOKEN if NAMES[each] == name), SOURCE)


def document_tongue(code: str) -> Tongue:
    """The language of a document: the window's with the window's decimal sign, any other with its own."""
    return tongue(code, decimal_sign()) if code == shown_code() else tongue(code)


def install(code: str, application: QCoreApplication) -> list[QTranslator]:
    """Install a language's texts: Qt's own for its buttons and dialogs, then the program's."""
    if code == SOURCE:
        return []
    installed = []
    own = Path(QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath))
    for path in (own / f"qtbase_{code}.qm", FOLDER / f"{code}.qm"):
        translator = QTranslator(application)
        if translator.load(str(path)) and application.installTranslator(translator):
            installed.append(translator)
    return installed
