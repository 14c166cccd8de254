"""The pressure at every part whose height is known, in every situation: static, and what pumps add or take.

The fixed point is where the expansion vessel is joined (or the cold feed of an open cistern): its pressure
does not change when a pump starts. From there pressure falls with height and by what the solved network
says.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.drawing.value import Joint
from circuitcheck.figures.driven import barred
from circuitcheck.figures.heated_water import HeatedWater
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.solved import Run, SolvedBody
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import static_bar

PASCALS_A_BAR = 1e5


@dataclass(frozen=True, slots=True)
class Extent:
    """How far the pressure at a part departs from the fixed point's: the least and the most in bar over all
    situations and all its ports, each with its run (None: at rest, nothing running)."""

    part: str
    least_bar: float
    least: Run | None
    most_bar: float
    most: Run | None


class Pressures:
    """Departures of pressure in one heating water from that at its fixed point."""

    def __init__(self, plant: Plant, water: HeatedWater, fixed: Joint, fixed_height_m: float) -> None:
        self.plant, self.water, self.fixed, self.fixed_height_m = plant, water, fixed, fixed_height_m

    @cached_property
    def body(self) -> SolvedBody | None:
        """The solved water, where a pump drives it and the fixed point stands on it."""
        number = self.plant.bodies.of(self.plant.circuit.node(self.fixed.part, self.fixed.port))
        found = next((each for each in self.plant.solved.bodies if each.network.number == number), None)
        return found if found is not None and barred(found) is None else None

    @property
    def is_pumped(self) -> bool:
        """Whether a pump stands in the water at all."""
        return any(each.network.number == self.water.body for each in self.plant.solved.bodies)

    @cached_property
    def extents(self) -> tuple[Extent, ...]:
        """Each part of known height, in the order of the drawing. An open vent ends above the water, and a
        cistern is its surface."""
        plant = self.plant
        open_to_air = {place.part for role in (Role.VENTS, Role.FEEDS) for place in self.water.reached(role)}
        parts = set(plant.circuit.parts_in(self.water.reach)) - open_to_air
        heights = {
            id: height
            for id in plant.drawing.components
            if id in parts and (height := plant.heights.of(id)) is not None
        }
        return tuple(self._extent(id, self.fixed_height_m - height) for id, height in heights.items())

    def _extent(self, part: str, below_m: float) -> Extent:
        static = static_bar(below_m)
        more = [(0.0, None), *self._more_bar(part)]
        least, most = (pick(more, key=lambda each: each[0]) for pick in (min, max))
        return Extent(part, static + least[0], least[1], static + most[0], most[1])

    def _more_bar(self, part: str) -> Iterator[tuple[float, Run]]:
        """What a part's ports differ by from the fixed point in each run, height aside."""
        body = self.body
        fixed = self._node(self.fixed)
        if body is None or fixed is None:
            return
        nodes = [node for port in self._ports(part) if (node := self._node(port)) is not None]
        for run in body.runs:
            for node in nodes:
                found = body.solution.between_pa(run.row, node, fixed)
                if found is not None:
                    yield found / PASCALS_A_BAR, run

    def _ports(self, part: str) -> Iterator[Joint]:
        return (Joint(part, port.name) for port in self.plant.drawing.components[part].kind.ports)

    def in_run_bar(self, part: str, run: Run) -> float | None:
        """The same for the first joined port of a part in one run, height counted; a gauge's."""
        height, fixed = self.plant.heights.of(part), self._node(self.fixed)
        node = next((node for port in self._ports(part) if (node := self._node(port)) is not None), None)
        if height is None or fixed is None or node is None:
            return None
        found = run.body.solution.between_pa(run.row, node, fixed)
        return None if found is None else static_bar(self.fixed_height_m - height) + found / PASCALS_A_BAR

    def again_bar(self, other: SolvedBody, part: str, run: Run) -> float | None:
        """The least of a part's ports in a run of another body of the same shape, height counted."""
        height, fixed = self.plant.heights.of(part), self._node(self.fixed)
        if fixed is None or height is None:
            return None
        nodes = [node for port in self._ports(part) if (node := self._node(port)) is not None]
        more = [
            found for node in nodes if (found := other.solution.between_pa(run.row, node, fixed)) is not None
        ]
        return static_bar(self.fixed_height_m - height) + min(more) / PASCALS_A_BAR if more else None

    def _node(self, joint: Joint) -> int | None:
        """The network's node at a port: the end of the pipe that is joined there."""
        return self._nodes.get((joint.part, joint.port))

    @cached_property
    def _nodes(self) -> dict[tuple[str, str], int]:
        found: dict[tuple[str, str], int] = {}
        body = self.body
        for strand in body.network.strands if body is not None else ():
            if strand.passage is None:
                ends = self.plant.drawing.pipes[strand.id].joints
                for end, node in zip(ends, (strand.a, strand.b), strict=True):
                    found[(end.part, end.port)] = node
        return found
