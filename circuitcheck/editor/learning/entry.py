"""An entry of the menu Learn that brings up a window of its own, made when it is first wanted."""

from __future__ import annotations

from collections.abc import Callable
from typing import Protocol

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from circuitcheck.editor import plain
from circuitcheck.editor.theme import Theme


class LearnWindow(Protocol):
    """What an entry needs of its window."""

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""

    def close_down(self) -> None:
        """End what runs beside it."""

    def show(self) -> None:
        """As a widget has it."""

    def activateWindow(self) -> None:
        """As a widget has it."""

    def close(self) -> bool:
        """As a widget has it."""


class Entry(QObject):
    """Holds the action and, once it is wanted, the window. Call `close` at the end.

    What the window needs is read only in `make`: nobody else waits for it.
    """

    def __init__(
        self,
        window: QMainWindow,
        menu: QMenu,
        text: str,
        key: str,
        hint: str,
        make: Callable[[Theme], LearnWindow],
    ) -> None:
        super().__init__(window)
        self._make_window = make
        self._window = window
        self._theme: Theme | None = None
        self._made: LearnWindow | None = None
        self.action = QAction(text, window)
        self.action.setShortcut(QKeySequence(key))
        self.action.setStatusTip(hint)
        plain.set_tip(self.action, hint)
        self.action.triggered.connect(lambda: self.bring_up())
        menu.addAction(self.action)

    def set_theme(self, theme: Theme) -> None:
        """Show everything in other colours."""
        self._theme = theme
        if self._made is not None:
            self._made.set_theme(theme)

    def bring_up(self) -> bool:
        """Bring the window to the front; False before there are colours."""
        if self._theme is None:
            return False
        if self._made is None:
            self._made = self._make_window(self._theme)
        self._made.show()
        self._made.activateWindow()
        return True

    def close(self) -> None:
        """End the window and what runs beside it."""
        if self._made is not None:
            self._made.close_down()
            self._made.close()
