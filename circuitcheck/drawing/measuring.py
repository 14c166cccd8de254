"""A pipe's length and bends: as given, or measured from its line where the sheet has a scale."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import acos, degrees, hypot

from circuitcheck.drawing.value import Drawing, Pipe
from circuitcheck.geometry import Point, distance
from circuitcheck.parts.kind import reckoned

BEND_DEGREES = 30.0
"""A change of direction of this much or more is one bend."""


@dataclass(frozen=True, slots=True)
class Measure:
    """A number and whether it was `given` in the drawing or `measured` from its line."""

    value: float
    how: str


def length_m(drawing: Drawing, pipe: Pipe) -> Measure | None:
    """The pipe's length in metres; None where it is not known.

    A line the program routed gives none: only corners a person set, on a sheet with a scale, do.
    """
    given = reckoned(pipe.data.get("length_m"))
    if given is not None:
        return Measure(float(given), "given")
    if pipe.via is None:
        return None
    scale = drawing.sheet.get("metres_per_square")
    line = None if scale is None else _line(drawing, pipe)
    if scale is None or line is None:
        return None
    return Measure(scale * sum(distance(a, b) for a, b in pairwise(line)), "measured")


def bends(drawing: Drawing, pipe: Pipe) -> Measure | None:
    """The pipe's number of bends; None where it is not known."""
    given = reckoned(pipe.data.get("bends"))
    if given is not None:
        return Measure(float(given), "given")
    if pipe.via is None or drawing.sheet.get("metres_per_square") is None:
        return None
    line = _line(drawing, pipe)
    if line is None:
        return None
    return Measure(float(count_bends(line)), "measured")


def count_bends(line: Sequence[Point]) -> int:
    """Changes of direction of 30 degrees or more along a line; points on top of one another are one."""
    distinct = [line[0]] + [b for a, b in pairwise(line) if distance(a, b) > 1e-9]
    count = 0
    for a, b, c in zip(distinct, distinct[1:], distinct[2:], strict=False):
        one, two = (b.x - a.x, b.y - a.y), (c.x - b.x, c.y - b.y)
        cosine = (one[0] * two[0] + one[1] * two[1]) / (hypot(*one) * hypot(*two))
        if degrees(acos(max(-1.0, min(1.0, cosine)))) >= BEND_DEGREES - 1e-9:
            count += 1
    return count


def _line(drawing: Drawing, pipe: Pipe) -> tuple[Point, ...] | None:
    """The pipe's line from end to end, where a person set its corners; None where not placed."""
    start, finish = (drawing.end_at(end) for end in pipe.ends)
    if pipe.via is None or start is None or finish is None:
        return None
    return (start, *pipe.via, finish)
