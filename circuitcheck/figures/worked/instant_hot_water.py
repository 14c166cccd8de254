"""Hot water heated as it is drawn.

A heat source that heats water on its way stores none: it gives as much as its output heats, and no more, for
as long as one likes. One shower may be all of it. Compared here with what the outlets it feeds draw by
their loading units.
"""

from __future__ import annotations

from circuitcheck.circuit.supplies import Giver
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import UNITS_SOURCE, cold_c, fed_by, heaters, units_of
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.demand import design_flow_l_s, l_min, total_units
from circuitcheck.sizing.heating_up import flow_heated_l_min
from circuitcheck.sizing.mixing import MIXED_C
from circuitcheck.told import a_word, worded

HOT_C = 60.0
TELLING = Telling(
    "instant-hot-water",
    a_word("Hot water heated as it is drawn"),
    a_word(
        "q = P / (ρ c (T − Tc))\nwhat the outlets ask for, from their loading units and the largest (EN 806-3, Annex B)"
    ),
    f"A heat balance. {UNITS_SOURCE}; its Annex B for the design flow (from memory).",
    a_word(
        "All of the output heats the drinking water, none of it the rooms, and none is lost. Whatever the maker "
        "states as the hot flow holds for the rise he states it for."
    ),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each heat source that heats drinking water on its way."""
    sources = plant.circuit.parts_with(Role.HEATS)
    return tuple(_heater(plant, giver) for giver in heaters(plant) if giver.part in sources)


def _heater(plant: Plant, giver: Giver) -> Figure:
    told = Gathering(plant)
    output = told.part(giver.part, "output_kw", "P")
    cold = cold_c(told)
    if output is None or cold is None:
        return TELLING.lacking(told, (giver.part,))
    if cold >= MIXED_C:
        return TELLING.refused(
            told,
            (giver.part,),
            worded("Water that comes at {cold:g} °C needs no heating to 40 °C.", cold=cold),
        )
    results = [
        Result(a_word("Its output heats to 40 °C"), flow_heated_l_min(float(output), cold, MIXED_C), "l/min"),
        Result(a_word("Its output heats to 60 °C"), flow_heated_l_min(float(output), cold, HOT_C), "l/min"),
    ]
    stated = told.part(giver.part, "hot_flow_lpm", "qs", needed=False)
    if stated is not None:
        results.append(Result(a_word("Hot flow stated"), float(stated), "l/min"))
    units = [units_of(told, outlet) for outlet in fed_by(plant, giver)]
    known = [each for each in units if each is not None]
    if known:
        needed = l_min(design_flow_l_s(total_units(known), max(known)))
        least = "" if len(known) == len(units) else a_word(", at the least")
        results.append(
            Result(worded("Its outlets ask for, mixed to 40 °C{least}", least=least), needed, "l/min")
        )
    more = (
        worded("Outlets not counted for want of {missing}.", missing=", ".join(told.missing))
        if told.missing
        else ""
    )
    return TELLING.worked(told, (giver.part,), results, more_limits=more)
