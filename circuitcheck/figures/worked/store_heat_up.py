"""Time to heat the store.

How long a store takes from cold, and to make up for 70 % drawn off: the household waits so long for the
next bath. Two limits apply at once: the heat source gives no more than its output, and the coil passes on
no more than its power; the smaller counts, and buying more of the other changes nothing.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import cold_c, stores
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.store_heating import StoreHeating, store_heating
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.heating_up import REHEATED_SHARE, HeatingPower, heat_kwh, minutes
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "store-heat-up",
    a_word("Time to heat the store"),
    a_word("Q = V ρ c (Ts − Tc)\nt = Q / min(Ps, Pc)\nafter 70 % drawn: t = 0.7 Q / min(Ps, Pc)"),
    a_word(
        "Heat capacity of water (IAPWS-IF97); the smaller of two powers: conservation of energy. That "
        "reheating is told for 70 % drawn off: makers' practice after BS EN 12897 (from memory)."
    ),
    a_word(
        "All of the output goes to the store, the coil keeps its power to the end, and the heat that the "
        "store and its pipes lose on the way is not counted: the real time is longer."
    ),
)
COIL_UNKNOWN = a_word(
    "The coil's power is no data of this kind of store: with a weak coil it takes longer still."
)
TOO_COOL = "Water that comes at {flow:g} °C never brings the store to {hot:g} °C"
LIMITED = {
    "source": a_word("the heat source"),
    "coil": a_word("the coil"),
    "both": a_word("heat source and coil alike"),
}


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store that anything heats."""
    found = (_store(plant, giver.part) for giver in stores(plant))
    return tuple(figure for figure in found if figure is not None)


def _store(plant: Plant, store: str) -> Figure | None:
    told = Gathering(plant)
    volume = told.part(store, "volume_l", "V")
    hot = told.part(store, "thermostat_c", "Ts")
    cold = cold_c(told)
    heating = store_heating(told, store)
    if not heating.by_source and not heating.immersion_kw:
        return None
    flow = told.design("flow_temperature_c", "Tf", needed=False) if heating.by_source else None
    power = heating.power
    if volume is None or hot is None or cold is None or (heating.by_source and power is None):
        return TELLING.lacking(told, (store,))
    more = ""
    if power is not None and flow is not None and flow <= hot:
        more = worded("{why}; the immersion heater does.", why=worded(TOO_COOL, flow=flow, hot=hot))
        power = None
    elif power is not None and not power.coil_known:
        more = COIL_UNKNOWN
    why = _cannot(heating, power, float(hot), cold, flow)
    if why:
        return TELLING.refused(told, (store,), why)
    heat = heat_kwh(float(volume), cold, float(hot))
    moves = []
    if f"{store}.thermostat_c" in told.defaults:
        share = heat_kwh(float(volume), cold, float(hot) + 5) / heat - 1
        moves.append(Moves(f"{store}.thermostat_c", "+5 °C", share))
    results = _results(heat, power, heating)
    return TELLING.worked(told, (store,), results, more_limits=more, moves=moves)


def _cannot(
    heating: StoreHeating, power: HeatingPower | None, hot: float, cold: float, flow: float | None
) -> str:
    if hot <= cold:
        return worded(
            "The store's thermostat, {hot:g} °C, is no hotter than the cold water, {cold:g} °C.",
            hot=hot,
            cold=cold,
        )
    if power is not None and power.kw <= 0 and not heating.immersion_kw:
        return a_word("The power that heats it is 0.")
    if power is None and not heating.immersion_kw:
        return f"{TOO_COOL.format(flow=flow, hot=hot)}."
    return ""


def _results(heat: float, power: HeatingPower | None, heating: StoreHeating) -> list[Result]:
    found = [Result(a_word("Heat from cold"), heat, "kWh")]
    if power is not None and power.kw > 0:
        least = "" if power.coil_known else a_word(", at the least")
        found += [
            Result(a_word("Power that heats it"), power.kw, "kW"),
            Result(a_word("Limited by"), LIMITED[power.limited_by], ""),
            Result(worded("From cold{least}", least=least), minutes(heat, power.kw), "min"),
            Result(
                worded("After 70 % drawn{least}", least=least),
                minutes(REHEATED_SHARE * heat, power.kw),
                "min",
            ),
        ]
    if heating.immersion_kw:
        alone = minutes(heat, heating.immersion_kw)
        found.append(Result(a_word("From cold by the immersion heater alone"), alone, "min"))
    return found
