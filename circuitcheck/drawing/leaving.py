"""How each pipe of a drawing may leave its ends, with the sides of tees dealt out as lines are laid."""

from __future__ import annotations

from collections.abc import Mapping

from circuitcheck.drawing.shapes import Line, way_of
from circuitcheck.drawing.sides import ANY_WAY, Leave, Seen, Way, leaves, side_costs, wants
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.parts.tee import KIND as TEE

THROUGH = ("a", "b")
"""The ports of a tee that should lie straight through."""


class Leaving:
    """The ways out of pipes' ends; `lines` are those laid so far, and grow while this is used."""

    def __init__(self, drawing: Drawing, lines: Mapping[str, Line]) -> None:
        self._drawing = drawing
        self._lines = lines
        self._planned: dict[str, dict[str, dict[Way, float]]] = {}
        self._wanted: dict[Joint, Mapping[Way, float]] = {}

    def faces(self, end: End) -> Way | None:
        """The one way out of an end; None where it may be left any way."""
        if not isinstance(end, Joint):
            return None
        return self._drawing.components[end.part].port_faces(end.port)

    def ways(self, pipe: Pipe, which_end: int) -> tuple[Leave, ...]:
        """The ways out of one end of a pipe that is to be routed, the preferred one first."""
        end = pipe.ends[which_end]
        faces = self.faces(end)
        if faces is not None:
            return (Leave(faces),)
        if not isinstance(end, Joint):
            return ANY_WAY
        tee = self._drawing.components[end.part]
        return leaves(self._plan(tee)[end.port]) if tee.kind is TEE else ANY_WAY

    def laid(self, pipe: Pipe) -> None:
        """A pipe's line was laid or taken up: what its tees still offer is to be dealt anew."""
        for joint in pipe.joints:
            self._planned.pop(joint.part, None)

    def _settled(self, tee: Component) -> dict[str, Way]:
        """The sides of a tee that laid pipes leave by."""
        found = {}
        for port in tee.kind.ports:
            joint = Joint(tee.id, port.name)
            id = self._drawing.joined.get(joint)
            line = None if id is None else self._lines.get(id)
            if id is None or line is None:
                continue
            first = self._drawing.pipes[id].ends[0] == joint
            way = way_of(line[0], line[1]) if first else way_of(line[-1], line[-2])
            if way is not None:
                found[port.name] = way
        return found

    def _plan(self, tee: Component) -> dict[str, dict[Way, float]]:
        plan = self._planned.get(tee.id)
        if plan is None:
            settled = self._settled(tee)
            waiting = {}
            for port in tee.kind.ports:
                wanted = None if port.name in settled else self._wants(tee, port.name)
                if wanted:
                    waiting[port.name] = wanted
            plan = self._planned[tee.id] = side_costs(settled, waiting, THROUGH)
        return plan

    def _wants(self, tee: Component, port: str) -> Mapping[Way, float]:
        """What the sides of a tee cost the pipe on this port; nothing where it has none that leads anywhere."""
        joint = Joint(tee.id, port)
        known = self._wanted.get(joint)
        if known is None:
            far = self._far_end(joint)
            known = {} if far is None or tee.at is None else wants(tee.at, far)
            self._wanted[joint] = known
        return known

    def _far_end(self, joint: Joint) -> Seen | None:
        id = self._drawing.joined.get(joint)
        if id is None:
            return None
        one, two = self._drawing.pipes[id].ends
        far = two if one == joint else one
        at = self._drawing.end_at(far)
        return None if at is None else Seen(at, self.faces(far))
