"""Dragging one run of a pipe across; a press without a drag selects the pipe."""

from __future__ import annotations

from PySide6.QtCore import Qt

from circuitcheck.drawing.pipes import set_corners
from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.hits import OnPipe
from circuitcheck.editor.sheet.shaping import with_run_at
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.translating import later
from circuitcheck.geometry import Point


class DragRun(Drag):
    """Takes hold of a pipe by one of its level or upright runs."""

    cursor = Qt.CursorShape.SizeAllCursor

    def __init__(self, stage: Stage, pointer: Pointer, hit: OnPipe) -> None:
        super().__init__(stage, pointer)
        self._pipe = hit.id
        self._run = hit.run
        self._line = stage.content.layout.routed(hit.id)
        self._square = pointer.square
        if pointer.adds:
            stage.select(stage.selection ^ {hit.id})
        else:
            stage.select({hit.id})

    def move(self, pointer: Pointer) -> None:
        """Show the run where it is dragged to."""
        if not self.strayed(pointer) or pointer.square == self._square:
            return
        self._square = pointer.square
        corners = self._corners()
        if corners is not None:
            self.stage.preview(set_corners(self.stage.drawing, self._pipe, corners))

    def end(self, pointer: Pointer) -> None:
        """Set the pipe's corners."""
        self.done = True
        corners = self._corners() if self.is_drag else None
        if corners is None or self._square == self.pressed.square:
            self.stage.end_preview()
            return
        self.stage.commit(later("Shape pipe"), set_corners(self.stage.drawing, self._pipe, corners))

    def _corners(self) -> tuple[Point, ...] | None:
        return with_run_at(self._line, self._run, self._square)
