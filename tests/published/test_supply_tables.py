"""Published tables of the water supply: loading units, design flow, and lengths of hot pipe."""

from __future__ import annotations

from itertools import pairwise

import pytest

from circuitcheck.rules.book import book
from circuitcheck.sizing.demand import design_flow_l_s, total_units
from tests.checks.asking import found
from tests.checks.supply.plumbing import plumbed

UNITS = book("england").limit("supply.loading_units").value


def test_the_loading_units_of_a_house() -> None:
    """EN 806-3:2006, Table 2: bath 4, shower 2, two basins 2, sink 2, WC 1 make 11."""
    outlets = ("bath", "shower", "basin", "basin", "sink", "wc")
    assert total_units(UNITS[outlet] for outlet in outlets) == 11
    assert book("european_standards").limit("supply.loading_units").value == UNITS


@pytest.mark.parametrize(
    ("outlet", "flow_l_s"), [("basin", 0.1), ("wc", 0.1), ("sink", 0.2), ("shower", 0.2), ("bath", 0.4)]
)
def test_one_outlet_draws_its_own_flow(outlet: str, flow_l_s: float) -> None:
    """EN 806-3:2006, Table 2, column QA."""
    assert design_flow_l_s(UNITS[outlet], UNITS[outlet]) == pytest.approx(flow_l_s)


@pytest.mark.parametrize("units", [4, 10, 50, 100, 300])
def test_the_power_law_for_houses_with_a_bath(units: float) -> None:
    """A published power law fitted to EN 806-3 Annex B: 0.256 U^0.321 l/s up to 300 units."""
    assert design_flow_l_s(units, 4) == pytest.approx(0.256 * units**0.321, rel=0.005)


@pytest.mark.parametrize("units", [301, 500, 1000, 3000])
def test_the_power_law_beyond(units: float) -> None:
    """The same, 0.0482 U^0.614 l/s above 300 units."""
    assert design_flow_l_s(units, 4) == pytest.approx(0.0482 * units**0.614, rel=0.005)


@pytest.mark.parametrize("largest", [1, 2, 4, 5, 8, 15])
def test_the_curve_rises_and_never_asks_for_more_than_all_at_once(largest: float) -> None:
    flows = [design_flow_l_s(units, largest) for units in range(int(largest), 400)]
    assert all(one <= two + 1e-12 for one, two in pairwise(flows))
    assert all(flow <= 0.1 * units + 1e-12 for units, flow in enumerate(flows, int(largest)))


@pytest.mark.parametrize(("units", "largest"), [(3, 4), (3, 0), (3, -1)])
def test_a_largest_outlet_that_cannot_be(units: float, largest: float) -> None:
    with pytest.raises(ValueError, match="largest"):
        design_flow_l_s(units, largest)
    assert design_flow_l_s(0, 0) == 0


@pytest.mark.parametrize(
    ("size_mm", "most_m"),
    [(8, 20), (10, 20), (12, 20), (15, 12), (22, 12), (28, 8), (35, 3), (42, 3), (54, 3)],
)
def test_lengths_of_uninsulated_hot_pipe(size_mm: float, most_m: float) -> None:
    """WFR guidance, Table 8.1: 20 m up to 12 mm, 12 m up to 22 mm, 8 m up to 28 mm, 3 m above."""
    for length, fires in ((most_m, False), (most_m + 0.01, True)):
        pipe = {"size_mm": size_mm, "length_m": length, "insulated": False}
        assert bool(found("hot-pipe-too-long", plumbed("us.hot sink.hot", pipe_data={"p1": pipe}))) is fires
