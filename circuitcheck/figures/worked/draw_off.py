"""How long the store lasts.

A store is empty of hot water sooner at a bath than at a basin. Told for each outlet alone, at its full flow
mixed to 40 °C, from a full store that nothing heats meanwhile; and beside it what the heating sustains
without end, for the shower that goes on after the store is spent.
"""

from __future__ import annotations

from circuitcheck.circuit.supplies import Giver
from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import UNITS_SOURCE, cold_c, draw_off_lpm, fed_by, stores
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.store_heating import store_heating
from circuitcheck.figures.telling import Telling
from circuitcheck.figures.working import hotter_moves
from circuitcheck.sizing.heating_up import flow_heated_l_min
from circuitcheck.sizing.mixing import MIXED_C, mixed_l
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "draw-off",
    a_word("How long the store lasts"),
    a_word(
        "V40 = V (Ts − Tc) / (40 − Tc)\nt = V40 / q, q = 0.1 l/s for each loading unit\n"
        "q without end = P / (ρ c (40 − Tc))"
    ),
    f"{UNITS_SOURCE}; a heat balance.",
    a_word(
        "One outlet at a time, wide open; a flow that is throttled, or a water-saving head, lasts longer. The "
        "ideal mix of a store that keeps its layers: a real one gives less."
    ),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store that feeds an outlet."""
    found = ((giver, fed_by(plant, giver)) for giver in stores(plant))
    return tuple(_store(plant, giver, outlets) for giver, outlets in found if outlets)


def _store(plant: Plant, giver: Giver, outlets: tuple[str, ...]) -> Figure:
    store = giver.part
    told = Gathering(plant)
    volume = told.part(store, "volume_l", "V")
    hot = told.part(store, "thermostat_c", "Ts")
    cold = cold_c(told)
    if volume is None or hot is None or cold is None:
        return TELLING.lacking(told, (store,))
    if hot < MIXED_C or cold >= MIXED_C:
        why = worded(
            "Water of {hot:g} °C and of {cold:g} °C give no mix of {mixed_c:g} °C.",
            hot=hot,
            cold=cold,
            mixed_c=MIXED_C,
        )
        return TELLING.refused(told, (store,), why)
    litres = mixed_l(float(volume), float(hot), cold)
    results = [Result(a_word("Mixed water at 40 °C"), litres, "l")]
    for outlet in outlets:
        flow = draw_off_lpm(told, outlet)
        if flow is None:
            continue
        name = plant.drawing.name(outlet)
        results.append(
            Result(worded("At {name}, {flow:.3g} l/min", name=name, flow=flow), litres / flow, "min")
        )
    if told.missing and len(results) == 1:
        return TELLING.lacking(told, (store,))
    more = ""
    if told.missing:
        more = worded("Not told for want of {missing}.", missing=", ".join(told.missing))
    heating = store_heating(Gathering(plant), store, immersion=False)
    if heating.power is not None and heating.power.kw > 0:
        store_heating(told, store, immersion=False)
        most = "" if heating.power.coil_known else a_word(", at the most")
        sustained = flow_heated_l_min(heating.power.kw, cold, MIXED_C)
        results.append(Result(worded("Sustained without end at 40 °C{most}", most=most), sustained, "l/min"))
    moves = hotter_moves(told, store, lambda hot_c: mixed_l(float(volume), hot_c, cold) / litres - 1)
    return TELLING.worked(told, (store,), results, more_limits=more, moves=moves)
