"""What lies round a pipe that is to be laid, and what it costs a run of it to meet that."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Sequence
from itertools import pairwise
from math import floor, inf
from typing import NamedTuple

from circuitcheck.geometry import Point

Box = tuple[float, float, float, float]
"""Left, top, right, bottom, in squares."""

Run = tuple[bool, float, float, float, str]
"""A straight run of a pipe along the grid: upright, its fixed coordinate, its low and high end, the pipe."""

CLEARANCE = 1.0


# Costs, in squares of extra length. A bend is one of its own; what a reader could take for a
# joint costs far more than any detour on a sheet of house size.
BEND = 4.0
CROSSING = 3.0
CONTACT = 60.0
ALONG = 60.0
ALONG_A_SQUARE = 10.0
TOO_CLOSE_A_SQUARE = 5.0
THROUGH_A_PART = 200.0
THROUGH_A_SQUARE = 10.0

NEAR_SCANNED = 1 / 64
"""What it takes to look whether one thing is near a track, where to ask what a run meets takes 1."""
NEAR_MET = 1 / 8
"""The same to look what a run shares with one thing near it."""
STEP_MADE = 1 / 8
"""The same for what is known of one step of a track beforehand."""


class Effort:
    """How much may still be looked at while pipes are routed. It counts what is looked at and no time, so
    that a drawing has the same lines on any machine."""

    def __init__(self, left: float = inf) -> None:
        self.left = left

    @property
    def is_spent(self) -> bool:
        """Whether the simplest line has to do from here on."""
        return self.left <= 0


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

    def upright_steps(self, x: float, stops: Sequence[float]) -> Steps:
        """What the steps of an upright track from one y to the next meet; the same `stops` each time."""
        return self._upright.steps(x, stops)

    def level_steps(self, y: float, stops: Sequence[float]) -> Steps:
        """The same for the steps of a level track from one x to the next."""
        return self._level.steps(y, stops)

    def corner_cost(self, corner: tuple[float, float]) -> float:
        """What a bend there meets: on another pipe it would look joined."""
        x, y = corner
        on_a_pipe = self._upright.meets(x, y) or self._level.meets(y, x)
        return CONTACT if on_a_pipe else 0.0

    def line_cost(self, line: Sequence[tuple[float, float]], enough: float = inf) -> float:
        """What a square line from end to end meets; of one that meets `enough` or more, perhaps only part."""
        # Run by run what `run_cost` says, written out: it is asked for every shape that is tried.
        upright, level = self._upright.cost, self._level.cost
        met = 0.0
        for (ax, ay), (bx, by) in pairwise(line):
            met += upright(ax, ay, by) if ax == bx else level(ay, ax, bx)
            if met >= enough:
                return met
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


class Steps(NamedTuple):
    """What the steps of one track meet: `on[n]` is from its stop n to the next, `back[n]` the other way,
    each without the place it starts from; `taken[n]` says whether another pipe lies along it at stop n."""

    on: list[float]
    back: list[float]
    taken: list[bool]


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
        self._steps: dict[float, Steps] = {}

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
        for box in boxes:
            met += _met_of_box(box, x, low, high)
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

    def steps(self, x: float, stops: Sequence[float]) -> Steps:
        """What each step of the track at `x` meets: as `cost` says it, all of them in one go."""
        known = self._steps.get(x)
        if known is not None:
            return known
        boxes, alike, crossing = self._near(x)
        met = _StepsMet(x, stops)
        for box in boxes:
            met.box(box)
        for stretch in alike:
            met.alike(stretch)
        for stretch in crossing:
            met.crossing(stretch, ends_here=(x, stretch[0]) in self._ends)
        self._effort.left -= (
            1 + (len(stops) + met.touched) * STEP_MADE + (len(boxes) + len(alike) + len(crossing)) * NEAR_MET
        )
        found = self._steps[x] = Steps(met.on, met.back, met.taken)
        return found

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


class _StepsMet:
    """The steps of the upright track at `x` between these stops, and what they meet of one thing after another."""

    def __init__(self, x: float, stops: Sequence[float]) -> None:
        self._x, self._stops = x, stops
        self.on, self.back = [0.0] * (len(stops) - 1), [0.0] * (len(stops) - 1)
        self.taken = [False] * len(stops)
        self.touched = 0

    def box(self, box: Box) -> None:
        """A part's box."""
        stops = self._stops
        for step in self._within(box[1] - CLEARANCE, box[3] + CLEARANCE):
            self._add(step, _met_of_box(box, self._x, stops[step], stops[step + 1]))

    def alike(self, stretch: Stretch) -> None:
        """An upright run of another pipe, on the track or close by."""
        across, low, high = stretch
        stops = self._stops
        for step in self._within(low, high):
            shared = min(stops[step + 1], high) - max(stops[step], low)
            if shared > 0:
                self._add(step, ALONG + ALONG_A_SQUARE * shared)
        if across == self._x:
            for stop in range(bisect_left(stops, low), bisect_right(stops, high)):
                self.taken[stop] = True

    def crossing(self, stretch: Stretch, *, ends_here: bool) -> None:
        """A level run of another pipe that the track meets; `ends_here`: at an end of the own pipe."""
        across, low, high = stretch
        cost = CROSSING if low < self._x < high else CONTACT
        stop = bisect_left(self._stops, across)
        if stop == len(self._stops) or self._stops[stop] != across:
            if 0 < stop < len(self._stops):
                self._add(stop - 1, cost)
        elif not ends_here:
            if stop:
                self.on[stop - 1] += cost
            if stop < len(self.back):
                self.back[stop] += cost

    def _add(self, step: int, cost: float) -> None:
        self.on[step] += cost
        self.back[step] += cost

    def _within(self, low: float, high: float) -> range:
        """The steps that lie between `low` and `high` in part."""
        stops = self._stops
        found = range(max(0, bisect_right(stops, low) - 1), min(len(stops) - 1, bisect_left(stops, high)))
        self.touched += len(found)
        return found


def _met_of_box(box: Box, x: float, low: float, high: float) -> float:
    """What it costs an upright run at `x` to pass a part's box, or close by it."""
    left, top, right, bottom = box
    close = min(high, bottom + CLEARANCE) - max(low, top - CLEARANCE)
    if close <= 0:
        return 0.0
    met = TOO_CLOSE_A_SQUARE * close
    through = min(high, bottom) - max(low, top)
    if through > 0 and left < x < right:
        met += THROUGH_A_PART + THROUGH_A_SQUARE * through
    return met
