"""Moving parts: square by square, their pipes following, those of a large selection at the end; a press without a
move selects."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt

from circuitcheck.drawing import edits
from circuitcheck.drawing.pipes import inline_ports, move_into
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.gestures.joining import joints_of, taking_up
from circuitcheck.editor.sheet.hits import OnPipe, pipe_at, snapped
from circuitcheck.editor.sheet.many_selected import MANY
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.sheet.step_names import step_name
from circuitcheck.editor.translating import later
from circuitcheck.picture.marks import SQUARE_PX


class Move(Drag):
    """Takes hold of the selection by one of its parts."""

    cursor = Qt.CursorShape.ClosedHandCursor

    def __init__(self, stage: Stage, pointer: Pointer, id: str) -> None:
        super().__init__(stage, pointer)
        self._id = id
        self._was_selected = id in stage.selection
        self._by = (0.0, 0.0)
        self._pipe: OnPipe | None = None
        self._lines = stage.content.layout.routes
        if pointer.adds:
            stage.select(stage.selection ^ {id})
        elif not self._was_selected:
            stage.select({id})

    def move(self, pointer: Pointer) -> None:
        """Show where the selection would come to lie; a valve that stands free, cut into the pipe it is over."""
        if not self.strayed(pointer) or not self.stage.selection:
            return
        off = snapped(pointer.place - self.pressed.place)
        by = (off.x, off.y)
        pipe = self._pipe_under(by) if by != (0.0, 0.0) else None
        if (by, pipe) == (self._by, self._pipe):
            return
        self._by, self._pipe = by, pipe
        if len(self.stage.selection) > MANY:
            # Thousands of pipes do not follow within a frame: their frames go, and all follow at the end.
            self.stage.overlay.show_selection_off(QPointF(*by) * SQUARE_PX)
            return
        after = self._moved(passing=True)
        self.stage.preview(after)
        shown = after.components.get(self._id) if pipe is not None else None
        self.stage.overlay.show_joints(() if shown is None else joints_of(after, shown))

    def end(self, pointer: Pointer) -> None:
        """Move the selection; without a move, select just what was pressed."""
        self.done = True
        self._show_nothing_on_the_move()
        if self._by != (0.0, 0.0):
            verb = later("Cut in") if self._pipe is not None else later("Move")
            name = step_name(verb, self.stage.drawing, self.stage.selection)
            self.stage.commit(name, self._moved())
            return
        self.stage.end_preview()
        if not self.is_drag and self._was_selected and not pointer.adds:
            self.stage.select({self._id})

    def cancel(self) -> None:
        """Leave all where it was."""
        super().cancel()
        self._show_nothing_on_the_move()

    def _show_nothing_on_the_move(self) -> None:
        self.stage.overlay.show_joints(())
        self.stage.overlay.show_selection_off(QPointF())

    def _moved(self, *, passing: bool = False) -> Drawing:
        drawing = self.stage.drawing
        if self._pipe is not None:
            line = self._lines[self._pipe.id]
            return move_into(drawing, self._pipe.id, self._id, self._pipe.at, line=line)
        after = edits.move(drawing, self.stage.selection, *self._by, passing=passing)
        if self._may_join and self._id in after.components:
            # Dropped with a port on the free end of a pipe, it takes it up.
            after = taking_up(self.stage, after, self._id)
        return after

    @property
    def _may_join(self) -> bool:
        """Whether what is moved is one part that has no pipe yet."""
        drawing = self.stage.drawing
        alone = self.stage.selection == {self._id} and self._id in drawing.components
        return alone and not drawing.pipes_of(self._id)

    def _pipe_under(self, by: tuple[float, float]) -> OnPipe | None:
        """The pipe that the part would come to lie on, if it can be cut into it."""
        part = self.stage.drawing.components.get(self._id)
        if part is None or part.at is None or not self._may_join or inline_ports(part.kind) is None:
            return None
        at = QPointF((part.at.x + by[0]) * SQUARE_PX, (part.at.y + by[1]) * SQUARE_PX)
        return pipe_at(self.stage.content, self._lines, at, self.stage.zoom)
