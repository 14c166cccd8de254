"""Pipes as marks: corners, hops, gaps, and a line of its own for each service."""

from itertools import pairwise

import pytest

from circuitcheck.geometry import Point
from circuitcheck.picture.crossings import Crossings
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Stroke, TextMark
from circuitcheck.picture.pipes import LINES, Place, caption, gaps, in_px, pipe_marks, pipe_path


def line(*points: tuple[float, float]) -> tuple[Place, ...]:
    return in_px([Point(*point) for point in points])


def test_services_differ_in_colour_line_and_letter() -> None:
    known = [style for name, style in LINES.items() if name != "unknown"]
    assert len({style.role for style in known}) == len(known)
    assert len({style.letter for style in LINES.values()}) == len(LINES)
    assert len({(style.width, style.dash, style.core) for style in LINES.values()}) == len(LINES)


def test_a_straight_pipe_is_one_line() -> None:
    assert pipe_path(line((0, 0), (4, 0))) == (("M", (0, 0)), ("L", (64, 0)))


def test_a_corner_is_round_by_seven_px() -> None:
    path = pipe_path(line((0, 0), (4, 0), (4, 4)))
    assert path[1] == ("L", (57, 0))
    letter, values = path[2]
    assert letter == "C"
    assert values[-2:] == (64, 7)


def test_a_corner_takes_no_more_than_half_a_short_run() -> None:
    path = pipe_path(line((0, 0), (0.5, 0), (0.5, 4)))
    assert path[1] == ("L", (4, 0))


def test_a_point_straight_on_is_no_corner() -> None:
    assert all(letter != "C" for letter, _ in pipe_path(line((0, 0), (2, 0), (4, 0))))


@pytest.mark.parametrize("way", [1, -1])
def test_a_hop_is_half_a_circle_over_the_top(way: int) -> None:
    path = pipe_path(line((0, 0), (8 * way, 0)), hops=[(64.0 * way, 0.0)])
    curves = [values for letter, values in path if letter == "C"]
    assert curves[0][-2:] == (64 * way, -7)
    assert curves[1][-2:] == (64 * way + 7 * way, 0)
    assert path[-1] == ("L", (128 * way, 0))


def test_an_upright_run_does_not_hop() -> None:
    assert all(letter != "C" for letter, _ in pipe_path(line((0, 0), (0, 8)), hops=[(0.0, 64.0)]))


def test_the_line_is_open_at_the_gap() -> None:
    points = line((0, 0), (10, 0))
    (gap, *_) = gaps(points, "F 22")
    path = pipe_path(points, gap=gap)
    assert [letter for letter, _ in path] == ["M", "L", "M", "L"]
    clear = path[2][1][0] - path[1][1][0]
    assert clear >= width("F 22", 12, 600) + 6


def test_a_gap_needs_a_run_of_four_squares() -> None:
    assert gaps(line((0, 0), (3, 0), (3, 3)), "F 22") == []
    assert gaps(line((0, 0), (4, 0)), "F 22")


def test_the_gap_is_in_the_middle_of_the_longest_run_first() -> None:
    (first, *_) = gaps(line((0, 0), (6, 0), (6, 20)), "R 22")
    assert first.run == 1
    assert first.middle == (96, 160)


def test_a_gap_keeps_clear_of_hops() -> None:
    points = line((0, 0), (12, 0))
    hops = [(96.0, 0.0)]
    assert all(abs(gap.middle[0] - 96) > 20 for gap in gaps(points, "C 22", hops))


def test_letters_are_upright_on_upright_runs_too() -> None:
    points = line((0, 0), (0, 8))
    (gap, *_) = gaps(points, "C 22")
    (text,) = [
        mark for mark in pipe_marks(points, "cold", gap=gap, text="C 22") if isinstance(mark, TextMark)
    ]
    assert (text.text, text.x, text.anchor) == ("C 22", 0, "middle")


def test_hot_water_is_a_double_line() -> None:
    wide, core = pipe_marks(line((0, 0), (4, 0)), "hot")
    assert isinstance(wide, Stroke) and isinstance(core, Stroke)
    assert (wide.width, wide.role) == (5, "hot")
    assert (core.width, core.role) == (1.6, "paper")


def test_the_caption_is_letter_and_size_or_the_letter_alone() -> None:
    assert caption("flow", "22") == "F 22"
    assert caption("unknown", "") == "?"


def crossings(**lines: list[tuple[float, float]]) -> Crossings:
    made = Crossings()
    for id, points in lines.items():
        made.put(id, [Point(*point) for point in points])
    return made


def test_the_level_pipe_hops_over_the_upright_one() -> None:
    made = crossings(level=[(0, 5), (10, 5)], upright=[(4, 0), (4, 10)])
    assert made.hops("level") == (Point(4, 5),)
    assert made.hops("upright") == ()


def test_where_pipes_meet_at_an_end_there_is_no_hop() -> None:
    made = crossings(level=[(0, 5), (10, 5)], branch=[(4, 5), (4, 10)], end=[(10, 0), (10, 10)])
    assert made.hops("level") == ()


def test_a_pipe_hops_over_itself() -> None:
    made = crossings(coiled=[(0, 5), (10, 5), (10, 0), (4, 0), (4, 10)])
    assert made.hops("coiled") == (Point(4, 5),)


def test_a_change_names_the_pipes_it_touches_and_no_others() -> None:
    made = crossings(level=[(0, 5), (10, 5)], upright=[(4, 0), (4, 10)], far=[(100, 100), (110, 100)])
    assert made.put("upright", [Point(6, 0), Point(6, 10)]) == {"level"}
    assert made.hops("level") == (Point(6, 5),)
    assert made.remove("upright") == {"level"}
    assert made.hops("level") == ()


def test_the_grid_finds_what_comparing_all_pairs_finds() -> None:
    lines: dict[str, list[tuple[float, float]]] = {
        f"p{i}": [(i % 7, i), (i % 7 + 9, i), (i % 7 + 9, i - 20 + 3 * (i % 5))] for i in range(-20, 20)
    }
    made = crossings(**lines)
    for id, points in lines.items():
        expected = set()
        for (ax, ay), (bx, by) in pairwise(points):
            if ay != by:
                continue
            for other in lines.values():
                for (cx, cy), (dx, dy) in pairwise(other):
                    within = min(ax, bx) < cx < max(ax, bx) and min(cy, dy) < ay < max(cy, dy)
                    if cx == dx and within:
                        expected.add((cx, ay))
        assert set(made.hops(id)) == expected
