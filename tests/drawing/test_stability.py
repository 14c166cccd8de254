"""Lines stay while a drawing is edited, except where that would be worse than to lay a pipe anew."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise, product
from math import inf
from random import Random

import pytest

from circuitcheck.arrangements.catalogue import arrangements
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.edits import place, turn
from circuitcheck.drawing.lying import Lying
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.surroundings import Effort
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.sheet.layout import Layout
from tests.benchmarks.laid_out import houses
from tests.drawing.laid import shaken, without_corners
from tests.drawing.layouts import guest_house
from tests.drawing.quality import Line, bends, measured, stands_clear

NAMES = ("combination", "two-zone-valves", "two-stores", "separator")
STEPS = 25
BY_ONE = ((1, 0), (0, 1), (-1, 0), (0, -1))
LAYOUT_CHECKS = ("near-miss", "unclear-crossing")

Step = tuple[str, Drawing, Routes, Drawing, Routes]
"""The part that moved, and the drawing and its lines before and after."""


def steps(name: str, seed: int, *, many_bends: bool = False) -> Iterator[Step]:
    """Parts of an arrangement moved by one square each, one after another, none onto another part; with
    `many_bends` they are shaken about first."""
    drawn = arrangements()[name].drawing
    chance, drawn = Random(seed), shaken(drawn, seed) if many_bends else without_corners(drawn)
    lines = routes(drawn)
    ids = sorted(drawn.components)
    for _ in range(STEPS):
        id = chance.choice(ids)
        after = move(drawn, [id], *chance.choice(BY_ONE))
        if not stands_clear(after.components[id], after.components.values(), 1):
            continue
        new = routes(after, lines)
        yield id, drawn, lines, after, new
        drawn, lines = after, new


def in_trouble(drawn: Drawing, lines: dict[str, Line]) -> set[str]:
    """The pipes that run through a part, or seem joined to another, with these lines."""
    found = measured(drawn, lines)
    alone = [id for id, _ in (*found.run_overs, *found.over_tees)]
    return {*alone, *(id for pair in (*found.overlaps, *found.touches) for id in pair)}


@pytest.mark.parametrize("name", NAMES)
def test_only_the_pipes_of_a_moved_part_and_those_in_its_way_are_laid_anew(name: str) -> None:
    stayed = 0
    for id, _, before, after, lines in steps(name, seed=1):
        own = set(after.pipes_of(id))
        others_as_they_lay = {**lines, **{pipe: before[pipe] for pipe in lines if pipe not in own}}
        in_the_way = in_trouble(after, others_as_they_lay) | in_trouble(after, dict(before))
        for pipe in after.pipes:
            if pipe not in own and lines[pipe] is not before[pipe]:
                assert pipe in in_the_way, (id, pipe)
            stayed += lines[pipe] is before[pipe]
        assert lines.others_than(before) == {pipe for pipe in lines if lines[pipe] != before[pipe]}
    assert stayed > 0.8 * len(after.pipes) * STEPS / 2


def followed(line: Line, start: Point, finish: Point) -> Line | None:
    """The same runs in the same directions between ends that moved a little; None where that cannot be."""
    points = list(line)
    for end, first, second in ((start, 0, 1), (finish, -1, -2)):
        old, corner = points[first], points[second]
        if old == end:
            continue
        if len(points) < 4:
            return None
        points[first] = end
        points[second] = Point(corner.x, end.y) if old.y == corner.y else Point(end.x, corner.y)
    return tuple(points) if ways(points) == ways(line) else None


def ways(line: Line | list[Point]) -> list[tuple[int, int]]:
    return [((b.x > a.x) - (b.x < a.x), (b.y > a.y) - (b.y < a.y)) for a, b in pairwise(line)]


@pytest.mark.parametrize("name", NAMES)
def test_a_pipe_keeps_its_shape_where_it_still_fits(name: str) -> None:
    kept = 0
    for id, _, before, after, lines in steps(name, seed=2, many_bends=True):
        for pipe in after.pipes_of(id):
            old, new = before[pipe], lines[pipe]
            shape = followed(old, new[0], new[-1])
            if shape is None or old == new:
                continue
            if ways(new) == ways(old):
                kept += 1
            elif bends(new) >= bends(shape):
                # It goes another way with as many bends: then the old way is in trouble, or crosses more.
                as_followed = {**lines, pipe: shape}
                met = len(measured(after, as_followed).crossings) - len(
                    measured(after, dict(lines)).crossings
                )
                close = beside_parts(after, shape) > beside_parts(after, new)
                assert pipe in in_trouble(after, as_followed) or met > 0 or close, (id, pipe, old, new)
    assert kept > 3


def beside_parts(drawn: Drawing, line: Line) -> float:
    """How many squares a line passes closer than a square by a part, its first and last run left out."""
    boxes = [box for part in drawn.components.values() if (box := part.box()) is not None]
    far = 0.0
    for a, b in list(pairwise(line))[1:-1]:
        left, top, right, low = min(a.x, b.x), min(a.y, b.y), max(a.x, b.x), max(a.y, b.y)
        for box in boxes:
            if left == right and box[0] - 1 < left < box[2] + 1:
                far += max(0.0, min(low, box[3] + 1) - max(top, box[1] - 1))
            elif top == low and box[1] - 1 < top < box[3] + 1:
                far += max(0.0, min(right, box[2] + 1) - max(left, box[0] - 1))
    return far


def layout_findings(lines: Routes) -> dict[str, set[object]]:
    """What is said about these lines."""
    case = Case(lines.drawing)
    case.__dict__.update(lines=lines, lying=Lying(lines))
    return {
        name: {(found.components, found.pipes) for found in checks()[name].judge(case).findings}
        for name in LAYOUT_CHECKS
    }


def test_opened_anew_hardly_ever_another_finding_is_made() -> None:
    """The lines themselves may be others: a pipe that stays is what makes a drawing calm to work on."""
    came, lines_alike, all_lines, others = 0, 0, 0, []
    for name in NAMES:
        for id, _, _, after, lines in steps(name, seed=3):
            anew = routes(replace(after))
            came += 1
            all_lines += len(anew)
            lines_alike += sum(lines[pipe] == anew[pipe] for pipe in anew)
            if layout_findings(lines) != layout_findings(anew):
                others.append((name, id))
    assert came > 60
    assert len(others) <= 0.02 * came, others
    assert lines_alike > 0.93 * all_lines


def on_a_pipe() -> tuple[Drawing, Drawing]:
    """A drawing, and the same with a radiator put on its pipe p21."""
    drawn = guest_house()
    covered, _ = place(drawn, kinds()["radiator"], Point(50, 26))
    return drawn, covered


def test_a_pipe_makes_way_for_a_part_and_is_back_when_that_is_undone() -> None:
    drawn, covered = on_a_pipe()
    before = routes(drawn)
    lines = routes(covered, before)
    assert lines.others_than(before) == {"p21"}
    assert measured(covered, dict(lines)).run_overs == []
    undone = routes(drawn, lines)
    assert undone.others_than(before) == set()
    assert [*undone] == [*before]
    assert undone._ground._runs.keys() >= {cell for cell, inside in before._ground._runs.items() if inside}
    assert routes(covered, undone).others_than(lines) == set()


def test_whoever_asks_and_whatever_was_before_one_drawing_has_one_set_of_lines() -> None:
    drawn, covered = on_a_pipe()
    first = routes(covered, routes(drawn))
    assert dict(routes(covered)) == dict(first)
    assert dict(routes(covered, routes(turn(drawn, ["pu"])))) == dict(first)
    assert Case(covered).lines.others_than(first) == set()
    assert dict(routes(replace(covered))).keys() == dict(first).keys()


def test_a_part_with_four_pipes_is_routed_within_a_frame_on_a_thousand(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """Told by what is looked at, some microseconds each; tests/benchmarks tells the milliseconds."""
    efforts: list[Counted] = []

    class Counted(Effort):
        def __init__(self, left: float = inf) -> None:
            super().__init__(left)
            self.begun = left
            efforts.append(self)

    drawn = without_corners(houses(1_000))
    four = [id for id in drawn.components if len(drawn.pipes_of(id)) >= 4][:3]
    lines = routes(drawn)
    monkeypatch.setattr("circuitcheck.drawing.laying.Effort", Counted)
    for id, (dx, dy) in product(four, BY_ONE):
        drawn = move(drawn, [id], dx, dy)
        before, lines = lines, routes(drawn, lines)
        assert 0 < len(lines.others_than(before)) <= 8
    looked_at = [each.begun - each.left for each in efforts if each.begun < inf]
    assert len(looked_at) == 12
    assert max(looked_at) < 1_500


def test_a_part_moved_past_a_pipe_leaves_no_trace_while_the_gesture_lasts() -> None:
    base, radiator = place(guest_house(), kinds()["radiator"], Point(50, 20))
    layout = Layout(lambda drawing: dict.fromkeys(drawing.pipes, "flow"))
    layout.update(base)
    before, hops = dict(layout.lines), dict(layout.hops)
    moved_away = set()
    for down in (*range(1, 9), *range(7, 0, -1)):
        layout.update(move(base, [radiator], 0, down), passing=True)
        moved_away |= {pipe for pipe in base.pipes if layout.lines[pipe] != before[pipe]}
    assert moved_away == {"p21"}
    assert layout.lines == before
    last = move(base, [radiator], 0, 1)
    layout.update(last)
    assert layout.lines == before and layout.hops == hops
    assert dict(routes(last)) == dict(layout.routes)
