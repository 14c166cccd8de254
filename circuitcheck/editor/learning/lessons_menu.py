"""Lessons in the menu Learn and from a finding."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QMainWindow, QMenu

from circuitcheck.editor.learning.entry import Entry
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.learning.lessons_window import LessonsWindow


class LessonsMenu(Entry):
    """The entry of the lessons."""

    def __init__(self, window: QMainWindow, menu: QMenu, settings: QSettings) -> None:
        super().__init__(
            window,
            menu,
            tr("&Lessons…"),
            "Ctrl+Shift+E",
            tr("Each danger and fault on a small drawing to operate"),
            self._make,
        )
        self._settings = settings
        self.lessons: LessonsWindow | None = None

    def _make(self, theme: Theme) -> LessonsWindow:
        from circuitcheck.editor.learning.lessons_window import LessonsWindow

        self.lessons = LessonsWindow(self._settings, theme, self._window)
        return self.lessons

    def open(self, check: str = "") -> LessonsWindow | None:
        """Bring the window up, at the lesson of a check if one is named; None before there are colours."""
        if self.bring_up() and check and self.lessons is not None:
            self.lessons.open(check)
        return self.lessons
