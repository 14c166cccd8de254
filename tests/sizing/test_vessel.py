"""What the vessel's formulas must do whatever the numbers are."""

from __future__ import annotations

from math import inf

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.sizing import vessel

SWELL = st.floats(0.1, 20)
CHARGE = st.floats(0, 3)
SPAN = st.floats(0.4, 6)


@given(SWELL, st.floats(10, 2000), CHARGE, SPAN)
def test_the_smallest_vessel_takes_swell_and_reserve_and_no_smaller_one_does(
    swell: float, content: float, charge: float, span: float
) -> None:
    share = vessel.room_share(charge, charge + span)
    least = vessel.least_volume_l(swell, content, share)

    def serves(size: float) -> bool:
        return share * size + 1e-9 >= swell + vessel.reserve_l(size, content)

    if least > vessel.SMALL_VESSEL_L:
        assert serves(least) or least == pytest.approx(vessel.SMALL_VESSEL_L)
        assert not any(serves(size) for size in (2, 5, 10, 15))
        assert least <= vessel.SMALL_VESSEL_L + 1e-9 or not serves(least * 0.999) or least * 0.999 <= 15
    else:
        assert serves(least)
        assert not serves(least * 0.99)


@given(st.floats(4, 500), st.floats(20, 2000), SWELL, CHARGE, SPAN)
def test_within_the_fill_range_there_is_reserve_and_room(
    size: float, content: float, swell: float, charge: float, span: float
) -> None:
    highest = charge + span
    fill = vessel.cold_fill(size, content, swell, charge, highest)
    serves = vessel.room_share(charge, highest) * size >= swell + vessel.reserve_l(size, content)
    assert (fill.least_bar <= fill.most_bar + 1e-9) == serves or abs(fill.least_bar - fill.most_bar) < 1e-6
    if fill.least_bar < inf:
        held = vessel.room_share(charge, fill.least_bar) * size
        assert held == pytest.approx(vessel.reserve_l(size, content))
    if fill.most_bar > -inf:
        assert vessel.room_above_fill(charge, fill.most_bar, highest) * size == pytest.approx(swell, abs=1e-6)
        water = vessel.room_share(charge, fill.most_bar) * size + swell
        assert vessel.pressure_after_bar(size, charge, water) == pytest.approx(highest)


def test_no_vessel_serves_where_the_charge_is_above_the_final_pressure() -> None:
    worked = vessel.demand(100, 0.03, 2.6, 2.5)
    assert (worked.volume_l, worked.least_l) == (inf, inf)


def test_a_fill_below_the_charge_leaves_the_vessel_empty() -> None:
    assert vessel.room_above_fill(1.0, 0.5, 2.5) == vessel.room_share(1.0, 2.5)


@pytest.mark.parametrize(("volume", "made"), [(11.2, 12), (12, 12), (12.01, 18), (1001, None)])
def test_next_size_made(volume: float, made: float | None) -> None:
    assert vessel.next_made_l(volume) == made


def test_the_working_names_every_number() -> None:
    worked = vessel.demand(100, 0.0287, 0.8, 2.5, temperature_c=75)
    by_name = {step.name: step for step in worked.working}
    assert by_name["swell"].result == worked.swell_l
    assert by_name["vessel"].inputs[2:] == (("p0", 0.8, "bar"), ("pe", 2.5, "bar"))
    assert by_name["cross-check"].result == worked.bs_l == pytest.approx(vessel.bs_volume_l(100, 0.8, 3, 75))
    assert all(step.source for step in worked.working)
