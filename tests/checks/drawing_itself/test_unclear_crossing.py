"""Pipes that cross clearly and unclearly, against shapely on random layouts."""

from __future__ import annotations

from itertools import combinations, pairwise
from math import atan2, degrees, hypot

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Component, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from tests.checks.asking import asked, found, only
from tests.made import made

NAME = "unclear-crossing"
KINDS = component_kinds()

Ends = tuple[tuple[float, float], ...]


def capped(**lines: Ends) -> Drawing:
    """Pipes with these lines, each end of each on a cap of its own."""
    parts: dict[str, Component] = {}
    pipes = {}
    for id, points in lines.items():
        joints: list[End] = []
        for mark, at in (("s", points[0]), ("f", points[-1])):
            parts[f"{id}{mark}"] = Component(f"{id}{mark}", KINDS["cap"], at=Point(*at))
            joints.append(Joint(f"{id}{mark}", "connection"))
        pipes[id] = Pipe(id, (joints[0], joints[1]), via=tuple(Point(*at) for at in points[1:-1]))
    return Drawing(components=parts, pipes=pipes)


LEVEL: Ends = ((0, 0), (20, 0))

CLEAR: dict[str, Drawing] = {
    "a square crossing": capped(p=LEVEL, q=((10, -5), (10, 5))),
    "just clear of a bend": capped(p=LEVEL, q=((10, -5), (10, 0.51), (15, 0.51), (15, 5))),
    "just clear of a port": capped(p=LEVEL, q=((10, -5), (10, 0.51))),
    "30 degrees": capped(p=LEVEL, q=((10 - 1.7320508075688772 * 5, -5), (10 + 1.7320508075688772 * 5, 5))),
    "45 degrees": capped(p=LEVEL, q=((5, -5), (15, 5))),
    "a corner that is no bend": capped(p=LEVEL, q=((10, -5), (10, 0), (10, 5))),
    "side by side": capped(p=LEVEL, q=((0, 1), (20, 1))),
    "in line, end from end": capped(p=LEVEL, q=((21, 0), (30, 0))),
    "apart": capped(p=LEVEL, q=((0, 9), (20, 9))),
}
UNCLEAR: dict[str, tuple[Drawing, str]] = {
    "at a bend": (capped(p=LEVEL, q=((10, -5), (10, 0), (15, 5))), "bend"),
    "by a bend beyond": (capped(p=LEVEL, q=((10, -5), (10, 0.5), (15, 0.5), (15, 5))), "bend"),
    "by a bend of the other": (capped(p=((10, -5), (10, 5)), q=((0, 0), (10.3, 0), (10.3, 9))), "bend"),
    "by a port": (capped(p=LEVEL, q=((10, -5), (10, 0.5))), "port"),
    "on a port": (capped(p=LEVEL, q=((10, -5), (10, 0))), "port"),
    "on a slant": (capped(p=LEVEL, q=((1, -5), (19, 5))), "slant"),
    "on one another": (capped(p=LEVEL, q=((5, 5), (5, 0), (15, 0), (15, 5))), "lie on one another"),
    "one all on the other": (capped(p=LEVEL, q=((5, 0), (15, 0))), "lie on one another"),
}


@pytest.mark.parametrize("drawing", CLEAR.values(), ids=CLEAR.keys())
def test_clear(drawing: Drawing) -> None:
    answer = asked(NAME, drawing)
    assert (answer.findings, answer.status) == ((), "judged")


@pytest.mark.parametrize(("drawing", "word"), UNCLEAR.values(), ids=UNCLEAR.keys())
def test_unclear(drawing: Drawing, word: str) -> None:
    finding = only(NAME, drawing)
    assert (finding.grade.value, finding.pipes, finding.components) == ("advice", ("p", "q"), ())
    assert word in finding.message


def teed(*ends: tuple[float, float], at: tuple[float, float] = (10, 0)) -> Drawing:
    """A tee and straight pipes from it to caps."""
    parts = {"t": Component("t", KINDS["tee"], at=Point(*at))}
    pipes = {}
    for number, (end, port) in enumerate(zip(ends, ("a", "b", "branch"), strict=True)):
        parts[f"k{number}"] = Component(f"k{number}", KINDS["cap"], at=Point(*end))
        pipes[f"p{number}"] = Pipe(
            f"p{number}", (Joint("t", port), Joint(f"k{number}", "connection")), via=()
        )
    return Drawing(components=parts, pipes=pipes)


def test_pipes_on_one_tee_are_joined() -> None:
    assert found(NAME, teed((0, 0), (20, 0), (10, 9))) == ()
    assert found(NAME, teed((0, 0), (20, 0), (20, 1))) == ()


def test_pipes_that_leave_a_tee_on_one_another_are_not_clear() -> None:
    assert only(NAME, teed((0, 0), (20, 0), (15, 0))).pipes == ("p1", "p2")


