"""The water that a sealed circuit's vessels should hold in reserve when all is cold, and the fill that it takes."""

from __future__ import annotations

from math import inf

from circuitcheck.checks.case import Case
from circuitcheck.figures.expansion import Bounds, vessel_fields
from circuitcheck.figures.heated_water import HeatedWater, sealed_waters
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import least_fill_bar, reserve_l

FILL = "fill_pressure_bar"


def reserve_of(case: Case, water: HeatedWater, volume_l: float) -> Bounds:
    """What vessels of that volume in all should hold; the content of the circuit may not be known."""
    content = case.contents.of(water.body)
    low = reserve_l(volume_l, content.litres)
    most = content.litres if content.known else (inf if content.most_litres is None else content.most_litres)
    high = reserve_l(volume_l, most)
    return Bounds(low, high, tuple(content.missing) if low != high else ())


def fill_for(case: Case, vessel: str, charge_bar: float) -> float | None:
    """The least cold fill with which the vessels on that one's water hold their reserve, once it is charged
    to that; None where that is not known."""
    waters = (
        water
        for water in sealed_waters(case)
        if any(place.part == vessel for place in water.reached(Role.HOLDS_EXPANSION))
    )
    water = next(waters, None)
    if water is None:
        return None
    vessels: list[tuple[float, float]] = []
    for place in water.reached(Role.HOLDS_EXPANSION):
        volume, charge = (case.value(place.part, field) for field in vessel_fields(place))
        charge = charge_bar if place.part == vessel else charge
        if volume is None or charge is None:
            return None
        vessels.append((float(volume), float(charge)))
    reserve = reserve_of(case, water, sum(volume for volume, _ in vessels))
    least = least_fill_bar(vessels, reserve.low)
    return least if reserve.known and least < inf else None
