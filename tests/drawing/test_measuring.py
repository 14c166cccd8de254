"""A pipe's length and bends: given, measured where a person set its corners, or not known."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any

import pytest

from circuitcheck.drawing.measuring import Measure, bends, count_bends, length_m
from circuitcheck.drawing.value import EMPTY, Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds

TEE = component_kinds()["tee"]
Via = tuple[Point, ...] | None


def drawing(
    via: Via, data: Mapping[str, Any] = EMPTY, *, scale: float | None = 0.5, placed: bool = True
) -> Drawing:
    """A pipe from a tee at (0, 0) to one at (6, 8)."""
    parts = {
        "t1": Component("t1", TEE, at=Point(0, 0)),
        "t2": Component("t2", TEE, at=Point(6, 8) if placed else None),
    }
    pipe = Pipe("p1", (Joint("t1", "b"), Joint("t2", "a")), via=via, data=data)
    return Drawing(
        sheet={} if scale is None else {"metres_per_square": scale}, components=parts, pipes={"p1": pipe}
    )


def measured(of: Drawing) -> tuple[Measure | None, Measure | None]:
    return length_m(of, of.pipes["p1"]), bends(of, of.pipes["p1"])


def test_given_wins_over_the_line() -> None:
    found = measured(drawing((Point(6, 0),), {"length_m": 3, "bends": 2}))
    assert found == (Measure(3, "given"), Measure(2, "given"))


def test_given_zero_is_given() -> None:
    assert measured(drawing(None, {"length_m": 0, "bends": 0})) == (Measure(0, "given"), Measure(0, "given"))


def test_measured_by_the_corners_a_person_set() -> None:
    assert measured(drawing((Point(6, 0),))) == (Measure(7, "measured"), Measure(1, "measured"))


def test_no_corners_on_purpose_is_a_straight_line() -> None:
    assert measured(drawing(())) == (Measure(5, "measured"), Measure(0, "measured"))


@pytest.mark.parametrize(
    "of",
    [
        drawing(None),
        drawing((Point(6, 0),), scale=None),
        drawing((Point(6, 0),), placed=False),
        drawing(None, {"length_m": None, "bends": None}),
    ],
    ids=["routed by the program", "no scale", "an end that is not placed", "null and routed"],
)
def test_not_known(of: Drawing) -> None:
    assert measured(of) == (None, None)


def test_each_by_itself() -> None:
    assert measured(drawing((Point(6, 0),), {"length_m": 3})) == (Measure(3, "given"), Measure(1, "measured"))
    assert measured(drawing(None, {"bends": 3})) == (None, Measure(3, "given"))


def test_a_null_is_measured_where_it_can_be() -> None:
    assert measured(drawing((Point(6, 0),), {"length_m": None}))[0] == Measure(7, "measured")


def test_free_ends_are_places_too() -> None:
    pipe = Pipe("p1", (Point(0, 0), Point(0, 4)), via=())
    of = Drawing(sheet={"metres_per_square": 0.25}, pipes={"p1": pipe})
    assert measured(of) == (Measure(1, "measured"), Measure(0, "measured"))


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ([(0, 0), (1, 0)], 0),
        ([(0, 0)], 0),
        ([(0, 0), (1, 0), (2, 0)], 0),
        ([(0, 0), (1, 0), (1, 1)], 1),
        ([(0, 0), (1, 0), (1, 1), (2, 1)], 2),
        ([(0, 0), (1, 0), (0, 0)], 1),  # back on itself
        ([(0, 0), (1, 0), (1, 0), (1, 1)], 1),  # a corner set twice
        ([(0, 0), (0, 0), (0, 0)], 0),
        ([(0, 0), (1, 0), (1, 0), (2, 0)], 0),
    ],
)
def test_bends_along_a_line(line: list[tuple[float, float]], count: int) -> None:
    assert count_bends([Point(*each) for each in line]) == count


@pytest.mark.parametrize(
    ("degrees", "count"), [(29.9, 0), (30, 1), (30.1, 1), (45, 1), (-30, 1), (-29.9, 0), (180, 1)]
)
def test_thirty_degrees_or_more_is_a_bend(degrees: float, count: int) -> None:
    from math import cos, radians, sin

    on = Point(10 + 7 * cos(radians(degrees)), 7 * sin(radians(degrees)))
    assert count_bends([Point(0, 0), Point(10, 0), on]) == count
