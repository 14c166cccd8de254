"""Parts on one another: by an inside, by an edge, and parts without extent."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.asking import asked, found, only
from tests.made import made

NAME = "overlapping-parts"
KINDS = component_kinds()


def sheet(*parts: tuple[str, float, float] | tuple[str, float, float, int]) -> Drawing:
    """Parts a, b, c, ... by kind, place and turn."""
    made_parts = {}
    for id, (kind, x, y, *turn) in zip("abcdefghij", parts, strict=False):
        made_parts[id] = Component(id, KINDS[kind], at=Point(x, y), turn=int(turn[0]) if turn else 0)
    return Drawing(components=made_parts)


# A valve is 2 by 2 squares, a store 6 by 10, an inlet group 6 by 2; a tee has no extent.
CLEAR = {
    "edge to edge": sheet(("isolating_valve", 0, 0), ("isolating_valve", 2, 0)),
    "corner to corner": sheet(("isolating_valve", 0, 0), ("isolating_valve", 2, 2)),
    "a store's edge": sheet(("unvented_store", 0, 0), ("isolating_valve", 4, 0)),
    "a tee on an edge": sheet(("isolating_valve", 0, 0), ("tee", 1, 0)),
    "a tee on a corner": sheet(("isolating_valve", 0, 0), ("tee", 1, 1)),
    "two tees": sheet(("tee", 0, 0), ("tee", 0, 1)),
    "turned, it is narrow": sheet(("inlet_group", 0, 0, 90), ("isolating_valve", 2, 0)),
}
OVERLAPPING = {
    "half": sheet(("isolating_valve", 0, 0), ("isolating_valve", 1, 0)),
    "by very little": sheet(("isolating_valve", 0, 0), ("isolating_valve", 1.999, 0)),
    "on one spot": sheet(("isolating_valve", 0, 0), ("pump", 0, 0)),
    "inside": sheet(("unvented_store", 0, 0), ("isolating_valve", 0, 2)),
    "a tee inside": sheet(("isolating_valve", 0, 0), ("tee", 0.5, 0)),
    "tees on one spot": sheet(("tee", 0, 0), ("tee", 0, 0)),
    "unturned, it is wide": sheet(("inlet_group", 0, 0), ("isolating_valve", 2, 0)),
}


@pytest.mark.parametrize("drawing", CLEAR.values(), ids=CLEAR.keys())
def test_clear(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize("drawing", OVERLAPPING.values(), ids=OVERLAPPING.keys())
def test_overlapping(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.components) == ("advice", ("a", "b"))


def test_each_pair() -> None:
    drawing = sheet(("pump", 0, 0), ("pump", 1, 0), ("pump", 1, 1))
    assert [finding.components for finding in found(NAME, drawing)] == [("a", "b"), ("a", "c"), ("b", "c")]


@pytest.mark.parametrize(("joined", "fires"), [(True, False), (False, True)])
def test_a_cap_on_the_port_that_it_closes(joined: bool, fires: bool) -> None:
    parts = {
        "v": Component("v", KINDS["isolating_valve"], at=Point(0, 0)),
        "k": Component("k", KINDS["cap"], at=Point(1, 0)),
    }
    pipe = Pipe("p", (Joint("v", "b"), Joint("k", "connection")))
    drawing = Drawing(components=parts, pipes={"p": pipe} if joined else {})
    assert bool(found(NAME, drawing)) is fires


def joined(v: Component, other: Component, port: str) -> Drawing:
    """A valve at (0, 0), whose port b lies at (1, 0), with a pipe from there to another part."""
    pipe = Pipe("p", (Joint("v", "b"), Joint(other.id, port)))
    return Drawing(components={"v": v, other.id: other}, pipes={"p": pipe})


VALVE = Component("v", KINDS["isolating_valve"], at=Point(0, 0))


def test_a_cap_that_lies_elsewhere_on_the_part_that_it_closes() -> None:
    drawing = joined(VALVE, Component("k", KINDS["cap"], at=Point(0.5, 0)), "connection")
    assert set(only(NAME, drawing).components) == {"v", "k"}


def test_parts_on_one_spot_that_are_joined_where_their_ports_meet() -> None:
    drawing = joined(VALVE, Component("w", KINDS["isolating_valve"], at=Point(0, 0), turn=180), "a")
    assert only(NAME, drawing).components == ("v", "w")


def test_what_is_not_placed_is_passed_over() -> None:
    assert asked(NAME, made({"a": "pump", "b": "pump"}, "")).status == "not applicable"


def test_one_is_proposed_to_move_clear() -> None:
    drawing = sheet(("pump", 0, 0), ("pump", 1, 0), ("unvented_store", 6, 0))
    proposals = list(checks()[NAME].propose(Case(drawing), only(NAME, drawing)))
    assert len(proposals) == 2
    for each in proposals:
        assert found(NAME, each.drawing) == ()


KIND_NAMES = st.sampled_from(["tee", "cap", "pump", "inlet_group", "unvented_store", "air_vent"])
PLACED = st.tuples(KIND_NAMES, st.integers(0, 12), st.integers(0, 12), st.sampled_from([0, 90, 180, 270]))


@settings(max_examples=150, deadline=None)
@given(st.lists(PLACED, max_size=6))
def test_against_a_geometry_library(parts: list[tuple[str, int, int, int]]) -> None:
    drawing = sheet(*parts)
    shapes = {
        id: shapely.Point(part.at or ()) if part.kind.size == (0, 0) else shapely.box(*(part.box() or ()))
        for id, part in drawing.components.items()
    }
    wanted = [
        (one, other)
        for one in shapes
        for other in shapes
        if one < other and (shapes[one].relate_pattern(shapes[other], "T********"))  # their insides meet
    ]
    assert [finding.components for finding in found(NAME, drawing)] == wanted
