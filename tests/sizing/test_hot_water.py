"""Heating up, mixing, emitting, waiting and losing: what the formulas do at their ends."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.sizing.emitter import excess_k, logarithmic_excess_k, output_share
from circuitcheck.sizing.heating_up import flow_heated_l_min, heat_kwh, heating_power, minutes
from circuitcheck.sizing.mixing import hot_share, mixed_l
from circuitcheck.sizing.standing_loss import bare_pipe_w_m, insulated_pipe_w_m, store_kwh_day
from circuitcheck.sizing.tube import outside_mm
from circuitcheck.sizing.waiting import wait_s
from circuitcheck.sizing.water import OutsideLimitsError


@given(st.floats(41, 95), st.floats(1, 39), st.floats(1, 2000))
def test_hot_and_cold_make_up_the_mix(hot: float, cold: float, stored: float) -> None:
    mixed = mixed_l(stored, hot, cold)
    assert mixed >= stored
    assert stored * hot + (mixed - stored) * cold == pytest.approx(mixed * 40)
    assert 0 < hot_share(hot, cold) < 1


@pytest.mark.parametrize(("hot", "cold"), [(39, 10), (60, 41), (40, 40)])
def test_no_mix_has_that_temperature(hot: float, cold: float) -> None:
    with pytest.raises(ValueError, match="°C"):
        hot_share(hot, cold)


def test_water_cold_enough_already() -> None:
    assert hot_share(60, 40) == 0
    with pytest.raises(ValueError, match="no hot water"):
        mixed_l(100, 60, 40)


@given(st.floats(0.5, 100), st.floats(1, 40), st.floats(45, 95))
def test_a_flow_heated_is_a_store_heated_a_minute_at_a_time(kw: float, cold: float, hot: float) -> None:
    litres = flow_heated_l_min(kw, cold, hot)
    assert minutes(heat_kwh(litres, cold, hot), kw) == pytest.approx(1)


def test_what_cannot_be_heated() -> None:
    with pytest.raises(ValueError, match="power"):
        minutes(1, 0)
    with pytest.raises(ValueError, match="higher"):
        flow_heated_l_min(10, 60, 60)
    with pytest.raises(OutsideLimitsError):
        heat_kwh(1, 10, 111)
    assert heat_kwh(100, 40, 40) == 0


def test_power_of_a_coil_that_is_not_known_is_the_most() -> None:
    assert heating_power(10, None).coil_known is False
    assert heating_power(10, 10).limited_by == "both"


@given(st.floats(21, 90), st.floats(0, 40))
def test_the_logarithmic_mean_is_never_the_larger(back: float, drop: float) -> None:
    flow = back + drop
    assert logarithmic_excess_k(flow, back, 20) <= excess_k(flow, back, 20) + 1e-9


@pytest.mark.parametrize(("flow", "back"), [(60, 20), (60, 15), (40, 50)])
def test_no_logarithmic_mean(flow: float, back: float) -> None:
    with pytest.raises(ValueError, match="room"):
        logarithmic_excess_k(flow, back, 20)


@pytest.mark.parametrize("excess", [0, -5])
def test_an_emitter_no_warmer_than_its_room_gives_nothing(excess: float) -> None:
    assert output_share(excess) == 0


def test_waiting_without_a_flow() -> None:
    with pytest.raises(ValueError, match="flow"):
        wait_s(1, 0)


def test_losses_rise_with_size_and_temperature() -> None:
    for loss in (bare_pipe_w_m, insulated_pipe_w_m):
        sizes = [loss(size, 60, 15) for size in (8, 10, 12, 15, 18, 22, 28, 35, 42, 54)]
        assert all(one < two for one, two in pairwise(sizes))
        assert loss(22, 15, 15) == loss(22, 10, 15) == 0
        assert loss(22, 70, 15) > loss(22, 60, 15)
    assert insulated_pipe_w_m(6, 60, 15) == insulated_pipe_w_m(8, 60, 15)
    assert insulated_pipe_w_m(76, 60, 15) == insulated_pipe_w_m(54, 60, 15)
    assert insulated_pipe_w_m(18.5, 60, 15) == pytest.approx((7.89 + 9.12) / 2)


def test_a_larger_store_loses_more_but_less_a_litre() -> None:
    assert store_kwh_day(300, 50) > store_kwh_day(150, 50)
    assert store_kwh_day(300, 50) / 300 < store_kwh_day(150, 50) / 150


@pytest.mark.parametrize(
    ("material", "size_mm", "outside"), [("copper", 22, 22), ("plastic", 22, 22), ("steel", 20, 26.9)]
)
def test_outside_diameter(material: str, size_mm: float, outside: float) -> None:
    assert outside_mm(material, size_mm) == outside
