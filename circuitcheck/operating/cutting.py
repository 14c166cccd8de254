"""What the valves, as they stand, cut off from what keeps it safe: vessel, safety valve, vent, feed, relief valve."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.joining import Circuit
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role

SEALED = ((Role.HOLDS_EXPANSION, "expansion vessel"), (Role.RELIEVES_HEATING, "safety valve"))
OPEN = ((Role.VENTS, "open vent"), (Role.FEEDS, "cold feed"))
STORED = ((Role.RELIEVES_STORE, "relief valve"),)
STORES = (Role.STORES_AT_MAINS_PRESSURE,)


@dataclass(frozen=True, slots=True)
class CutOff:
    """Water that the shut valves part from every one of some devices that it reaches when all is open.

    `part` is what heats the water, `lacks` what it has none of any more (`expansion vessel`), `devices`
    those it had; `parts` and `pipes` are the water itself, without the valves that shut it in.
    """

    part: str
    lacks: str
    devices: tuple[str, ...]
    parts: tuple[str, ...]
    pipes: tuple[str, ...]


def joined_waters(circuit: Circuit, start: int, shut: frozenset[str]) -> frozenset[int]:
    """Every water joined to `start` by ways that pressure passes both ways and that do not stand shut."""
    edges, edges_at = circuit.edges, circuit.edges_at
    seen, todo = {start}, [start]
    while todo:
        here = todo.pop()
        for place in edges_at.get(here, ()):
            edge = edges[place]
            there = edge.b if edge.a == here else edge.a
            if edge.label not in shut and there not in seen:
                seen.add(there)
                todo.append(there)
    return frozenset(seen)


def cut_off_by(plant: Plant, shut: frozenset[str]) -> tuple[CutOff, ...]:
    """All that is cut off with these passages shut, in the order of what heats it."""
    if not shut:
        return ()
    found = []
    for part, water, devices in _asked(plant):
        found += list(_lacking(plant, part, water, devices, shut))
    return tuple(found)


def _asked(plant: Plant) -> Iterator[tuple[str, int, tuple[tuple[Role, str], ...]]]:
    """Each heated water, by what heats it, and the devices that it must reach."""
    circuit = plant.circuit
    stored = {
        plant.bodies.of(place.node)
        for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN)
        for place in circuit.devices(role)
    }
    for heated in plant.bodies.heated:
        if heated.body in stored:
            continue
        whole = reaches(circuit, heated.water)
        is_open = any(circuit.water(each.node) in whole for role, _ in OPEN for each in circuit.devices(role))
        yield heated.part, heated.water, OPEN if is_open else SEALED
    for place in circuit.devices(Role.STORES_AT_MAINS_PRESSURE):
        yield place.part, circuit.water(place.other), STORED
    for place in circuit.devices(Role.STORES_OPEN):
        yield place.part, circuit.water(place.other), (OPEN[0],)


def _lacking(
    plant: Plant, part: str, water: int, devices: tuple[tuple[Role, str], ...], shut: frozenset[str]
) -> Iterator[CutOff]:
    circuit = plant.circuit
    whole, left = reaches(circuit, water), joined_waters(circuit, water, shut)
    for role, name in devices:
        had = [place for place in circuit.devices(role) if circuit.water(place.node) in whole]
        if not had or any(circuit.water(place.node) in left for place in had):
            continue
        valves = {label.partition(":")[0] for label in shut}
        parts = tuple(each for each in circuit.parts_in(left) if each not in valves or each == part)
        ids = tuple(dict.fromkeys(place.part for place in had))
        yield CutOff(part, name, ids, parts, circuit.pipes_in(left))
