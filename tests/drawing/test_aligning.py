"""Aligning and spreading parts: whole squares, pipes that follow, one edit."""

from __future__ import annotations

from itertools import pairwise

import pytest

from circuitcheck.drawing.aligning import Side, align, distribute
from circuitcheck.drawing.arranging import move, shift
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.edits import place
from circuitcheck.drawing.pipes import draw_pipe
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds


def drawn(*parts: tuple[str, float, float]) -> tuple[Drawing, list[str]]:
    drawing, ids = Drawing(), []
    for kind, x, y in parts:
        drawing, id = place(drawing, kinds()[kind], Point(x, y))
        ids.append(id)
    return drawing, ids


@pytest.fixture
def three() -> tuple[Drawing, list[str]]:
    return drawn(("pump", 0, 0), ("heat_source", 10, 4), ("expansion_vessel", 23, 9))


@pytest.mark.parametrize(
    ("side", "xs", "ys"),
    [
        (Side.LEFT, [0, 2, 1], [0, 4, 9]),
        (Side.RIGHT, [23, 21, 23], [0, 4, 9]),
        (Side.CENTRES, [11, 11, 11], [0, 4, 9]),
        (Side.TOP, [0, 10, 23], [0, 2, 1]),
        (Side.MIDDLES, [0, 10, 23], [4, 4, 4]),
    ],
)
def test_parts_come_into_line(
    three: tuple[Drawing, list[str]], side: Side, xs: list[float], ys: list[float]
) -> None:
    drawing, ids = three
    after = align(drawing, ids, side)
    assert [after.components[id].at for id in ids] == [Point(x, y) for x, y in zip(xs, ys, strict=True)]


@pytest.mark.parametrize("side", list(Side))
def test_aligned_they_stay_aligned(three: tuple[Drawing, list[str]], side: Side) -> None:
    drawing, ids = three
    after = align(drawing, ids, side)
    assert align(after, ids, side) == after
    assert all(
        part.at is not None and part.at.x % 1 == part.at.y % 1 == 0 for part in after.components.values()
    )


def test_gaps_become_alike_and_the_outer_two_stay() -> None:
    drawing, ids = drawn(("pump", 0, 0), ("zone_valve", 4, 3), ("heat_source", 12, 6), ("pump", 30, 9))
    after = distribute(drawing, ids, across=True)
    places = [after.components[id].at for id in ids]
    boxes = [after.components[id].box() for id in ids]
    gaps = [right[0] - left[2] for left, right in pairwise(boxes) if left and right]
    assert places[0] == Point(0, 0) and places[-1] == Point(30, 9)
    assert max(gaps) - min(gaps) <= 1
    assert distribute(after, ids, across=True) == after


def test_pipes_follow_and_are_left_alone_between_parts_that_go_alike() -> None:
    drawing, (a, b, c) = drawn(("pump", 0, 0), ("zone_valve", 8, 0), ("pump", 20, 7))
    drawing, inner = draw_pipe(drawing, Joint(a, "out"), Joint(b, "in"), via=[Point(4, 0), Point(4, 0)])
    drawing, outer = draw_pipe(drawing, Joint(b, "out"), Joint(c, "in"), via=[Point(12, 0), Point(12, 7)])
    after = shift(drawing, {a: Point(0, 3), b: Point(0, 3)})
    assert after.pipes[inner].via == (Point(4, 3), Point(4, 3))
    assert after.pipes[outer].via == (Point(12, 3), Point(12, 7))
    assert shift(drawing, {a: Point(0, 3), b: Point(0, 3)}) == move(drawing, (a, b), 0, 3)


def test_too_few_and_unknown_are_told(three: tuple[Drawing, list[str]]) -> None:
    drawing, ids = three
    with pytest.raises(EditError, match="two parts"):
        align(drawing, ids[:1], Side.LEFT)
    with pytest.raises(EditError, match="three parts"):
        distribute(drawing, ids[:2], across=True)
    with pytest.raises(EditError, match="nothing called"):
        align(drawing, (*ids, "ghost"), Side.LEFT)
