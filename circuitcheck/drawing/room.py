"""Where on the sheet there is room: along a pipe's line, and beside it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import replace
from itertools import pairwise

from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.geometry import Point, distance

MARGIN = 1.0
"""How far a new part keeps from what lies there already, in squares."""
REACH = 14
"""How far from where it is wanted a place is looked for, in squares."""

Box = tuple[float, float, float, float]


def along(line: Sequence[Point], half: float, *, from_first: bool) -> Point:
    """The point of a line nearest one end of it where a part reaching `half` squares either way fits
    in one straight run, on whole squares if the run is; else the middle of its longest run."""
    runs = list(pairwise(line if from_first else tuple(reversed(line))))
    for start, finish in runs:
        run = distance(start, finish)
        if run >= 2 * half + 2 * MARGIN:
            return _step(start, finish, half + MARGIN)
    start, finish = max(runs, key=lambda each: distance(*each))
    return _step(start, finish, float(round(distance(start, finish) / 2)))


def _step(start: Point, finish: Point, far: float) -> Point:
    run = distance(start, finish)
    share = far / run if run else 0.0
    return Point(start.x + (finish.x - start.x) * share, start.y + (finish.y - start.y) * share)


def free_place(
    drawing: Drawing,
    lines: Iterable[Sequence[Point]],
    part: Component,
    port: str,
    wanted: Point,
) -> Point | None:
    """Where to put a part so that its port lies near `wanted` and it covers no part and no pipe.

    `part` may lie anywhere; only its kind and turn count. None where nothing within reach is free.
    """
    taken = _taken(drawing, lines, wanted)
    for offset in _rings():
        target = Point(wanted.x + offset.x, wanted.y + offset.y)
        placed = _with_port_at(part, port, target)
        box = placed.box()
        if box is not None and not any(_meet(box, other) for other in taken):
            return placed.at
    return None


def _with_port_at(part: Component, port: str, target: Point) -> Component:
    at_origin = replace(part, at=Point(0, 0))
    offset = at_origin.port_at(port) or Point(0, 0)
    return replace(part, at=Point(round(target.x - offset.x), round(target.y - offset.y)))


def _taken(drawing: Drawing, lines: Iterable[Sequence[Point]], wanted: Point) -> list[Box]:
    far = REACH + 12.0
    boxes = [box for part in drawing.components.values() if (box := part.box()) is not None]
    for line in lines:
        for a, b in pairwise(line):
            boxes.append((min(a.x, b.x), min(a.y, b.y), max(a.x, b.x), max(a.y, b.y)))
    return [
        box
        for box in boxes
        if box[0] < wanted.x + far
        and box[2] > wanted.x - far
        and box[1] < wanted.y + far
        and box[3] > wanted.y - far
    ]


def _meet(one: Box, two: Box) -> bool:
    return (
        one[0] - MARGIN < two[2]
        and one[2] + MARGIN > two[0]
        and one[1] - MARGIN < two[3]
        and one[3] + MARGIN > two[1]
    )


def _rings() -> Iterator[Point]:
    """Offsets from near to far: three squares off first, so that the pipe to the part shows."""
    offsets = [
        Point(x, y)
        for x in range(-REACH, REACH + 1)
        for y in range(-REACH, REACH + 1)
        if max(abs(x), abs(y)) >= 2
    ]
    return iter(sorted(offsets, key=lambda each: (abs(each.x) + abs(each.y), each.y, each.x)))
