"""Fitting parts into a drawing as an installer would: close by a port, in a pipe, or teed off it.

What is fitted at the end of a pipe leaves the pipe's length, rise and bends to the longer piece,
so that nothing that was known is lost: the new joint is right at the port.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from circuitcheck.drawing.changing import EditError, changed, part_named, with_items
from circuitcheck.drawing.corners import direction_at
from circuitcheck.drawing.edits import place
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.pipes import cut_pipe, draw_pipe, inline_ports, join, set_corners
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.room import along, free_place
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import EMPTY, Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point, turned
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import Kind
from circuitcheck.told import lower, worded

CARRIED = ("length_m", "rise_m", "bends")
STAYING = ("feed_cistern", "open_vent", "cold_main")
FITTED_ON = ("size_mm", "material", "bore_mm", "insulated")


class Fitting:
    """A drawing while parts are fitted into it; `drawing` is the value after each step.

    Every method raises EditError where the step cannot be made.
    """

    def __init__(self, drawing: Drawing, lines: Routes | None = None) -> None:
        self.drawing = drawing
        self._lines = lines if lines is not None and lines.drawing is drawing else None

    @property
    def lines(self) -> Routes:
        """The pipes' lines of the drawing as it is now."""
        if self._lines is None or self._lines.drawing is not self.drawing:
            self._lines = routes(self.drawing, self._lines)
        return self._lines

    def pipe_at(self, joint: Joint) -> str:
        """The pipe on a port. Raises EditError where there is none."""
        pipe = self.drawing.joined.get(joint)
        if pipe is None:
            raise EditError(
                worded(
                    "{name} has no pipe on its {port}.",
                    name=part_named(self.drawing, joint.part).name,
                    port=joint.port,
                )
            )
        return pipe

    def tee(self, by: Joint) -> str:
        """A tee in the pipe on a port, right at that port, its branch free; a and b in line."""
        pipe = self.pipe_at(by)
        return self._cut(pipe, component_kinds()["tee"], by, "a", "b", EMPTY)

    def cut_in(
        self, kind: str, by: Joint, *, port: str = "", data: Mapping[str, Any] = EMPTY, label: str = ""
    ) -> str:
        """A part in the pipe on a port, right at it. `port` names the part's port that faces `by`;
        left out, its first inline port does."""
        known = component_kinds()[kind]
        ports = inline_ports(known)
        if ports is None:
            raise EditError(worded("A {part} cannot be cut into a pipe.", part=lower(known.title)))
        near = port or ports[0]
        far = ports[1] if near == ports[0] else ports[0]
        return self._cut(self.pipe_at(by), known, by, near, far, data, label)

    def hang(
        self,
        kind: str,
        port: str,
        on: Joint,
        *,
        data: Mapping[str, Any] = EMPTY,
        pipe_data: Mapping[str, Any] = EMPTY,
    ) -> str:
        """A new part whose `port` a new pipe joins to a free port, placed where there is room.

        The pipe is as the pipes beside it, unless `pipe_data` says otherwise.
        """
        after, part = place(self.drawing, component_kinds()[kind], None, data=data)
        placed = self._where(after.components[part], port, on)
        if placed is not None:
            after, part = place(
                self.drawing, placed.kind, placed.at, turn=placed.turn, mirrored=placed.mirrored, data=data
            )
        self.drawing = after
        self.pipe(on, Joint(part, port), data=pipe_data)
        return part

    def tee_off(
        self,
        by: Joint,
        kind: str,
        port: str,
        *,
        data: Mapping[str, Any] = EMPTY,
        pipe_data: Mapping[str, Any] = EMPTY,
    ) -> str:
        """A new part teed off the pipe on a port, right at that port. Returns the part."""
        return self.hang(kind, port, Joint(self.tee(by), "branch"), data=data, pipe_data=pipe_data)

    def bridge(self, first: Joint, second: Joint, kind: str, *, data: Mapping[str, Any] = EMPTY) -> str:
        """A part between two pipes: a tee right at each port, and from the first tee's branch through
        the part (its first inline port first) to the second's."""
        known = component_kinds()[kind]
        ports = inline_ports(known)
        if ports is None:
            raise EditError(worded("A {part} cannot be cut into a pipe.", part=lower(known.title)))
        leaves, enters = Joint(self.tee(first), "branch"), Joint(self.tee(second), "branch")
        part = self.hang(kind, ports[0], leaves, data=data)
        self.pipe(Joint(part, ports[1]), enters)
        return part

    def pipe(self, start: Joint, finish: Joint, *, data: Mapping[str, Any] = EMPTY) -> str:
        """A new pipe between two free ports, of the size and material of the pipes on the first's part."""
        known = self._like(start.part) | dict(data)
        self.drawing, id = draw_pipe(self.drawing, start, finish, data=known)
        return id

    def set(self, id: str, field: str, value: Any) -> None:
        """A data field of a part, pipe or control."""
        self.drawing = set_field(self.drawing, id, field, value)

    def take_out(self, *ids: str) -> None:
        """Parts out; pipes heal across valves and the like."""
        self.drawing = remove(self.drawing, ids)

    def move_end(self, pipe: str, part: str, by: Joint) -> str:
        """A pipe's end, now on `part`, to a new tee in the pipe on a port, right at that port.

        The tee it leaves is taken out and heals. What hangs on nothing but this pipe comes along, with
        its pipe as long as it was; else nothing is known of the pipe's course any more. Returns the tee.
        """
        known = self.drawing.pipes[pipe]
        which = next(
            (number for number, end in enumerate(known.ends) if isinstance(end, Joint) and end.part == part),
            None,
        )
        if which is None:
            raise EditError(f"Pipe {pipe} does not end on {part_named(self.drawing, part).name}.")
        tee = self.tee(by)
        branch, other = Joint(tee, "branch"), known.ends[1 - which]
        self.drawing = set_corners(join(self.drawing, pipe, which, branch), pipe, None)
        comes = isinstance(other, Joint) and self._hangs(other.part)
        for field in ("rise_m",) if comes else CARRIED:
            if known.data.get(field) is not None:
                self.set(pipe, field, None)
        if comes and isinstance(other, Joint):
            self._bring(other, branch)
        return tee

    def _hangs(self, part: str) -> bool:
        """Whether a part hangs on one pipe alone, and does not stand where it stands for its own sake."""
        kind = self.drawing.components[part].kind.name
        return len(self.drawing.pipes_of(part)) == 1 and kind not in STAYING

    def _bring(self, joint: Joint, to: Joint) -> None:
        """A part put near another port on the sheet."""
        placed = self._where(self.drawing.components[joint.part], joint.port, to)
        if placed is not None:
            parts = with_items(self.drawing.components, {joint.part: placed})
            self.drawing = changed(self.drawing, components=parts)

    def turn_round(self, part: str) -> None:
        """Swap the pipes on a part's two inline ports; on the sheet it turns by half a turn, so that
        they lie where they lay."""
        known = part_named(self.drawing, part)
        ports = inline_ports(known.kind)
        if ports is None:
            raise EditError(worded("{name} has no two ports in one line.", name=known.name))
        turned_part = replace(known, turn=(known.turn + 180) % 360)
        pipes = with_items(self.drawing.pipes, _swapped(self.drawing, part, ports))
        parts = with_items(self.drawing.components, {part: turned_part})
        self.drawing = changed(self.drawing, pipes=pipes, components=parts)

    def change_over(self, part: str, one: str, other: str) -> None:
        """Swap the pipes on two ports of a part, which stays as it stands: they are laid anew."""
        pipes = _swapped(self.drawing, part_named(self.drawing, part).id, (one, other))
        laid = {id: replace(pipe, via=None) for id, pipe in pipes.items()}
        self.drawing = changed(self.drawing, pipes=with_items(self.drawing.pipes, laid))

    def _cut(
        self,
        pipe: str,
        kind: Kind,
        by: Joint,
        near: str,
        far: str,
        data: Mapping[str, Any],
        label: str = "",
    ) -> str:
        before = self.drawing.pipes[pipe]
        from_first = before.ends[0] == by
        line = self.lines.get(pipe)
        at, turn = None, 0
        if line is not None and len(line) > 1:
            at, turn = _placed_in(line, kind, near, far, from_first)
        after, part = place(self.drawing, kind, at, turn=turn, data=data, label=label)
        order = (near, far) if from_first else (far, near)
        after, other = cut_pipe(after, pipe, Joint(part, order[0]), Joint(part, order[1]), at)
        stub, rest = (pipe, other) if from_first else (other, pipe)
        for field in CARRIED:
            if before.data.get(field) is not None:
                after = set_field(after, stub, field, 0)
                after = set_field(after, rest, field, before.data[field])
        self.drawing = after
        return part

    def _like(self, part: str) -> dict[str, Any]:
        """The size and material of the first pipe on a part."""
        for pipe in self.drawing.pipes_of(part):
            data = self.drawing.pipes[pipe].data
            return {field: data[field] for field in FITTED_ON if field in data}
        return {}

    def _where(self, part: Component, port: str, on: Joint) -> Component | None:
        """The part as it is to stand near a port, facing it; None where that port is not placed."""
        wanted = self.drawing.end_at(on)
        if wanted is None:
            return None
        holder = self.drawing.components[on.part]
        leaves = turned(holder.kind.port(on.port).faces or (0, 0), holder.turn, holder.mirrored)
        lines = self.lines.values()
        found = free_place(self.drawing, lines, part, port, wanted, leaves)
        return None if found is None else replace(part, at=found)


