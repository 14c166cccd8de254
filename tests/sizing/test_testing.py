"""Test pressures and doses."""

from __future__ import annotations

import pytest

from circuitcheck.sizing.testing import inhibitor_l, other_pressure_test_bar, pressure_test_bar


@pytest.mark.parametrize(("working", "test", "other"), [(3.0, 4.5, 3.9), (2.5, 3.75, 3.25), (0.0, 0.0, 0.0)])
def test_the_two_rules(working: float, test: float, other: float) -> None:
    """Source: BS 5449 as taught in trade textbooks (1.5 times); BS EN 14336 (from memory; 1.3 times)."""
    assert pressure_test_bar(working) == pytest.approx(test)
    assert other_pressure_test_bar(working) == pytest.approx(other)


def test_a_litre_for_a_hundred() -> None:
    assert inhibitor_l(250) == pytest.approx(2.5)
