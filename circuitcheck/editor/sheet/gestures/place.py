"""Placing a part: it goes along with the pointer, and is cut in where it meets a pipe."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt

from circuitcheck.drawing.edits import add_control, place
from circuitcheck.drawing.pipes import cut_in, inline_ports
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.gestures.gesture import Gesture
from circuitcheck.editor.sheet.gestures.joining import joints_of, taking_up
from circuitcheck.editor.sheet.hits import OnPipe, pipe_at, snapped
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.translating import later, tr
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Kind
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.told import lower, worded


class Place(Gesture):
    """A kind in hand until it is placed or put away. `keeps`: after placing one, the next is in hand."""

    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, stage: Stage, kind: Kind, *, keeps: bool = False) -> None:
        super().__init__(stage)
        self.kind = kind
        self.keeps = keeps
        self.is_mirrored = False
        self.turn = 0
        self._place: QPointF | None = None
        self._shown: tuple[Point | OnPipe, int, bool] | None = None
        self._lines = stage.content.layout.routes
        stage.hint(self._hint())

    @property
    def square(self) -> Point | None:
        """The square's corner at which the part is shown."""
        return None if self._place is None else snapped(self._place)

    def become(self, kind: Kind) -> None:
        """Have another kind in hand, at the same place and turned alike."""
        if kind is self.kind:
            return
        self.kind = kind
        if self._shown is not None:
            # A pipe that is shown cut goes on counting as whole, whatever is cut into it.
            self._shown = (self._shown[0], -1, False)
        if self._place is not None:
            self.reach(self._place)

    def tell(self) -> None:
        """Say what the keys do."""
        self.stage.hint(self._hint())

    def move(self, pointer: Pointer) -> None:
        """Show the part where it would come to stand."""
        self.reach(pointer.place)

    def reach(self, place: QPointF) -> None:
        """Show the part at a place in px."""
        self._place = place
        target = self._target(place)
        shown = (target, self.turn, self.is_mirrored)
        if shown == self._shown:
            return
        self._shown = shown
        outcome = self._placed(target)
        if outcome is None:
            self.stage.end_preview()
            self.stage.overlay.show_joints(())
            return
        drawing, id = outcome
        self.stage.preview(drawing, {id})
        part = drawing.components.get(id)
        self.stage.overlay.show_joints(
            joints_of(drawing, part) if isinstance(target, OnPipe) and part else ()
        )

    def end(self, pointer: Pointer) -> None:
        """Place the part; Shift keeps the next one in hand."""
        self.reach(pointer.place)
        self.put(again=self.keeps or bool(pointer.modifiers & Qt.KeyboardModifier.ShiftModifier))

    def put(self, *, again: bool = False) -> bool:
        """Place the part where it is shown. Returns whether it was."""
        outcome = None if self._shown is None else self._placed(self._shown[0])
        if outcome is None:
            return False
        drawing, id = outcome
        cuts = self._shown is not None and isinstance(self._shown[0], OnPipe)
        named = later("Cut in {what}") if cuts else later("Place {what}")
        self.stage.overlay.show_joints(())
        self.stage.remember_placed(self.kind.name)
        self.stage.commit(worded(named, what=lower(self.kind.title)), drawing, {id})
        self.drawing_changed()
        self.done = not again
        if again:
            self.stage.hint(self._hint())
        return True

    def cancel(self) -> None:
        """Put the part away."""
        super().cancel()
        self.stage.overlay.show_joints(())

    def drawing_changed(self) -> None:
        """Stay in hand, and look anew at what there is to cut into."""
        self._shown = None
        self._lines = self.stage.content.layout.routes

    def key(self, key: int) -> bool:
        """R turns it, M mirrors it."""
        if key == Qt.Key.Key_R:
            self.turn = (self.turn + 90) % 360
        elif key == Qt.Key.Key_M:
            self.is_mirrored = not self.is_mirrored
        else:
            return False
        if self._place is not None:
            self.reach(self._place)
        return True

    def _hint(self) -> str:
        return tr(
            "Click to place the {part}, on a pipe to cut it in.  R turns it, M mirrors it, "
            "Shift places one more, Escape puts it away.",
            part=lower(self.kind.title),
        )

    def _target(self, place: QPointF) -> Point | OnPipe:
        """The pipe to cut into, else the square's corner to stand on."""
        if inline_ports(self.kind) is not None:
            pipe = pipe_at(self.stage.content, self._lines, place, self.stage.zoom)
            if pipe is not None:
                return pipe
        return snapped(place)

    def _placed(self, target: Point | OnPipe) -> tuple[Drawing, str] | None:
        """The drawing with the part in it, and the part's id; None where it cannot be."""
        made: list[str] = []

        def edit() -> Drawing:
            drawing, id = self._edit(target)
            made.append(id)
            return drawing

        drawing = self.stage.tried(edit)
        return None if drawing is None else (drawing, made[0])

    def _edit(self, target: Point | OnPipe) -> tuple[Drawing, str]:
        drawing = self.stage.drawing
        if isinstance(target, OnPipe):
            line = self._lines[target.id]
            # Along a pipe it can lie in two ways: each turn and each mirroring takes the other.
            round_ = (self.turn // 90 + self.is_mirrored) % 2 == 1
            return cut_in(drawing, target.id, self.kind, target.at, line=line, turned_round=round_)
        if self.kind.is_control:
            return add_control(drawing, self.kind, at=target)
        after, id = place(drawing, self.kind, target, turn=self.turn, mirrored=self.is_mirrored)
        return taking_up(self.stage, after, id), id


def start_of_placing(stage: Stage, kind: Kind, at: Point, *, keeps: bool = False) -> Place:
    """A kind in hand, shown at a square's corner already, so that Enter places it there."""
    gesture = Place(stage, kind, keeps=keeps)
    gesture.reach(QPointF(at.x * SQUARE_PX, at.y * SQUARE_PX))
    return gesture
