"""Paths: what path data reads as, and outlines of circles and rectangles."""

from math import dist

import pytest

from circuitcheck.picture import paths
from circuitcheck.picture.marks import Path


def ends(path: Path) -> list[tuple[float, float]]:
    return [(values[-2], values[-1]) for _, values in path if values]


def test_lines_level_and_upright_steps_become_lines() -> None:
    assert paths.parse("M-16,-9 L16,9 V-9 H0 Z") == (
        ("M", (-16, -9)),
        ("L", (16, 9)),
        ("L", (16, -9)),
        ("L", (0, -9)),
        ("Z", ()),
    )


def test_a_command_goes_on_for_further_numbers() -> None:
    assert ends(paths.parse("M0,0 10,0 10,10 L5 5 0 5")) == [(0, 0), (10, 0), (10, 10), (5, 5), (0, 5)]


def test_a_quadratic_curve_keeps_its_middle() -> None:
    (_, start), (letter, curve) = paths.parse("M0,0 Q10,20 20,0")
    assert letter == "C"
    middle = (start[0] + 3 * curve[0] + 3 * curve[2] + curve[4]) / 8, (3 * curve[1] + 3 * curve[3]) / 8
    assert middle == pytest.approx((10, 10))


@pytest.mark.parametrize("flags", ["0 0", "0 1", "1 0", "1 1"])
def test_an_arc_stays_on_its_circle(flags: str) -> None:
    path = paths.parse(f"M10,0 A10,10 0 {flags} 0,10")
    assert ends(path)[-1] == pytest.approx((0, 10))
    large, sweep = flags.split()
    # Sweep 1 runs clockwise on the screen: from 10,0 about 0,0 that is the short way to 0,10.
    centre = (0.0, 0.0) if (large, sweep) in {("0", "1"), ("1", "0")} else (10.0, 10.0)
    start = (10.0, 0.0)
    for letter, values in path[1:]:
        assert letter == "C"
        points = [start, values[0:2], values[2:4], values[4:6]]
        middle = tuple(
            (points[0][i] + 3 * points[1][i] + 3 * points[2][i] + points[3][i]) / 8 for i in (0, 1)
        )
        assert dist(middle, centre) == pytest.approx(10, abs=0.01)
        start = (values[4], values[5])


def test_an_arc_too_small_for_its_ends_grows() -> None:
    assert ends(paths.parse("M0,0 A1,1 0 0 1 10,0"))[-1] == pytest.approx((10, 0))


@pytest.mark.parametrize("data", ["m0,0", "M0,0 l5,5", "M0", "M0,0 C1,1 2,2", "M0,0 S1,1 2,2"])
def test_what_a_symbol_may_not_hold_is_refused(data: str) -> None:
    with pytest.raises(ValueError, match=r"path|takes"):
        paths.parse(data)


def test_a_rectangle_without_a_radius_has_four_corners() -> None:
    assert ends(paths.rectangle(1, 2, 10, 4)) == [(1, 2), (11, 2), (11, 6), (1, 6)]


def test_a_radius_is_no_more_than_half_a_side() -> None:
    xs = [x for x, _ in ends(paths.rectangle(0, 0, 10, 4, 50))]
    assert min(xs) == 0
    assert max(xs) == 10
    assert (2, 0) in ends(paths.rectangle(0, 0, 10, 4, 50))


def test_a_circle_closes_where_it_began() -> None:
    points = ends(paths.circle(3, 4, 5))
    assert points[0] == points[-1] == (8, 4)
    assert all(dist(point, (3, 4)) == pytest.approx(5) for point in points)
