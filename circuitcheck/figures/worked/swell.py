"""Swell of the heating water.

By how many litres the water of a circuit grows from being filled cold to its highest temperature. Water
cannot be squeezed: the expansion vessel, or the feed cistern of an open circuit, must find room for it.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, heating_bodies
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import (
    content_moves,
    refusal,
    take_content,
    take_temperatures,
    why_not_reckoned,
)
from circuitcheck.sizing.water import density_kg_m3, expansion
from circuitcheck.told import a_word

NAME, TITLE = "swell", "Swell of the heating water"
FORMULA = "e = ρ(t1) / ρ(t2) − 1\nVe = e × V"
SOURCE = (
    "G. S. Kell, J. Chem. Eng. Data 20 (1975) 97 (from memory; within 0.02 % of IAPWS-IF97). Tables differ: "
    "BS EN 12828, Annex D, prints 2.81 % to 80 °C (from memory) where the densities give 2.87 %."
)
LIMITS = "Water without glycol, 0 to 110 °C; the swell of pipes and parts themselves is left out."


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each body of heating water."""
    return tuple(_one(plant, water) for water in heating_bodies(plant))


def _one(plant: Plant, water: HeatedWater) -> Figure:
    gathering = Gathering(plant)
    content = take_content(gathering, water.body)
    cold, hot = take_temperatures(gathering, water.expansion)
    why = why_not_reckoned(water.expansion)
    if why or content is None or cold is None or hot is None:
        return refusal(
            NAME, TITLE, water.parts, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS, why=why
        )
    fraction = max(0.0, expansion(cold, hot))
    gathering.add(
        "ρ(t1)",
        a_word("Density when filled"),
        density_kg_m3(cold),
        "kg/m³",
        "figure water-properties",
    )
    gathering.add(
        "ρ(t2)",
        a_word("Density when hottest"),
        density_kg_m3(hot),
        "kg/m³",
        "figure water-properties",
    )
    results = (
        Result("Swell", fraction * content, "l"),
        Result(a_word("Share of the content"), 100 * fraction, "%"),
    )
    return Figure(
        NAME,
        TITLE,
        water.parts,
        results,
        FORMULA,
        gathering.inputs,
        SOURCE,
        LIMITS,
        moves=content_moves(plant, water.body),
    )
