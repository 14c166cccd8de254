"""Aligning parts by an edge or their middle, and spreading them evenly, always by whole squares."""

from __future__ import annotations

from collections.abc import Iterable
from enum import Enum
from itertools import pairwise
from math import ceil, copysign

from circuitcheck.drawing.arranging import shift
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.value import Component, Control, Drawing
from circuitcheck.geometry import Point
from circuitcheck.told import a_word, worded

Box = tuple[float, float, float, float]


class Side(Enum):
    """What comes to lie in one line. CENTRES: one above the other; MIDDLES: side by side."""

    LEFT = "left"
    CENTRES = "centres"
    RIGHT = "right"
    TOP = "top"
    MIDDLES = "middles"
    BOTTOM = "bottom"


def align(drawing: Drawing, ids: Iterable[str], side: Side) -> Drawing:
    """Bring parts and controls into one line: the outermost edge of them all, or the middle of it all.

    Centres and middles are where a part's own `at` is, so that the ports of valves come into line.
    Pipes among the ids are left to follow. Raises EditError where there are not two parts.
    """
    placed = _placed(drawing, ids)
    if len(placed) < 2:
        raise EditError(a_word("Choose two parts or more to align them."))
    boxes = {id: _box(thing) for id, thing in placed.items()}
    upright = side in (Side.LEFT, Side.CENTRES, Side.RIGHT)
    axis = 0 if upright else 1
    if side in (Side.LEFT, Side.TOP):
        line = min(box[axis] for box in boxes.values())
        off = {id: line - box[axis] for id, box in boxes.items()}
    elif side in (Side.RIGHT, Side.BOTTOM):
        line = max(box[axis + 2] for box in boxes.values())
        off = {id: line - box[axis + 2] for id, box in boxes.items()}
    else:
        middles = {id: _at(thing)[axis] for id, thing in placed.items()}
        line = _whole((min(middles.values()) + max(middles.values())) / 2)
        off = {id: line - middle for id, middle in middles.items()}
    # Parts of an odd width have their edges on half squares; their ports must stay on whole ones.
    whole = {id: _whole(away) for id, away in off.items()}
    return shift(drawing, {id: Point(away, 0) if upright else Point(0, away) for id, away in whole.items()})


def distribute(drawing: Drawing, ids: Iterable[str], *, across: bool) -> Drawing:
    """Make the gaps between parts alike, left to right (`across`) or top to bottom; the outer two stay.

    Raises EditError where there are not three parts.
    """
    placed = _placed(drawing, ids)
    if len(placed) < 3:
        raise EditError(a_word("Choose three parts or more to spread them evenly."))
    axis = 0 if across else 1
    boxes = {id: _box(thing) for id, thing in placed.items()}
    order = sorted(boxes, key=lambda id: (boxes[id][axis] + boxes[id][axis + 2], id))
    gaps = [boxes[after][axis] - boxes[before][axis + 2] for before, after in pairwise(order)]
    gap = sum(gaps) / len(gaps)
    by: dict[str, Point] = {}
    edge = boxes[order[0]][axis + 2]
    for id in order[1:-1]:
        edge += gap
        away = _whole(edge - boxes[id][axis])
        by[id] = Point(away, 0) if across else Point(0, away)
        edge += boxes[id][axis + 2] - boxes[id][axis]
    return shift(drawing, by)


def _placed(drawing: Drawing, ids: Iterable[str]) -> dict[str, Component | Control]:
    found: dict[str, Component | Control] = {}
    for id in ids:
        thing = drawing.components.get(id) or drawing.controls.get(id)
        if thing is not None and thing.at is not None:
            found[id] = thing
        elif thing is None and id not in drawing.pipes:
            raise EditError(worded("There is nothing called {id!r} in the drawing.", id=id))
    return found


def _at(thing: Component | Control) -> Point:
    return thing.at or Point(0, 0)


def _box(thing: Component | Control) -> Box:
    box = thing.box() if isinstance(thing, Component) else None
    if box is not None:
        return box
    at, (width, height) = _at(thing), thing.kind.size
    return at.x - width / 2, at.y - height / 2, at.x + width / 2, at.y + height / 2


def _whole(value: float) -> float:
    """The nearest whole number; a half stays where it is, so that what is in line already stays so."""
    return copysign(ceil(abs(value) - 0.5), value) + 0.0
