"""Where two lines meet, against shapely on random lines."""

from __future__ import annotations

from itertools import pairwise

import pytest
import shapely
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck.drawing.meeting import Meeting, meetings
from circuitcheck.geometry import Point, nearest_on_segment

Line = tuple[Point, ...]


def line(*points: tuple[float, float]) -> Line:
    return tuple(Point(*point) for point in points)


LEVEL = line((0, 0), (10, 0))

MET: dict[str, tuple[Line, Line, list[Meeting]]] = {
    "square": (LEVEL, line((4, -3), (4, 3)), [Meeting(Point(4, 0), 90, 0)]),
    "at its end": (LEVEL, line((4, 0), (4, 3)), [Meeting(Point(4, 0), 90, 0)]),
    "end on end, in line": (LEVEL, line((10, 0), (15, 0)), [Meeting(Point(10, 0), 0, 0)]),
    "on one another": (LEVEL, line((4, 0), (15, 0)), [Meeting(Point(4, 0), 0, 6)]),
    "on one another, told backwards": (LEVEL, line((15, 0), (4, 0)), [Meeting(Point(4, 0), 0, 6)]),
    "one within the other": (LEVEL, line((7, 0), (4, 0)), [Meeting(Point(4, 0), 0, 3)]),
    "side by side": (LEVEL, line((0, 0.5), (10, 0.5)), []),
    "in line, apart": (LEVEL, line((11, 0), (15, 0)), []),
    "short of it": (LEVEL, line((4, 0.1), (4, 3)), []),
    "no length, on it": (LEVEL, line((4, 0), (4, 0)), [Meeting(Point(4, 0), 90, 0)]),
    "no length, beside it": (LEVEL, line((4, 1), (4, 1)), []),
}


@pytest.mark.parametrize(("one", "other", "met"), MET.values(), ids=MET.keys())
def test_meetings(one: Line, other: Line, met: list[Meeting]) -> None:
    assert list(meetings(one, other)) == met


@pytest.mark.parametrize(("rise", "angle"), [(10, 45), (5.773502691896258, 30), (1, 5.710593137)])
def test_a_slant_is_told_in_degrees(rise: float, angle: float) -> None:
    (met,) = meetings(line((-10, 0), (10, 0)), line((-10, -rise), (10, rise)))
    assert met.angle == pytest.approx(angle)
    assert met.at == pytest.approx((0, 0))


GRID = st.builds(Point, st.integers(0, 6).map(float), st.integers(0, 6).map(float))
LINES = st.lists(GRID, min_size=2, max_size=5, unique=True).map(tuple)


@settings(max_examples=300)
@given(LINES, LINES)
def test_against_a_geometry_library(one: Line, other: Line) -> None:
    """Every point the library finds common lies on what we found, and the other way round."""
    found = list(meetings(one, other))
    common = shapely.LineString(one).intersection(shapely.LineString(other))
    assert bool(found) == (not common.is_empty)
    for meeting in found:
        assert shapely.Point(meeting.at).distance(common) < 1e-6
    points = shapely.get_coordinates(common)
    lying = [meeting for meeting in found if meeting.along]
    for x, y in points:
        at = Point(x, y)
        near = [abs(at.x - each.at.x) + abs(at.y - each.at.y) for each in found]
        covered = any(_covers(one, other, at) for _ in lying)
        assert min(near) < 1e-6 or covered
    assert bool(lying) == (common.length > 1e-9)


def _covers(one: Line, other: Line, at: Point) -> bool:
    """Whether a place lies on both lines."""
    return all(
        any(nearest_on_segment(at, a, b)[1] < 1e-6 for a, b in pairwise(each)) for each in (one, other)
    )
