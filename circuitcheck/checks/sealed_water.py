"""What the checks of a sealed circuit's vessel and safety valve share."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.heating_water import sealed_waters
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.expansion import Bounds
from circuitcheck.parts.kind import Role


def sealed_with(case: Case, *roles: Role) -> Iterator[HeatedWater]:
    """Every sealed body of heated water that reaches a device of each of these roles.

    Where there is no such device in the drawing nothing else is asked.
    """
    if not all(case.circuit.devices(role) for role in roles):
        return
    for water in sealed_waters(case):
        if all(water.reached(role) for role in roles):
            case.rests_on_pressure_ways(water.reach)
            yield water


def missing_of(*bounds: Bounds) -> tuple[str, ...]:
    """The fields that are missing for any of these, each once."""
    return tuple(dict.fromkeys(name for each in bounds for name in each.missing))


def flow_of(case: Case, water: HeatedWater) -> Joint:
    """The port at which the heated water leaves what heats it."""
    circuit, heated = case.circuit, water.heated
    for place in circuit.devices(Role.EXCHANGES if heated.by_exchanger else Role.HEATS):
        if place.part != heated.part:
            continue
        if not heated.by_exchanger:
            return Joint(place.part, place.device.other)
        near = place.device.port if circuit.water(place.node) == heated.water else place.device.other
        out = next(passage.b for passage in circuit.plans[place.part].passages if passage.a == near)
        return Joint(place.part, out)
    raise LookupError(heated.part)
