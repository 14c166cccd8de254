"""Where on the sheet there is room: along a pipe's line, and beside it."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import replace
from itertools import pairwise
from math import inf

from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.geometry import Point, distance, turned

MARGIN = 1.0
"""How far a new part keeps from what lies there already, in squares."""
REACH = 14
"""How far from where it is wanted a place is looked for, in squares."""
TURNING_BACK = 4.0
"""How many squares further off a place may be that spares the pipe a turn back."""
CROSSING = 10.0
"""How many squares further off a place may be to which a pipe can run without meeting anything."""

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
    leaves: Point | None = None,
) -> Point | None:
    """Where to put a part so that its port lies near `wanted` and it covers no part and no pipe.

    `part` may lie anywhere; only its kind and turn count. Where the port looks at `wanted`, and a pipe
    that leaves there (towards `leaves`, else any way) need turn but once and meets nothing, is preferred.
    None where nothing within reach is free.
    """
    taken = _taken(drawing, lines, wanted)
    faces = turned(part.kind.port(port).faces or (0, 0), part.turn, part.mirrored)
    best: Point | None = None
    least = inf
    for cost, offset in _rings(faces):
        if cost >= least:
            break
        target = Point(wanted.x + offset.x, wanted.y + offset.y)
        placed = _with_port_at(part, port, target)
        box = placed.box()
        if box is None or any(_meet(box, other) for other in taken):
            continue
        looks = not (faces.x or faces.y) or _ahead(faces, target, wanted) > 0
        cost += 0.0 if looks and _is_clear(wanted, target, leaves, taken) else CROSSING
        if cost < least:
            best, least = placed.at, cost
    return best


def _is_clear(start: Point, finish: Point, leaves: Point | None, taken: Iterable[Box]) -> bool:
    """Whether a pipe with one corner at most, that leaves that way, meets nothing."""
    across, down = Point(finish.x, start.y), Point(start.x, finish.y)
    if leaves is None or not (leaves.x or leaves.y):
        corners = [across, down]
    else:
        corners = [across] if leaves.x else [down]
        if _ahead(leaves, start, finish) <= 0:
            return False
    blocks = list(taken)
    return any(
        not any(_passes(_shortened(start, corner), box) or _passes((corner, finish), box) for box in blocks)
        for corner in corners
    )


def _ahead(way: Point, start: Point, finish: Point) -> float:
    """How far ahead a point lies of another, that way."""
    return (finish.x - start.x) * way.x + (finish.y - start.y) * way.y


def _shortened(start: Point, finish: Point) -> tuple[Point, Point]:
    """A run without its first half square, which lies on what it leaves."""
    run = distance(start, finish)
    return (_step(start, finish, 0.5), finish) if run > 0.5 else (finish, finish)


def _passes(run: tuple[Point, Point], box: Box) -> bool:
    (a, b), near = run, 0.25
    return (
        min(a.x, b.x) - near < box[2]
        and max(a.x, b.x) + near > box[0]
        and min(a.y, b.y) - near < box[3]
        and max(a.y, b.y) + near > box[1]
    )


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


def _rings(faces: Point) -> list[tuple[float, Point]]:
    """Offsets from near to far with their cost, two squares off first, so that the pipe to the part
    shows; what lies behind a port that faces that way counts as further off."""
    found = []
    for x in range(-REACH, REACH + 1):
        for y in range(-REACH, REACH + 1):
            if max(abs(x), abs(y)) >= 2:
                ahead = _ahead(faces, Point(x, y), Point(0, 0))
                turns_back = TURNING_BACK if ahead <= 0 and (faces.x or faces.y) else 0.0
                found.append((abs(x) + abs(y) + turns_back, Point(x, y)))
    return sorted(found, key=lambda each: (each[0], each[1].y, each[1].x))
