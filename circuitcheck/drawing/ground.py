"""What lies on the sheet already: parts' boxes and pipes' runs, and what it costs a new run to meet them."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator, Mapping, Sequence
from itertools import pairwise
from math import floor, inf
from typing import TypeVar

from circuitcheck.drawing.cells import most_cells
from circuitcheck.geometry import Point

Box = tuple[float, float, float, float]
"""Left, top, right, bottom, in squares."""

Run = tuple[bool, float, float, float, str]
"""A straight run of a pipe along the grid: upright, its fixed coordinate, its low and high end, the pipe."""

BUCKET = 16
COARSER = 4
"""How many times larger the next size of a bucket is."""
CLEARANCE = 1.0

# Costs, in squares of extra length. A bend is one of its own; what a reader could take for a
# joint costs far more than any detour on a sheet of house size.
BEND = 4.0
CROSSING = 3.0
CONTACT = 25.0
ALONG = 25.0
ALONG_A_SQUARE = 10.0
TOO_CLOSE_A_SQUARE = 5.0
THROUGH_A_PART = 60.0
THROUGH_A_SQUARE = 10.0

NEAR_SCANNED = 1 / 64
"""What it takes to look whether one thing is near a track, where to ask what a run meets takes 1."""
NEAR_MET = 1 / 8
"""The same to look what a run shares with one thing near it."""

Cell = tuple[int, int]
Entry = TypeVar("Entry", bound=Hashable)


class Effort:
    """How much may still be looked at while pipes are routed. It counts what is looked at and no time, so
    that a drawing has the same lines on any machine."""

    def __init__(self, left: float = inf) -> None:
        self.left = left

    @property
    def is_spent(self) -> bool:
        """Whether the simplest line has to do from here on."""
        return self.left <= 0


class Ground:
    """Boxes and runs in square buckets of the sheet, so that only what is near is looked at.

    A copy shares the buckets' contents, which are tuples and never change.
    """

    def __init__(self) -> None:
        self._boxes: dict[Cell, tuple[tuple[str, Box], ...]] = {}
        self._runs: dict[Cell, tuple[Run, ...]] = {}
        self._size = BUCKET
        self._laid = 0
        self._entries = 0

    def copy(self) -> Ground:
        """Another ground with the same on it."""
        other = Ground()
        other._boxes = dict(self._boxes)
        other._runs = dict(self._runs)
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


class Surroundings:
    """What a pipe between two ends has to reckon with, as lists to be asked many times."""

    def __init__(
        self,
        region: Box,
        boxes: tuple[Box, ...],
        found: tuple[Run, ...],
        ends: tuple[Point, Point],
        effort: Effort,
    ) -> None:
        self.effort = effort
        uprights = [(across, low, high) for upright, across, low, high, _ in found if upright]
        levels = [(across, low, high) for upright, across, low, high, _ in found if not upright]
        turned_boxes = [(top, left, bottom, right) for left, top, right, bottom in boxes]
        self._region = region
        self._upright = _OneWay(boxes, uprights, levels, [(end.x, end.y) for end in ends], effort)
        self._level = _OneWay(turned_boxes, levels, uprights, [(end.y, end.x) for end in ends], effort)

    def run_cost(self, a: Point, b: Point) -> float:
        """What a straight run from `a` to `b` meets, `a` itself left out, `b` counted in."""
        if a.x == b.x:
            return self._upright.cost(a.x, a.y, b.y)
        return self._level.cost(a.y, a.x, b.x)

    def corner_cost(self, corner: Point) -> float:
        """What a bend there meets: on another pipe it would look joined."""
        x, y = corner
        on_a_pipe = self._upright.meets(x, y) or self._level.meets(y, x)
        return CONTACT if on_a_pipe else 0.0

    def line_cost(self, line: Sequence[Point]) -> float:
        """What a square line from end to end meets."""
        met = sum([self.run_cost(a, b) for a, b in pairwise(line)])
        return met + sum([self.corner_cost(corner) for corner in line[1:-1]])

    def tracks(self, start: Point, finish: Point) -> tuple[list[float], list[float]]:
        """The x and the y on which a line from start to finish may want to run, each sorted."""
        left, top, right, bottom = self._region
        return (
            self._upright.tracks(start.x, finish.x, left, right),
            self._level.tracks(start.y, finish.y, top, bottom),
        )


Stretch = tuple[float, float, float]
"""A run's fixed coordinate, its low and its high end."""


