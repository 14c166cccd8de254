"""Practice in the menu Learn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QMainWindow, QMenu

from circuitcheck.editor.crash import folder
from circuitcheck.editor.learning.entry import Entry
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.learning.practice_window import PracticeWindow

FILE = "practice.json"


class Practising(Entry):
    """The entry of practice."""

    def __init__(self, window: QMainWindow, menu: QMenu) -> None:
        hint = tr("Find faults that were put into sound drawings")
        super().__init__(window, menu, tr("&Practice…"), "Ctrl+Shift+P", hint, self._make)
        self.practice: PracticeWindow | None = None

    def _make(self, theme: Theme) -> PracticeWindow:
        from circuitcheck.editor.learning.practice_window import PracticeWindow

        self.practice = PracticeWindow(folder() / FILE, theme, self._window)
        return self.practice

    def open(self) -> PracticeWindow | None:
        """Bring the window up; None before there are colours."""
        self.bring_up()
        return self.practice
