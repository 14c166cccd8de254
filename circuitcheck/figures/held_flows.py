"""One situation with emitters and coils held at a flow: what is left over at each, and the way round to it."""

from __future__ import annotations

from collections import deque
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.circuit.solver.network import Link
from circuitcheck.figures.driven import on, place_of
from circuitcheck.figures.solved import SolvedBody
from circuitcheck.parts.kind import Role

if TYPE_CHECKING:
    from circuitcheck.circuit.solver.solution import Solution

HELD_WITHIN = 0.005
"""What falls short of its flow by more than this has not got it."""


@dataclass(frozen=True, slots=True)
class Loss:
    """One pipe or part of a circuit, and what it loses at design flow."""

    id: str
    flow_m3_s: float
    pascals: float


@dataclass(frozen=True, slots=True)
class Held:
    """One run with the takers held."""

    body: SolvedBody
    solution: Solution
    row: int
    places: dict[str, int]
    plain: tuple[Link, ...]

    def flow_m3_s(self, part: str) -> float | None:
        """The flow through a part."""
        place = place_of(self.body, part)
        return None if place is None else self.solution.flow_m3_s(self.row, place)

    def head_pa(self, pump: str) -> float | None:
        """What a pump raises the pressure by."""
        place = place_of(self.body, pump)
        found = None if place is None else self.solution.difference_pa(self.row, place)
        return None if found is None else -found

    def spare_pa(self, part: str, held_m3_s: float) -> float | None:
        """What holding a part to its flow takes up beyond its own loss; None where it does not get it."""
        place = self.places.get(part)
        if place is None:
            return None
        flow, across = self.solution.flow_m3_s(self.row, place), self.solution.difference_pa(self.row, place)
        if flow is None or across is None or abs(flow) < (1 - HELD_WITHIN) * held_m3_s:
            return None
        if flow < 0:  # piped the other way round
            flow, across = -flow, -across
        link = self.plain[place]
        own = (link.quadratic + link.pump_quadratic) * flow**2 + link.opens_at_pa - link.head_pa
        return across - own

    def circuit(self, pump: str, through: str) -> tuple[Loss, ...]:
        """The steps of the way round, pump left out, from its outlet on."""
        strands = self.body.network.strands
        at, by = place_of(self.body, pump), self.places.get(through)
        if at is None or by is None:
            return ()
        start, finish = strands[at].b, strands[at].a
        if at == by:
            steps = self._way(start, finish, frozenset({at}))
        else:
            inlet, outlet = strands[by].a, strands[by].b
            if (self.solution.flow_m3_s(self.row, by) or 0.0) < 0:
                inlet, outlet = outlet, inlet
            out = self._way(start, inlet, frozenset({at, by}))
            back = self._way(outlet, finish, frozenset({at, by}))
            steps = None if out is None or back is None else [*out, by, *back]
        return tuple(self._loss(place) for place in steps or () if not self.plain[place].lossless)

    def reached(self, pump: str, *, forth: bool) -> frozenset[str]:
        """The held parts that water comes to from a pump's outlet (or came from on its way to the pump),
        without passing a separator or another such part."""
        at = place_of(self.body, pump)
        if at is None:
            return frozenset()
        strands = self.body.network.strands
        held = {place: part for part, place in self.places.items()}
        start = strands[at].b if forth else strands[at].a
        seen, waiting, found = {start}, [start], set[str]()
        while waiting:
            for place, to in self._next(waiting.pop(), 1 if forth else -1):
                if place in held:
                    found.add(held[place])
                elif to not in seen and place != at and strands[place].id not in self._separators:
                    seen.add(to)
                    waiting.append(to)
        return frozenset(found)

    @property
    def _separators(self) -> frozenset[str]:
        return frozenset(place.part for place in on(self.body, Role.SEPARATES))

    def _loss(self, place: int) -> Loss:
        strand = self.body.network.strands[place]
        flow = abs(self.solution.flow_m3_s(self.row, place) or 0.0)
        link = self.plain[place]
        if place in self.places.values():
            return Loss(strand.id, flow, link.quadratic * flow**2)
        return Loss(strand.id, flow, abs(self.solution.difference_pa(self.row, place) or 0.0))

    def _way(self, start: int, finish: int, barred: frozenset[int]) -> list[int] | None:
        """The shortest way along the flow; past other held parts only where there is no other."""
        others = barred | frozenset(self.places.values())
        return self._along(start, finish, others) or self._along(start, finish, barred)

    def _along(self, start: int, finish: int, barred: frozenset[int]) -> list[int] | None:
        came: dict[int, tuple[int, int] | None] = {start: None}
        queue = deque([start])
        while queue and finish not in came:
            node = queue.popleft()
            for place, to in self._next(node):
                if to not in came and place not in barred:
                    came[to] = (node, place)
                    queue.append(to)
        if finish not in came:
            return None
        found: list[int] = []
        step = came[finish]
        while step is not None:
            found.append(step[1])
            step = came[step[0]]
        return found[::-1]

    def _next(self, node: int, sign: int = 1) -> Iterator[tuple[int, int]]:
        """The links that water leaves a node by (comes to it by, with sign −1), or that are nothing but a
        wide way."""
        for place in _links_at(self.body).get(node, ()):
            strand = self.body.network.strands[place]
            flow = self.solution.flow_m3_s(self.row, place)
            forth = strand.a == node
            if flow is None or sign * (flow if forth else -flow) > 0:
                yield place, strand.b if forth else strand.a


def _links_at(body: SolvedBody) -> dict[int, list[int]]:
    """The links at each node."""

    def make() -> dict[int, list[int]]:
        found: dict[int, list[int]] = {}
        for place, strand in enumerate(body.network.strands):
            for node in (strand.a, strand.b):
                found.setdefault(node, []).append(place)
        return found

    return body.plant.kept(f"links at nodes {body.network.number}", make)
