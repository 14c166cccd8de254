"""What the valves, as they stand, cut off from what keeps it safe: vessel, safety valve, vent, feed, relief valve."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.circuit.isolation import reaches
from circuitcheck.figures.heated_water import heated_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

SEALED = ((Role.HOLDS_EXPANSION, a_word("expansion vessel")), (Role.RELIEVES_HEATING, a_word("safety valve")))
OPEN = ((Role.VENTS, a_word("open vent")), (Role.FEEDS, a_word("cold feed")))
STORED = ((Role.RELIEVES_STORE, a_word("relief valve")),)


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
    for water in heated_waters(plant):
        devices = OPEN if water.is_open_vented else SEALED
        for heated in water.heated:
            yield heated.part, heated.water, devices
    for place in circuit.devices(Role.STORES_AT_MAINS_PRESSURE):
        yield place.part, circuit.water(place.other), STORED
    for place in circuit.devices(Role.STORES_OPEN):
        yield place.part, circuit.water(place.other), (OPEN[0],)


def _lacking(
    plant: Plant, part: str, water: int, devices: tuple[tuple[Role, str], ...], shut: frozenset[str]
) -> Iterator[CutOff]:
    circuit = plant.circuit
    whole, left = reaches(circuit, water), reaches(circuit, water, shut)
    for role, name in devices:
        had = [place for place in circuit.devices(role) if circuit.water(place.node) in whole]
        if not had or any(circuit.water(place.node) in left for place in had):
            continue
        valves = {label.partition(":")[0] for label in shut}
        parts = tuple(each for each in circuit.parts_in(left) if each not in valves or each == part)
        ids = tuple(dict.fromkeys(place.part for place in had))
        yield CutOff(part, name, ids, parts, circuit.pipes_in(left))
