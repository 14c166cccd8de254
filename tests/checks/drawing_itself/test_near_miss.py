"""What looks joined on the sheet and is not: within half a square, and just beyond."""

from __future__ import annotations

from dataclasses import replace

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.finding import Finding
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.asking import asked, found, only
from tests.checks.houses import sealed

NAME = "near-miss"
KINDS = component_kinds()


def sheet(parts: dict[str, tuple[str, float, float]], **pipes: tuple[End, End]) -> Drawing:
    """Parts by kind and place, and pipes that run straight."""
    return Drawing(
        components={id: Component(id, KINDS[kind], at=Point(x, y)) for id, (kind, x, y) in parts.items()},
        pipes={id: Pipe(id, ends, via=()) for id, ends in pipes.items()},
    )


def ids(finding: Finding) -> set[str]:
    return {*finding.components, *finding.pipes}


@pytest.mark.parametrize(("away", "fires"), [(0, True), (0.3, True), (0.5, True), (0.51, False), (1, False)])
def test_two_free_ends(away: float, fires: bool) -> None:
    drawing = sheet({}, p1=(Point(0, 0), Point(4, 0)), p2=(Point(4 + away, 0), Point(9, 0)))
    findings = found(NAME, drawing)
    assert len(findings) == fires
    for finding in findings:
        assert (finding.grade.value, ids(finding)) == ("fault", {"p1", "p2"})
        assert "p1" in finding.message and "p2" in finding.message


@pytest.mark.parametrize(("away", "fires"), [(0, True), (0.5, True), (0.51, False)])
def test_a_free_end_beside_a_pipe(away: float, fires: bool) -> None:
    drawing = sheet({}, p1=(Point(0, 0), Point(10, 0)), p2=(Point(5, away), Point(5, 6)))
    findings = found(NAME, drawing)
    assert [ids(finding) for finding in findings] == [{"p1", "p2"}] * fires


@pytest.mark.parametrize(("away", "fires"), [(0, True), (0.5, True), (0.6, False)])
def test_a_free_end_beside_a_free_port(away: float, fires: bool) -> None:
    # A valve at (4, 4): its port b lies at (5, 4).
    drawing = sheet({"iv": ("isolating_valve", 4, 4)}, p1=(Point(5 + away, 4), Point(12, 4)))
    findings = found(NAME, drawing)
    assert [ids(finding) for finding in findings] == [{"iv", "p1"}] * fires


def test_two_free_ports_that_touch() -> None:
    drawing = sheet({"v1": ("isolating_valve", 4, 4), "v2": ("isolating_valve", 6, 4)})
    assert [ids(finding) for finding in found(NAME, drawing)] == [{"v1", "v2"}]
    apart = sheet({"v1": ("isolating_valve", 4, 4), "v2": ("isolating_valve", 7, 4)})
    assert found(NAME, apart) == ()


def test_a_free_port_on_a_pipe() -> None:
    drawing = sheet({"ev": ("expansion_vessel", 5, 2)}, p1=(Point(0, 0), Point(10, 0)))
    assert [ids(finding) for finding in found(NAME, drawing)] == [{"ev", "p1"}]


def test_what_is_joined_is_no_near_miss() -> None:
    drawing = sheet(
        {
            "v1": ("isolating_valve", 4, 4),
            "v2": ("isolating_valve", 8, 4),
            "k1": ("cap", 0, 4),
            "k2": ("cap", 12, 4),
        },
        p1=(Joint("v1", "b"), Joint("v2", "a")),
        p2=(Joint("k1", "connection"), Joint("v1", "a")),
        p3=(Joint("v2", "b"), Joint("k2", "connection")),
    )
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


def test_a_pipes_own_line_and_own_other_end_are_none() -> None:
    assert found(NAME, sheet({}, p1=(Point(0, 0), Point(0.3, 0)))) == ()


def test_pipes_that_cross_are_none() -> None:
    drawing = sheet({}, p1=(Point(0, 0), Point(10, 0)), p2=(Point(5, -5), Point(5, 5)))
    assert found(NAME, drawing) == ()


def test_each_pair_once() -> None:
    drawing = sheet({}, p1=(Point(0, 0), Point(4, 0)), p2=(Point(4, 0.2), Point(4, 5)))
    assert ids(only(NAME, drawing)) == {"p1", "p2"}


def test_a_port_that_may_stay_free_looks_joined_only_by_a_free_end_beside_it() -> None:
    # The relief port of a heat source at (0, 0) lies at (-3, 2); without a safety valve it is none.
    by_pipe = sheet({"hs": ("heat_source", 0, 0)}, p1=(Point(-3, -9), Point(-3, 9)))
    assert "hs" not in set().union(*(ids(finding) for finding in found(NAME, by_pipe)))
    by_end = sheet({"hs": ("heat_source", 0, 0)}, p1=(Point(-3, 2), Point(-9, 2)))
    assert [ids(finding) for finding in found(NAME, by_end)] == [{"hs", "p1"}]


def test_parts_that_are_not_placed_are_passed_over() -> None:
    assert asked(NAME, sealed()).status == "not applicable"
    assert asked(NAME, Drawing()).status == "not applicable"


def test_the_message_names_the_port() -> None:
    drawing = sheet({"us": ("unvented_store", 0, 0)}, p1=(Point(-3, 1), Point(-9, 1)))
    assert "coil flow port of unvented store us" in only(NAME, drawing).message


