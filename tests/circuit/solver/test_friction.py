"""The law of friction over arrays: Colebrook-White itself, its slope, and what it remembers from call to call."""

from __future__ import annotations

import numpy as np
import pytest

from circuitcheck.circuit.solver.friction import EXACT_FROM, colebrook_white
from circuitcheck.sizing.pipe import friction_factor

ROUGH = (0.0, 1e-6, 1e-4, 1e-2, 5e-2)
REYNOLDS = np.geomspace(4000, 1e8, 400)


@pytest.mark.parametrize("rough", ROUGH)
def test_it_is_colebrook_white(rough: float) -> None:
    product, _ = colebrook_white(np.full_like(REYNOLDS, rough)).exactly(REYNOLDS)
    root = np.full_like(REYNOLDS, 6.0)
    for _ in range(100):
        root = -2 * np.log10(rough / 3.7 + 2.51 * root / REYNOLDS)
    assert product / REYNOLDS == pytest.approx(1 / root**2, rel=1e-12)


@pytest.mark.parametrize("rough", ROUGH)
def test_it_is_the_law_of_single_pipes(rough: float) -> None:
    reynolds = np.array([1.0, 500, 1999, 2000, 2001, 3000, 3999, 4000, 4001, 1e5])
    product, _ = colebrook_white(np.full_like(reynolds, rough)).exactly(reynolds)
    plain = [friction_factor(each, rough)[0] for each in reynolds.tolist()]
    assert product / reynolds == pytest.approx(plain, rel=1e-9)


@pytest.mark.parametrize("rough", ROUGH)
def test_its_slope(rough: float) -> None:
    reynolds = np.geomspace(20, 1e7, 301)
    reynolds = reynolds[(abs(reynolds / 2000 - 1) > 1e-3) & (abs(reynolds / 4000 - 1) > 1e-3)]
    law, step = colebrook_white(np.full_like(reynolds, rough)), 1e-5
    product, slope = law.exactly(reynolds)
    more, less = (law.exactly(reynolds * factor)[0] for factor in (1 + step, 1 - step))
    assert slope / product == pytest.approx((more - less) / 2 / step / product, abs=1e-8)


def test_still_water_has_the_laminar_law() -> None:
    product, slope = colebrook_white(np.zeros(2))(np.array([0.0, 1e-9]))
    assert product.tolist() == [64.0, 64.0] and slope.tolist() == [0.0, 0.0]


def test_what_it_remembers_leads_it_right_from_anywhere() -> None:
    """From the roots of any flow to those of any other, in no more steps than from the first."""
    law = colebrook_white(np.full(len(REYNOLDS), 1e-6))
    exact, _ = law.exactly(REYNOLDS)
    for other in (REYNOLDS[::-1], np.zeros_like(REYNOLDS), np.full_like(REYNOLDS, 1e9)):
        law(other)
        for _ in range(EXACT_FROM):
            product, _ = law(REYNOLDS)
        assert product == pytest.approx(exact, rel=1e-12)
