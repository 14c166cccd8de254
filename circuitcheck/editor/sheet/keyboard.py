"""The sheet by keyboard alone: a caret, a walk through the parts, and the keys of the gestures."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, Qt

from circuitcheck.editor.sheet import commands, walking
from circuitcheck.editor.sheet.gestures.draw_pipe import DrawPipe
from circuitcheck.editor.sheet.gestures.gesture import Gesture
from circuitcheck.editor.sheet.gestures.place import Place
from circuitcheck.editor.sheet.hits import OnEnd, OnPart, OnPipe, OnPort, free_ends, free_ports
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.translating import tr
from circuitcheck.geometry import Point
from circuitcheck.picture.marks import SQUARE_PX
from circuitcheck.sheet.things import things
from circuitcheck.told import spoken

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
_CONTROL, _SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier


class Keyboard:
    """Where the caret is, which part the walk is at, and what each key does."""

    def __init__(self, stage: Stage) -> None:
        self._stage = stage
        self.caret: Point | None = None
        self._at: str | None = None
        self._left_at: Point | None = None

    def press(self, key: int, modifiers: Qt.KeyboardModifier, gesture: Gesture | None, middle: Point) -> bool:
        """A key while the sheet has the keyboard; a caret that is nowhere starts in the middle of the view.

        Returns whether the key meant something.
        """
        stage = self._stage
        if gesture is not None and gesture.key(key):
            return True
        if key in ARROWS:
            dx, dy = ARROWS[Qt.Key(key)]
            if gesture is None and modifiers & _CONTROL:
                return self._go(dx, dy, adds=bool(modifiers & _SHIFT), middle=middle)
            stride = STRIDE if modifiers & _SHIFT else 1
            self._arrow(dx * stride, dy * stride, gesture, middle)
            return True
        if gesture is not None:
            return False
        if key == Qt.Key.Key_Space and modifiers & _CONTROL:
            return self._toggle()
        if modifiers & _CONTROL:
            return False
        if key in _KEYS:
            _KEYS[Qt.Key(key)](stage)
            return True
        return False

    def show_caret(self, at: Point | None) -> None:
        """Put the caret somewhere, or away."""
        self.caret = at
        self._left_at = at or self._left_at
        self._stage.overlay.show_caret(at)

    def leave(self) -> None:
        """The pointer took over: no caret, no ring."""
        self.show_caret(None)
        self._left_at = None
        self._ring(None)

    def let_go(self) -> None:
        """Escape: no caret, no ring, nothing selected; the caret comes back where the hand was."""
        stage = self._stage
        places = [walking.place_of(stage.drawing, id) for id in sorted(stage.selection)]
        self.leave()
        self._left_at = next((place for place in places if place is not None), None)
        stage.select(())

    def take(self) -> bool:
        """Select what the caret is on. Returns whether there is a caret."""
        if self.caret is None:
            return False
        found = self._here()
        if found is not None:
            self._stage.select({found})
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
        self._stand_on(order[index], adds=False)
        return True

    @property
    def walked_to(self) -> str | None:
        """The part the walk is at."""
        return self._at

    @property
    def can_begin_pipe(self) -> bool:
        """Whether P means a pipe here."""
        return self._start() is not None

    def pipe_from_here(self, gesture: Gesture | None = None) -> DrawPipe | None:
        """Begin a pipe at the caret, or at the first port without a pipe of the part chosen.

        While a pipe is drawn by keys it begins at the next port of its part instead.
        """
        stage = self._stage
        if isinstance(gesture, DrawPipe):
            start: OnPort | OnEnd | None = self._next_start(gesture.start)
            gesture.cancel()
        else:
            start = self._start()
        if start is None:
            stage.hint(
                tr("A pipe begins at a port that has none: choose a part, or put the caret on a port.")
            )
            return None
        stage.select(())
        self.show_caret(start.at)
        begun = DrawPipe(stage, pointer_at(start.at), start)
        begun.is_drag = True
        stage.hint(
            tr(
                "From {start}.  Tab goes from port to port, P begins at the next one, Enter ends "
                "the pipe, Escape leaves it.",
                start=_port_words(start),
            )
        )
        return begun

    def to_next_port(self, gesture: DrawPipe, *, back: bool) -> None:
        """Let the pipe end on the next port there is."""
        at = gesture.step(back=back)
        if at is not None:
            self.show_caret(at)

    def _start(self) -> OnPort | OnEnd | None:
        stage = self._stage
        hit = None if self.caret is None else stage.hit(_place(self.caret))
        if isinstance(hit, OnPort | OnEnd):
            return hit
        if isinstance(hit, OnPart):
            id = hit.id
        elif self.caret is None and len(stage.selection) == 1:
            (id,) = stage.selection
        else:
            return None
        if id in stage.drawing.pipes:
            return next(iter(free_ends(stage.drawing, id)), None)
        part = stage.drawing.components.get(id)
        return None if part is None else next(iter(free_ports(stage.drawing, part)), None)

    def _next_start(self, now: OnPort | OnEnd) -> OnPort | OnEnd:
        if isinstance(now, OnEnd):
            ends = list(free_ends(self._stage.drawing, now.pipe))
            return ends[(ends.index(now) + 1) % len(ends)]
        ports = list(free_ports(self._stage.drawing, self._stage.drawing.components[now.joint.part]))
        return ports[(ports.index(now) + 1) % len(ports)]

    def _arrow(self, dx: int, dy: int, gesture: Gesture | None, middle: Point) -> None:
        stage = self._stage
        if gesture is None and stage.selection:
            commands.move(stage, dx, dy)
            return
        start = self.caret or self._left_at
        if isinstance(gesture, Place) and gesture.square is not None:
            start = gesture.square
        start = start or middle
        at = Point(start.x + dx, start.y + dy)
        self.show_caret(at)
        if isinstance(gesture, Place | DrawPipe):
            gesture.reach(_place(at))

    def _go(self, dx: int, dy: int, *, adds: bool, middle: Point) -> bool:
        """To the nearest part that way, from the part the walk is at, the caret, or the middle of the view."""
        stage = self._stage
        here = self._at or (next(iter(stage.selection)) if len(stage.selection) == 1 else None)
        start = walking.place_of(stage.drawing, here) if here else self.caret or self._left_at
        found = walking.nearest(stage.drawing, start or middle, dx, dy, here)
        if found is not None:
            self._stand_on(found, adds=adds)
        return True

    def _stand_on(self, id: str, *, adds: bool) -> None:
        self.show_caret(None)
        self._left_at = None
        self._ring(id)
        self._stage.select({*self._stage.selection, id} if adds else {id})

    def _toggle(self) -> bool:
        """Add what the walk or the caret is at to the selection, or take it out."""
        found = self._at if self._at is not None else self._here()
        if found is not None:
            self._stage.select(self._stage.selection ^ {found})
        return True

    def _here(self) -> str | None:
        """What the caret is on."""
        if self.caret is None:
            return None
        match self._stage.hit(_place(self.caret)):
            case OnPart(id) | OnPipe(id):
                return id
            case OnPort(joint):
                return joint.part
            case OnEnd(pipe):
                return pipe
        return None

    def _ring(self, id: str | None) -> None:
        self._at = id
        self._stage.overlay.show_focus(id)


def pointer_at(at: Point) -> Pointer:
    """The pointer as if it were at a square's corner."""
    return Pointer(_place(at), at, QPoint(), Qt.KeyboardModifier.NoModifier)


def _place(at: Point) -> QPointF:
    return QPointF(at.x * SQUARE_PX, at.y * SQUARE_PX)


def _port_words(start: OnPort | OnEnd) -> str:
    return (
        tr("the free end") if isinstance(start, OnEnd) else tr("port {port}", port=spoken(start.joint.port))
    )
