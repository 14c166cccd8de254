"""Bores of standard tube: copper by its outside diameter, steel by its nominal size."""

from __future__ import annotations

from math import pi

COPPER_BORE_MM = {
    8: 6.8,
    10: 8.8,
    12: 10.8,
    15: 13.6,
    22: 20.2,
    28: 26.2,
    35: 32.6,
    42: 39.6,
    54: 51.6,
}
"""Half-hard copper tube by outside diameter: outside diameter less twice the wall (0.6, 0.7, 0.9 or 1.2 mm).

Source: BS EN 1057, R250 tube (walls of the former BS 2871 Table X).
"""

STEEL_BORE_MM = {
    8: 9.0,
    10: 12.4,
    15: 16.1,
    20: 21.7,
    25: 27.3,
    32: 36.0,
    40: 41.9,
    50: 53.0,
    65: 68.8,
    80: 80.8,
}
"""Medium steel tube by nominal size: mean outside diameter less twice the wall.

Source: BS EN 10255 (formerly BS 1387), medium series; diameters and walls from memory, checked in the
tests against published contents in litres per metre.
"""

STEEL_OUTSIDE_MM = {
    8: 13.5,
    10: 17.2,
    15: 21.3,
    20: 26.9,
    25: 33.7,
    32: 42.4,
    40: 48.3,
    50: 60.3,
    65: 76.1,
    80: 88.9,
}
"""Outside diameter of steel tube by its nominal size. Source: EN 10255 (from memory)."""


def outside_mm(material: str, size_mm: float) -> float:
    """The outside diameter in mm: steel by its nominal size, any other tube is named by it."""
    return STEEL_OUTSIDE_MM.get(int(size_mm), size_mm) if material == "steel" else size_mm


def bore_mm(material: str, size_mm: float) -> float | None:
    """The inner diameter in mm of standard tube: None for a size the tables do not hold, and for plastic,
    whose wall differs from one system to another."""
    table = {"copper": COPPER_BORE_MM, "steel": STEEL_BORE_MM}.get(material, {})
    return table.get(int(size_mm)) if size_mm == int(size_mm) else None


def content_l_m(bore: float) -> float:
    """Litres of water in a metre of tube of that bore in mm."""
    return pi / 4 * bore**2 / 1000
