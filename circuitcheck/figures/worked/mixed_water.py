"""Mixed water at 40 °C.

Nobody washes in water of 60 °C: it is mixed down to about 40. How many litres of that a full store gives is
what tells whether it is large enough; at the same volume a hotter store gives more. Storing cooler to save
heat has an end: legionella grows from 20 to 45 °C and is killed from 60 on.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import cold_c, limit_or_none, stores
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.mixing import MIXED_C, hot_share, mixed_l
from circuitcheck.told import a_word, worded

TELLING = Telling(
    "mixed-water",
    a_word("Mixed water at 40 °C"),
    "V40 = V (Ts − Tc) / (40 − Tc)",
    a_word(
        "A heat balance; mixed water at 40 °C: Commission Regulation (EU) 814/2013 (from memory). Legionella: "
        "WFR guidance G18.2; HSG274 part 2."
    ),
    a_word(
        "The ideal: every litre leaves as hot as it was stored, and nothing is heated meanwhile. A real store "
        "mixes cold into the rest and gives less; its maker's V40 is measured (BS EN 12897)."
    ),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store."""
    return tuple(_store(plant, giver.part) for giver in stores(plant))


def _store(plant: Plant, store: str) -> Figure:
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
    results = [
        Result(a_word("Mixed water at 40 °C"), litres, "l"),
        Result(a_word("Share of it that comes hot"), 100 * hot_share(float(hot), cold), "%"),
    ]
    bath = limit_or_none(plant, "storage_cistern.bath_draws_l")
    if bath is not None:
        told.limit("storage_cistern.bath_draws_l", "Vb", a_word("What a bath takes"))
        results.append(Result("Baths", litres / bath, ""))
    results += _legionella(plant, told, float(hot))
    moves = []
    if f"{store}.thermostat_c" in told.defaults:
        share = mixed_l(float(volume), float(hot) + 5, cold) / litres - 1
        moves.append(Moves(f"{store}.thermostat_c", "+5 °C", share))
    return TELLING.worked(told, (store,), results, moves=moves)


def _legionella(plant: Plant, told: Gathering, hot: float) -> list[Result]:
    least = limit_or_none(plant, "supply.store_least_c")
    if least is None:
        return []
    told.limit("supply.store_least_c", "Tl", a_word("Least temperature against legionella"))
    says = worded("stored at {hot:g} °C, not below {least:g} °C", hot=hot, least=least)
    if hot < least:
        says = worded("stored below {least:g} °C: legionella may grow", least=least)
    return [Result("Legionella", says, "")]
