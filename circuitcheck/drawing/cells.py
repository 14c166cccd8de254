"""Square buckets of the sheet: two things within half a square of each other share one."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, floor

from circuitcheck.geometry import Point

BESIDE = 0.5
"""How near two things may lie and still concern one another, in squares."""

CELL = 4.0
"""The size of a bucket, in squares of the sheet."""

# Everything is put into the buckets as if it were half of that wider all round: two things that
# concern one another then share the bucket that lies between them.
_WIDER = BESIDE / 2 + 1e-6

Cell = tuple[int, int]
Box = tuple[float, float, float, float]
"""Left, top, right, bottom, in squares."""


def box_cells(box: Box) -> tuple[Cell, ...]:
    """The buckets of a box."""
    return tuple(_cells(box))


def place_cells(point: Point) -> tuple[Cell, ...]:
    """The buckets of a place."""
    return tuple(_cells((point.x, point.y, point.x, point.y)))


def _cells(box: Box) -> Iterator[Cell]:
    left, top, right, bottom = box
    for column in range(floor((left - _WIDER) / CELL), floor((right + _WIDER) / CELL) + 1):
        for row in range(floor((top - _WIDER) / CELL), floor((bottom + _WIDER) / CELL) + 1):
            yield column, row


def line_cells(line: Sequence[Point]) -> tuple[Cell, ...]:
    """The buckets of a line."""
    cells: dict[Cell, None] = {}
    before = line[0]
    for here in line[1:]:
        ax, ay = before
        bx, by = here
        if ax == bx or ay == by:
            if ax > bx:
                ax, bx = bx, ax
            if ay > by:
                ay, by = by, ay
            # A plain loop: this is done for every run of every pipe.
            first, last = int((ay - _WIDER) // CELL), int((by + _WIDER) // CELL)
            for column in range(int((ax - _WIDER) // CELL), int((bx + _WIDER) // CELL) + 1):
                for row in range(first, last + 1):
                    cells[column, row] = None
        else:
            cells.update(dict.fromkeys(_slanted_cells(before, here)))
        before = here
    return tuple(cells)


def _slanted_cells(a: Point, b: Point) -> Iterator[Cell]:
    """A slanted run's cells: of short pieces of it, each by its own box."""
    pieces = max(1, ceil(max(abs(b.x - a.x), abs(b.y - a.y)) / CELL))
    before = a
    for piece in range(1, pieces + 1):
        share = piece / pieces
        here = Point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share)
        yield from _cells(
            (min(before.x, here.x), min(before.y, here.y), max(before.x, here.x), max(before.y, here.y))
        )
        before = here
