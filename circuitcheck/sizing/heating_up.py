"""How long stored water takes to heat, and what a power heats without end."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.sizing.water import density_kg_m3, heat_capacity_j_kgk

JOULES_A_KWH = 3.6e6
REHEATED_SHARE = 0.7
"""Reheating is told for 70 % of the store drawn off (as makers state it after BS EN 12897; from memory)."""


@dataclass(frozen=True, slots=True)
class HeatingPower:
    """What heats a store, in kW, and which of the two limits it: the `source`, the `coil`, or `both`.

    `coil_known`: whether the coil's power is known; where not, the power is the most it can be.
    """

    kw: float
    limited_by: str
    coil_known: bool = True


def heat_kwh(litres: float, from_c: float, to_c: float) -> float:
    """The heat that brings litres of water from one temperature to another, in kWh.

    Q = V ρ c (T2 − T1): density ρ at the beginning, since a full store pushes out what swells; heat
    capacity c at the mean temperature. By the definition of heat capacity; the trade reckons with
    4.2 kJ a litre and kelvin. Raises OutsideLimitsError outside 0 to 110 °C.
    """
    density_kg_m3(to_c)  # the mean may lie within the formulas' range where the end does not
    mass_kg = litres / 1000 * density_kg_m3(from_c)
    return mass_kg * heat_capacity_j_kgk((from_c + to_c) / 2) * (to_c - from_c) / JOULES_A_KWH


def minutes(kwh: float, power_kw: float) -> float:
    """How long a power takes to bring so much heat, in minutes. Raises ValueError for no power."""
    if power_kw <= 0:
        raise ValueError("no power brings no heat")
    return 60 * kwh / power_kw


def heating_power(source_kw: float, coil_kw: float | None) -> HeatingPower:
    """The smaller of what the heat source gives and what the coil passes on.

    By the conservation of energy; no source. `coil_kw` None: not known, so the source's is the most.
    """
    if coil_kw is None:
        return HeatingPower(source_kw, "source", coil_known=False)
    if coil_kw == source_kw:
        return HeatingPower(source_kw, "both")
    return HeatingPower(min(source_kw, coil_kw), "coil" if coil_kw < source_kw else "source")


def flow_heated_l_min(power_kw: float, from_c: float, to_c: float) -> float:
    """The flow that a power heats from one temperature to another without end, in l/min.

    q = P / (ρ c (T2 − T1)). Raises ValueError where it is not to be heated, OutsideLimitsError
    outside 0 to 110 °C.
    """
    if to_c <= from_c:
        raise ValueError("water is heated to a higher temperature only")
    return power_kw / 60 / heat_kwh(1.0, from_c, to_c)
