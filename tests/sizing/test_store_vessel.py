"""A store's vessel by the gas law."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.sizing.store_vessel import (
    SIZES_MADE_L,
    next_size_l,
    share_taken,
    swell_l,
    taken_l,
    vessel_for,
)
from circuitcheck.sizing.water import OutsideLimitsError

bars = st.floats(0.5, 8)


def test_swell() -> None:
    assert swell_l(200, 10, 60) == pytest.approx(3.36, abs=0.03)
    assert swell_l(200, 60, 60) == 0
    assert swell_l(200, 60, 20) == 0
    with pytest.raises(OutsideLimitsError):
        swell_l(200, 10, 120)


@given(bars, bars, bars, st.floats(1, 500))
def test_taken_is_what_boyle_leaves(charge: float, fill: float, final: float, volume: float) -> None:
    """Gas before and after, each from the charge at the vessel's whole volume."""

    def gas(pressure: float) -> float:
        return min(volume, volume * (charge + 1) / (pressure + 1))

    assert taken_l(volume, charge, fill, final) == pytest.approx(max(0.0, gas(fill) - gas(final)), abs=1e-9)
    assert 0 <= share_taken(charge, fill, final) < 1


@given(bars, st.floats(0, 1), st.floats(0.1, 5), st.floats(0.1, 50))
def test_the_smallest_vessel_takes_just_the_swell(
    fill: float, below: float, above: float, swell: float
) -> None:
    charge, final = max(0.0, fill - below), fill + above
    worked = vessel_for(swell, charge, fill, final)
    assert worked.volume_l is not None
    assert taken_l(worked.volume_l, charge, fill, final) == pytest.approx(swell)
    assert (worked.swell_l, worked.charge_bar, worked.fill_bar, worked.final_bar) == (
        swell,
        charge,
        fill,
        final,
    )
    assert "swell" in worked.formula


@given(bars, st.floats(0.1, 5))
def test_the_best_charge_is_the_fill_pressure(fill: float, above: float) -> None:
    best = share_taken(fill, fill, fill + above)
    assert all(share_taken(fill + off, fill, fill + above) <= best for off in (-0.2, -0.1, 0.1, 0.2))


def test_no_vessel_serves_where_the_relief_valve_opens_at_once() -> None:
    assert vessel_for(3, 3, 3, 3).volume_l is None
    assert vessel_for(0, 3, 3, 3).volume_l == 0
    assert vessel_for(3, 5, 3, 4.8).volume_l is None


@pytest.mark.parametrize(("volume", "size"), [(0, 2), (18, 18), (18.1, 24), (500, 500), (501, None)])
def test_next_size_made(volume: float, size: float | None) -> None:
    assert next_size_l(volume) == size
    assert list(SIZES_MADE_L) == sorted(SIZES_MADE_L)