class _OneWay:
    """The surroundings of upright runs; those of level ones are the same with x and y changed over."""

    def __init__(
        self,
        boxes: Sequence[Box],
        alike: list[Stretch],
        crossing: list[Stretch],
        ends: list[tuple[float, float]],
        effort: Effort,
    ) -> None:
        self._effort = effort
        self._scanned = (len(boxes) + len(alike) + len(crossing)) * NEAR_SCANNED
        self._boxes = boxes
        self._alike = alike
        self._crossing = crossing
        self._ends = ends
        self._at: dict[float, tuple[list[Box], list[Stretch], list[Stretch]]] = {}

    def _near(self, x: float) -> tuple[list[Box], list[Stretch], list[Stretch]]:
        """What a run at `x` can meet at all; many runs are tried on one track."""
        found = self._at.get(x)
        if found is None:
            self._effort.left -= self._scanned
            found = self._at[x] = (
                [box for box in self._boxes if box[0] - CLEARANCE < x < box[2] + CLEARANCE],
                [run for run in self._alike if -CLEARANCE < run[0] - x < CLEARANCE],
                [run for run in self._crossing if run[1] <= x <= run[2]],
            )
        return found

    def meets(self, x: float, y: float) -> bool:
        """Whether the place lies on an upright run."""
        return any(run[0] == x and run[1] <= y <= run[2] for run in self._near(x)[1])

    def cost(self, x: float, start: float, finish: float) -> float:
        """What an upright run at `x` meets from `start`, left out, to `finish`, counted in."""
        low, high = (start, finish) if start < finish else (finish, start)
        boxes, alike, crossing = self._near(x)
        self._effort.left -= 1 + (len(boxes) + len(alike) + len(crossing)) * NEAR_MET
        met = 0.0
        for left, top, right, bottom in boxes:
            close = min(high, bottom + CLEARANCE) - max(low, top - CLEARANCE)
            if close > 0:
                met += TOO_CLOSE_A_SQUARE * close
                through = min(high, bottom) - max(low, top)
                if through > 0 and left < x < right:
                    met += THROUGH_A_PART + THROUGH_A_SQUARE * through
        for _, other_low, other_high in alike:
            shared = min(high, other_high) - max(low, other_low)
            if shared > 0:
                met += ALONG + ALONG_A_SQUARE * shared
        for across, other_low, other_high in crossing:
            if low <= across <= high and across != start:
                if across == finish and (x, across) in self._ends:
                    continue
                met += CROSSING if other_low < x < other_high else CONTACT
        return met

    def tracks(self, start: float, finish: float, least: float, most: float) -> list[float]:
        """Where an upright run between two ends may want to lie, sorted."""
        found = {start, finish, start - 1, start + 1, finish - 1, finish + 1}
        found.add(float(floor((start + finish) / 2)))
        for left, _, right, _ in self._boxes:
            found.add(float(floor(left - CLEARANCE)))
            found.add(float(-floor(-right - CLEARANCE)))
        for across, _, _ in self._alike:
            found.add(across - 1)
            found.add(across + 1)
        return sorted(track for track in found if least <= track <= most)


def runs(pipe: str, line: Sequence[Point]) -> Iterator[Run]:
    """The square runs of a pipe's line."""
    for a, b in pairwise(line):
        if a.x == b.x:
            if a.y != b.y:
                yield (True, a.x, min(a.y, b.y), max(a.y, b.y), pipe)
        elif a.y == b.y:
            yield (False, a.y, min(a.x, b.x), max(a.x, b.x), pipe)


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
