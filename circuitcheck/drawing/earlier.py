"""The shapes a pipe may keep from an earlier drawing: its own, a piece of a parted one, two healed ones."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from circuitcheck.drawing.corners import follow, straightened
from circuitcheck.drawing.shapes import Line, way_of
from circuitcheck.geometry import Point

MOST_LINES = 40
"""Of so many lines that changed at once nobody looks for the pieces of one in another."""

FOLLOWED = 3.0
"""How much dearer than the best line one may be that keeps the pipe's shape, in squares."""
UNMOVED = 16.0
"""The same for a line that lies where the pipe lay before it was parted or healed."""


def earlier_shapes(
    start: Point, finish: Point, own: Line | None, lines: Sequence[Line]
) -> Iterator[tuple[Line, float]]:
    """Lines from start to finish that were on the sheet before, and how much dearer each may be.

    `own` is the pipe's line before, `lines` are those of all pipes that changed or went.
    """
    if len(lines) <= MOST_LINES:
        for line in lines:
            piece = piece_of(line, start, finish)
            if piece is not None:
                yield piece, UNMOVED
        for healed in _healed(start, finish, lines):
            yield healed, UNMOVED
    if own is not None:
        followed = _followed(own, start, finish)
        if followed is not None:
            yield followed, FOLLOWED


def piece_of(line: Line, start: Point, finish: Point) -> Line | None:
    """The piece of a square line from start to finish; None where one of them is not on it."""
    first, last = _place_on(line, start), _place_on(line, finish)
    if first is None or last is None or start == finish:
        return None
    # Not by looking along the line the other way: one that comes by a place twice may answer "later" both ways.
    inner = line[first[0] + 1 : last[0] + 1] if first <= last else line[last[0] + 1 : first[0] + 1][::-1]
    return straightened((start, *inner, finish))


def _place_on(line: Line, point: Point) -> tuple[int, float] | None:
    """The run of the line that holds the point, and how far along; None where none does."""
    for index, (a, b) in enumerate(pairwise(line)):
        if a.x == b.x == point.x and min(a.y, b.y) <= point.y <= max(a.y, b.y):
            return index, abs(point.y - a.y)
        if a.y == b.y == point.y and min(a.x, b.x) <= point.x <= max(a.x, b.x):
            return index, abs(point.x - a.x)
    return None


def _healed(start: Point, finish: Point, lines: Sequence[Line]) -> Iterator[Line]:
    """Two lines end to end, or with a gap in line between them where a part was."""
    begins = [line for line in _both_ways(lines) if line[0] == start]
    ends = [line for line in _both_ways(lines) if line[-1] == finish]
    for one in begins:
        for two in ends:
            if one[-1] == two[0] or way_of(one[-1], two[0]) is not None:
                yield straightened((*one, *two))


def _both_ways(lines: Sequence[Line]) -> Iterator[Line]:
    for line in lines:
        yield line
        yield line[::-1]


def _followed(own: Line, start: Point, finish: Point) -> Line | None:
    corners = follow(own[1:-1], own[0], start, own[-1])
    if corners is None:
        return None
    back = follow(corners[::-1], own[-1], finish, start)
    if back is None:
        return None
    line = straightened((start, *back[::-1], finish))
    square = all(way_of(a, b) is not None for a, b in pairwise(line))
    return line if square else None
