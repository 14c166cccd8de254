"""Heat the store loses while it stands.

A hot store loses heat day and night, used or not. Insulation decides how much; the drawing does not tell how
thick it is, so the figure is told for the thicknesses there are. Against its own label, the label goes before.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.hot_water import stores
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.telling import Telling
from circuitcheck.sizing.standing_loss import TEMPERATURE_FACTOR, store_kwh_day
from circuitcheck.told import a_word, worded

FACTORY_MM = (25, 50, 80)
JACKET_MM = 80
TELLING = Telling(
    "standing-loss",
    a_word("Heat the store loses while it stands"),
    a_word(
        "Q = L × VF × V × 0.60 a day\nL = 0.005 + 0.55 / (t + 4), with a loose jacket 0.005 + 1.76 / (t + 12.8)\n"
        "VF = (120 / V)^(1/3)"
    ),
    a_word("SAP 10.2, Tables 2, 2a and 2b (temperature factor 0.60: indirect store with a thermostat)."),
    a_word("A store at about 60 °C in a heated house. Where the maker declares a loss, that goes before."),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One figure for each store."""
    return tuple(_store(plant, giver.part) for giver in stores(plant))


def _store(plant: Plant, store: str) -> Figure:
    told = Gathering(plant)
    volume = told.part(store, "volume_l", "V")
    if volume is None:
        return TELLING.lacking(told, (store,))
    litres = float(volume)
    results = [
        Result(
            worded("With {thickness} mm of factory insulation", thickness=thickness),
            store_kwh_day(litres, thickness) * TEMPERATURE_FACTOR,
            a_word("kWh a day"),
        )
        for thickness in FACTORY_MM
    ]
    jacket = store_kwh_day(litres, JACKET_MM, jacket=True) * TEMPERATURE_FACTOR
    results.append(
        Result(
            worded("With a loose jacket of {jacket_mm} mm", jacket_mm=JACKET_MM), jacket, a_word("kWh a day")
        )
    )
    return TELLING.worked(told, (store,), results)
