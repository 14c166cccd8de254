"""The line that a pipe takes: one it had before while that will do, else the cheapest there is."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from functools import cache, partial
from math import inf
from typing import NamedTuple

from circuitcheck.drawing.search import cheapest_line
from circuitcheck.drawing.shapes import Line, Place, own_cost, simple_shapes, straight, way_of
from circuitcheck.drawing.sides import Leave
from circuitcheck.drawing.surroundings import Surroundings
from circuitcheck.geometry import Point

GOOD_ENOUGH = 7.0
"""A simple line that meets no more than this (two crossings) is taken without a search."""


class Ends(NamedTuple):
    """A pipe to be laid: what lies round it, its two ends and the ways out of each, and `stubs`, what these come
    close to in any case."""

    around: Surroundings
    start: Point
    leaving: Sequence[Leave]
    finish: Point
    arriving: Sequence[Leave]
    stubs: float


class _Kept(NamedTuple):
    """A line that was on the sheet before: its cost in all, what it meets, and how much dearer than the best
    line it may be."""

    cost: float
    met: float
    line: Line
    dearer: float


def _that_fit(ends: Ends, earlier: Iterable[tuple[Line, float]]) -> Iterator[_Kept]:
    """Those of some lines that can leave their ends so."""
    for line, dearer in earlier:
        first, last = way_of(line[0], line[1]), way_of(line[-1], line[-2])
        sides = [
            min((leave.cost for leave in ways if leave.way == way), default=inf)
            for ways, way in ((ends.leaving, first), (ends.arriving, last))
        ]
        if inf not in sides:
            met = ends.around.line_cost(line)
            yield _Kept(own_cost(line) + met + sum(sides), met, line, dearer)


def kept_or_best(ends: Ends, earlier: Iterable[tuple[Line, float]]) -> tuple[float, Line]:
    """The first of the earlier lines that may stay, each with how much dearer than the best it may be, else the
    cheapest; and its cost."""
    fitting = _that_fit(ends, earlier)
    kept = next(fitting, None)
    if kept is None:
        best = _best_line(ends)
        # Nothing leads from one to the other here: then straight over, so that it is seen.
        return (inf, (ends.start, ends.finish)) if best is None else best
    # What is not so much cheaper need not be found: at most edits, and most steps of a drag, nothing is.
    may_search = kept.met > GOOD_ENOUGH + ends.stubs
    best = _best_line(ends, below=kept.cost - kept.dearer, may_search=may_search)
    if best is None:
        return kept.cost, kept.line
    for kept in fitting:
        if kept.cost <= best[0] + kept.dearer:
            return kept.cost, kept.line
    return best


def _best_line(ends: Ends, *, below: float = inf, may_search: bool = True) -> tuple[float, Line] | None:
    """The cheapest line and its cost: straight, else simple, else searched for if it may; None where none
    costs less than `below`."""
    around, start, leaving, finish, arriving, stubs = ends
    good_enough = GOOD_ENOUGH + stubs
    if straight(start, leaving, finish, arriving):
        line = (start, finish)
        met = around.run_cost(start, finish)
        if met <= good_enough:
            cost = own_cost(line) + met
            return (cost, line) if cost < below else None
    best: Sequence[Place] | None = None
    least_met = inf
    # Every line meets as much as its ends must come close to.
    tracks = cache(partial(around.tracks, start, finish))
    for least, shapes in simple_shapes(start, leaving, finish, arriving, tracks):
        if least + stubs >= below or (below < inf and around.effort.is_spent):
            break
        for shape in shapes:
            # Those after it cost as much by themselves or more.
            if shape.cost + stubs >= below:
                break
            met = around.line_cost(shape.line, below - shape.cost)
            if shape.cost + met < below:
                below, best, least_met = shape.cost + met, shape.line, met
            # Asked here too, so that no others are made where the plainest meets nothing.
            if shape.cost + stubs >= below or (below < inf and around.effort.is_spent):
                break
    if may_search and least_met > good_enough:
        found = cheapest_line(around, start, leaving, finish, arriving, below)
        if found is not None:
            return found
    return None if best is None else (below, tuple(Point(*place) for place in best))
