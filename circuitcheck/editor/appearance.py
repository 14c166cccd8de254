"""Appearance: light, dark or high contrast, as the system has it or as chosen by hand."""

from __future__ import annotations

from enum import StrEnum

# `Qt` only where it is asked: to make all its names takes an eighth of the time until the bare window stands.
from PySide6 import QtCore
from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication

from circuitcheck.editor import theme as themes
from circuitcheck.editor.screens import Screens
from circuitcheck.editor.styling import palette, style_sheet
from circuitcheck.editor.theme import Theme


class Appearance(StrEnum):
    """What the user chose under View, Appearance; the values stand in the menu and in the settings."""

    SYSTEM = "As the system"
    LIGHT = "Light"
    DARK = "Dark"
    HIGH_CONTRAST_LIGHT = "High contrast, light"
    HIGH_CONTRAST_DARK = "High contrast, dark"


_FIXED = {
    Appearance.LIGHT: themes.light,
    Appearance.DARK: themes.dark,
    Appearance.HIGH_CONTRAST_LIGHT: themes.high_contrast_light,
    Appearance.HIGH_CONTRAST_DARK: themes.high_contrast_dark,
}
KEY = "window/appearance"


class Appearances(QObject):
    """Keeps the choice, follows the system, and dresses the application in the theme."""

    theme_changed = Signal(object)

    def __init__(self, settings: QSettings, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._settings = settings
        self._choice = _known(str(settings.value(KEY, "")))
        self.theme = themes.light()
        # Asked before the style sheet hides it: the style of systems that have none of their own.
        self._is_fusion = QApplication.style().name() == "fusion"
        hints = QGuiApplication.styleHints()
        hints.colorSchemeChanged.connect(self.follow)
        hints.accessibility().contrastPreferenceChanged.connect(self.follow)
        application = QApplication.instance()
        if isinstance(application, QApplication):
            # Icons are painted for the screens there are.
            Screens(application, self).denser.connect(lambda: self.theme_changed.emit(self.theme))

    @property
    def choice(self) -> Appearance:
        """What is chosen."""
        return self._choice

    def choose(self, choice: Appearance) -> None:
        """Choose by hand, remember it, and show it."""
        self._choice = choice
        self._settings.setValue(KEY, choice.value)
        self.apply()

    def begin(self) -> None:
        """Dress the application for its first window while that is bare: as chosen by hand. As the system has it,
        it is so already; `follow` asks for the rest of it before anything is put in."""
        if self._choice is not Appearance.SYSTEM:
            self.apply()

    def apply(self) -> None:
        """Dress the application; signals the theme."""
        hints, schemes = QGuiApplication.styleHints(), QtCore.Qt.ColorScheme
        if self._choice is Appearance.SYSTEM:
            hints.setColorScheme(schemes.Unknown)
            self._dress(_of_the_system())
        else:
            theme = _FIXED[self._choice]()
            # Native menus, title bars and file dialogs go along.
            hints.setColorScheme(schemes.Dark if theme.is_dark else schemes.Light)
            self._dress(theme)

    def follow(self) -> None:
        """Dress the application as the system has it now, unless something was chosen by hand; signals the theme."""
        if self._choice is Appearance.SYSTEM:
            self._dress(_of_the_system())

    def _dress(self, theme: Theme) -> None:
        self.theme = theme
        application = QApplication.instance()
        if isinstance(application, QApplication):
            application.setPalette(palette(theme))
            application.setStyleSheet(style_sheet(theme, slim_bars=self._is_fusion))
        self.theme_changed.emit(theme)


def _known(name: str) -> Appearance:
    """The remembered choice; the system's where nothing, or nothing known, is remembered."""
    return Appearance(name) if name in set(Appearance) else Appearance.SYSTEM


def _of_the_system() -> Theme:
    hints = QGuiApplication.styleHints()
    is_dark = hints.colorScheme() is QtCore.Qt.ColorScheme.Dark
    if hints.accessibility().contrastPreference() is QtCore.Qt.ContrastPreference.HighContrast:
        return themes.high_contrast_dark() if is_dark else themes.high_contrast_light()
    return themes.dark() if is_dark else themes.light()
