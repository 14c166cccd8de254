"""How the pressure at each heat source rises in time while it heats and nothing takes its heat away.

Three ways of it: the circuit as drawn with its vessel, the same with the vessel full of water (its charge
lost or its membrane torn), and the heat source's own water shut in by valves.
"""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.figures.charged import Charged, take_charged
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, sealed_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import why_not_reckoned
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.pressure_in_time import Heated, Rise, rise
from circuitcheck.told import a_word

HEAT_AT_LEAST_K = 0.5


@dataclass(frozen=True, slots=True)
class SourceRise:
    """The rises at one heat source. `with_vessel` None: none is drawn; `shut_in` None: its own content is not
    known. Pressures are the vessel's, but `shut_in`'s the heat source's."""

    source: str
    valve_bar: float | None
    with_vessel: Rise | None
    flooded: Rise
    shut_in: Rise | None
    charged: Charged
    open_water: Heated
    flooded_water: Heated
    shut_in_water: Heated | None


@dataclass(frozen=True, slots=True)
class Asked:
    """One heat source with what was gathered for it, and the rises, or why there are none."""

    source: str
    told: Gathering
    found: SourceRise | None
    why: str = ""


def rises(plant: Plant) -> tuple[Asked, ...]:
    """One for each heat source on sealed heating water; worked once for a plant."""
    return plant.kept("rises of pressure", lambda: _rises(plant))


def _rises(plant: Plant) -> tuple[Asked, ...]:
    return tuple(
        _one(plant, water, place.part)
        for water in sealed_waters(plant)
        for place in water.reached(Role.HEATS)
        if place.part in water.parts
    )


def _one(plant: Plant, water: HeatedWater, source: str) -> Asked:
    told = Gathering(plant)
    why = why_not_reckoned(water.expansion)
    if why:
        return Asked(source, told, None, why)
    power = told.part(source, "output_kw", "P")
    own = told.part(source, "water_content_l", "Vs", a_word("Water in the heat source"), needed=False)
    charged = take_charged(told, water)
    valves = [water.expansion.setting_bar(valve) for valve in water.expansion.safety_valves]
    known = [each for each in valves if each is not None]
    if known:
        told.add(
            "psv",
            a_word("Safety valve set at, the lowest"),
            min(known),
            "bar",
            "figure heating-vessel",
        )
    if power is None or charged is None:
        return Asked(source, told, None)
    if not power:
        return Asked(source, told, None, a_word("it gives no heat"))
    if charged.content_l <= 0:
        return Asked(source, told, None, a_word("there is no water in the circuit"))
    if charged.hot_c < charged.cold_c + HEAT_AT_LEAST_K:
        return Asked(source, told, None, a_word("the water does not become hotter than it is filled"))
    return Asked(source, told, _risen(source, float(power), own, charged, min(known, default=None)))


def _risen(source: str, power: float, own: float | None, charged: Charged, valve: float | None) -> SourceRise:
    hot = charged.hot_c
    start = charged.start_bar
    whole = Heated(charged.content_l, charged.cold_c, start, power, charged.gas_l)
    flooded = Heated(charged.flooded_l, charged.cold_c, charged.fill_bar, power)
    alone = Heated(own, charged.cold_c, charged.fill_bar, power) if own else None
    return SourceRise(
        source,
        valve,
        rise(whole, hot, valve_bar=valve) if charged.vessels else None,
        rise(flooded, hot, valve_bar=valve),
        None if alone is None else rise(alone, hot),
        charged,
        whole,
        flooded,
        alone,
    )