def test_another_pipe_past_a_tee() -> None:
    drawing = teed((0, 0), (20, 0), (10, 9))
    passing = capped(z=((10.5, -5), (10.5, 5)))
    both = Drawing(
        components={**drawing.components, **passing.components}, pipes={**drawing.pipes, **passing.pipes}
    )
    assert only(NAME, both).pipes == ("p1", "z")
    assert "port or tee" in only(NAME, both).message


def test_a_port_of_a_third_part_by_a_square_crossing() -> None:
    drawing = capped(p=LEVEL, q=((10, -5), (10, 5)))
    beside = Component("x", KINDS["cap"], at=Point(10.3, 0.3))
    assert found(NAME, drawing) == ()
    assert (
        "port or tee"
        in only(NAME, Drawing(components={**drawing.components, "x": beside}, pipes=drawing.pipes)).message
    )


def test_a_free_end_beside_a_pipe_is_a_near_miss_instead() -> None:
    pipes = {
        "p": Pipe("p", (Point(0, 0), Point(20, 0)), via=()),
        "q": Pipe("q", (Point(10, -5), Point(10, 0.2)), via=()),
    }
    assert found(NAME, Drawing(pipes=pipes)) == ()
    assert len(found("near-miss", Drawing(pipes=pipes))) == 1


def test_each_pair_once_and_its_worst_place() -> None:
    drawing = capped(p=LEVEL, q=((3, -5), (3, 5), (6, 5), (6, 0), (9, 0), (9, 5)))
    assert "lie on one another" in only(NAME, drawing).message


def test_without_lines_it_does_not_apply() -> None:
    assert (
        asked(NAME, made({"hs": "heat_source", "iv": "isolating_valve"}, "hs.flow - iv.a")).status
        == "not applicable"
    )
    assert asked(NAME, Drawing()).status == "not applicable"


def test_a_pipe_is_proposed_to_be_routed_anew() -> None:
    # q's corners take it along p; left to the program it finds a way beside.
    drawing = capped(p=LEVEL, q=((5, 8), (5, 0), (15, 0), (15, 8)))
    proposals = list(checks()[NAME].propose(Case(drawing), only(NAME, drawing)))
    assert [str(each.says).split()[2] for each in proposals] == ["p", "q"]
    assert found(NAME, proposals[1].drawing) == ()


GRID = st.tuples(st.integers(0, 9).map(float), st.integers(0, 9).map(float))
LINES = st.lists(GRID, min_size=2, max_size=4, unique=True).map(tuple)


@settings(max_examples=150, deadline=None)
@given(st.lists(LINES, min_size=2, max_size=5))
def test_against_a_geometry_library(lines: list[Ends]) -> None:
    drawing = capped(**{f"p{number}": points for number, points in enumerate(lines)})
    wanted = {
        frozenset({f"p{a}", f"p{b}"})
        for a, b in combinations(range(len(lines)), 2)
        if _is_unclear(lines[a], lines[b], lines)
    }
    assert {frozenset(finding.pipes) for finding in found(NAME, drawing)} == wanted


def _is_unclear(one: Ends, other: Ends, lines: list[Ends]) -> bool:
    """By the library: common length, or a common point by a bend, an end of any line, or on a slant."""
    a, b = shapely.LineString(one), shapely.LineString(other)
    common = a.intersection(b)
    if common.is_empty:
        return False
    if common.length > 1e-9:
        return True
    marks = [point for line in lines for point in (line[0], line[-1])]
    marks += [point for line in (one, other) for point in _bends(line)]
    places = [shapely.Point(*xy) for xy in shapely.get_coordinates(common)]
    if any(place.distance(shapely.Point(*mark)) <= 0.5 + 1e-9 for place in places for mark in marks):
        return True
    return any(_sharp(_way(one, place), _way(other, place)) < 30 - 1e-6 for place in places)


def _bends(line: Ends) -> list[tuple[float, float]]:
    return [
        b
        for a, b, c in zip(line, line[1:], line[2:], strict=False)
        if abs((degrees(atan2(c[1] - b[1], c[0] - b[0]) - atan2(b[1] - a[1], b[0] - a[0])) + 180) % 360 - 180)
        >= 30 - 1e-7
    ]


def _way(line: Ends, place: shapely.Point) -> tuple[float, float]:
    a, b = next((a, b) for a, b in pairwise(line) if shapely.LineString((a, b)).distance(place) < 1e-6)
    return b[0] - a[0], b[1] - a[1]


def _sharp(one: tuple[float, float], other: tuple[float, float]) -> float:
    cosine = abs(one[0] * other[0] + one[1] * other[1]) / (hypot(*one) * hypot(*other))
    angle: float = degrees(atan2((1 - min(1.0, cosine) ** 2) ** 0.5, cosine))
    return angle
