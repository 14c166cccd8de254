"""Bores and contents of standard tube against a published table of litres per metre.

Source: Heating and Air-conditioning of Buildings, Table 6.4 (copper to BS EN 1057, medium steel to BS 1387,
now BS EN 10255).
"""

from __future__ import annotations

import pytest

from circuitcheck.sizing.tube import COPPER_BORE_MM, bore_mm, content_l_m

COPPER = {15: 0.145, 22: 0.321, 28: 0.540, 35: 0.837, 42: 1.234, 54: 2.095}
STEEL = {15: 0.205, 20: 0.367, 25: 0.586, 32: 1.016, 40: 1.376, 50: 2.205, 65: 3.700, 80: 5.115}


@pytest.mark.parametrize(("size_mm", "l_m"), COPPER.items())
def test_copper(size_mm: int, l_m: float) -> None:
    bore = bore_mm("copper", size_mm)
    assert bore is not None
    assert content_l_m(bore) == pytest.approx(l_m, rel=0.004)


@pytest.mark.parametrize(("size_mm", "l_m"), STEEL.items())
def test_steel(size_mm: int, l_m: float) -> None:
    bore = bore_mm("steel", size_mm)
    assert bore is not None
    assert content_l_m(bore) == pytest.approx(l_m, rel=0.01)


def test_copper_is_outside_diameter_less_two_walls() -> None:
    walls = {8: 0.6, 10: 0.6, 12: 0.6, 15: 0.7, 22: 0.9, 28: 0.9, 35: 1.2, 42: 1.2, 54: 1.2}
    assert pytest.approx({size: size - 2 * wall for size, wall in walls.items()}) == COPPER_BORE_MM


@pytest.mark.parametrize(
    ("material", "size_mm"), [("plastic", 22), ("copper", 18), ("copper", 22.5), ("clay", 15)]
)
def test_no_standard_bore(material: str, size_mm: float) -> None:
    assert bore_mm(material, size_mm) is None
