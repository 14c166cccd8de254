"""Crossings: where the level run of a pipe passes an upright run of another, and so hops over it."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from itertools import pairwise
from math import floor

from circuitcheck.geometry import Point

CELL = 8
"""How many squares of a run share one cell of the index."""

LONG = 4096
"""Runs longer than this, in squares, are in no cell but in a set of their own: no sheet for the eye has
one, a file may have, and the cells of it would be without number."""

INSIDE = 0.2
"""How far, in squares, a crossing lies within both runs; at a run's end pipes meet, and do not cross."""

_ANYWHERE = (1 << 40, 0)
"""The cell of all long runs: it lies beyond every sheet."""

Run = tuple[float, float, float]
"""The fixed coordinate of a run, its least and its greatest along it, in squares."""


class Crossings:
    """The runs of every pipe in a grid of cells: one pipe changes without looking at all others."""

    def __init__(self) -> None:
        self._level: dict[str, tuple[Run, ...]] = {}
        self._upright: dict[str, tuple[Run, ...]] = {}
        self._level_cells: dict[tuple[int, int], set[str]] = defaultdict(set)
        self._upright_cells: dict[tuple[int, int], set[str]] = defaultdict(set)

    def put(self, pipe: str, line: Sequence[Point]) -> set[str]:
        """Set a pipe's line, in squares. Returns the other pipes whose hops may have changed."""
        touched = self.remove(pipe)
        level, upright = _runs(line)
        self._level[pipe], self._upright[pipe] = level, upright
        for run in level:
            for cell in _cells(run):
                self._level_cells[cell].add(pipe)
        for run in upright:
            for cell in _cells(run):
                self._upright_cells[cell].add(pipe)
        return touched | self._crossed_by(pipe)

    def remove(self, pipe: str) -> set[str]:
        """Forget a pipe. Returns the other pipes whose hops may have changed."""
        touched = self._crossed_by(pipe)
        for run in self._level.pop(pipe, ()):
            for cell in _cells(run):
                self._level_cells[cell].discard(pipe)
        for run in self._upright.pop(pipe, ()):
            for cell in _cells(run):
                self._upright_cells[cell].discard(pipe)
        return touched

    def hops(self, pipe: str) -> tuple[Point, ...]:
        """Where the pipe hops over another, in squares, ordered by row and then from left to right."""
        found = set()
        for y, left, right in self._level.get(pipe, ()):
            near: set[str] = set()
            if right - left > LONG:
                near |= self._upright.keys()
            else:
                for column in range(floor(left), floor(right) + 1):
                    near |= self._upright_cells.get((column, floor(y / CELL)), set())
                near |= self._upright_cells.get(_ANYWHERE, set())
            for other in near:
                for x, top, low in self._upright[other]:
                    if _within(x, left, right) and _within(y, top, low):
                        found.add(Point(x, y))
        return tuple(sorted(found, key=lambda point: (point.y, point.x)))

    def _crossed_by(self, pipe: str) -> set[str]:
        """The pipes whose level runs may cross an upright run of this one."""
        near: set[str] = set()
        for x, top, low in self._upright.get(pipe, ()):
            if low - top > LONG:
                near |= self._level.keys()
            else:
                for row in range(floor(top), floor(low) + 1):
                    near |= self._level_cells.get((row, floor(x / CELL)), set())
                near |= self._level_cells.get(_ANYWHERE, set())
        return near - {pipe}


def _runs(line: Sequence[Point]) -> tuple[tuple[Run, ...], tuple[Run, ...]]:
    """The level and the upright runs of a line; a run aslant is neither and hops over nothing."""
    level, upright = [], []
    for a, b in pairwise(line):
        if a.y == b.y and a.x != b.x:
            level.append((a.y, min(a.x, b.x), max(a.x, b.x)))
        elif a.x == b.x and a.y != b.y:
            upright.append((a.x, min(a.y, b.y), max(a.y, b.y)))
    return tuple(level), tuple(upright)


def _cells(run: Run) -> Iterable[tuple[int, int]]:
    across, least, most = run
    if most - least > LONG:
        return (_ANYWHERE,)
    return ((floor(across), block) for block in range(floor(least / CELL), floor(most / CELL) + 1))


def _within(value: float, least: float, most: float) -> bool:
    return least + INSIDE <= value <= most - INSIDE
