"""The files of the languages: complete, nothing left over, agreeing with what is compiled, and chosen as one would."""

from __future__ import annotations

import re
from collections import defaultdict
from pathlib import Path

import pytest
from PySide6.QtCore import QCoreApplication, QLocale, QSettings
from PySide6.QtWidgets import QApplication

from circuitcheck import tongues
from circuitcheck.editor.language import FOLDER, Language, choose, chosen, code_of, install, locale_of, speak
from circuitcheck.editor.translating import CONTEXT, is_translated, tr
from circuitcheck.report.document.telling import LANGUAGE
from circuitcheck.tongues import tongue
from tests.editor.languages.linguist import compiled, read
from tests.editor.languages.refresh import CODES
from tests.editor.languages.showing import all_texts
from tests.editor.languages.speaking import german

REFRESH = "run python -m tests.editor.languages.refresh, and translate what is new"
_PLACES = re.compile(r"\{\{?[^{}]*\}?\}")


@pytest.mark.parametrize("code", CODES)
def test_every_text_the_window_can_show_is_translated_and_nothing_else(code: str) -> None:
    texts, known = all_texts(), read(code)
    missing: dict[str, list[str]] = defaultdict(list)
    for text, section in texts.items():
        if text not in known or not known[text].told:
            missing[section].append(text)
    assert not missing, (
        f"{REFRESH}: { {section: len(each) for section, each in missing.items()} }: {dict(missing)}"
    )
    assert not known.keys() - texts.keys(), REFRESH
    assert {text: entry.section for text, entry in known.items()} == texts, REFRESH


@pytest.mark.parametrize("code", CODES)
def test_a_translation_fills_in_the_same_values(code: str) -> None:
    wrong = {
        text: entry.told
        for text, entry in read(code).items()
        if sorted(_PLACES.findall(text)) != sorted(_PLACES.findall(entry.told))
    }
    assert not wrong


@pytest.mark.parametrize("code", CODES)
def test_a_translation_is_one_line_for_a_line_and_ends_as_the_text_does(code: str) -> None:
    for text, entry in read(code).items():
        assert text.count("\n") == entry.told.count("\n"), text
        assert text.endswith("…") == entry.told.endswith("…"), text


@pytest.mark.parametrize("code", CODES)
def test_what_is_loaded_was_made_of_what_is_edited(code: str, tmp_path: Path) -> None:
    assert (FOLDER / f"{code}.qm").read_bytes() == compiled(code, tmp_path), REFRESH


def test_qt_finds_every_translation_under_its_text(qapp: QApplication) -> None:
    with german(qapp):
        for text, entry in read("de").items():
            assert QCoreApplication.translate(CONTEXT, text) == entry.told


@pytest.mark.parametrize("code", CODES)
def test_documents_have_every_translation_without_qt(code: str) -> None:
    told = tongue(code)
    for text, entry in read(code).items():
        assert told.text(text) == entry.told
    assert told.text(str(LANGUAGE)) == code


def test_the_window_and_documents_speak_the_same_languages() -> None:
    assert {each.value for each in Language if each is not Language.SYSTEM} == set(tongues.CODES)


def test_the_languages_of_the_system_are_asked_in_their_order() -> None:
    assert code_of(Language.SYSTEM, ["fr-FR", "de-AT", "en-GB"]) == "de"
    assert code_of(Language.SYSTEM, ["en_US", "de"]) == "en"
    assert code_of(Language.SYSTEM, ["fr", "it"]) == "en"
    assert code_of(Language.SYSTEM, []) == "en"
    assert code_of(Language.ENGLISH, ["de"]) == "en"
    assert code_of(Language.GERMAN, ["en"]) == "de"


def test_numbers_are_written_as_the_place_does_unless_another_language_is_chosen() -> None:
    british, swiss, swedish = QLocale("en_GB"), QLocale("de_CH"), QLocale("sv_SE")
    assert locale_of(Language.SYSTEM, swedish) == swedish
    assert locale_of(Language.GERMAN, british).decimalPoint() == ","
    assert locale_of(Language.GERMAN, swiss) == swiss
    assert locale_of(Language.ENGLISH, QLocale("de_DE")).decimalPoint() == "."


def test_the_choice_is_remembered(tmp_path: Path) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    assert chosen(settings) is Language.SYSTEM
    choose(settings, Language.GERMAN)
    assert chosen(QSettings(settings.fileName(), QSettings.Format.IniFormat)) is Language.GERMAN
    settings.setValue("window/language", "tlh")
    assert chosen(settings) is Language.SYSTEM


def test_english_needs_no_file_and_german_brings_qts_own_buttons(qapp: QApplication) -> None:
    assert install("en", qapp) == []
    assert not is_translated()
    with german(qapp):
        assert is_translated()
        assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"
        assert tr("&Save") == "&Speichern"
    assert tr("&Save") == "&Save"


def test_to_speak_sets_language_and_numbers(qapp: QApplication) -> None:
    before = QLocale()
    installed = speak(Language.GERMAN, qapp)
    try:
        assert is_translated() and QLocale().decimalPoint() == ","
    finally:
        for translator in installed:
            qapp.removeTranslator(translator)
        QLocale.setDefault(before)
