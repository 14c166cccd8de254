"""Published rules for open vents."""

from __future__ import annotations

import pytest

from circuitcheck.rules.book import book
from circuitcheck.sizing.open_vent import LEAST_PUMPED_M, draws_air, least_height_by_gravity_m, pumps_over
from circuitcheck.sizing.tube import COPPER_BORE_MM


def test_height_of_a_vent_by_gravity() -> None:
    """Source: guidance to Schedule 2 of the Water Supply (Water Fittings) Regulations 1999, G20.3: the
    example there is 5 m from the water to the store's cold inlet, and 0.35 m."""
    assert least_height_by_gravity_m(5) == pytest.approx(0.35)
    assert least_height_by_gravity_m(0) == pytest.approx(0.15)
    assert least_height_by_gravity_m(5, 0.2) == pytest.approx(0.55)


def test_limits_of_the_rule_book() -> None:
    """Source: BS 5449 as taught in trade textbooks: vent of 22 mm, vent and feed within 150 mm, the vent's
    end 450 mm above the water of a fully pumped circuit."""
    rules = book("england")
    assert rules.limit("open_vent.most_apart_m").value == 0.15
    assert rules.limit("open_vent.least_height_pumped_m").value == LEAST_PUMPED_M == 0.45
    least = rules.limit("open_vent.smallest_bore_mm").value
    assert min(size for size, bore in COPPER_BORE_MM.items() if bore >= least) == 22


@pytest.mark.parametrize(
    ("head", "height", "over"), [(0, 0, False), (0.44, 0.45, False), (0.45, 0.45, True), (4, 0.45, True)]
)
def test_pumping_over(head: float, height: float, over: bool) -> None:
    """Source: hydrostatics: a head lifts water by as many metres."""
    assert pumps_over(head, height) is over


@pytest.mark.parametrize(
    ("head", "above", "air"), [(0, 0, False), (1.9, 2, False), (2, 2, True), (4, 2, True)]
)
def test_drawing_air(head: float, above: float, air: bool) -> None:
    """Source: hydrostatics: suction of more metres than stand above leaves less pressure than the air's."""
    assert draws_air(head, above) is air
