"""The sheet by keyboard alone: a caret, a walk through the parts, and the keys of the gestures."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, Qt

from circuitcheck.editor.sheet import commands
from circuitcheck.editor.sheet.gestures.draw_pipe import DrawPipe
from circuitcheck.editor.sheet.gestures.gesture import Gesture
from circuitcheck.editor.sheet.gestures.place import Place
from circuitcheck.editor.sheet.hits import OnEnd, OnPart, OnPipe, OnPort, free_ports
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.geometry import Point
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.sheet.layout import things

ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}
ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
STRIDE = 5
"""Squares that an arrow key goes with Shift held."""

_KEYS = {
    Qt.Key.Key_Delete: commands.remove,
    Qt.Key.Key_Backspace: commands.remove,
    Qt.Key.Key_R: commands.turn,
    Qt.Key.Key_M: commands.mirror,
}


class Keyboard:
    """Where the caret is, which part the walk is at, and what each key does."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self.caret: Point | None = None
        self._at: str | None = None

    def press(self, key: int, modifiers: Qt.KeyboardModifier, gesture: Gesture | None, middle: Point) -> bool:
        """A key while the sheet has the keyboard; a caret that is nowhere starts in the middle of the view.

        Returns whether the key meant something.
        """
        stage = self._stage
        if gesture is not None and gesture.key(key):
            return True
        if key in ARROWS:
            dx, dy = ARROWS[Qt.Key(key)]
            stride = STRIDE if modifiers & Qt.KeyboardModifier.ShiftModifier else 1
            self._arrow(dx * stride, dy * stride, gesture, middle)
            return True
        if gesture is not None or modifiers & Qt.KeyboardModifier.ControlModifier:
            return False
        if key in _KEYS:
            _KEYS[Qt.Key(key)](stage)
            return True
        return False

    def show_caret(self, at: Point | None) -> None:
        """Put the caret somewhere, or away."""
        self.caret = at
        self._stage.overlay.show_caret(at)

    def leave(self) -> None:
        """The pointer took over: no caret, no ring."""
        self.show_caret(None)
        self._ring(None)

    def take(self) -> bool:
        """Select what the caret is on. Returns whether there is a caret."""
        if self.caret is None:
            return False
        found = self._stage.hit(_place(self.caret))
        match found:
            case OnPart() | OnPipe():
                self._stage.select({found.id})
            case OnPort():
                self._stage.select({found.joint.part})
            case OnEnd():
                self._stage.select({found.pipe})
        return True

    def walk(self, *, back: bool = False) -> bool:
        """Go on to the next part, or back. Returns False past the last, where the sheet is left."""
        order = [id for id, thing in things(self._stage.drawing).items() if thing.at is not None]
        if not order:
            return False
        if self._at in order:
            index = order.index(self._at) + (-1 if back else 1)
        else:
            index = len(order) - 1 if back else 0
        if not 0 <= index < len(order):
            self._ring(None)
            return False
        self.show_caret(None)
        self._ring(order[index])
        self._stage.select({order[index]})
        return True

    @property
    def walked_to(self) -> str | None:
        """The part the walk is at."""
        return self._at

    def pipe_from_here(self) -> DrawPipe | None:
        """Begin a pipe at the caret, or at the first port without a pipe of the part chosen."""
        stage = self._stage
        start = None
        if self.caret is not None:
            start = stage.hit(_place(self.caret))
        elif len(stage.selection) == 1:
            (id,) = stage.selection
            part = stage.drawing.components.get(id)
            start = None if part is None else next(iter(free_ports(stage.drawing, part)), None)
        if not isinstance(start, OnPort | OnEnd):
            stage.hint("A pipe begins at a port that has none: choose a part, or put the caret on a port.")
            return None
        stage.select(())
        self.show_caret(start.at)
        gesture = DrawPipe(stage, pointer_at(start.at), start)
        gesture.is_drag = True
        return gesture

    def _arrow(self, dx: int, dy: int, gesture: Gesture | None, middle: Point) -> None:
        stage = self._stage
        if gesture is None and stage.selection:
            commands.move(stage, dx, dy)
            return
        start = self.caret
        if isinstance(gesture, Place) and gesture.square is not None:
            start = gesture.square
        start = start or middle
        at = Point(start.x + dx, start.y + dy)
        self.show_caret(at)
        if isinstance(gesture, Place | DrawPipe):
            gesture.reach(_place(at))

    def _ring(self, id: str | None) -> None:
        self._at = id
        self._stage.overlay.show_focus(id)


def pointer_at(at: Point) -> Pointer:
    """The pointer as if it were at a square's corner."""
    return Pointer(_place(at), at, QPoint(), Qt.KeyboardModifier.NoModifier)


def _place(at: Point) -> QPointF:
    return QPointF(at.x * SQUARE_PX, at.y * SQUARE_PX)
