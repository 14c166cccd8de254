"""Panning: the paper goes along with the pointer."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QPoint, Qt

from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.stage import Pointer, Stage


class Pan(Drag):
    """Takes hold of the paper, by the middle button or with the space bar held."""

    cursor = Qt.CursorShape.ClosedHandCursor

    def __init__(self, stage: Stage, pointer: Pointer, scroll: Callable[[QPoint], None]) -> None:
        super().__init__(stage, pointer)
        self._scroll = scroll
        self._last = pointer.screen

    def move(self, pointer: Pointer) -> None:
        """Move the paper by as much as the pointer moved on the screen."""
        self._scroll(self._last - pointer.screen)
        self._last = pointer.screen

    def cancel(self) -> None:
        """Leave the paper where it is."""
        self.done = True
