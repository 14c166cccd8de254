"""Pressure drop in pipes: Colebrook's root by another way, the laws and their bounds, fittings and kv."""

from __future__ import annotations

from math import log10

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.sizing.pipe import (
    Law,
    colebrook,
    design_flow_l_s,
    flow_at_gradient_l_s,
    friction_factor,
    kv_drop_pa,
    pressure_drop,
    velocity_m_s,
)

REYNOLDS = st.floats(4000, 1e8)
ROUGH = st.one_of(st.just(0.0), st.floats(1e-7, 0.05))


def bisected(reynolds: float, rough: float) -> float:
    """Colebrook-White's root by halving an interval in the factor itself."""
    low, high = 1e-4, 1.0
    for _ in range(200):
        factor = (low * high) ** 0.5
        if factor**-0.5 + 2 * log10(rough / 3.7 + 2.51 / (reynolds * factor**0.5)) > 0:
            low = factor
        else:
            high = factor
    return float((low * high) ** 0.5)


@given(REYNOLDS, ROUGH)
def test_colebrook_is_solved(reynolds: float, rough: float) -> None:
    assert colebrook(reynolds, rough) == pytest.approx(bisected(reynolds, rough), rel=1e-10)


def test_smooth_pipe_at_a_hundred_thousand() -> None:
    # Prandtl's law of smooth pipes, a value of the handbooks: 0.0180.
    assert colebrook(1e5, 0) == pytest.approx(0.0180, abs=5e-5)


@pytest.mark.parametrize(
    ("reynolds", "law"),
    [
        (10, Law.LAMINAR),
        (2000, Law.LAMINAR),
        (2001, Law.TRANSITION),
        (3999, Law.TRANSITION),
        (4000, Law.TURBULENT),
    ],
)
def test_which_law_was_used_is_said(reynolds: float, law: Law) -> None:
    assert friction_factor(reynolds, 1e-4)[1] is law


@given(ROUGH)
def test_the_laws_meet_without_a_step(rough: float) -> None:
    assert friction_factor(2000.0001, rough)[0] == pytest.approx(0.032, rel=1e-5)
    assert friction_factor(3999.9999, rough)[0] == pytest.approx(colebrook(4000, rough), rel=1e-5)


WATER = {"density_kg_m3": 974.86, "viscosity_pa_s": 0.000377}


@given(st.floats(0.001, 2), st.floats(1.0001, 1.5))
def test_more_flow_loses_more_pressure(flow: float, more: float) -> None:
    one, two = (
        pressure_drop(each, bore_mm=20.2, length_m=3, **WATER).drop_pa for each in (flow, flow * more)
    )
    assert two > one > 0


def test_laminar_flow_by_hand() -> None:
    # Hagen-Poiseuille: 128 μ L Q / (π d⁴) = 128 · 0.000377 · 10 · 1e-6 / (π · 0.0136⁴) = 4.4902 Pa.
    result = pressure_drop(0.001, bore_mm=13.6, length_m=10, **WATER)
    assert result.law is Law.LAMINAR
    assert result.friction_pa == pytest.approx(4.4902, rel=1e-4)


def test_fittings_by_hand_and_backwards() -> None:
    # 0.3 l/s in 20.2 mm: 0.93611 m/s; dynamic pressure 974.86 · 0.93611²/2 = 427.14 Pa; times 2.5.
    forward = pressure_drop(0.3, bore_mm=20.2, length_m=4, loss_factor=2.5, **WATER)
    assert velocity_m_s(0.3, 20.2) == forward.velocity_m_s == pytest.approx(0.93611, rel=1e-4)
    assert forward.fittings_pa == pytest.approx(2.5 * 427.14, rel=1e-4)
    assert forward.drop_pa == forward.friction_pa + forward.fittings_pa
    assert pressure_drop(-0.3, bore_mm=20.2, length_m=4, loss_factor=2.5, **WATER).drop_pa == -forward.drop_pa


def test_still_water_loses_nothing() -> None:
    still = pressure_drop(0, bore_mm=20.2, length_m=4, **WATER)
    assert still.law is Law.STILL and still.drop_pa == 0


@given(st.floats(0.1, 5000))
def test_the_flow_at_a_gradient_turns_it_round(gradient: float) -> None:
    flow = flow_at_gradient_l_s(gradient, bore_mm=26.2, **WATER)
    assert pressure_drop(flow, bore_mm=26.2, length_m=1, **WATER).gradient_pa_m == pytest.approx(
        gradient, rel=1e-9
    )


def test_kv_by_its_definition() -> None:
    assert kv_drop_pa(2 / 3.6, 2) == pytest.approx(1e5)
    assert kv_drop_pa(-1 / 3.6, 2) == pytest.approx(-25e3)


def test_design_flow() -> None:
    # 25 kW at 20 K: 0.298 kg/s.
    assert design_flow_l_s(25, 20, capacity_j_kgk=4190, density_kg_m3=1000) == pytest.approx(0.2983, rel=1e-3)


@pytest.mark.parametrize(
    "wrong",
    [{"bore_mm": 0}, {"length_m": -1}, {"flow_l_s": float("nan")}, {"roughness_mm": -1}],
)
def test_impossible_pipes_are_refused(wrong: dict[str, float]) -> None:
    usual = {"flow_l_s": 0.1, "bore_mm": 20, "length_m": 1, **WATER}
    with pytest.raises(ValueError, match="bore above 0"):
        pressure_drop(**{**usual, **wrong})


def test_impossible_questions_are_refused() -> None:
    with pytest.raises(ValueError, match="gradient"):
        flow_at_gradient_l_s(0, bore_mm=20, **WATER)
    with pytest.raises(ValueError, match="hotter"):
        design_flow_l_s(1, 0, capacity_j_kgk=4190, density_kg_m3=1000)
