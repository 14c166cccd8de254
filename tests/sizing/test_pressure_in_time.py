"""The rise of pressure in heated water: its limits in closed form, an integrator's second opinion, and physical sense."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp  # type: ignore[import-untyped]  # ships no types

from circuitcheck.sizing.pressure_in_time import (
    COPPER_PER_K,
    Heated,
    after_cooling_bar,
    bar_per_k,
    compressibility_per_bar,
    gas_left_l,
    let_out_l,
    rise,
)
from circuitcheck.sizing.vessel import pressure_after_bar
from circuitcheck.sizing.water import OutsideLimitsError, density_kg_m3, expansion, heat_capacity_j_kgk

CIRCUIT = Heated(96, 10, 1.2, 18, gas_l=15.5)
FLOODED = replace(CIRCUIT, gas_l=0.0)
heated = st.builds(
    Heated,
    content_l=st.floats(1, 500),
    from_c=st.floats(5, 60),
    from_bar=st.floats(-0.5, 6),
    power_kw=st.floats(0.5, 60),
    gas_l=st.one_of(st.just(0.0), st.floats(1e-6, 200)),
)


def test_with_gas_that_gives_way_it_is_boyles_law() -> None:
    rigid = replace(CIRCUIT, content_l=50, gas_l=16, growth_per_k=0)
    swell = 50 * expansion(10, 75)
    without = pressure_after_bar(16, 1.2, swell)
    assert rigid.pressure_bar(75) == pytest.approx(without, rel=2e-3)
    # What is left is the give of the water itself, which takes its share.
    assert rigid.pressure_bar(75) < without


def test_shut_in_it_is_swell_over_give() -> None:
    share = FLOODED.swell_share(30)
    assert share == pytest.approx(expansion(10, 30) - 3 * COPPER_PER_K * 20)
    assert FLOODED.pressure_bar(30) == pytest.approx(1.2 + share / FLOODED.gives_per_bar(30))


@pytest.mark.parametrize("gas", [1e-9, 1e-6, 1e-3])
def test_a_little_gas_tends_to_none(gas: float) -> None:
    near = replace(FLOODED, gas_l=gas).pressure_bar(20)
    assert near == pytest.approx(FLOODED.pressure_bar(20), abs=gas * 300 + 1e-6)


@pytest.mark.parametrize(
    "case", [CIRCUIT, FLOODED, replace(FLOODED, content_l=4), replace(CIRCUIT, gas_l=0.5)]
)
def test_an_integrator_agrees(case: Heated) -> None:
    """Heat balance and rate of pressure step by step, with the properties at each moment's temperature."""

    def rates(_: float, state: list[float]) -> list[float]:
        temperature, bar = state
        per_second = case.power_kw * 1000 / (case.mass_kg * heat_capacity_j_kgk(temperature))
        step = 0.01
        cold, warm = (density_kg_m3(temperature + each) for each in (-step, step))
        swells = -(warm - cold) / (2 * step) / density_kg_m3(temperature) - 3 * case.growth_per_k
        litres = case.content_l * density_kg_m3(case.from_c) / density_kg_m3(temperature)
        gas = case.gas_l * (case.from_bar + 1) / (bar + 1) ** 2
        give = case.content_l * (compressibility_per_bar(temperature) + case.stretch_per_bar) + gas
        return [per_second, litres * swells * per_second / give]

    to_c = 40.0
    span = case.seconds(to_c)
    found = solve_ivp(rates, (0, span), [case.from_c, case.from_bar], rtol=1e-9, atol=1e-9)
    assert found.y[0][-1] == pytest.approx(to_c, abs=1e-3)
    # The closed form takes the give at the mean of both ends, and swell upon the content as filled.
    assert found.y[1][-1] == pytest.approx(case.pressure_bar(to_c), rel=0.02)


@given(heated.filter(lambda each: each.from_c >= 10), st.floats(61, 109))
@settings(max_examples=100, deadline=None)
def test_pressure_and_time_rise_with_temperature(case: Heated, hottest: float) -> None:
    rows = rise(case, hottest).rows
    assert all(a.seconds < b.seconds and a.bar < b.bar for a, b in pairwise(rows))
    assert rows[0].bar == pytest.approx(case.from_bar, abs=1e-6) and rows[0].seconds == 0


