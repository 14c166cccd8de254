"""Lessons in the menu Learn and from a finding: the window of lessons, made when it is first wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from circuitcheck.editor import plain
from circuitcheck.editor.learning.menu import learn_menu
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.learning.lessons_window import LessonsWindow


class LessonsMenu(QObject):
    """Holds the action and the window of lessons. Call `close` at the end."""

    def __init__(self, window: QMainWindow, settings: QSettings) -> None:
        super().__init__(window)
        self._window, self._settings = window, settings
        self._theme: Theme | None = None
        self.lessons: LessonsWindow | None = None
        self.action = QAction(tr("&Lessons…"), window)
        self.action.setShortcut(QKeySequence("Ctrl+Shift+E"))
        hint = tr("Each danger and fault on a small drawing to operate")
        self.action.setStatusTip(hint)
        plain.set_tip(self.action, hint)
        self.action.triggered.connect(lambda: self.open())
        learn_menu(window).addAction(self.action)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        if self.lessons is not None:
            self.lessons.set_theme(theme)

    def open(self, check: str = "") -> LessonsWindow | None:
        """Bring the window of lessons to the front, at the lesson of a check if one is named; None before
        there are colours."""
        if self._theme is None:
            return None
        if self.lessons is None:
            # Only who learns waits for what lessons need.
            from circuitcheck.editor.learning.lessons_window import LessonsWindow

            self.lessons = LessonsWindow(self._settings, self._theme, self._window)
        if check:
            self.lessons.open(check)
        self.lessons.show()
        self.lessons.activateWindow()
        return self.lessons

    def close(self) -> None:
        """End what runs beside the window."""
        if self.lessons is not None:
            self.lessons.close_down()
            self.lessons.close()
