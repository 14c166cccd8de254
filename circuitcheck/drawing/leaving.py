"""How each pipe of a drawing may leave its ends, with the sides of tees dealt out as lines are laid."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple

from circuitcheck.drawing.shapes import Line, way_of
from circuitcheck.drawing.sides import ANY_WAY, Leave, Seen, Way, leaves, side_costs, wanted
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.tee import KIND as TEE

THROUGH = ("a", "b")
"""The ports of a tee that should lie straight through."""


class _Branch(NamedTuple):
    """A pipe on a tee: the port, whether its first end is there, and what each side costs the pipe itself;
    None where its far end has no place."""

    port: str
    pipe: str
    is_first: bool
    wanted: tuple[float, ...] | None


class Leaving:
    """The ways out of pipes' ends; `lines` are those laid so far, and grow while this is used."""

    def __init__(self, drawing: Drawing, lines: Mapping[str, Line]) -> None:
        self._drawing = drawing
        self._lines = lines
        self._offered: dict[str, dict[str, tuple[Leave, ...]]] = {}
        self._known: dict[str, list[_Branch]] = {}
        self._faces: dict[Joint, Way | None] = {}
        self._places: dict[Joint, Point | None] = {}

    def faces(self, end: End) -> Way | None:
        """The one way out of an end; None where it may be left any way."""
        if not isinstance(end, Joint):
            return None
        if end not in self._faces:
            self._faces[end] = self._drawing.components[end.part].port_faces(end.port)
        return self._faces[end]

    def place(self, end: End) -> Point | None:
        """Where an end lies on the sheet; None on a part that is not placed."""
        if not isinstance(end, Joint):
            return end
        if end not in self._places:
            self._places[end] = self._drawing.end_at(end)
        return self._places[end]

    def ways(self, pipe: Pipe, which_end: int) -> tuple[Leave, ...]:
        """The ways out of one end of a pipe that is to be routed, the preferred one first."""
        end = pipe.ends[which_end]
        faces = self.faces(end)
        if faces is not None:
            return (Leave(faces),)
        if not isinstance(end, Joint):
            return ANY_WAY
        tee = self._drawing.components[end.part]
        return self._offer(tee, end.port) if tee.kind is TEE else ANY_WAY

    def laid(self, pipe: Pipe) -> None:
        """A pipe's line was laid or taken up: what its tees still offer is to be dealt anew."""
        for joint in pipe.joints:
            self._offered.pop(joint.part, None)

    def _offer(self, tee: Component, port: str) -> tuple[Leave, ...]:
        """The sides that a tee still offers to one of its ports whose pipe is to be laid."""
        offered = self._offered.setdefault(tee.id, {})
        found = offered.get(port)
        if found is None:
            settled: dict[str, Way] = {}
            waiting: dict[str, tuple[float, ...]] = {}
            for branch in self._branches(tee):
                line = self._lines.get(branch.pipe)
                way = None if line is None else way_of(*(line[:2] if branch.is_first else line[:-3:-1]))
                if way is not None:
                    settled[branch.port] = way
                elif branch.wanted is not None:
                    waiting[branch.port] = branch.wanted
            found = offered[port] = leaves(side_costs(port, settled, waiting, THROUGH))
        return found

    def _branches(self, tee: Component) -> list[_Branch]:
        """The pipes on a tee, in the order of its ports."""
        found = self._known.get(tee.id)
        if found is None:
            found = self._known[tee.id] = []
            for port in tee.kind.ports:
                joint = Joint(tee.id, port.name)
                id = self._drawing.joined.get(joint)
                if id is None:
                    continue
                one, two = self._drawing.pipes[id].ends
                far = two if one == joint else one
                at, far_at = tee.at, self.place(far)
                wants = None if at is None or far_at is None else wanted(at, Seen(far_at, self.faces(far)))
                found.append(_Branch(port.name, id, one == joint, wants))
        return found
