"""Properties of the water.

Density, heat capacity, viscosity and swell of the water at the temperatures of the design. Flows, pressure
drops, vessels and heat-up times all rest on them.
"""

from __future__ import annotations

from math import inf

from circuitcheck.figures.figure import Figure, Moves, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import WANTING
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.glycol import FREEZING_SOURCE, PUBLISHED_SWELLS, REFUSAL, propylene_freezing_c
from circuitcheck.sizing.water import (
    LEAST_C,
    MOST_C,
    OutsideLimitsError,
    density_kg_m3,
    expansion,
    heat_capacity_j_kgk,
    viscosity_pa_s,
)
from circuitcheck.told import a_word, lower, worded

NAME, TITLE = "water-properties", "Properties of the water"
FORMULA = (
    "ρ: Kell's quotient of polynomials\nμ: IAPWS SR6-08(2011), equation 8\nc: table ten degrees apart\n"
    "e = ρ(fill) / ρ(t) − 1"
)
SOURCE = (
    "Density: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97; viscosity: IAPWS SR6-08(2011); heat capacity: "
    "IAPWS-IF97 at 0.1 MPa (coefficients from memory; within 0.02 %, 1 % and 0.2 % of the IAPWS formulations)."
)
LIMITS = "Water without glycol, liquid, 0 to 110 °C; up to 3 bar of pressure change its density by less than 0.02 %."
TEMPERATURES = (
    ("fill_temperature_c", a_word("t fill"), a_word("Fill temperature")),
    ("return_temperature_c", a_word("t return"), a_word("Return temperature")),
    ("flow_temperature_c", a_word("t flow"), a_word("Flow temperature")),
)


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for the whole drawing, where it has anything that is heated."""
    heated = plant.circuit.devices(Role.HEATS) or plant.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    return (_one(plant),) if heated else ()


def _one(plant: Plant) -> Figure:
    gathering = Gathering(plant)
    percent = gathering.design("glycol_percent", a_word("glycol"), a_word("Glycol by volume"), needed=False)
    if percent:
        return _refused(gathering, REFUSAL, _glycol(gathering, float(percent)))
    known = {
        name: float(value)
        for field, symbol, name in TEMPERATURES
        if (value := gathering.design(field, symbol, name)) is not None
    }
    if gathering.missing:
        return _refused(gathering, WANTING, ())
    outside = [name for name, value in known.items() if not LEAST_C <= value <= MOST_C]
    if outside:
        return _refused(
            gathering,
            worded(
                "{what} is outside the {least_c:g} to {most_c:g} °C it holds for",
                what=lower(a_word(outside[0])),
                least_c=LEAST_C,
                most_c=MOST_C,
            ),
            (),
        )
    fill, back, flow = known.values()
    results = [each for at in (fill, back, (back + flow) / 2, flow) for each in _at(at, fill)]
    unique = tuple(dict.fromkeys(results))
    taken = gathering.is_default("design.glycol_percent")
    moves = (Moves("design.glycol_percent", a_word("any glycol"), inf),) if taken else ()
    return Figure(NAME, TITLE, (), unique, FORMULA, gathering.inputs, SOURCE, LIMITS, moves=moves)


def _at(at_c: float, fill_c: float) -> tuple[Result, ...]:
    place = worded("at {at_c:g} °C", at_c=at_c)
    return (
        Result(worded("Density {place}", place=place), density_kg_m3(at_c), "kg/m³"),
        Result(
            worded("Heat capacity {place}", place=place),
            heat_capacity_j_kgk(at_c) / 1000,
            a_word("kJ/(kg K)"),
        ),
        Result(worded("Viscosity {place}", place=place), 1000 * viscosity_pa_s(at_c), "mPa s"),
        Result(worded("Swell from fill {place}", place=place), 100 * expansion(fill_c, at_c), "%"),
    )


def _refused(gathering: Gathering, why: str, results: tuple[Result, ...]) -> Figure:
    missing = gathering.missing if why == WANTING else ()
    return Figure(
        NAME, TITLE, (), results, FORMULA, gathering.inputs, SOURCE, LIMITS, refused=why, missing=missing
    )


def _glycol(gathering: Gathering, percent: float) -> tuple[Result, ...]:
    """What is published for water with glycol, each with its source among the inputs."""
    found: list[Result] = []
    for each in PUBLISHED_SWELLS:
        between = worded("{from_c:g} to {to_c:g} °C", from_c=each.from_c, to_c=each.to_c)
        found.append(
            Result(
                worded(
                    "{percent:g} % {glycol}, swell {between}",
                    percent=each.percent,
                    glycol=each.glycol,
                    between=between,
                ),
                100 * each.swell,
                "%",
            )
        )
        found.append(Result(a_word("That is, times the swell of water"), each.times_water, ""))
        _source(gathering, each.glycol, each.source)
    try:
        freezing = propylene_freezing_c(percent)
    except OutsideLimitsError:
        return tuple(found)
    _source(gathering, a_word("freezing point"), FREEZING_SOURCE)
    return (
        *found,
        Result(worded("{percent:g} %, if propylene glycol, freezes at", percent=percent), freezing, "°C"),
    )


def _source(gathering: Gathering, what: str, source: str) -> None:
    gathering.add(
        "", worded("Published: {what}", what=a_word(what)), a_word("see results"), "", f"table {source}"
    )
