"""Published rules on valves between a heat source and what keeps its pressure safe, on whole drawings."""

from __future__ import annotations

import pytest

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing
from tests.checks.houses import SECURED, sealed, vented
from tests.made import Part

SHUTS: list[tuple[str, str]] = [
    ("isolating_valve", "a:b"),
    ("balancing_valve", "a:b"),
    ("zone_valve", "in:out"),
    ("pump", "in:out"),
    ("dirt_separator", "a:b"),
    ("radiator", "flow:return"),
    ("heating_zone", "flow:return"),
]


def grades(drawing: Drawing, check: str) -> list[str]:
    """The grades of what that check finds, the whole program asked."""
    analysis = analyse(drawing)
    assert check in (*analysis.judged, *analysis.not_applicable)
    return [finding.grade.value for finding in analysis.findings if finding.check == check]


@pytest.mark.parametrize(("kind", "ports"), SHUTS)
def test_no_shut_off_between_heat_source_and_safety_valve(kind: str, ports: str) -> None:
    """Source: BS EN 12828, 4.6 (clause number from memory); BS 5449: the safety valve stands in the
    flow, close by the heat source, with no shut-off between."""
    drawing = sealed(safety=f"t1.branch xx.{ports} sv.inlet", xx=kind)
    assert grades(drawing, "safety-valve-can-be-cut-off") == ["danger"]
    assert grades(sealed(), "safety-valve-can-be-cut-off") == []


def test_not_even_a_secured_one_before_the_safety_valve() -> None:
    """Source: BS EN 12828, 4.6 (from memory): what excuses a vessel's valve excuses none before the
    safety valve."""
    drawing = sealed(safety="t1.branch iv.a:b sv.inlet", iv=SECURED)
    assert grades(drawing, "safety-valve-can-be-cut-off") == ["danger"]


@pytest.mark.parametrize("ports", ["in:out", "out:in"])
def test_no_check_valve_before_the_safety_valve(ports: str) -> None:
    """Source: BS EN 12828, 4.6 (from memory): the way to the safety valve stands open."""
    drawing = sealed(safety=f"t1.branch cv.{ports} sv.inlet", cv="check_valve")
    assert grades(drawing, "safety-valve-absent") == ["danger"]


def test_each_heat_generator_has_a_safety_valve() -> None:
    """Source: BS EN 12828, 4.6.2 (from memory)."""
    assert grades(sealed(safety=""), "safety-valve-absent") == ["danger"]
    built_in = sealed(safety="", hs=("heat_source", {"built_in": ["safety_valve"]}))
    assert grades(built_in, "safety-valve-absent") == []


@pytest.mark.parametrize(("kind", "ports"), SHUTS)
def test_no_valve_of_any_sort_in_the_vessels_pipe(kind: str, ports: str) -> None:
    """Source: BS 5449 and BS 7074-1: no valves of any sort in the vessel's connecting pipe."""
    drawing = sealed(vessel=f"t2.branch xx.{ports} ev.connection", xx=kind)
    assert grades(drawing, "vessel-can-be-cut-off") == ["danger"]
    assert grades(sealed(), "vessel-can-be-cut-off") == []


@pytest.mark.parametrize("kind", ["check_valve", "bypass_valve", "pressure_reducing_valve"])
def test_no_one_way_valve_in_the_vessels_pipe(kind: str) -> None:
    """Source: BS 5449 and BS 7074-1: no valves of any sort; water must go out to the vessel and back."""
    drawing = sealed(vessel="t2.branch xx.in:out ev.connection", xx=kind)
    assert grades(drawing, "vessel-absent") == ["danger"]


def test_a_vessel_may_be_isolated_by_a_secured_valve() -> None:
    """Source: BS EN 12828, 4.6.3 (from memory): isolation only by a valve secured against unintended
    closing; BS 7074-1 allows none, so it is still told, as advice."""
    drawing = sealed(vessel="t2.branch iv.a:b ev.connection", iv=SECURED)
    assert grades(drawing, "vessel-can-be-cut-off") == ["advice"]


def test_a_vessel_on_the_return_with_nothing_between() -> None:
    """Source: BS 5449: the vessel stands on the return, close to the pump's inlet; here the pump, with its
    valves, comes before the vessel's tee as water goes, or after it."""
    after = sealed(ring="hs.flow t1.a:b rad.flow:return pu.in:out t2.a:b hs.return", pu="pump")
    assert grades(after, "vessel-can-be-cut-off") == []
    between = sealed(ring="hs.flow t1.a:b rad.flow:return t2.a:b pu.in:out hs.return", pu="pump")
    assert grades(between, "vessel-can-be-cut-off") == ["danger"]


@pytest.mark.parametrize("kind", ["isolating_valve", "zone_valve"])
@pytest.mark.parametrize("secured", [False, True])
def test_no_valve_in_open_vent_or_cold_feed(kind: str, secured: bool) -> None:
    """Source: BS 5449 and BS EN 12828 with its national annex, as taught in trade textbooks (City & Guilds
    Textbook: Plumbing, Book 1, 2019): no valves on feed or vent."""
    valve: Part = SECURED if secured and kind == "isolating_valve" else kind
    ports = "a:b" if kind == "isolating_valve" else "in:out"
    in_vent = vented(vent=f"t1.branch xx.{ports} ov.connection", xx=valve)
    assert grades(in_vent, "open-vent-can-be-cut-off") == ["danger"]
    assert grades(in_vent, "cold-feed-can-be-cut-off") == []
    in_feed = vented(feed=f"fc.feed xx.{ports} t2.branch", xx=valve)
    assert grades(in_feed, "cold-feed-can-be-cut-off") == ["danger"]
    assert grades(in_feed, "open-vent-can-be-cut-off") == []


def test_an_open_vented_primary_has_both_vent_and_feed() -> None:
    """Source: BS 5449, as taught in trade textbooks."""
    assert grades(vented(vent=""), "open-vent-absent") == ["danger"]
    assert grades(vented(feed=""), "cold-feed-absent") == ["danger"]
    assert grades(vented(), "open-vent-absent") == grades(vented(), "cold-feed-absent") == []


def test_combined_feed_and_vent_only_as_the_heat_sources_maker_allows() -> None:
    """Source: common practice (from memory)."""
    allowed: Part = ("heat_source", {"combined_feed_and_vent": True})
    assert grades(vented(vent="", hs=allowed), "open-vent-absent") == []
    assert grades(vented(vent=""), "open-vent-absent") == ["danger"]
