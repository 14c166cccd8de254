"""What lies on the sheet already: parts' boxes and pipes' runs, found by where they lie."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator, Mapping, MutableMapping, Sequence
from itertools import pairwise
from math import floor
from typing import TypeVar

from circuitcheck.drawing.cells import most_cells
from circuitcheck.drawing.layers import carried_on
from circuitcheck.drawing.surroundings import NEAR_MET, Box, Effort, Run, Surroundings
from circuitcheck.geometry import Point

BUCKET = 16
COARSER = 4
"""How many times larger the next size of a bucket is."""
Cell = tuple[int, int]
Line = tuple[Point, ...]
Entry = TypeVar("Entry", bound=Hashable)


class Ground:
    """Boxes and runs in square buckets of the sheet, so that only what is near is looked at.

    A copy shares the buckets' contents, which are tuples and never change.
    """

    def __init__(self) -> None:
        self._boxes: MutableMapping[Cell, tuple[tuple[str, Box], ...]] = {}
        self._runs: MutableMapping[Cell, tuple[Run, ...]] = {}
        self._size = BUCKET
        self._laid = 0
        self._entries = 0

    def copy(self) -> Ground:
        """Another ground with the same on it."""
        other = Ground()
        other._boxes = carried_on(self._boxes)
        other._runs = carried_on(self._runs)
        other._size, other._laid, other._entries = self._size, self._laid, self._entries
        return other

    def add_box(self, part: str, box: Box) -> None:
        """Put a part's box on the ground."""
        for cell in _cells(box, self._size):
            self._boxes[cell] = (*self._boxes.get(cell, ()), (part, box))

    def remove_box(self, part: str, box: Box) -> None:
        """Take a part's box away."""
        for cell in _cells(box, self._size):
            self._boxes[cell] = tuple(entry for entry in self._boxes[cell] if entry[0] != part)

    def add_line(self, pipe: str, line: Sequence[Point]) -> None:
        """Put the square runs of a pipe's line on the ground; slanted ones are nothing to keep off."""
        self._laid += 1
        for run in runs(pipe, line):
            # The buckets of a run grow with its length, which a file may put at millions of squares.
            while self._entries + (run[3] - run[2]) / self._size > most_cells(self._laid):
                self._coarsen()
            for cell in _run_cells(run, self._size):
                self._runs[cell] = (*self._runs.get(cell, ()), run)
                self._entries += 1

    def remove_line(self, pipe: str, line: Sequence[Point]) -> None:
        """Take a pipe's line away."""
        self._laid -= 1
        for run in runs(pipe, line):
            for cell in _run_cells(run, self._size):
                kept = tuple(entry for entry in self._runs[cell] if entry[4] != pipe)
                self._entries -= len(self._runs[cell]) - len(kept)
                self._runs[cell] = kept

    def within(self, box: Box) -> set[str]:
        """The pipes that run through this box, along its edge not counted."""
        left, top, right, bottom = box
        found = set()
        for cell in self._near(box):
            for upright, across, low, high, pipe in self._runs.get(cell, ()):
                if upright:
                    runs_through = left < across < right and low < bottom and top < high
                else:
                    runs_through = top < across < bottom and low < right and left < high
                if runs_through:
                    found.add(pipe)
        return found

    def met(self, pipe: str, line: Line, lines: Mapping[str, Line], effort: Effort) -> list[str]:
        """The other pipes that this line lies on, or that one of the two bends or ends on; not those that
        end where it ends, and none where the effort is spent. `lines` are the lines on the ground."""
        ends = (line[0], line[-1])
        found: dict[str, None] = {}
        for run in runs(pipe, line):
            for cell in _run_cells(run, self._size):
                if effort.is_spent:
                    return []
                others = self._runs.get(cell, ())
                effort.left -= len(others) * NEAR_MET
                for other in others:
                    id = other[4]
                    if id != pipe and id not in found and _look_joined(run, other, ends, lines[id]):
                        found[id] = None
        return list(found)

    def _coarsen(self) -> None:
        """Take larger buckets for all that is on the ground."""
        self._size *= COARSER
        self._boxes = _larger(self._boxes)
        self._runs = _larger(self._runs)
        self._entries = sum(len(inside) for inside in self._runs.values())

    def _near(self, region: Box) -> Iterator[Cell]:
        """The buckets of a region: each of its cells, or where it has more than are filled, those of them."""
        left, top, right, bottom = (floor(edge / self._size) for edge in region)
        if (right - left + 1) * (bottom - top + 1) <= most_cells(0):
            yield from _cells(region, self._size)
            return
        for cell in sorted(self._boxes.keys() | self._runs.keys()):
            if left <= cell[0] <= right and top <= cell[1] <= bottom:
                yield cell

    def around(
        self, region: Box, ends: tuple[Point, Point], pipe: str, own_points: Iterable[str], effort: Effort
    ) -> Surroundings:
        """What lies in a region, for a pipe between these ends; nothing, where the effort is spent.

        `own_points` are the parts without extent (tees and caps) that the pipe itself ends on.
        """
        if effort.is_spent:
            return Surroundings(region, (), (), ends, effort)
        mine = frozenset(own_points)
        left, top, right, bottom = region
        boxes: dict[str, Box] = {}
        found: dict[Run, None] = {}
        for cell in self._near(region):
            for part, box in self._boxes.get(cell, ()):
                outside = box[2] < left or box[0] > right or box[3] < top or box[1] > bottom
                if not outside and part not in mine:
                    boxes[part] = box
            for run in self._runs.get(cell, ()):
                if run[4] != pipe:
                    found[run] = None
        effort.left -= (len(boxes) + len(found)) * NEAR_MET
        return Surroundings(region, tuple(boxes.values()), tuple(found), ends, effort)


