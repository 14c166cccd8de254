"""Boiling pressure and temperature turn each other round, and refuse what lies outside."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.sizing.boiling import STANDARD_BAR, boils_at_c, vapour_absolute_bar
from circuitcheck.sizing.water import OutsideLimitsError


@given(st.floats(2, 199))
def test_there_and_back(temperature: float) -> None:
    assert boils_at_c(vapour_absolute_bar(temperature) - STANDARD_BAR) == pytest.approx(temperature, abs=1e-6)


@pytest.mark.parametrize("temperature", [-0.5, 200.5])
def test_outside(temperature: float) -> None:
    with pytest.raises(OutsideLimitsError):
        vapour_absolute_bar(temperature)


@pytest.mark.parametrize("bar", [-1.2, -1.0075, 20])
def test_pressures_outside(bar: float) -> None:
    with pytest.raises(OutsideLimitsError):
        boils_at_c(bar)
