"""Appearance: light, dark or high contrast, as the system has it or as chosen by hand."""

from __future__ import annotations

from collections.abc import Mapping
from enum import StrEnum

from PySide6.QtCore import QObject, QSettings, Qt, Signal
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
_SCHEMES: Mapping[bool, Qt.ColorScheme] = {False: Qt.ColorScheme.Light, True: Qt.ColorScheme.Dark}
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
        hints.colorSchemeChanged.connect(self._follow)
        hints.accessibility().contrastPreferenceChanged.connect(self._follow)
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

    def apply(self) -> None:
        """Dress the application; signals the theme."""
        hints = QGuiApplication.styleHints()
        if self._choice is Appearance.SYSTEM:
            hints.setColorScheme(Qt.ColorScheme.Unknown)
            self._dress(_of_the_system())
        else:
            theme = _FIXED[self._choice]()
            # Native menus, title bars and file dialogs go along.
            hints.setColorScheme(_SCHEMES[theme.is_dark])
            self._dress(theme)

    def _follow(self) -> None:
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
    is_dark = hints.colorScheme() is Qt.ColorScheme.Dark
    if hints.accessibility().contrastPreference() is Qt.ContrastPreference.HighContrast:
        return themes.high_contrast_dark() if is_dark else themes.high_contrast_light()
    return themes.dark() if is_dark else themes.light()
