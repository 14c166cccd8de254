"""Heat that a hot store and hot pipes lose to the room."""

from __future__ import annotations

from math import pi

KELVIN = 273.15
STEFAN_BOLTZMANN_W_M2K4 = 5.670374419e-8
EMISSIVITY = 0.9
"""Of dull, painted or dirty tube; new bright copper radiates far less (handbooks; from memory)."""

TEMPERATURE_FACTOR = 0.6
"""SAP 10.2, Table 2b: for an indirect store with a thermostat."""

TESTED_ROOM_C, TESTED_WATER_C = 15.0, 60.0
MOST_INSULATED_W_M = {
    8: 7.06,
    10: 7.23,
    12: 7.35,
    15: 7.89,
    22: 9.12,
    28: 10.07,
    35: 11.08,
    42: 12.19,
    54: 14.12,
}
"""The most that a metre of insulated hot pipe may lose, in W, by its outside diameter in mm.

Source: Domestic Building Services Compliance Guide (England), table of pipe insulation: water at 60 °C
in still air of 15 °C (from memory).
"""


def store_kwh_day(volume_l: float, insulation_mm: float, *, jacket: bool = False) -> float:
    """The heat a hot store loses in a day, in kWh: L × VF × V, as tested, without the temperature factor.

    L = 0.005 + 0.55 / (t + 4) for factory insulation of t mm, 0.005 + 1.76 / (t + 12.8) for a loose
    jacket; VF = (120 / V)^(1/3). Source: SAP 10.2, Tables 2 and 2a.
    """
    loss = 0.005 + (1.76 / (insulation_mm + 12.8) if jacket else 0.55 / (insulation_mm + 4.0))
    return float(loss * (120 / volume_l) ** (1 / 3) * volume_l)


def bare_pipe_w_m(outside_mm: float, water_c: float, room_c: float) -> float:
    """What a metre of bare horizontal tube loses to still air, in W.

    π D (h_c + h_r) ΔT with h_c = 1.25 (ΔT / D)^(1/4) and h_r by Stefan and Boltzmann for the
    emissivity of dull tube. Source: EN ISO 12241 (the convection of horizontal pipes in laminar air;
    from memory). Nothing where the water is no warmer than the room.
    """
    difference = water_c - room_c
    if difference <= 0:
        return 0.0
    diameter_m = outside_mm / 1000
    convected = 1.25 * (difference / diameter_m) ** 0.25
    hot, cold = water_c + KELVIN, room_c + KELVIN
    radiated = EMISSIVITY * STEFAN_BOLTZMANN_W_M2K4 * (hot + cold) * (hot**2 + cold**2)
    return float(pi * diameter_m * (convected + radiated) * difference)


def insulated_pipe_w_m(outside_mm: float, water_c: float, room_c: float) -> float:
    """The most a metre of insulated pipe loses in W if it is insulated as the guide asks.

    The table's value, straight between its sizes and the same beyond them, in proportion to the
    difference from the room. Source: as for the table.
    """
    sizes = sorted(MOST_INSULATED_W_M)
    held = min(max(outside_mm, sizes[0]), sizes[-1])
    below = max(size for size in sizes if size <= held)
    above = min(size for size in sizes if size >= held)
    share = (held - below) / (above - below) if above > below else 0.0
    tested = MOST_INSULATED_W_M[below] + share * (MOST_INSULATED_W_M[above] - MOST_INSULATED_W_M[below])
    return tested * max(0.0, water_c - room_c) / (TESTED_WATER_C - TESTED_ROOM_C)
