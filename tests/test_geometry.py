"""Points, polylines and areas on the sheet, held against another library's answers."""

from __future__ import annotations

import pytest
import shapely
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.geometry import Point, SegmentGrid, distance, nearest_on_segment, turned

WHOLE = st.builds(Point, st.integers(-30, 30), st.integers(-30, 30))
ANY = st.builds(Point, st.floats(-30, 30), st.floats(-30, 30))
REACH = st.floats(0, 12)


SEGMENTS = st.lists(st.tuples(st.sampled_from("abcde"), WHOLE | ANY, WHOLE | ANY), max_size=10)


@pytest.mark.parametrize(
    ("turn", "mirrored", "there"),
    [
        (0, False, (3, -2)),
        (90, False, (2, 3)),
        (180, False, (-3, 2)),
        (270, False, (-2, -3)),
        (90, True, (2, -3)),
    ],
)
def test_an_offset_turns_clockwise_after_mirroring(turn: int, mirrored: bool, there: tuple[int, int]) -> None:
    assert turned((3, -2), turn, mirrored) == there


@given(ANY, ANY, ANY)
def test_the_nearest_point_of_a_segment(point: Point, a: Point, b: Point) -> None:
    foot, far = nearest_on_segment(point, a, b)
    expected = shapely.LineString([a, b]).distance(shapely.Point(point))
    assert far == pytest.approx(expected, abs=1e-6)
    assert far == distance(point, foot)


@given(SEGMENTS, WHOLE | ANY, REACH)
def test_what_is_near_is_what_is_near_of_all(
    segments: list[tuple[str, Point, Point]], point: Point, within: float
) -> None:
    found = SegmentGrid(segments).near(point, within)
    expected: dict[str, float] = {}
    for id, start, finish in segments:
        far = shapely.LineString([start, finish]).distance(shapely.Point(point))
        expected[id] = min(far, expected.get(id, far))
    got = dict(found)
    assert found == sorted(found, key=lambda each: (each[1], each[0]))
    assert len(got) == len(found)
    for id, far in expected.items():
        if id in got:
            assert got[id] == pytest.approx(far, abs=1e-6)
        assert (id in got) == (far <= within) or far == pytest.approx(within, abs=1e-6)


@given(WHOLE, WHOLE)
def test_a_place_on_a_segment_is_found_without_any_reach(start: Point, finish: Point) -> None:
    grid = SegmentGrid([("p", start, finish)])
    for share in (0, 0.25, 0.5, 1):
        place = Point(start.x + share * (finish.x - start.x), start.y + share * (finish.y - start.y))
        assert grid.near(place, 1e-9)
