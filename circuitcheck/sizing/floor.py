"""The load of a filled store on the floor under it."""

from __future__ import annotations

from math import pi

GRAVITY_M_S2 = 9.80665
"""Standard acceleration of free fall (3rd CGPM, 1901)."""

WATER_KG_L = 1.0
"""What a litre of water weighs for loads on floors: 1 kg, so that 230 l are 230 kg. Source: City &
Guilds Textbook: Plumbing, Book 1, 2019."""


def filled_weight_kg(empty_kg: float, water_l: float) -> float:
    """The weight of a filled store in kg, from its empty weight and all the water in it."""
    return empty_kg + water_l * WATER_KG_L


def round_footprint_m2(diameter_mm: float) -> float:
    """The area in m² that a round store of that diameter stands on."""
    return pi / 4 * (diameter_mm / 1000) ** 2


def round_height_mm(water_l: float, diameter_mm: float) -> float:
    """How tall a round store of that diameter must be at the least to hold its water, in mm.

    Its volume over its footprint. A store whose drawing data make it taller than its room, or lower
    than it is wide, has a wrong diameter or volume.
    """
    return water_l / 1000 / round_footprint_m2(diameter_mm) * 1000


def load_kn_m2(weight_kg: float, footprint_m2: float) -> float:
    """The load in kN/m² of that weight on that area. By the definition of both; no source."""
    return weight_kg * GRAVITY_M_S2 / 1000 / footprint_m2
