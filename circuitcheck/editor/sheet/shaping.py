"""The corners of a pipe after one of its runs is moved across. No Qt."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from circuitcheck.geometry import Point, distance


def with_run_at(line: Sequence[Point], run: int, at: Point) -> tuple[Point, ...] | None:
    """The corners with a level or upright run moved to a place; its neighbours grow.

    One is added at a fixed end. None for a run that is neither level nor upright.
    """
    a, b = line[run], line[run + 1]
    if a.y == b.y:
        new_a, new_b = Point(a.x, at.y), Point(b.x, at.y)
    elif a.x == b.x:
        new_a, new_b = Point(at.x, a.y), Point(at.x, b.y)
    else:
        return None
    before = line[:run] if run else (a,)
    after = line[run + 2 :] or (b,)
    return _tidy((*before, new_a, new_b, *after))


def longest_across(line: Sequence[Point], dx: float, dy: float) -> int | None:
    """The longest run that lies across the way (dx, dy); None where there is none."""
    runs = [
        (distance(a, b), index)
        for index, (a, b) in enumerate(pairwise(line))
        if a != b and ((dx == 0 and a.y == b.y) or (dy == 0 and a.x == b.x))
    ]
    return max(runs, key=lambda each: (each[0], -each[1]))[1] if runs else None


def _tidy(line: tuple[Point, ...]) -> tuple[Point, ...]:
    """The corners of a line without its ends, doubled points and points straight on."""
    kept: list[Point] = []
    for point in line:
        if kept and kept[-1] == point:
            continue
        if len(kept) > 1 and _straight(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept[1:-1])


def _straight(a: Point, b: Point, c: Point) -> bool:
    return (a.x == b.x == c.x) or (a.y == b.y == c.y)
