"""The search for a line: what it finds is the cheapest there is, as a plain search without any estimate says."""

from __future__ import annotations

from heapq import heappop, heappush
from itertools import pairwise
from math import inf
from random import Random

import pytest

from circuitcheck.drawing.ground import Ground
from circuitcheck.drawing.search import cheapest_line
from circuitcheck.drawing.shapes import own_cost
from circuitcheck.drawing.sides import WAYS, Leave
from circuitcheck.drawing.surroundings import BEND, CONTACT, Effort, Surroundings
from circuitcheck.geometry import Point

REGION = (-6.0, -6.0, 26.0, 22.0)
START, FINISH = Point(0, 0), Point(20, 16)


def crowded(seed: int) -> Surroundings:
    """Boxes, some on half squares, and pipes, some on one another, round the ends of a pipe."""
    chance, ground = Random(seed), Ground()
    for n in range(chance.randint(0, 8)):
        left, top = chance.randint(-4, 22), chance.choice((0, 0.5)) + chance.randint(-4, 18)
        ground.add_box(f"k{n}", (left, top, left + chance.randint(1, 6), top + chance.randint(1, 6)))
    for n in range(chance.randint(0, 12)):
        points = [Point(chance.randint(-4, 24), chance.randint(-4, 20))]
        for _ in range(chance.randint(1, 4)):
            x, y = points[-1]
            along = chance.randint(-12, 12) or 5
            points.append(Point(x + along, y) if chance.random() < 0.5 else Point(x, y + along))
        ground.add_line(f"q{n}", points)
    return ground.around(REGION, (START, FINISH), "p", (), Effort())


def plainly_cheapest(around: Surroundings, leaving: tuple[Leave, ...], arriving: tuple[Leave, ...]) -> float:
    """Dijkstra's search with every run's cost asked for anew."""
    xs, ys = around.tracks(START, FINISH)
    inwards = {(-leave.way[0], -leave.way[1]): leave.cost for leave in arriving}
    first = (xs.index(START.x), ys.index(START.y))
    queue = [(leave.cost, 0, (*first, WAYS.index(leave.way)), True) for leave in leaving]
    known: dict[tuple[int, int, int], float] = {}
    best = inf
    while queue:
        cost, _, (column, row, way), fresh = heappop(queue)
        if cost >= known.get((column, row, way), inf) and not fresh:
            continue
        here = Point(xs[column], ys[row])
        if here == FINISH:
            best = min(best, cost + inwards.get(WAYS[way], inf))
            continue
        known[column, row, way] = cost
        turned = BEND + around.corner_cost(here)
        for onward, extra in ((way, 0.0),) if fresh else ((way, 0.0), (way - 1, turned), (way + 1, turned)):
            dx, dy = WAYS[onward % 4]
            if not (0 <= column + dx < len(xs) and 0 <= row + dy < len(ys)):
                continue
            there = Point(xs[column + dx], ys[row + dy])
            length = abs(there.x - here.x) + abs(there.y - here.y)
            after = cost + extra + length + around.run_cost(here, there)
            heappush(queue, (after, len(queue) + 1, (column + dx, row + dy, onward % 4), False))
    return best


@pytest.mark.parametrize("seed", range(12))
def test_what_is_found_is_the_cheapest(seed: int) -> None:
    chance, around = Random(seed), crowded(seed)
    leaving = tuple(
        Leave(way, chance.choice((0.0, 3.0))) for way in chance.sample(WAYS, chance.randint(1, 4))
    )
    arriving = tuple(
        Leave(way, chance.choice((0.0, 5.0))) for way in chance.sample(WAYS, chance.randint(1, 4))
    )
    found = cheapest_line(around, START, leaving, FINISH, arriving, inf)
    assert found is not None
    cost, line = found
    assert cost == pytest.approx(plainly_cheapest(around, leaving, arriving))
    way = (
        (line[1].x > line[0].x) - (line[1].x < line[0].x),
        (line[1].y > line[0].y) - (line[1].y < line[0].y),
    )
    back = (
        (line[-2].x > line[-1].x) - (line[-2].x < line[-1].x),
        (line[-2].y > line[-1].y) - (line[-2].y < line[-1].y),
    )
    sides = {leave.way: leave.cost for leave in leaving}[way] + {each.way: each.cost for each in arriving}[
        back
    ]
    told = own_cost(line) + around.line_cost(line) + sides
    # What lies through a part or along a pipe costs the search once a step, a whole line once a run.
    assert cost == pytest.approx(told) if around.line_cost(line) < CONTACT else cost >= told


@pytest.mark.parametrize("seed", range(12))
def test_the_steps_of_a_track_meet_what_runs_of_their_length_meet(seed: int) -> None:
    around = crowded(seed)
    xs, ys = around.tracks(START, FINISH)
    for x in xs:
        steps = around.upright_steps(x, ys)
        for n, (a, b) in enumerate(pairwise(Point(x, y) for y in ys)):
            assert steps.on[n] == pytest.approx(around.run_cost(a, b))
            assert steps.back[n] == pytest.approx(around.run_cost(b, a))
    for y in ys:
        steps = around.level_steps(y, xs)
        for n, (a, b) in enumerate(pairwise(Point(x, y) for x in xs)):
            assert steps.on[n] == pytest.approx(around.run_cost(a, b))
            assert steps.back[n] == pytest.approx(around.run_cost(b, a))


def test_beyond_its_effort_nothing_is_found() -> None:
    around = crowded(1)
    around.effort.left = 20
    assert cheapest_line(around, START, (Leave((1, 0)),), FINISH, (Leave((1, 0)),), inf) is None
