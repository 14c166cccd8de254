"""Drawing a pipe: from a port or a free end, to a port, onto a pipe, or into the open."""

from __future__ import annotations

from collections.abc import Iterator

from PySide6.QtCore import QPointF, Qt

from circuitcheck.drawing.edits import place as place_part
from circuitcheck.drawing.edits import remove
from circuitcheck.drawing.pipes import draw_pipe, draw_pipe_onto, join, join_onto
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.editor.sheet.gestures.gesture import Drag
from circuitcheck.editor.sheet.hits import (
    OnEnd,
    OnPipe,
    OnPort,
    free_ends,
    free_ports,
    pipe_at,
    port_at,
    snapped,
)
from circuitcheck.editor.sheet.stage import Pointer, Stage
from circuitcheck.editor.translating import later, tr
from circuitcheck.geometry import Point, distance
from circuitcheck.parts.tee import KIND as TEE
from circuitcheck.picture.marks import SQUARE_PX

Target = OnPort | OnEnd | OnPipe | Point

HINT = later(
    "Release on a port, on a pipe to make a tee, or in the open. Escape leaves the drawing as it is."
)


class DrawPipe(Drag):
    """A rubber line, routed square, until it is let go."""

    cursor = Qt.CursorShape.CrossCursor

    def __init__(self, stage: Stage, pointer: Pointer, start: OnPort | OnEnd) -> None:
        super().__init__(stage, pointer)
        self._start = start
        self._lines = stage.content.layout.routes
        self._target: Target | None = None
        self._ports: list[OnPort | OnEnd] | None = None
        self._port: int | None = None
        # Anything that is not where the pipe begins is the outcome; found once a place.
        self._outcome: tuple[str, Drawing, frozenset[str]] | None = None
        stage.hint(tr(HINT))

    def move(self, pointer: Pointer) -> None:
        """Show the pipe up to what the pointer is on."""
        if self.strayed(pointer):
            self.reach(pointer.place)

    def step(self, *, back: bool = False) -> Point | None:
        """End on the next port or free end from where the pipe begins, the nearest first, or on the one before.

        Returns where that is; None where there is nothing to end on.
        """
        if self._ports is None:
            self._ports = sorted(self._possible(), key=self._far)
        if not self._ports:
            return None
        count = len(self._ports)
        self._port = (self._port + (-1 if back else 1)) % count if self._port is not None else -back % count
        at = self._ports[self._port].at
        self.reach(QPointF(at.x * SQUARE_PX, at.y * SQUARE_PX))
        return at

    def _far(self, port: OnPort | OnEnd) -> tuple[bool, float, Point]:
        """What orders the ports for the keys: nearest first, those of the same part last."""
        own = self._start
        same = isinstance(own, OnPort) and isinstance(port, OnPort) and own.joint.part == port.joint.part
        return same, distance(port.at, own.at), port.at

    def _possible(self) -> Iterator[OnPort | OnEnd]:
        drawing, own = self.stage.drawing, self._start
        for part in drawing.components.values():
            yield from (port for port in free_ports(drawing, part) if port != own)
        for pipe in drawing.pipes:
            if not (isinstance(own, OnEnd) and own.pipe == pipe):
                yield from free_ends(drawing, pipe)

    @property
    def start(self) -> OnPort | OnEnd:
        """Where it begins."""
        return self._start

    def end(self, pointer: Pointer) -> None:
        """Draw the pipe; a press without a drag selects the part or pipe it began on."""
        self.done = True
        self.stage.overlay.show_joints(())
        if self._outcome is not None:
            step, drawing, made = self._outcome
            self.stage.commit(step, drawing, made)
            return
        self.stage.end_preview()
        if not self.is_drag:
            begun = self._start.joint.part if isinstance(self._start, OnPort) else self._start.pipe
            self.stage.select(self.stage.selection ^ {begun} if pointer.adds else {begun})

    def cancel(self) -> None:
        """Leave the drawing as it is."""
        super().cancel()
        self.stage.overlay.show_joints(())

    def reach(self, place: QPointF) -> None:
        """Show the pipe ending at a place in px."""
        target = self._find(place)
        if target == self._target:
            return
        self._target = target
        self._outcome = None
        at = target if isinstance(target, Point) else target.at
        if at == self._start.at and isinstance(target, Point | OnPipe):
            self._show_nothing()
            return
        drawing = self.stage.tried(lambda: self._drawn(target))
        if drawing is None:
            self._show_nothing()
            return
        made = frozenset(drawing.pipes.keys() - self.stage.drawing.pipes.keys())
        if isinstance(self._start, OnEnd):
            made = frozenset({self._start.pipe})
        self._outcome = (self._step(), drawing, made & drawing.pipes.keys())
        self.stage.preview(drawing)
        self.stage.overlay.show_joints(() if isinstance(target, Point) else (target.at,))
        self.stage.hint(tr(HINT))

    def _show_nothing(self) -> None:
        self.stage.end_preview()
        self.stage.overlay.show_joints(())

    def _step(self) -> str:
        return later("Draw pipe") if isinstance(self._start, OnPort) else later("Join pipe")

    def _find(self, place: QPointF) -> Target:
        """What the pipe would end on, looked for in the drawing as it is and not in its preview."""
        content, drawing, zoom = self.stage.content, self.stage.drawing, self.stage.zoom
        port = port_at(content, drawing, place, zoom)
        own = self._start.pipe if isinstance(self._start, OnEnd) else None
        if port is not None and port != self._start and not (isinstance(port, OnEnd) and port.pipe == own):
            return port
        pipe = pipe_at(content, self._lines, place, zoom)
        return snapped(place) if pipe is None or pipe.id == own else pipe

    def _drawn(self, target: Target) -> Drawing:
        """The drawing with the pipe ending there. Raises EditError."""
        drawing = self.stage.drawing
        if isinstance(self._start, OnEnd):
            return self._joined(drawing, self._start, target)
        start: End = self._start.joint
        match target:
            case OnPort():
                return draw_pipe(drawing, start, target.joint)[0]
            case OnEnd():
                return join(drawing, target.pipe, target.which, start)
            case OnPipe():
                return draw_pipe_onto(drawing, start, target.id, target.at)[0]
        return draw_pipe(drawing, start, target)[0]

    def _joined(self, drawing: Drawing, start: OnEnd, target: Target) -> Drawing:
        """A pipe's free end put on something; on another pipe's free end, the two become one."""
        match target:
            case OnPort():
                return join(drawing, start.pipe, start.which, target.joint)
            case OnPipe():
                return join_onto(drawing, start.pipe, start.which, target.id, target.at)
            case OnEnd():
                # A tee between the two, taken out again, heals them as it heals any two pipes.
                after, tee = place_part(drawing, TEE, target.at)
                after = join(after, target.pipe, target.which, Joint(tee, "a"))
                return remove(join(after, start.pipe, start.which, Joint(tee, "b")), {tee})
        return join(drawing, start.pipe, start.which, target)
