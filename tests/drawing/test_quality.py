"""Pipes over all that ships, shaken about, and joined at random: measured, with a limit to each measure."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from functools import cache
from itertools import pairwise

import pytest

from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.picture.marks import SQUARE_PX, Fill, extent
from circuitcheck.sheet.layout import Layout
from circuitcheck.sheet.pictures import Pictures
from tests.drawing.laid import at_random, shaken, shipped, without_corners
from tests.drawing.quality import Line, Quality, Squares, bends, measured

SHAKEN = ("cottage", "guest-house", "village-hall", "separator", "two-stores", "built-in-devices")
SEEDS = range(2)
RANDOM_SEEDS = range(6)

Laid = tuple[str, Drawing, dict[str, Line], Quality]


@cache
def laid(group: str) -> Sequence[Laid]:
    """The drawings of a group, each with its lines and what is amiss with them."""
    return [(name, drawn, lines := dict(routes(drawn)), measured(drawn, lines)) for name, drawn in _of(group)]


def _of(group: str) -> Iterator[tuple[str, Drawing]]:
    if group == "random":
        for seed in RANDOM_SEEDS:
            yield f"random {seed}", at_random(seed)
            yield f"random and close together {seed}", at_random(seed, columns=5, rows=4, pitch=12)
        return
    for name, drawn in shipped():
        if group == "as shipped":
            yield name, drawn
        elif group == "without corners":
            yield name, without_corners(drawn)
        elif name in SHAKEN:
            yield from ((f"{name} {seed}", shaken(drawn, seed)) for seed in SEEDS)


GROUPS = ("as shipped", "without corners", "shaken", "random")


@pytest.mark.parametrize("group", GROUPS)
def test_every_pipe_that_the_program_routes_runs_square(group: str) -> None:
    # What runs at a slant is in none of the measures below.
    for name, drawn, lines, _ in laid(group):
        assert set(lines) == {id for id, pipe in drawn.pipes.items() if all(map(drawn.end_at, pipe.ends))}
        for id, line in lines.items():
            if drawn.pipes[id].via is None:
                assert all(a.x == b.x or a.y == b.y for a, b in pairwise(line)), (name, id)


@pytest.mark.parametrize("group", GROUPS)
def test_no_pipe_runs_through_a_part_where_there_is_a_way_round(group: str) -> None:
    for name, drawn, lines, quality in laid(group):
        squares = Squares(drawn)
        for id, part in quality.run_overs:
            assert squares.fewest_bends(drawn.pipes[id], lines[id]) is None, (name, id, part)


@pytest.mark.parametrize("group", GROUPS)
def test_no_pipe_runs_over_a_tee_or_cap_of_others(group: str) -> None:
    assert [(name, quality.over_tees) for name, _, _, quality in laid(group) if quality.over_tees] == []


@pytest.mark.parametrize("group", GROUPS)
def test_parallel_pipes_lie_a_square_apart(group: str) -> None:
    assert [(name, quality.too_close) for name, _, _, quality in laid(group) if quality.too_close] == []


MOST_LOOK_JOINED = {"as shipped": 0, "without corners": 0, "shaken": 2, "random": 0}
"""Two ports two squares apart that face one another, joined to other parts, have no other ways."""


@pytest.mark.parametrize("group", GROUPS)
def test_two_pipes_look_joined_only_where_there_is_no_other_way(group: str) -> None:
    told = []
    for name, drawn, lines, quality in laid(group):
        for pair in sorted({tuple(sorted(each)) for each in (*quality.overlaps, *quality.touches)}):
            told.append((name, *pair))
            for id in pair:
                squares = Squares(drawn, {other: line for other, line in lines.items() if other != id})
                assert squares.fewest_bends(drawn.pipes[id], lines[id]) is None, (name, *pair)
    assert len(told) <= MOST_LOOK_JOINED[group], told


MORE_BENDS = {"as shipped": 0.0, "without corners": 0.002, "shaken": 0.08, "random": 0.18}
"""The share of the pipes that have more bends than it takes."""


@pytest.mark.parametrize("group", GROUPS)
def test_few_pipes_bend_more_often_than_it_takes(group: str) -> None:
    more = Counter[int]()
    for _, drawn, lines, _ in laid(group):
        squares = Squares(drawn)
        for id, line in lines.items():
            if drawn.pipes[id].via is None and line[0] != line[-1]:
                least = squares.fewest_bends(drawn.pipes[id], line)
                if least is not None:
                    more[bends(line) - least] += 1
    assert min(more) == 0
    assert max(more) <= 4
    assert 1 - more[0] / more.total() <= MORE_BENDS[group], more


@pytest.mark.parametrize("group", GROUPS)
def test_corners_a_person_set_are_kept_exactly(group: str) -> None:
    set_by_hand = 0
    for _, drawn, lines, _ in laid(group):
        for id, pipe in drawn.pipes.items():
            if pipe.via is not None and id in lines:
                set_by_hand += 1
                assert lines[id] == (drawn.end_at(pipe.ends[0]), *pipe.via, drawn.end_at(pipe.ends[1]))
    assert (set_by_hand > 100) == (group == "as shipped")


@pytest.mark.parametrize("group", GROUPS)
def test_every_crossing_hops_and_nothing_else(group: str) -> None:
    for name, drawn, lines, quality in laid(group):
        layout = Layout(lambda drawing: dict.fromkeys(drawing.pipes, "flow"))
        layout.update(drawn)
        assert dict(layout.routes) == lines
        crossed = {(level, at.x * SQUARE_PX, at.y * SQUARE_PX) for level, _, at in quality.crossings}
        assert {(id, *place) for id, hops in layout.hops.items() for place in hops} == crossed, name


def test_every_joint_of_three_pipes_has_a_dot() -> None:
    for name, drawn in shipped():
        items = Pictures(drawn, lambda drawing: dict.fromkeys(drawing.pipes, "flow"))._items
        tees = [part for part in drawn.components.values() if part.kind.name == "tee"]
        assert tees, name
        for tee in tees:
            assert tee.at is not None
            x, y = tee.at.x * SQUARE_PX, tee.at.y * SQUARE_PX
            (left, top, right, low) = extent(
                [mark for mark in items[tee.id].marks if isinstance(mark, Fill) and mark.role == "flow"]
            )
            assert ((left + right) / 2, (top + low) / 2) == pytest.approx((x, y)), (name, tee.id)
            assert right - left >= 6


def test_the_measures_see_what_is_wrong() -> None:
    _, drawn = next(shipped())
    part = next(each for each in drawn.components.values() if (box := each.box()) and box[2] - box[0] > 1)
    left, top, right, low = part.box() or (0.0, 0.0, 0.0, 0.0)
    middle = (top + low) / 2
    one, other, third = list(drawn.pipes)[:3]
    lines = {
        one: (Point(left - 3, middle), Point(right + 3, middle)),
        other: (Point(left, middle + 0.5), Point(right, middle + 0.5)),
        third: (Point(left - 2, middle), Point(left - 1, middle)),
    }
    found = measured(drawn, lines)
    assert (one, part.id) in found.run_overs
    assert found.too_close == [(one, other, 0.5)]
    assert found.overlaps == [(one, third)]
