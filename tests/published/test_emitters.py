"""Published numbers of what radiators give at temperatures they were not tested at."""

from __future__ import annotations

import pytest

from circuitcheck.sizing.emitter import (
    EXPONENT,
    cools_much,
    excess_k,
    logarithmic_excess_k,
    output_share,
)


def test_the_nominal_regime() -> None:
    """EN 442-1: 75/65/20 °C is 50 K, and gives the nominal output whatever the exponent."""
    assert excess_k(75, 65, 20) == 50
    assert output_share(50) == output_share(50, 1.1) == 1


def test_the_regime_before_en_442() -> None:
    """BS 3528 told outputs at 90/70/20 °C, 60 K. Trade guidance since July 2003: × 1.267 from 50 to 60 K."""
    assert excess_k(90, 70, 20) == 60
    assert output_share(60) == pytest.approx(1.267, abs=0.001)


@pytest.mark.parametrize(
    ("excess", "share"),
    [
        (20, 0.304),
        (25, 0.406),
        (30, 0.515),
        (35, 0.629),
        (40, 0.748),
        (45, 0.872),
        (55, 1.132),
        (60, 1.267),
        (65, 1.406),
        (70, 1.549),
    ],
)
def test_conversion_factors(excess: float, share: float) -> None:
    """The conversion table that radiator catalogues print for the exponent 1.3 (from memory)."""
    assert output_share(excess) == pytest.approx(share, abs=0.001)


def test_the_characteristic_equation() -> None:
    """EN 442-2: Φ = K ΔT^n: the ratio of two outputs tells the exponent again."""
    assert output_share(60) / output_share(30) == pytest.approx(2**EXPONENT)


def test_the_logarithmic_mean() -> None:
    """75/65/20 °C: the logarithmic mean is 49.83 K (handbooks, from memory); at 70/40/20 °C, where the water
    cools far, 32.7 K against the arithmetic 35 K (worked by hand)."""
    assert logarithmic_excess_k(75, 65, 20) == pytest.approx(49.83, abs=0.005)
    assert logarithmic_excess_k(70, 40, 20) == pytest.approx(32.74, abs=0.005)
    assert excess_k(70, 40, 20) == 35
    assert cools_much(70, 40, 20) and not cools_much(75, 65, 20)
