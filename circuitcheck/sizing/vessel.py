"""Expansion vessels: swell, reserve, charge, final pressure and size. Pressures are gauge, in bar.

Source: BS EN 12828:2012, Annex D (method and numbers from memory, its shape checked against published
leaflets). As a cross-check the form of BS 5449 and BS 7074-1, whose table is reproduced in the tests.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import inf

ATMOSPHERE_BAR = 1.0
"""Between gauge and absolute pressure; EN 12828 and BS 7074-1 both use 1 bar."""

BAR_PER_M = 0.0981
"""A metre of water, at 1000 kg/m³."""

MARGIN_BAR = 0.3
"""What the charge has above the static height, so that the top stays full (EN 12828, Annex D; leaflets
use 0.2 to 0.3 bar)."""

SMALL_VESSEL_L = 15.0
SMALL_RESERVE = 0.2
RESERVE_OF_CONTENT = 0.005
LEAST_RESERVE_L = 3.0

BS_EXPANSION = 0.0491
BS_BELOW_VALVE_BAR = 0.35
BS_COOLER_BELOW_C = 88.0
BS_COOLER_FACTOR = 0.8

MADE_L = (2, 4, 8, 12, 18, 24, 35, 50, 80, 100, 140, 200, 250, 300, 400, 500, 600, 800, 1000)
"""Sizes that heating vessels are usually made in, in litres (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Step:
    """One step of a working: what it gives, its formula, the numbers put in with their units, the
    result with its unit, and the source."""

    name: str
    formula: str
    inputs: tuple[tuple[str, float, str], ...]
    result: float
    unit: str
    source: str


@dataclass(frozen=True, slots=True)
class Demand:
    """What a circuit asks of its vessel.

    `swell_l` is how much the water gains, `precharge_bar` the least charge, `final_bar` the highest
    pressure at the vessel. `reserve_l` and `volume_l` are for a vessel above 15 litres; `least_l` is the
    smallest vessel that serves, with the reserve that one of its size must have. `bs_l` is the
    cross-check. A volume is infinite where no vessel serves.
    """

    swell_l: float
    reserve_l: float
    precharge_bar: float
    final_bar: float
    volume_l: float
    least_l: float
    bs_l: float
    working: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class Fill:
    """The cold-fill pressures that a given vessel can work between: with its reserve in it, and with room
    left for the swell. There are none where `least_bar` is above `most_bar`."""

    least_bar: float
    most_bar: float
    working: tuple[Step, ...]


def static_bar(height_m: float) -> float:
    """The pressure of a column of water of that height in metres."""
    return BAR_PER_M * height_m


def vapour_bar(temperature_c: float) -> float:
    """What water's vapour adds above atmospheric pressure: 0 up to 100 °C.

    Source: Antoine's equation for water from 99 to 374 °C (coefficients from memory; within 0.5 % of
    steam tables up to 110 °C).
    """
    if temperature_c <= 100:
        return 0.0
    absolute = 10 ** (8.14019 - 1810.94 / (244.485 + temperature_c)) * 1.01325 / 760
    return max(0.0, float(absolute) - 1.01325)


def least_precharge_bar(height_m: float, temperature_c: float, margin_bar: float = MARGIN_BAR) -> float:
    """The least charge: the static height in metres above the vessel, plus vapour, plus a margin in bar.

    Source: EN 12828, Annex D (from memory).
    """
    return static_bar(height_m) + vapour_bar(temperature_c) + margin_bar


def final_bar(set_pressure_bar: float) -> float:
    """The highest pressure in service under a safety valve set at that: 0.5 bar below it up to 5 bar,
    0.9 of it above. Source: EN 12828, Annex D (from memory)."""
    return set_pressure_bar - 0.5 if set_pressure_bar <= 5 else 0.9 * set_pressure_bar


def room_share(precharge_bar: float, highest_bar: float) -> float:
    """The share of a vessel's volume that water takes up from its charge to a pressure; 0 where the
    pressure is no higher than the charge. Boyle's law, with absolute pressures."""
    if highest_bar <= precharge_bar:
        return 0.0
    return (highest_bar - precharge_bar) / (highest_bar + ATMOSPHERE_BAR)


def reserve_l(vessel_l: float, content_l: float) -> float:
    """The water that a vessel of that size must hold when all is cold, in litres.

    A fifth of a vessel up to 15 litres; for a larger one 0.5 % of the content, and 3 litres at least.
    Source: EN 12828, Annex D (from memory).
    """
    return SMALL_RESERVE * vessel_l if vessel_l <= SMALL_VESSEL_L else large_reserve_l(content_l)


def large_reserve_l(content_l: float) -> float:
    """The reserve of a vessel above 15 litres: 0.5 % of the content, and 3 litres at least."""
    return max(LEAST_RESERVE_L, RESERVE_OF_CONTENT * content_l)


def least_volume_l(swell_l: float, content_l: float, share: float) -> float:
    """The smallest vessel that takes the swell and its own reserve, where it can take up that share of
    itself; infinite where none can."""
    if share <= 0:
        return inf
    small = swell_l / (share - SMALL_RESERVE) if share > SMALL_RESERVE else inf
    if small <= SMALL_VESSEL_L:
        return small
    return max((swell_l + large_reserve_l(content_l)) / share, SMALL_VESSEL_L)


def demand(
    content_l: float,
    swell_fraction: float,
    least_charge_bar: float,
    highest_bar: float,
    *,
    safety_valve_bar: float | None = None,
    temperature_c: float = 80.0,
) -> Demand:
    """What a circuit of that content asks of its vessel, swelling by that fraction.

    `least_charge_bar` and `highest_bar` hold at the vessel. `safety_valve_bar` (0.5 bar above
    `highest_bar` where left out) and `temperature_c` are for the cross-check alone.
    """
    swell = swell_fraction * content_l
    reserve = large_reserve_l(content_l)
    share = room_share(least_charge_bar, highest_bar)
    volume = (swell + reserve) / share if share > 0 else inf
    least = least_volume_l(swell, content_l, share)
    valve = highest_bar + 0.5 if safety_valve_bar is None else safety_valve_bar
    bs = bs_volume_l(content_l, least_charge_bar, valve, temperature_c)
    p0, pe = ("p0", least_charge_bar, "bar"), ("pe", highest_bar, "bar")
    annex_d = "BS EN 12828, Annex D (from memory)"
    working = (
        Step("swell", "Ve = e × V", (("e", swell_fraction, ""), ("V", content_l, "l")), swell, "l", annex_d),
        Step("reserve", "Vwr = max(0.005 × V, 3)", (("V", content_l, "l"),), reserve, "l", annex_d),
        Step(
            "vessel",
            "Vexp,min = (Ve + Vwr) × (pe + 1) / (pe − p0)",
            (("Ve", swell, "l"), ("Vwr", reserve, "l"), p0, pe),
            volume,
            "l",
            annex_d,
        ),
        Step(
            "smallest vessel, one up to 15 l holding a fifth of itself",
            "V = Ve / ((pe − p0) / (pe + 1) − 0.2), where that is at most 15",
            (("Ve", swell, "l"), p0, pe),
            least,
            "l",
            annex_d,
        ),
        _bs_step(content_l, least_charge_bar, valve, temperature_c, bs),
    )
    return Demand(swell, reserve, least_charge_bar, highest_bar, volume, least, bs, working)


def _bs_step(content_l: float, charge: float, valve: float, temperature_c: float, result: float) -> Step:
    return Step(
        "cross-check",
        "V = 0.0491 × V / (1 − (p0 + 1) / (psv − 0.35 + 1)), × 0.8 below 88 °C",
        (("V", content_l, "l"), ("p0", charge, "bar"), ("psv", valve, "bar"), ("t", temperature_c, "°C")),
        result,
        "l",
        "BS 5449 and BS 7074-1, the formula that gives the published table",
    )


def bs_volume_l(content_l: float, charge_bar: float, safety_valve_bar: float, temperature_c: float) -> float:
    """The vessel by the form of BS 5449 and BS 7074-1: final pressure 0.35 bar under the safety valve, a swell
    of 4.91 %, and four fifths of that where the flow is below 88 °C. Infinite where none serves.

    The formula is the one that gives the published table within 1 %; the standards print the table.
    """
    share = room_share(charge_bar, safety_valve_bar - BS_BELOW_VALVE_BAR)
    if share <= 0:
        return inf
    factor = BS_COOLER_FACTOR if temperature_c < BS_COOLER_BELOW_C else 1.0
    return factor * BS_EXPANSION * content_l / share


def room_above_fill(precharge_bar: float, fill_bar: float, highest_bar: float) -> float:
    """The share of a vessel that is left for the swell once it is filled to `fill_bar` while cold.

    Boyle's law: P0/Pi − P0/Pf with absolute pressures; a fill below the charge leaves the vessel empty.
    """
    return room_share(precharge_bar, highest_bar) - room_share(precharge_bar, fill_bar)


def cold_fill(
    vessel_l: float, content_l: float, swell_l: float, precharge_bar: float, highest_bar: float
) -> Fill:
    """The cold-fill pressures that a vessel of that size and charge can work between.

    Least: with its reserve in it, pini = Vn (p0 + 1) / (Vn − Vwr) − 1. Most: with room left for the swell
    up to `highest_bar`. Source: EN 12828, Annex D (from memory); the upper limit by Boyle's law.
    """
    held = reserve_l(vessel_l, content_l)
    charge = precharge_bar + ATMOSPHERE_BAR
    least = vessel_l * charge / (vessel_l - held) - ATMOSPHERE_BAR if vessel_l > held else inf
    taken = room_share(precharge_bar, highest_bar) * vessel_l - swell_l
    most = vessel_l * charge / (vessel_l - taken) - ATMOSPHERE_BAR if taken >= 0 else -inf
    vessel, p0 = ("Vn", vessel_l, "l"), ("p0", precharge_bar, "bar")
    return Fill(
        least,
        most,
        (
            Step(
                "least fill",
                "pini = Vn × (p0 + 1) / (Vn − Vwr) − 1",
                (vessel, p0, ("Vwr", held, "l")),
                least,
                "bar",
                "BS EN 12828, Annex D (from memory)",
            ),
            Step(
                "highest fill",
                "p = Vn × (p0 + 1) / (Vn × (p0 + 1) / (pe + 1) + Ve) − 1",
                (vessel, p0, ("pe", highest_bar, "bar"), ("Ve", swell_l, "l")),
                most,
                "bar",
                "Boyle's law",
            ),
        ),
    )


def least_fill_bar(vessels: Sequence[tuple[float, float]], water_l: float) -> float:
    """The cold-fill pressure at which vessels, each by its volume in litres and its charge in bar, hold that
    much water between them; infinite where they cannot. One of a higher charge stays empty below it.

    Source: Boyle's law; of one vessel the same as the least fill of BS EN 12828, Annex D (from memory).
    """
    by_charge = sorted(vessels, key=lambda vessel: vessel[1])
    volume = gas = 0.0
    for (litres, charge), (_, next_charge) in zip(by_charge, [*by_charge[1:], (0.0, inf)], strict=True):
        volume += litres
        gas += litres * (charge + ATMOSPHERE_BAR)
        if volume > water_l:
            fill = gas / (volume - water_l) - ATMOSPHERE_BAR
            if fill <= next_charge:
                return fill
    return inf


def pressure_after_bar(vessel_l: float, precharge_bar: float, water_l: float) -> float:
    """The pressure of a vessel that has taken up that much water; infinite where it is full. Boyle's law."""
    if water_l >= vessel_l:
        return inf
    return (precharge_bar + ATMOSPHERE_BAR) * vessel_l / (vessel_l - water_l) - ATMOSPHERE_BAR


def next_made_l(volume_l: float, made: Sequence[float] = MADE_L) -> float | None:
    """The smallest size made that is no smaller; None where none is made."""
    return next((float(size) for size in made if size >= volume_l - 1e-9), None)
