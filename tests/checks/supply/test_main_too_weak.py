"""The main gives what its outlets and stores need."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.sizing.demand import design_flow_l_s, l_min
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import plumbed
from tests.made import Part

NAME = "main-too-weak"
HOUSE = (
    "cm.outlet t1.a:b t2.a:b t3.a:b wc.cold",
    "t1.branch sink.cold",
    "t2.branch bath.cold",
    "t3.branch basin.cold",
)

PLATE = "hs.flow p1.in:out hx.primary_in:primary_out hs.return"


def main(flow: float | None = 60, running: float | None = 3, height: float | None = 0) -> Part:
    return ("cold_main", {"flow_lpm": flow, "running_pressure_bar": running, "height_m": height})


def outlet(fitting: str | None, height: float | None = 1) -> Part:
    return ("outlet", {"fitting": fitting, "height_m": height})


def one(fitting: str | None = "basin", height: float | None = 1, **of_main: Any) -> Drawing:
    return plumbed("cm.outlet x.cold", cm=main(**of_main), x=outlet(fitting, height))


@pytest.mark.parametrize(
    ("fitting", "flow", "fires"),
    [
        ("basin", 6, False),
        ("basin", 5.9, True),
        ("bath", 24, False),
        ("bath", 23.9, True),
        ("sink", 12, False),
    ],
)
def test_one_outlet_needs_its_own_flow(fitting: str, flow: float, fires: bool) -> None:
    assert [each.components for each in found(NAME, one(fitting, flow=flow))] == [("cm", "x")] * fires


@pytest.mark.parametrize(("height", "fires"), [(10.19, False), (10.2, True)])
def test_pressure_at_the_highest_outlet(height: float, fires: bool) -> None:
    # 2 bar less 0.0981 bar a metre; 1 bar must be left.
    assert bool(found(NAME, one(height=height, running=2))) is fires


def test_the_pressure_that_is_left_is_told() -> None:
    numbers = only(NAME, one(height=15, running=2)).numbers
    assert numbers["pressure_at_outlet_bar"] == pytest.approx(2 - 15 * 0.0981, abs=0.005)
    assert numbers["least_bar"] > numbers["pressure_at_outlet_bar"]


def test_units_are_added_and_each_outlet_counts_once() -> None:
    heights = {id: outlet(id) for id in ("wc", "sink", "bath", "basin")}
    need = l_min(design_flow_l_s(8, 4))
    finding = only(NAME, plumbed(*HOUSE, cm=main(flow=need - 0.1), parts=heights))
    assert finding.numbers["loading_units"] == 8
    assert finding.numbers["needed_lpm"] == pytest.approx(need)
    assert found(NAME, plumbed(*HOUSE, cm=main(flow=need + 0.1), parts=heights)) == ()
    both = plumbed(
        "cm.outlet t1.a:b ch.cold", "t1.branch x.cold", "ch.hot x.hot", cm=main(1), x=outlet("sink")
    )
    assert only(NAME, both).numbers["loading_units"] == 2


@pytest.mark.parametrize(
    "ways",
    [("cm.outlet ch.cold", "ch.hot x.hot"), ("cm.outlet hx.secondary_in", "hx.secondary_out x.hot", PLATE)],
    ids=["combination", "plate"],
)
@pytest.mark.parametrize(("flow", "fires"), [(6, False), (5.9, True)])
def test_hot_water_heated_on_its_way_comes_from_the_main_too(
    ways: tuple[str, ...], flow: float, fires: bool
) -> None:
    drawing = plumbed(*ways, cm=main(flow), x=outlet("basin"))
    assert [each.components for each in found(NAME, drawing)] == [("cm", "x")] * fires


@pytest.mark.parametrize(("flow", "running", "fires"), [(20, 1.5, 0), (19.9, 1.5, 1), (20, 1.4, 1)])
def test_a_mains_fed_store(flow: float, running: float, fires: int) -> None:
    drawing = plumbed(
        "cm.outlet pr.in:out us.cold", "us.hot x.hot", cm=main(flow, running), x=outlet("basin", 0)
    )
    assert [each.components[:2] for each in found(NAME, drawing)] == [("cm", "us")] * fires


def test_european_standards_ask_nothing_for_the_store() -> None:
    ways = ("cm.outlet pr.in:out us.cold", "us.hot x.hot")
    drawing = plumbed(
        *ways, cm=main(6, 1.2), x=outlet("basin", 0), design={"rule_book": "european_standards"}
    )
    assert (asked(NAME, drawing).findings, asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (one(flow=None), ("cm.flow_lpm",)),
        (one(running=None), ("cm.running_pressure_bar",)),
        (one(flow=None, running=None), ("cm.flow_lpm", "cm.running_pressure_bar")),
        (one(None), ("x.fitting",)),
        (one("other"), ("x.fitting",)),
        (one(None, flow=None, height=None), ("cm.flow_lpm", "x.fitting", "p1.rise_m")),
    ],
)
def test_unanswered(drawing: Drawing, missing: tuple[str, ...]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)


def test_what_is_known_settles_it() -> None:
    assert only(NAME, one(None, flow=5)).grade.value == "fault"  # too little even for a basin
    assert only(NAME, one(height=25, flow=None)).grade.value == "fault"
    assert only(NAME, one(height=None, flow=5)).grade.value == "fault"


def test_what_a_cistern_feeds_asks_nothing_of_the_main() -> None:
    ways = ("cm.outlet fc.supply", "fc.feed vs.cold", "vs.hot bath.hot")
    assert asked(NAME, plumbed(*ways, cm=main(1, 0.1))).status == "not applicable"
