"""Pressure drop against published tables: CIBSE Guide C's rows for copper at 75 °C, and BS 6700's example.

Bores by BS EN 1057 (R250): 15, 22, 28, 35, 42 mm tube has 13.6, 20.2, 26.2, 32.6, 39.6 mm.
"""

from __future__ import annotations

import pytest

from circuitcheck.sizing.pipe import Flowing, Law, design_flow_l_s, flow_at_gradient_l_s, pressure_drop
from circuitcheck.sizing.water import density_kg_m3, heat_capacity_j_kgk, viscosity_pa_s

BORE_MM = {15: 13.6, 22: 20.2, 28: 26.2, 35: 32.6, 42: 39.6}


def at(temperature_c: float, size: int, flow_l_s: float) -> Flowing:
    """One metre of copper tube at a water temperature."""
    return pressure_drop(
        flow_l_s,
        bore_mm=BORE_MM[size],
        length_m=1,
        density_kg_m3=density_kg_m3(temperature_c),
        viscosity_pa_s=viscosity_pa_s(temperature_c),
    )


# Worked examples on CIBSE Guide C's copper table (Table X tube, 75 °C): tube, kg/s, Pa/m, m/s. The
# velocities are rounded readings; that at 42 mm, 0.9, is not what flow and bore give (0.83).
GUIDE_C = [
    (22, 0.400, 790, 1.3),
    (28, 0.400, 230, 0.7),
    (42, 1.000, 160, 0.9),
    (35, 0.760, 250, 0.95),
    (15, 0.038, 80, 0.25),
]


@pytest.mark.parametrize(("size", "flow_kg_s", "gradient", "velocity"), GUIDE_C)
def test_cibse_guide_c_examples(size: int, flow_kg_s: float, gradient: float, velocity: float) -> None:
    result = at(75, size, flow_kg_s * 1000 / density_kg_m3(75))
    assert result.law is Law.TURBULENT
    assert result.gradient_pa_m == pytest.approx(gradient, rel=0.02)
    assert result.velocity_m_s == pytest.approx(velocity, abs=0.08)


# CIBSE Guide values as reprinted in Building Services Engineering, 5th edition, Table 4.3: Pa/m, then
# kg/s in 15, 22, 28, 35 and 42 mm.
TABLE_4_3 = [
    (200, 0.065, 0.174, 0.381, 0.656, 1.060),
    (260, 0.075, 0.202, 0.441, 0.760, 1.230),
    (300, 0.081, 0.219, 0.478, 0.823, 1.330),
    (360, 0.090, 0.242, 0.529, 0.910, 1.470),
    (400, 0.096, 0.257, 0.561, 0.965, 1.560),
    (460, 0.104, 0.278, 0.607, 1.040, 1.680),
    (500, 0.109, 0.291, 0.635, 1.090, 1.760),
    (600, 0.120, 0.323, 0.703, 1.210, 1.950),
    (700, 0.131, 0.352, 0.766, 1.320, 2.120),
    (800, 0.142, 0.379, 0.825, 1.420, 2.280),
]
# The book's 22 and 42 mm columns stand about 11 % below the other print of the same guide.
TOLERANCE = {15: 0.05, 22: 0.12, 28: 0.05, 35: 0.05, 42: 0.12}


@pytest.mark.parametrize("row", TABLE_4_3, ids=lambda row: f"{row[0]} Pa/m")
def test_cibse_values_in_building_services_engineering(row: tuple[float, ...]) -> None:
    for size, flow_kg_s in zip(BORE_MM, row[1:], strict=True):
        result = at(75, size, flow_kg_s * 1000 / density_kg_m3(75))
        assert result.gradient_pa_m == pytest.approx(row[0], rel=TOLERANCE[size])


# BS 6700:2006 Table D.4, readings from a chart that stands 2 to 20 % above smooth copper: size, l/s, kPa/m.
TABLE_D4 = [
    (15, 0.1, 0.6), (15, 0.15, 1.3), (15, 0.2, 2.3), (15, 0.3, 5.0),
    (22, 0.30, 0.65), (22, 0.32, 0.8), (22, 0.6, 2.5), (28, 0.35, 0.25), (28, 0.9, 1.4),
]  # fmt: skip


@pytest.mark.parametrize(("size", "flow_l_s", "kpa_m"), TABLE_D4)
def test_bs_6700_design_example(size: int, flow_l_s: float, kpa_m: float) -> None:
    ours = at(10, size, flow_l_s).gradient_pa_m / 1000
    assert 0.75 * kpa_m <= ours <= 1.02 * kpa_m


def test_two_pipe_example_4_2() -> None:
    """Building Services Engineering, 5th edition, example 4.2: 1, 2 and 3 kW at 85/72 °C with 10 % pipe
    loss; a pump of 6 m; an index run of 72 m, 25 % more for fittings: 15 mm tube will do."""
    flows = [
        design_flow_l_s(kw * 1.1, 13, capacity_j_kgk=heat_capacity_j_kgk(78.5), density_kg_m3=1000)
        for kw in (1, 2, 3)
    ]
    assert [round(flow, 2) for flow in flows] == [0.02, 0.04, 0.06]
    gradient = 6 * 1000 * 9.807 / (72 * 1.25)
    assert gradient == pytest.approx(653.8, abs=0.1)
    carries = flow_at_gradient_l_s(
        gradient, bore_mm=BORE_MM[15], density_kg_m3=density_kg_m3(75), viscosity_pa_s=viscosity_pa_s(75)
    )
    # Between the rows of the table 0.126; 15 mm stands 2 to 4 % from Colebrook there.
    assert carries * density_kg_m3(75) / 1000 == pytest.approx(0.126, rel=0.02)
    assert carries * density_kg_m3(75) / 1000 >= 0.12


def test_heat_up_example_before_6_3() -> None:
    """Building Services Engineering, 5th edition, the example before 6.3: 9 m of head over 76.7 m of
    equivalent length is 1150.4 Pa/m, and 15 mm tube carries a little over 0.16 kg/s."""
    carries = flow_at_gradient_l_s(
        1150.4, bore_mm=BORE_MM[15], density_kg_m3=density_kg_m3(75), viscosity_pa_s=viscosity_pa_s(75)
    )
    assert 0.16 < carries * density_kg_m3(75) / 1000 < 0.175


@pytest.mark.parametrize(("kw", "difference_k", "kg_s"), [(32, 10, 0.76), (1.6, 10, 0.038), (25, 20, 0.298)])
def test_flow_for_a_power(kw: float, difference_k: float, kg_s: float) -> None:
    """The examples on CIBSE Guide C's table; the last by calculation."""
    flow = design_flow_l_s(kw, difference_k, capacity_j_kgk=heat_capacity_j_kgk(75), density_kg_m3=1000)
    assert flow == pytest.approx(kg_s, rel=0.006)
