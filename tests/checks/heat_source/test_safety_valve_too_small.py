"""Capacities of safety valves against the outputs on their water."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.cures import cures
from circuitcheck.drawing.value import Drawing
from tests.checks.asking import Told, asked, danger, only, told
from tests.checks.houses import vented
from tests.checks.sized import house, source, valve, vessel
from tests.made import Part

NAME = "safety-valve-too-small"
TWO = (
    "t1.branch t3.a:b sv.inlet",
    "h2.flow t3.branch",
    "t4.branch h2.return",
)
TWO_RING = "hs.flow t1.a:b rad.flow:return t2.a:b t4.a:b hs.return"


def two(**parts: Part) -> Drawing:
    """Two heat sources side by side, one safety valve."""
    usual: dict[str, Any] = {"h2": source(output_kw=12), "t3": "tee", "t4": "tee", "sv": valve()}
    return house(*TWO, safety_by="", ring=TWO_RING, **{**usual, **parts})


def behind_a_plate(capacity_kw: float | None) -> Drawing:
    """Floor heating behind a plate exchanger, with a vessel and a safety valve of its own."""
    return house(
        "hx.secondary_out t3.a:b r2.flow:return t4.a:b hx.secondary_in", "t3.branch s2.inlet", "t4.branch e2.connection",
        ring="hs.flow t1.a:b hx.primary_in:primary_out t2.a:b hs.return", rad="cap", hx="heat_exchanger",
        r2="radiator", t3="tee", t4="tee", s2=valve(capacity_kw=capacity_kw), e2=vessel(),
    )  # fmt: skip


CASES: dict[str, tuple[Drawing, list[Told]]] = {
    "larger": (house(), []),
    "exactly": (house(sv=valve(capacity_kw=18)), []),
    "a watt short": (house(sv=valve(capacity_kw=17.999)), [danger("hs")]),
    "two valves add up": (
        house("t3.branch s2.inlet", ring="hs.flow t1.a:b t3.a:b rad.flow:return t2.a:b hs.return", t3="tee",
              sv=valve(capacity_kw=10), s2=valve(capacity_kw=8)),
        [],
    ),
    "two outputs add up": (two(), []),
    "two outputs are too much": (two(h2=source(output_kw=12.1)), [danger("hs"), danger("h2")]),
    "built in: large enough for its own": (house(safety_by="", hs=source(output_kw=None, built_in=["safety_valve"])), []),
    "built in: serves its own and no other": (
        two(hs=source(built_in=["safety_valve"]), sv=valve(capacity_kw=11)), [danger("hs"), danger("h2")]
    ),
    "behind a plate": (behind_a_plate(18), []),
    "behind a plate, too small": (behind_a_plate(17), [danger("hx")]),
    "too small already, one output not known": (
        two(h2=source(output_kw=None), sv=valve(capacity_kw=17)), [danger("hs"), danger("h2")]
    ),
}  # fmt: skip


@pytest.mark.parametrize(("drawing", "expected"), CASES.values(), ids=CASES)
def test_capacity(drawing: Drawing, expected: list[Told]) -> None:
    assert told(NAME, drawing) == expected
    assert asked(NAME, drawing).status == "judged"


@pytest.mark.parametrize(
    ("drawing", "missing"),
    [
        (house(sv=valve(capacity_kw=None)), {"sv.capacity_kw"}),
        (house(hs=source(output_kw=None)), {"hs.output_kw"}),
        (house(hs=source(output_kw=None), sv=valve(capacity_kw=None)), {"hs.output_kw", "sv.capacity_kw"}),
    ],
)
def test_unanswered(drawing: Drawing, missing: set[str]) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, set(finding.missing)) == ("unanswered", missing)


@pytest.mark.parametrize("drawing", [vented(), house(safety_by="")], ids=["open-vented", "no valve"])
def test_not_applicable(drawing: Drawing) -> None:
    assert asked(NAME, drawing).status == "not applicable"


def test_the_cure_is_a_valve_that_passes_it_all() -> None:
    analysis = analyse(house(sv=valve(capacity_kw=12)))
    (finding,) = [each for each in analysis.findings if each.check == NAME]
    (cure,) = cures(analysis, finding)
    assert cure.drawing.components["sv"].data["capacity_kw"] == 18