def runs(pipe: str, line: Sequence[Point]) -> Iterator[Run]:
    """The square runs of a pipe's line."""
    for a, b in pairwise(line):
        if a.x == b.x:
            if a.y != b.y:
                yield (True, a.x, min(a.y, b.y), max(a.y, b.y), pipe)
        elif a.y == b.y:
            yield (False, a.y, min(a.x, b.x), max(a.x, b.x), pipe)


def _look_joined(one: Run, other: Run, ends: tuple[Point, Point], other_line: Line) -> bool:
    """Whether two runs lie on one another, or meet where one of them ends and not both pipes do."""
    upright, across, low, high, _ = one
    other_upright, other_across, other_low, other_high, _ = other
    if upright is other_upright:
        return across == other_across and min(high, other_high) > max(low, other_low)
    if not (low <= other_across <= high and other_low <= across <= other_high):
        return False
    if low < other_across < high and other_low < across < other_high:
        return False
    at = Point(across, other_across) if upright else Point(other_across, across)
    return at not in ends or at not in (other_line[0], other_line[-1])


def _larger(buckets: Mapping[Cell, tuple[Entry, ...]]) -> dict[Cell, tuple[Entry, ...]]:
    """What is in these buckets in larger ones, each thing once in each."""
    merged: dict[Cell, dict[Entry, None]] = {}
    for (column, row), inside in buckets.items():
        merged.setdefault((column // COARSER, row // COARSER), {}).update(dict.fromkeys(inside))
    return {cell: tuple(inside) for cell, inside in merged.items()}


def _run_cells(run: Run, size: int) -> Iterator[Cell]:
    upright, across, low, high, _ = run
    return _cells((across, low, across, high) if upright else (low, across, high, across), size)


def _cells(box: Box, size: int) -> Iterator[Cell]:
    left, top, right, bottom = box
    for column in range(floor(left / size), floor(right / size) + 1):
        for row in range(floor(top / size), floor(bottom / size) + 1):
            yield column, row
