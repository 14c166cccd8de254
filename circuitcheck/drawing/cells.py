"""Square buckets of the sheet: two things within half a square of each other share one.

How many buckets a thing lies in grows with its length, and a file may hold a line of millions of
squares. So whoever fills buckets keeps their number to `most_cells` for so many things, and takes
larger ones where that is not enough.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from math import ceil, floor, inf

from circuitcheck.geometry import Point

BESIDE = 0.5
"""How near two things may lie and still concern one another, in squares."""

CELL = 4.0
"""The size of a bucket, in squares of the sheet, where nothing asks for larger ones."""
COARSER = 4
"""How many times larger the next size of a bucket is."""

# Everything is put into the buckets as if it were half of that wider all round: two things that
# concern one another then share the bucket that lies between them.
_WIDER = BESIDE / 2 + 1e-6

Cell = tuple[int, int]
Box = tuple[float, float, float, float]
"""Left, top, right, bottom, in squares."""


def most_cells(things: int) -> int:
    """How many entries the buckets of so many things may have: far more than those of a usual sheet."""
    return 10_000 + 64 * things


def most_pairs(things: int) -> int:
    """How many pairs of so many things may share a bucket: four times what the fullest usual sheet has."""
    return 10_000 + 16 * things


class CrowdedError(Exception):
    """So much lies in one place that what lies beside what was not looked at."""


def box_cells(box: Box, size: float = CELL) -> tuple[Cell, ...]:
    """The buckets of a box."""
    return tuple(_cells(box, size))


def place_cells(point: Point, size: float = CELL) -> tuple[Cell, ...]:
    """The buckets of a place."""
    return tuple(_cells((point.x, point.y, point.x, point.y), size))


def _cells(box: Box, size: float) -> Iterator[Cell]:
    left, top, right, bottom = box
    for column in range(floor((left - _WIDER) / size), floor((right + _WIDER) / size) + 1):
        for row in range(floor((top - _WIDER) / size), floor((bottom + _WIDER) / size) + 1):
            yield column, row


def line_cells(line: Sequence[Point], size: float = CELL, most: float = inf) -> tuple[Cell, ...] | None:
    """The buckets of a line; None where they are more than `most`, found before many are made."""
    cells: dict[Cell, None] = {}
    most_work = most + 8 * len(line)  # runs over one another fill few buckets, and cost as much
    work = 0.0
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
            first, last = int((ay - _WIDER) // size), int((by + _WIDER) // size)
            left, right = int((ax - _WIDER) // size), int((bx + _WIDER) // size)
            work += last - first + right - left
            if work > most_work:
                return None
            for column in range(left, right + 1):
                for row in range(first, last + 1):
                    cells[column, row] = None
        else:
            work += max(abs(bx - ax), abs(by - ay)) / size
            if work > most_work:
                return None
            cells.update(dict.fromkeys(_slanted_cells(before, here, size)))
        if len(cells) > most:
            return None
        before = here
    return tuple(cells)


def _slanted_cells(a: Point, b: Point, size: float) -> Iterator[Cell]:
    """A slanted run's cells: of short pieces of it, each by its own box."""
    pieces = max(1, ceil(max(abs(b.x - a.x), abs(b.y - a.y)) / size))
    before = a
    for piece in range(1, pieces + 1):
        share = piece / pieces
        here = Point(a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share)
        yield from _cells(
            (min(before.x, here.x), min(before.y, here.y), max(before.x, here.x), max(before.y, here.y)),
            size,
        )
        before = here
