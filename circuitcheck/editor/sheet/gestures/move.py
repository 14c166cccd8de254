"""Moving parts: square by square, their pipes following; a press without a move selects."""

from __future__ import annotations

from PySide6.QtCore import Qt

from circuitcheck.drawing import edits
from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.hits import snapped
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.sheet.step_names import step_name


class Move(Drag):
    """Takes hold of the selection by one of its parts."""

    cursor = Qt.CursorShape.ClosedHandCursor

    def __init__(self, stage: Stage, pointer: Pointer, id: str) -> None:
        super().__init__(stage, pointer)
        self._id = id
        self._was_selected = id in stage.selection
        self._by = (0.0, 0.0)
        if pointer.adds:
            stage.select(stage.selection ^ {id})
        elif not self._was_selected:
            stage.select({id})

    def move(self, pointer: Pointer) -> None:
        """Show where the selection would come to lie."""
        if not self.strayed(pointer) or not self.stage.selection:
            return
        off = snapped(pointer.place - self.pressed.place)
        by = (off.x, off.y)
        if by != self._by:
            self._by = by
            self.stage.preview(edits.move(self.stage.drawing, self.stage.selection, *by))

    def end(self, pointer: Pointer) -> None:
        """Move the selection; without a move, select just what was pressed."""
        self.done = True
        if self._by != (0.0, 0.0):
            name = step_name("Move", self.stage.drawing, self.stage.selection)
            self.stage.commit(name, edits.move(self.stage.drawing, self.stage.selection, *self._by))
            return
        self.stage.end_preview()
        if not self.is_drag and self._was_selected and not pointer.adds:
            self.stage.select({self._id})
