"""The cheapest square line between two ends, found on the tracks beside what is in the way."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from heapq import heappop, heappush
from math import inf

from circuitcheck.drawing.corners import straightened
from circuitcheck.drawing.sides import DOWN, LEFT, RIGHT, WAYS, Leave, bends_to_go
from circuitcheck.drawing.surroundings import BEND, CONTACT, Surroundings
from circuitcheck.geometry import Point

MOST_STEPS = 12_000
"""After so many places looked at, the best simple line has to do."""

RIGHTWARDS, DOWNWARDS, LEFTWARDS = WAYS.index(RIGHT), WAYS.index(DOWN), WAYS.index(LEFT)

State = tuple[int, int, int]
"""A column of `xs`, a row of `ys`, and the way (a place in WAYS) by which the line came."""


def cheapest_line(
    around: Surroundings,
    start: Point,
    leaving: Sequence[Leave],
    finish: Point,
    arriving: Sequence[Leave],
    bound: float,
) -> tuple[float, tuple[Point, ...]] | None:
    """The cheapest line and its cost; None where none is cheaper than `bound` or the search grew too long.

    Best first, with the distance still to go and the bends that takes at least as the estimate,
    which never is too high: what is found first is the cheapest on these tracks.
    """
    search = _Search(around, start, finish, arriving, bound)
    for leave in leaving:
        search.begin(leave)
    return search.run()


class _Search:
    def __init__(
        self,
        around: Surroundings,
        start: Point,
        finish: Point,
        arriving: Sequence[Leave],
        bound: float,
    ) -> None:
        self.around = around
        self.xs, self.ys = around.tracks(start, finish)
        self.finish = finish
        self.bound = bound
        self.start_at = (bisect_left(self.xs, start.x), bisect_left(self.ys, start.y))
        self.finish_at = (bisect_left(self.xs, finish.x), bisect_left(self.ys, finish.y))
        self.arriving = {(-leave.way[0], -leave.way[1]): leave.cost for leave in arriving}
        self.arrivals = [(leave.way, leave.cost) for leave in arriving]
        self.queue: list[tuple[float, int, float, State]] = []
        self.known: dict[State, float] = {}
        self.came_from: dict[State, State] = {}
        self.to_go: dict[State, float] = {}
        self.pushed = 0

    def begin(self, leave: Leave) -> None:
        """Leave the start one track on by this way; it cannot bend before."""
        origin = (*self.start_at, WAYS.index(leave.way))
        self.known[origin] = leave.cost
        self._step(origin, leave.cost, origin)

    def run(self) -> tuple[float, tuple[Point, ...]] | None:
        steps, effort = 0, self.around.effort
        known, queue = self.known, self.queue
        while queue and steps < MOST_STEPS and not effort.is_spent:
            _, _, cost, state = heappop(queue)
            if cost > known[state]:
                continue
            steps += 1
            effort.left -= 1
            column, row, way = state
            if column == -1:
                return cost, self._line(state)
            if state[:2] == self.finish_at:
                self._arrive(state, cost)
                continue
            self._step(state, cost, state)
            turned = cost + BEND + self._corner_cost(column, row)
            self._step((column, row, (way + 1) % 4), turned, state)
            self._step((column, row, (way + 3) % 4), turned, state)
        return None

    def _corner_cost(self, column: int, row: int) -> float:
        """What a bend there meets: on another pipe it would look joined."""
        upright = self.around.upright_steps(self.xs[column], self.ys)
        level = self.around.level_steps(self.ys[row], self.xs)
        return CONTACT if upright.taken[row] or level.taken[column] else 0.0

    def _arrive(self, state: State, cost: float) -> None:
        """At the finish, by a way that suits it: done once nothing cheaper is left."""
        extra = self.arriving.get(WAYS[state[2]])
        if extra is not None:
            self._push((-1, 0, state[2]), cost + extra, 0.0, state)

    def _step(self, state: State, cost: float, came_from: State) -> None:
        """One track on by the state's way."""
        column, row, way = state
        xs, ys = self.xs, self.ys
        if way == RIGHTWARDS:
            if column + 1 == len(xs):
                return
            onward = cost + xs[column + 1] - xs[column]
            new = (column + 1, row, way)
        elif way == DOWNWARDS:
            if row + 1 == len(ys):
                return
            onward = cost + ys[row + 1] - ys[row]
            new = (column, row + 1, way)
        elif way == LEFTWARDS:
            if column == 0:
                return
            onward = cost + xs[column] - xs[column - 1]
            new = (column - 1, row, way)
        else:
            if row == 0:
                return
            onward = cost + ys[row] - ys[row - 1]
            new = (column, row - 1, way)
        # What is quickly seen to lead nowhere is not looked at further.
        if onward >= self.known.get(new, self.bound):
            return
        to_go = self.to_go.get(new)
        if to_go is None:
            to_go = self.to_go[new] = self._least_to_go(new)
        if onward + to_go >= self.bound:
            return
        self._push(new, onward + self._met(new), to_go, came_from)

    def _met(self, new: State) -> float:
        """What the step meets that came to this state."""
        column, row, way = new
        if way == RIGHTWARDS:
            return self.around.level_steps(self.ys[row], self.xs).on[column - 1]
        if way == LEFTWARDS:
            return self.around.level_steps(self.ys[row], self.xs).back[column]
        if way == DOWNWARDS:
            return self.around.upright_steps(self.xs[column], self.ys).on[row - 1]
        return self.around.upright_steps(self.xs[column], self.ys).back[row]

    def _least_to_go(self, state: State) -> float:
        """What a line from there costs at least: its length, and the bends it takes to come in as it must."""
        column, row, way = state
        x, y = self.xs[column], self.ys[row]
        length = abs(self.finish.x - x) + abs(self.finish.y - y)
        if not length:
            return self.arriving.get(WAYS[way], inf)
        here, by, least = Point(x, y), WAYS[way], inf
        # A plain loop: this is asked at every place that is looked at.
        for faces, extra in self.arrivals:
            cost = BEND * bends_to_go(here, by, self.finish, faces) + extra
            if cost < least:
                least = cost
                if not cost:
                    break
        return length + least

    def _push(self, state: State, cost: float, to_go: float, came_from: State) -> None:
        if cost + to_go >= self.bound or cost >= self.known.get(state, self.bound):
            return
        self.known[state] = cost
        self.came_from[state] = came_from
        self.pushed += 1
        heappush(self.queue, (cost + to_go, self.pushed, cost, state))

    def _line(self, state: State) -> tuple[Point, ...]:
        points = []
        at = self.came_from[state]
        while True:
            points.append(Point(self.xs[at[0]], self.ys[at[1]]))
            before = self.came_from.get(at)
            if before is None:
                break
            at = before
        return straightened(points[::-1])
