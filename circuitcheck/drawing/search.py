"""The cheapest square line between two ends, found on the tracks beside what is in the way."""

from __future__ import annotations

from bisect import bisect_left
from collections.abc import Sequence
from heapq import heappop, heappush

from circuitcheck.drawing.corners import straightened
from circuitcheck.drawing.ground import BEND, Surroundings
from circuitcheck.drawing.sides import WAYS, Leave
from circuitcheck.geometry import Point

MOST_STEPS = 4000
"""After so many places looked at, the best simple line has to do."""

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

    Best first, with the distance still to go (and a bend where one is needed) as the estimate,
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
        self.queue: list[tuple[float, int, float, State]] = []
        self.known: dict[State, float] = {}
        self.came_from: dict[State, State] = {}
        self.corner_costs: dict[tuple[int, int], float] = {}
        self.pushed = 0

    def begin(self, leave: Leave) -> None:
        """Leave the start one track on by this way; it cannot bend before."""
        origin = (*self.start_at, WAYS.index(leave.way))
        self.known[origin] = leave.cost
        self._step(origin, leave.cost)

    def run(self) -> tuple[float, tuple[Point, ...]] | None:
        steps, effort = 0, self.around.effort
        while self.queue and steps < MOST_STEPS and not effort.is_spent:
            _, _, cost, state = heappop(self.queue)
            if cost > self.known[state]:
                continue
            steps += 1
            if state[0] == -1:
                return cost, self._line(state)
            if state[:2] == self.finish_at:
                self._arrive(state, cost)
                continue
            self._step(state, cost)
            turned = cost + BEND + self._corner_cost(state[0], state[1])
            for way in ((state[2] + 1) % 4, (state[2] + 3) % 4):
                self._step((state[0], state[1], way), turned, state)
        return None

    def _corner_cost(self, column: int, row: int) -> float:
        key = (column, row)
        found = self.corner_costs.get(key)
        if found is None:
            corner = Point(self.xs[column], self.ys[row])
            found = self.corner_costs[key] = self.around.corner_cost(corner)
        return found

    def _arrive(self, state: State, cost: float) -> None:
        """At the finish, by a way that suits it: done once nothing cheaper is left."""
        extra = self.arriving.get(WAYS[state[2]])
        if extra is not None:
            self._push((-1, 0, state[2]), cost + extra, 0.0, state)

    def _step(self, state: State, cost: float, came_from: State | None = None) -> None:
        """One track on by the state's way."""
        column, row, way = state
        dx, dy = WAYS[way]
        new_column, new_row = column + dx, row + dy
        if not (0 <= new_column < len(self.xs) and 0 <= new_row < len(self.ys)):
            return
        a, b = Point(self.xs[column], self.ys[row]), Point(self.xs[new_column], self.ys[new_row])
        onward = cost + abs(a.x - b.x) + abs(a.y - b.y)
        left_x, left_y = abs(self.finish.x - b.x), abs(self.finish.y - b.y)
        to_go = left_x + left_y + (BEND if left_x and left_y else 0.0)
        new = (new_column, new_row, way)
        if onward + to_go >= min(self.bound, self.known.get(new, self.bound) + to_go):
            return
        self._push(new, onward + self.around.run_cost(a, b), to_go, came_from or state)

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
