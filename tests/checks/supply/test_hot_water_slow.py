"""How long hot water takes to come to an outlet."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.drawing.value import Drawing
from circuitcheck.rules.book import book
from circuitcheck.sizing.tube import bore_mm, content_l_m
from circuitcheck.sizing.waiting import WFR_S
from tests.checks.asking import asked, found, only
from tests.checks.supply.plumbing import FED, plumbed, store

NAME = "hot-water-slow"
METRE = content_l_m(bore_mm("copper", 15) or 0.0)
BASIN_M = 3 / METRE
"""A basin draws 0.1 l/s: three litres in half a minute."""


def leg(length: float | None, outlet: str = "basin", size: float | None = 15, **more: Any) -> Drawing:
    """A pipe from a store to an outlet."""
    return plumbed(f"us.hot {outlet}.hot", pipe_data={"p1": {"length_m": length, "size_mm": size}}, **more)


def from_combination(length: float, **data: Any) -> Drawing:
    """A pipe from a combination heat source to a bath, which draws 24 l/min by itself."""
    pipe = {"length_m": length, "size_mm": 15}
    return plumbed("ch.hot bath.hot", pipe_data={"p1": pipe}, ch=("combination_heat_source", data))


def test_the_rule_book_has_the_number_of_the_figure() -> None:
    for name in ("england", "european_standards"):
        assert book(name).limit("supply.hot_within_s").value == WFR_S


@pytest.mark.parametrize(
    ("drawing", "fires"),
    [
        (leg(BASIN_M), False),
        (leg(BASIN_M * 1.001), True),
        (leg(BASIN_M * 1.001, "sink"), False),
        (leg(2 * BASIN_M * 1.001, "sink"), True),
        (leg(20, "bath", 22), False),
        (leg(0), False),
        (from_combination(BASIN_M, hot_flow_lpm=12), False),
        (from_combination(2 * BASIN_M * 1.001, hot_flow_lpm=12), True),
        (from_combination(1, hot_flow_lpm=0), True),
        (leg(BASIN_M * 1.001, basin=("outlet", {"fitting": None})), False),
    ],
)
def test_the_wait(drawing: Drawing, fires: bool) -> None:
    grades = [each.grade.value for each in found(NAME, drawing) if each.grade.value != "unanswered"]
    assert grades == ["advice"] * fires


def test_the_numbers() -> None:
    finding = only(NAME, leg(2 * BASIN_M))
    assert finding.components == ("basin", "us") and finding.pipes == ("p1",)
    assert finding.numbers == {
        "wait_s": pytest.approx(60), "water_l": pytest.approx(6), "flow_lpm": 6, "limit_s": 30,
    }  # fmt: skip


def test_a_secondary_return_keeps_the_pipe_hot() -> None:
    pipes = {f"p{n}": {"size_mm": 15, "length_m": 15} for n in range(1, 5)}
    ring = plumbed("us.hot t8.a:b p1.in:out us.secondary_return", "t8.branch basin.hot", pipe_data=pipes)
    assert found(NAME, ring) == ()
    dead = plumbed("us.hot t8.a:b k1.connection", "t8.branch basin.hot", pipe_data=pipes)
    assert only(NAME, dead).numbers["water_l"] == pytest.approx(30 * METRE)


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (leg(None), ("p1.length_m",)),
        (leg(10, size=None), ("p1.size_mm",)),
        (leg(BASIN_M * 1.001, basin="outlet"), ("basin.fitting",)),
        (leg(None, basin="outlet"), ("p1.length_m", "basin.fitting")),
        (from_combination(1), ("ch.hot_flow_lpm",)),
        (leg(BASIN_M, basin="outlet"), ()),  # short enough for any outlet
        (leg(4 * BASIN_M * 1.001, basin="outlet"), None),  # too long for any
        (from_combination(4 * BASIN_M * 1.001), None),  # whatever it gives
    ],
)
def test_what_is_missing(drawing: Drawing, missing: tuple[str, ...] | None) -> None:
    findings = found(NAME, drawing)
    if not missing:
        assert [each.grade.value for each in findings] == ["advice"] * (missing is None)
        return
    (finding,) = findings
    assert (finding.grade.value, finding.missing) == ("unanswered", missing)
    assert finding.would_be is not None and finding.would_be.value == "advice"


def test_another_way_that_is_known_to_serve() -> None:
    """One of two ways to the basin is not known; the other is short."""
    data = {f"p{n}": {"size_mm": 15, "length_m": 1} for n in range(1, 7)} | {"p5": {"size_mm": 15}}
    drawing = plumbed("us.hot t1.a:b t2.a:b basin.hot", "t1.branch v1.a:b t2.branch", pipe_data=data)
    assert (found(NAME, drawing), asked(NAME, drawing).status) == ((), "judged")


@pytest.mark.parametrize(
    "drawing",
    [
        plumbed("cm.outlet wc.cold"),
        plumbed("cm.outlet basin.hot"),
        plumbed(FED, us=store()),
        leg(100, basin=("outlet", {"fitting": "other"})),
    ],
    ids=["cold only", "nothing hot", "no outlet", "what is drawn is not told"],
)
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_other_rule_book_judges_it_too() -> None:
    drawing = leg(BASIN_M * 1.001)
    assert only(NAME, replace(drawing, design={"rule_book": "european_standards"})).grade.value == "advice"
