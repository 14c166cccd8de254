"""Expansion vessel of a mains-fed store.

How large a vessel takes up the swell of a store's water between the reducing valve's pressure and the
pressure at which the expansion relief valve would begin to weep. The check valve on the cold feed keeps
the swell from going back into the main, so that it must find room here.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.store_expansion import (
    StoredWater,
    relief_of,
    stored_waters,
    take_fill_bar,
    take_relief_bar,
    take_swelling_l,
)
from circuitcheck.figures.working import WANTING
from circuitcheck.sizing.store_vessel import FORMULA as SIZE
from circuitcheck.sizing.store_vessel import next_size_l, swell_l, taken_l, vessel_for
from circuitcheck.told import a_word, worded

NAME, TITLE = "store-vessel", "Expansion vessel of the mains-fed store"
FORMULA = (
    "swell = C × (ρ(t1) / ρ(t2) − 1)\n"
    "final = share × prv\n"
    f"{SIZE}\n"
    "a vessel as drawn takes V × ((charge + 1) / (fill + 1) − (charge + 1) / (final + 1))"
)
SOURCE = (
    "Boyle's law on absolute pressures; the final pressure of 0.8 of the expansion relief valve's setting after "
    "BS EN 806-2 (from memory); a charge from 0.2 bar below the reducing valve's setting to equal, and the sizes "
    "made: common practice, no source."
)
LIMITS = "Gauge pressures in bar, 1 bar of atmosphere; 0 to 110 °C; the store's own stretch is left out."

CHECKS = ("store-vessel-too-small", "store-vessel-precharge-wrong")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each water of mains-fed stores that has no room for its swell inside the store."""
    return tuple(_one(plant, water) for water in stored_waters(plant) if _asks(plant, water))


def _asks(plant: Plant, water: StoredWater) -> bool:
    return not all(plant.value(store, "internal_expansion") for store in water.stores)


def _one(plant: Plant, water: StoredWater) -> Figure:
    gathering = Gathering(plant)
    subject = (*water.stores, *water.vessels)
    why = _why(water)
    swell = _swell(gathering, water)
    fill = None if why else take_fill_bar(gathering, water)
    relief = None if why else take_relief_bar(gathering, relief_of(water))
    share = gathering.limit(
        "store.vessel_final_share_of_relief", a_word("share of prv"), a_word("Of the relief valve's setting")
    )
    if why or gathering.missing or swell is None or fill is None or relief is None:
        return Figure(
            NAME,
            TITLE,
            subject,
            (),
            FORMULA,
            gathering.inputs,
            SOURCE,
            LIMITS,
            refused=why or WANTING,
            missing=() if why else gathering.missing,
        )
    final = share * relief
    gathering.add(
        a_word("final"), a_word("Highest pressure in service"), final, "bar", a_word("worked: share × prv")
    )
    results = (*_needed(swell, fill, final), *_drawn(gathering, water, swell, fill, final))
    return Figure(
        NAME,
        TITLE,
        subject,
        results,
        FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        moves=tuple(_moves(plant, water)),
    )


def _why(water: StoredWater) -> str:
    """Why it cannot be worked whatever is told; else empty."""
    if not water.mains and not water.reducers:
        return a_word("nothing that feeds the store is drawn")
    if not relief_of(water):
        return a_word(
            "no expansion relief valve is drawn whose setting is told; one built into a store has none here"
        )
    return ""


def _swell(gathering: Gathering, water: StoredWater) -> float | None:
    plant = gathering.plant
    cold = gathering.design("fill_temperature_c", "t1", a_word("Cold water"))
    total: float | None = 0.0
    for store in water.stores:
        internal = plant.value(store, "internal_expansion")
        if internal:
            continue
        if internal is None:
            gathering.lacks(f"{store}.internal_expansion")
        hot = gathering.part(store, "thermostat_c", f"t2 {store}", a_word("Store's thermostat"))
        litres = take_swelling_l(gathering, water, store)
        if cold is None or hot is None or litres is None or total is None:
            total = None
        else:
            total += swell_l(litres, cold, hot)
    return total


def _needed(swell: float, fill: float, final: float) -> Iterator[Result]:
    yield Result("Swell", swell, "l")
    needed = vessel_for(swell, fill, fill, final).volume_l
    if needed is None:
        yield Result(
            a_word("Smallest vessel"), a_word("none serves: the fill pressure is no lower than final"), ""
        )
        return
    yield Result(a_word("Charge, with no water in it"), fill, "bar")
    yield Result(a_word("Smallest vessel, so charged"), needed, "l")
    size = next_size_l(needed)
    if size is None:
        yield Result(a_word("Next size made"), a_word("none is made so large: fit several"), "")
    else:
        yield Result(a_word("Next size made"), size, "l")


def _drawn(
    gathering: Gathering, water: StoredWater, swell: float, fill: float, final: float
) -> Iterator[Result]:
    total: float | None = 0.0
    for vessel in water.vessels:
        volume = gathering.part(vessel, "volume_l", f"V {vessel}", a_word("Vessel as drawn"), needed=False)
        charge = gathering.part(
            vessel,
            "precharge_bar",
            worded("charge {vessel}", vessel=vessel),
            a_word("Charge as drawn"),
            needed=False,
        )
        name = gathering.plant.drawing.name(vessel)
        if volume is None or charge is None:
            total = None
            yield Result(worded("{name} as drawn", name=name), a_word("volume or charge not known"), "")
            continue
        takes = taken_l(volume, charge, fill, final)
        total = None if total is None else total + takes
        yield Result(worded("{name} as drawn takes up", name=name), takes, "l")
    if water.vessels and total is not None:
        yield Result(a_word("To spare beyond the swell"), total - swell, "l")


def _moves(plant: Plant, water: StoredWater) -> Iterator[Moves]:
    """The size goes with the swell, and the swell with a thermostat's default."""
    cold = plant.design("fill_temperature_c")
    if len(water.stores) != 1 or "thermostat_c" in plant.drawing.components[water.stores[0]].data:
        return
    hot = float(plant.value(water.stores[0], "thermostat_c"))
    usual, warmer = swell_l(1.0, cold, hot), swell_l(1.0, cold, hot + 5)
    if usual > 0:
        yield Moves(
            f"{water.stores[0]}.thermostat_c",
            worded("{hot:g} °C instead of {hot_2:g}", hot=hot + 5, hot_2=hot),
            warmer / usual - 1,
        )
