"""The corners a person set in a pipe: how they follow a moved end, and how they part and meet."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from circuitcheck.geometry import Point, nearest_on_segment

Corners = tuple[Point, ...]


def is_square(a: Point, b: Point) -> bool:
    """Whether the line between them runs along the grid."""
    return a.x == b.x or a.y == b.y


def follow(corners: Corners, old: Point, new: Point, far: Point) -> Corners | None:
    """The corners after the end they begin at went from `old` to `new`; `far` is the other end.

    Corners next to the end give way so that a square line stays square, and one comes in where
    the line has no bend that could give way. None: a straight pipe that is straight no more,
    which the program is to route.
    """
    if old == new:
        return corners
    if not corners:
        return None if is_square(old, far) and not is_square(new, far) else corners
    first = corners[0]
    if first == old:
        return follow(corners[1:], old, new, far)
    if first.x == old.x:
        return _upright(corners, old, new, far)
    if first.y == old.y:
        across = _upright(_across(corners), *_across((old, new, far)))
        return _across(across)
    return corners


def _across(points: Sequence[Point]) -> Corners:
    return tuple(Point(point.y, point.x) for point in points)


def _upright(corners: Corners, old: Point, new: Point, far: Point) -> Corners:
    """As `follow`, where the line leaves its end upright."""
    if old.x == new.x:
        return _distinct(new, corners, far)
    in_line = 0
    while in_line < len(corners) and corners[in_line].x == old.x:
        in_line += 1
    if in_line == len(corners) and far.x == old.x:
        return _distinct(new, (Point(new.x, corners[0].y), *corners), far)
    moved = (Point(new.x, corner.y) for corner in corners[:in_line])
    return _distinct(new, (*moved, *corners[in_line:]), far)


def _distinct(start: Point, corners: Corners, finish: Point) -> Corners:
    """The corners without those on top of the point before them or on the far end."""
    kept: list[Point] = []
    for corner in corners:
        if corner != (kept[-1] if kept else start):
            kept.append(corner)
    if kept and kept[-1] == finish:
        kept.pop()
    return tuple(kept)


def parted(line: Sequence[Point], at: Point) -> tuple[Corners, Corners]:
    """The corners of a line (ends included) before and after the place on it nearest to `at`."""
    inner = tuple(line[1:-1])
    nearest, place = float("inf"), 0
    for index in range(len(line) - 1):
        _, far = nearest_on_segment(at, line[index], line[index + 1])
        if far < nearest:
            nearest, place = far, index
    before = tuple(corner for corner in inner[:place] if corner != at)
    after = tuple(corner for corner in inner[place:] if corner != at)
    return before, after


def direction_at(line: Sequence[Point], at: Point) -> tuple[int, int]:
    """The unit step along the grid in which the line passes nearest to `at`; (1, 0) for a point."""
    nearest, step = float("inf"), (1, 0)
    for a, b in pairwise(line):
        if a == b:
            continue
        _, far = nearest_on_segment(at, a, b)
        if far < nearest:
            dx, dy = b.x - a.x, b.y - a.y
            upright = abs(dy) > abs(dx)
            nearest, step = far, (0, 1 if dy > 0 else -1) if upright else (1 if dx > 0 else -1, 0)
    return step


def straightened(line: Sequence[Point]) -> tuple[Point, ...]:
    """The line without points on top of one another or straight on along the grid; its ends stay."""
    kept: list[Point] = []
    for point in line:
        if kept and point == kept[-1]:
            continue
        while len(kept) >= 2 and _straight_on(kept[-2], kept[-1], point):
            kept.pop()
        kept.append(point)
    return tuple(kept)


def _straight_on(a: Point, b: Point, c: Point) -> bool:
    if a.x == b.x == c.x:
        return (b.y - a.y) * (c.y - b.y) > 0
    if a.y == b.y == c.y:
        return (b.x - a.x) * (c.x - b.x) > 0
    return False