VALVE = {"iv": ("isolating_valve", 4.0, 4.0)}  # its port b lies at (5, 4)
MISSES: dict[str, Drawing] = {
    "two free ends": sheet({}, p1=(Point(0, 0), Point(4, 0)), p2=(Point(4.3, 0), Point(9, 0))),
    "two free ends at a corner": sheet({}, p1=(Point(0, 0), Point(4, 0)), p2=(Point(4, 6), Point(4, 0.2))),
    "an end by a port": sheet(VALVE, p1=(Point(5.4, 4), Point(12, 4))),
    "an end by a pipe": sheet({}, p1=(Point(0, 0), Point(10, 0)), p2=(Point(5, 0.4), Point(5, 6))),
    "an end by a pipe with a bend": Drawing(
        pipes={
            "p1": Pipe("p1", (Point(0, 0), Point(10, 9)), via=(Point(10, 0),)),
            "p2": Pipe("p2", (Point(5, 0.4), Point(5, 6)), via=()),
        }
    ),
    "two ports": sheet({"v1": ("isolating_valve", 4, 4), "v2": ("isolating_valve", 6, 4)}),
    "a port by a pipe": sheet({"ev": ("expansion_vessel", 5, 2)}, p1=(Point(0, 0), Point(10, 0))),
}


@pytest.mark.parametrize("drawing", MISSES.values(), ids=MISSES.keys())
def test_the_two_are_proposed_to_be_joined(drawing: Drawing) -> None:
    finding = only(NAME, drawing)
    (proposal,) = checks()[NAME].propose(Case(drawing), finding)
    assert str(proposal.says).startswith("Join ")
    assert found(NAME, proposal.drawing) == ()
    circuit = Circuit(proposal.drawing)
    assert len(circuit.drawing.joined) > len(drawing.joined) or len(circuit.drawing.pipes) < len(
        drawing.pipes
    )


@pytest.mark.parametrize(
    ("case", "words"),
    [
        ("two free ends", "Pipe p1 looks joined to pipe p2, and is not."),
        ("an end by a port", "Pipe p1 looks joined to the b port of isolating valve iv, and is not."),
        (
            "a port by a pipe",
            "The connection port of expansion vessel ev looks joined to pipe p1, and is not.",
        ),
    ],
)
def test_what_it_says(case: str, words: str) -> None:
    assert only(NAME, MISSES[case]).message == words


def test_an_end_is_joined_where_it_lies_nearest_to_the_other_pipe() -> None:
    drawing = MISSES["an end by a pipe with a bend"]
    (proposal,) = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    (tee,) = proposal.drawing.components.values()
    assert tee.at == Point(5, 0)


def test_two_pipes_become_one_with_what_both_say() -> None:
    drawing = MISSES["two free ends"]
    pipes = {id: replace(pipe, data={"size_mm": 22, "length_m": 2}) for id, pipe in drawing.pipes.items()}
    drawing = replace(drawing, pipes=pipes)
    (proposal,) = checks()[NAME].propose(Case(drawing), only(NAME, drawing))
    (pipe,) = proposal.drawing.pipes.values()
    assert (pipe.data["size_mm"], pipe.data["length_m"]) == (22, 4)
    assert {*pipe.ends} == {Point(0, 0), Point(9, 0)}


@st.composite
def loose(draw: st.DrawFn) -> Drawing:
    """Valves and straight pipes, joined to nothing, on half squares."""
    axis = st.integers(0, 16).map(lambda half: half / 2)
    places = draw(st.lists(st.tuples(axis, axis), max_size=4))
    ends = draw(st.lists(st.tuples(axis, axis, axis, axis), max_size=4))
    parts = {f"v{number}": ("isolating_valve", x, y) for number, (x, y) in enumerate(places)}
    return sheet(parts, **{f"p{n}": (Point(a, b), Point(c, d)) for n, (a, b, c, d) in enumerate(ends)})


@settings(max_examples=150, deadline=None)
@given(loose())
def test_pairs_against_a_geometry_library(drawing: Drawing) -> None:
    """Whoever has something near is found, with one of what is nearest to one of its loose places."""
    ends = {
        id: [Point(*end) for end in pipe.ends if isinstance(end, Point)] for id, pipe in drawing.pipes.items()
    }
    lines = {
        id: shapely.LineString(two) if two[0] != two[1] else shapely.Point(two[0]) for id, two in ends.items()
    }
    places = {
        **{id: [shapely.Point(end) for end in two] for id, two in ends.items()},
        **{
            id: [shapely.Point(part.port_at(port.name) or ()) for port in part.kind.ports]
            for id, part in drawing.components.items()
        },
    }
    wanted = set()
    for one, own in places.items():
        for place in own:
            away = {
                other: min(
                    [place.distance(each) for each in others] + [place.distance(lines.get(other, others[0]))]
                )
                for other, others in places.items()
                if other != one
            }
            least = min(away.values(), default=9.0)
            if least <= 0.5 + 1e-9:
                wanted.add((one, frozenset(other for other, far in away.items() if far <= least + 1e-9)))
    pairs = [ids(finding) for finding in found(NAME, drawing)]
    for one, nearest in wanted:
        assert any(one in pair and pair - {one} <= nearest for pair in pairs)
    for pair in pairs:
        assert any(one in pair and pair - {one} <= nearest for one, nearest in wanted)
