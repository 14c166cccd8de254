"""Water shut in, and water that boils, against published properties of water."""

from __future__ import annotations

import pytest
from CoolProp.CoolProp import PropsSI

from circuitcheck.sizing.boiling import STANDARD_BAR, boils_at_c, vapour_absolute_bar
from circuitcheck.sizing.pressure_in_time import Heated, bar_per_k, compressibility_per_bar

KELVIN = 273.15
PASCALS_A_BAR = 1e5


@pytest.mark.parametrize("temperature", [1, 5, 10, 20, 40, 60, 80, 100, 109])
def test_compressibility_agrees_with_iapws_95(temperature: float) -> None:
    ours = compressibility_per_bar(temperature)
    at = ("T", temperature + KELVIN, "P", 2e5, "Water")
    assert ours == pytest.approx(PropsSI("ISOTHERMAL_COMPRESSIBILITY", *at) * PASCALS_A_BAR, rel=1e-3)


@pytest.mark.parametrize(
    ("temperature", "per_gpa"),
    [(0, 0.5088), (10, 0.4781), (20, 0.4589), (25, 0.4525), (50, 0.4417), (100, 0.4902)],
)
def test_compressibility_as_tabulated(temperature: float, per_gpa: float) -> None:
    """CRC Handbook of Chemistry and Physics, properties of water 0 to 100 °C (from memory), in 1/GPa."""
    assert compressibility_per_bar(temperature) * 1e4 == pytest.approx(per_gpa, rel=2e-3)


def test_bulk_modulus_as_engineers_know_it() -> None:
    """2.2 GPa at 20 °C: handbooks of hydraulics (from memory, 2.15 to 2.2)."""
    assert 1e-4 / compressibility_per_bar(20) == pytest.approx(2.18, rel=0.01)


@pytest.mark.parametrize(("start", "finish"), [(10, 15), (20, 25), (40, 45), (60, 63), (70, 82)])
def test_a_rigid_vessel_follows_the_isochore_of_iapws_95(start: float, finish: float) -> None:
    """Water that can neither swell nor leave: its density stays, and IAPWS-95 gives the pressure."""
    rigid = Heated(100, start, 1.5, 10, stretch_per_bar=0, growth_per_k=0)
    from_pa = (1.5 + STANDARD_BAR) * PASCALS_A_BAR
    density = PropsSI("D", "T", start + KELVIN, "P", from_pa, "Water")
    published = PropsSI("P", "T", finish + KELVIN, "D", density, "Water") / PASCALS_A_BAR - STANDARD_BAR
    assert rigid.pressure_bar(finish) == pytest.approx(published, rel=0.03 if published > 100 else 0.015)


@pytest.mark.parametrize(("temperature", "bar"), [(20, 4.5), (50, 10.4), (60, 11.8), (80, 13.9)])
def test_bar_a_degree_in_a_rigid_vessel(temperature: float, bar: float) -> None:
    """Thermal pressure coefficient, expansion over compressibility, by tabulated expansions (2.07, 4.57,
    5.23 and 6.41 × 10⁻⁴/K at 20, 50, 60 and 80 °C: CRC Handbook, from memory)."""
    rigid = Heated(100, temperature, 1.5, 10, stretch_per_bar=0, growth_per_k=0)
    assert bar_per_k(rigid, temperature) == pytest.approx(bar, rel=0.015)


@pytest.mark.parametrize("temperature", [5, 20, 50, 75, 82, 95, 99, 100, 110, 130, 150, 180])
def test_vapour_agrees_with_iapws_95(temperature: float) -> None:
    published = PropsSI("P", "T", temperature + KELVIN, "Q", 0, "Water") / PASCALS_A_BAR
    assert vapour_absolute_bar(temperature) == pytest.approx(published, rel=3e-4)


def test_vapour_as_iapws_publishes_to_check_programs() -> None:
    """IAPWS R7-97(2012), table 35 (from memory): 0.353658941e-2 MPa at 300 K; table 36: 372.755919 K at 0.1 MPa."""
    assert vapour_absolute_bar(300 - KELVIN) == pytest.approx(0.0353658941, rel=1e-8)
    assert boils_at_c(1 - STANDARD_BAR) == pytest.approx(372.755919 - KELVIN, abs=1e-6)


@pytest.mark.parametrize(
    ("absolute_bar", "temperature"),
    [(0.5, 81.3), (1.0, 99.6), (1.5, 111.4), (2.0, 120.2), (2.5, 127.4), (3.0, 133.5), (4.0, 143.6)],
)
def test_boiling_as_in_steam_tables(absolute_bar: float, temperature: float) -> None:
    """Saturation temperatures of steam tables (IAPWS-IF97; values from memory)."""
    assert boils_at_c(absolute_bar - STANDARD_BAR) == pytest.approx(temperature, abs=0.1)
