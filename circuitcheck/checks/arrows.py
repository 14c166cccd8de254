"""The parts with an arrow that the checks of circulation judge, and which of them stand backwards."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.circuit.facing import Ports, Sort, by_separators, stands_backwards, ways_by_separators
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.rounds import Body, key_of
from circuitcheck.circuit.spans import spans_of
from circuitcheck.parts.kind import Role

SORTS = {
    Role.PUMPS: Sort.PUMP,
    Role.STOPS_BACKFLOW: Sort.OTHER,
    Role.BYPASSES: Sort.BYPASS,
    Role.BLENDS: Sort.BLEND,
    Role.REDUCES: Sort.OTHER,
}

SEPARATOR_PORTS = ("load_flow", "load_return", "source_flow", "source_return")


def with_arrows(case: Case) -> Iterator[tuple[Placed, Sort]]:
    """Each part once, by the first of its devices; what a heat source has inside is not judged."""
    told = set(case.circuit.parts_with(Role.HEATS))
    for role, sort in SORTS.items():
        for place in case.circuit.devices(role):
            if place.part not in told:
                told.add(place.part)
                yield place, sort


def is_backwards(case: Case, place: Placed, sort: Sort) -> bool:
    """Whether it stands against the only way water can go. Raises TooLargeError beyond the bound."""
    for key in (place.part, key_of(place.part, place.device.port)):
        body = case.situations.rounds.of(key)
        if body is not None:
            case.rests_on_water_ways(case.bodies.of(place.node))
            told = _by_separators(case, body, place, key) if sort in (Sort.PUMP, Sort.OTHER) else None
            return stands_backwards(body, key, sort) if told is None else told
    return False


def _by_separators(case: Case, body: Body, place: Placed, key: str) -> bool | None:
    """Whether it stands against the way that the separators on its water give that water; None where
    there are none, or they do not tell."""
    number = case.bodies.of(place.node)
    separators = _separators(case, number) if body.warms else ()
    if not separators:
        return None
    ways = case.kept(f"ways by separators {number}", lambda: ways_by_separators(body, separators))
    return by_separators(body, key, ways, separators)


def _separators(case: Case, body: int) -> tuple[Ports, ...]:
    """The vertices of each separator on that water that is joined on both sides."""
    spans = spans_of(case.circuit)
    found = []
    for place in case.circuit.devices(Role.SEPARATES):
        ports = (spans.vertex(place.part, port) for port in SEPARATOR_PORTS)
        at = [vertex for vertex in ports if vertex is not None]
        if case.bodies.of(place.node) == body and len(set(at)) == len(SEPARATOR_PORTS):
            found.append((at[0], at[1], at[2], at[3]))
    return tuple(found)