def _placed_in(
    line: tuple[Point, ...], kind: Kind, near: str, far: str, from_first: bool
) -> tuple[Point, int]:
    """Where in a line a part stands near one end of it, and its turn, `near` towards that end."""
    offsets = kind.port(near).at, kind.port(far).at
    half = max(abs(offsets[1][0] - offsets[0][0]), abs(offsets[1][1] - offsets[0][1])) / 2
    at = along(line, half, from_first=from_first)
    way = direction_at(line, at)
    way = way if from_first else (-way[0], -way[1])
    faces = kind.port(far).faces or (1, 0)
    turn = next((each for each in (0, 90, 180, 270) if turned(faces, each, False) == Point(*way)), 0)
    return at, turn


def _swapped(drawing: Drawing, part: str, ports: tuple[str, str]) -> dict[str, Pipe]:
    """The pipes on two ports of a part, each on the other one."""
    one, other = (Joint(part, port) for port in ports)
    swap = {one: other, other: one}
    pipes = {}
    for id in dict.fromkeys(drawing.joined[joint] for joint in swap if joint in drawing.joined):
        pipe = drawing.pipes[id]
        first, second = (swap.get(end, end) if isinstance(end, Joint) else end for end in pipe.ends)
        pipes[id] = replace(pipe, ends=(first, second))
    return pipes
