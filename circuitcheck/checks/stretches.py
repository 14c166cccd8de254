"""Stretches of heating pipework between passages that can be shut: their pipes, parts and drains."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

from circuitcheck.checks.case import Case
from circuitcheck.checks.heating_water import heating_bodies
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import SHUTTABLE
from circuitcheck.parts.kind import Role, Way

SPURS = (Role.SHOWS_PRESSURE, Role.RELIEVES_HEATING, Role.HOLDS_EXPANSION, Role.FILLS, Role.DRAINS)
"""What stands at the end of a pipe of its own, in which water does not circulate."""


_LET_BY = (Role.STOPS_BACKFLOW, Role.BYPASSES, Role.REDUCES, Role.BLENDS, Role.HEATS)
"""What may have a passage that lets water through one way, but that nobody can shut."""


@dataclass(slots=True)
class Stretch:
    """A stretch: its body of water, its pipes by their place in the drawing, and its drains."""

    body: int
    pipes: list[int] = field(default_factory=list)
    drains: list[str] = field(default_factory=list)

    def parts(self, circuit: Circuit) -> tuple[str, ...]:
        """The parts that its pipes end on, in order."""
        ids, sides = circuit.ids, circuit.ports.sides
        places = dict.fromkeys(side for pipe in self.pipes for side in sides[2 * pipe : 2 * pipe + 2])
        return tuple(ids[place] for place in places if place >= 0)

    def ids(self, case: Case) -> list[str]:
        """Its pipes' ids."""
        ids = pipe_ids(case)
        return [ids[pipe] for pipe in self.pipes]


def pipe_ids(case: Case) -> list[str]:
    """The ids of all pipes, by their place in the drawing."""
    return case.kept(f"{__name__} pipes", lambda: list(case.drawing.pipes))


def stretches(case: Case) -> tuple[Stretch, ...]:
    """Every stretch with a pipe in heating water, in the order of the drawing's pipes.

    Only a passage that can be shut parts two stretches; a check valve or a bypass does not.
    """
    return case.circuit.keep(__name__, lambda: _stretches(case, heating_bodies(case)))


def _stretches(case: Case, bodies: Iterable[int]) -> tuple[Stretch, ...]:
    circuit = case.circuit
    stands_for = _joined(circuit)
    wanted = frozenset(bodies)
    found: dict[int, Stretch] = {}
    # The stretch of each water met so far, or None where it is not heating water.
    stretch_of: dict[int, Stretch | None] = {}
    body_of = case.bodies.by_node
    for pipe, water in enumerate(circuit.waters[: len(case.drawing.pipes)]):
        if water not in stretch_of:
            root = stands_for.get(water, water)
            body = body_of[pipe]
            if body in wanted and root not in found:
                found[root] = Stretch(body)
            stretch_of[water] = found.get(root)
        stretch = stretch_of[water]
        if stretch is not None:
            stretch.pipes.append(pipe)
    for place in circuit.devices(Role.DRAINS):
        water = circuit.water(place.node)
        drained = found.get(stands_for.get(water, water))
        if drained is not None:
            drained.drains.append(place.part)
    return tuple(found.values())


def _joined(circuit: Circuit) -> dict[int, int]:
    """For each water that a passage nobody can shut joins to another, the one that stands for all."""
    parent: dict[int, int] = {}

    def find(water: int) -> int:
        while (up := parent.get(water, water)) != water:
            water = up
        return water

    for part in dict.fromkeys(place.part for role in _LET_BY for place in circuit.devices(role)):
        for passage in circuit.plans[part].passages:
            if passage.gap or passage.pressure_way in SHUTTABLE or passage.pressure_way is Way.OPEN:
                continue
            a, b = (find(circuit.water(circuit.node(part, port))) for port in (passage.a, passage.b))
            if a != b:
                parent[b] = a
    return {water: find(water) for water in parent}


def bounding_valves(case: Case, stretch: Stretch) -> tuple[str, ...]:
    """The parts whose passages can be shut and bound a stretch, in order."""
    circuit = case.circuit
    waters = {circuit.waters[pipe] for pipe in stretch.pipes}
    edges = (circuit.edges[place] for water in waters for place in circuit.edges_at.get(water, ()))
    shut = {edge.part for edge in edges}
    return tuple(part for part in stretch.parts(circuit) if part in shut)


def spurs(case: Case) -> frozenset[str]:
    """The parts that stand at the end of a pipe of their own; what is built in makes no spur."""
    return frozenset(
        place.part for role in SPURS for place in case.circuit.devices(role) if not place.device.built_in
    )
