"""Practice in the menu Learn: the window of practice, made when it is first wanted."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from circuitcheck.editor import plain
from circuitcheck.editor.crash import folder
from circuitcheck.editor.learning.menu import learn_menu
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.learning.practice_window import PracticeWindow

FILE = "practice.json"


class Practising(QObject):
    """Holds the action and the window of practice. Call `close` at the end."""

    def __init__(self, window: QMainWindow) -> None:
        super().__init__(window)
        self._window = window
        self._theme: Theme | None = None
        self.practice: PracticeWindow | None = None
        self.action = QAction(tr("&Practice…"), window)
        self.action.setShortcut(QKeySequence("Ctrl+Shift+P"))
        hint = tr("Find faults that were put into sound drawings")
        self.action.setStatusTip(hint)
        plain.set_tip(self.action, hint)
        self.action.triggered.connect(self.open)
        learn_menu(window).addAction(self.action)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        if self.practice is not None:
            self.practice.set_theme(theme)

    def open(self) -> PracticeWindow | None:
        """Bring the window of practice to the front; None before there are colours."""
        if self._theme is None:
            return None
        if self.practice is None:
            # Only who practises waits for what practice needs.
            from circuitcheck.editor.learning.practice_window import PracticeWindow

            self.practice = PracticeWindow(folder() / FILE, self._theme, self._window)
        self.practice.show()
        self.practice.activateWindow()
        return self.practice

    def close(self) -> None:
        """End what runs beside the window."""
        if self.practice is not None:
            self.practice.close_down()
            self.practice.close()