@given(heated, st.floats(61, 109))
@settings(max_examples=100, deadline=None)
def test_the_heat_put_in_is_what_the_water_holds(case: Heated, hottest: float) -> None:
    """Against the enthalpy summed in fine steps, and never more than the extremes of the heat capacity allow."""
    joules = case.power_kw * 1000 * case.seconds(hottest)
    steps = 500
    width = (hottest - case.from_c) / steps
    fine = sum(heat_capacity_j_kgk(case.from_c + (each + 0.5) * width) * width for each in range(steps))
    assert joules == pytest.approx(case.mass_kg * fine, rel=1e-6)
    assert 4170 < joules / case.mass_kg / (hottest - case.from_c) < 4230


@given(heated, st.floats(0.1, 50), st.floats(61, 109))
@settings(max_examples=100, deadline=None)
def test_more_gas_is_less_pressure(case: Heated, more: float, to_c: float) -> None:
    assert replace(case, gas_l=case.gas_l + more).pressure_bar(to_c) < case.pressure_bar(to_c)


def test_icy_water_lets_the_pressure_fall_first() -> None:
    """Near 4 °C copper grows more than the water in it."""
    icy = replace(FLOODED, from_c=4)
    assert icy.pressure_bar(6) < 1.2 < icy.pressure_bar(20)
    at = icy.temperature_at_bar(3, 82)
    assert at is not None and icy.pressure_bar(at) == pytest.approx(3, abs=1e-4)
    assert replace(icy, growth_per_k=0).pressure_bar(6) > 1.2


def test_it_can_be_turned_round() -> None:
    for bar in (1.3, 2.0, 3.0):
        at = FLOODED.temperature_at_bar(bar, 82)
        assert at is not None and FLOODED.pressure_bar(at) == pytest.approx(bar, abs=1e-4)
    assert CIRCUIT.temperature_at_bar(3, 82) is None
    assert FLOODED.temperature_at_bar(1, 82) == 10


def test_the_safety_valve_holds_its_setting() -> None:
    risen = rise(FLOODED, 82, valve_bar=3)
    assert risen.lifts is not None and 10 < risen.lifts.temperature_c < 13
    after = [row for row in risen.rows if row.temperature_c > risen.lifts.temperature_c]
    assert after and all(row.bar == 3 for row in after)
    assert all(a.let_out_l < b.let_out_l for a, b in pairwise(after))
    assert risen.end.let_out_l == pytest.approx(let_out_l(FLOODED, risen.lifts.temperature_c, 82))
    # All that the water swells by, less what the tube grows and what went before the lift.
    assert 0.85 < risen.end.let_out_l / (96 * expansion(10, 82)) < 1.1
    assert max(row.bar for row in risen.rows) == 3


def test_a_vessel_that_serves_keeps_it_shut() -> None:
    risen = rise(CIRCUIT, 82, valve_bar=3)
    assert risen.lifts is None and risen.end.bar < 2.5 and risen.end.let_out_l == 0


def test_without_a_valve_it_ends_at_a_hundred_bar() -> None:
    risen = rise(replace(FLOODED, content_l=4), 82)
    assert risen.lifts is None and risen.end.bar == pytest.approx(100, abs=1e-3)
    assert risen.end.seconds < 60


def test_what_was_let_out_is_missing_when_cold() -> None:
    assert after_cooling_bar(FLOODED, 1) is None
    assert after_cooling_bar(FLOODED, 0) == 1.2
    cold = after_cooling_bar(CIRCUIT, 1)
    assert cold is not None and cold == pytest.approx(2.2 * 15.5 / (15.5 + 1000 / density_kg_m3(10)) - 1)


@pytest.mark.parametrize(
    ("vessels", "bar", "litres"),
    [([(18, 0.9)], 1.2, 18 * 1.9 / 2.2), ([(18, 1.5)], 1.2, 18), ([(8, 1), (12, 1)], 3, 10), ([], 1, 0)],
)
def test_gas_in_vessels(vessels: list[tuple[float, float]], bar: float, litres: float) -> None:
    assert gas_left_l(vessels, bar) == pytest.approx(litres)


def test_each_degree_is_the_slope() -> None:
    for at in (20.0, 60.0):
        here = replace(FLOODED, from_c=at)
        assert bar_per_k(here, at) == pytest.approx(here.pressure_bar(at + 0.1) * 10 - 12, rel=0.01)


def test_what_is_no_case() -> None:
    with pytest.raises(ValueError, match="hotter"):
        rise(CIRCUIT, 10)
    with pytest.raises(ValueError, match="vacuum"):
        Heated(96, 10, -1, 18)
    with pytest.raises(OutsideLimitsError):
        compressibility_per_bar(111)
    with pytest.raises(OutsideLimitsError):
        rise(CIRCUIT, 111)
