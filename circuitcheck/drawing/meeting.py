"""Where two lines on the sheet meet: by crossing, by touching, or by lying on one another."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise
from math import asin, degrees, hypot
from typing import NamedTuple

from circuitcheck.geometry import Point, nearest_on_segment

EXACT = 1e-9
"""Nearer than this is on the same place, in squares."""

Segment = tuple[Point, Point]


class Meeting(NamedTuple):
    """A place at which two lines meet, and the sharp angle between them there in degrees.

    `along`: they lie on one another from there on, for so many squares; 0 where they only meet.
    """

    at: Point
    angle: float
    along: float


def meetings(one: Sequence[Point], other: Sequence[Point]) -> Iterator[Meeting]:
    """Every place where a run of one line meets a run of the other; a corner may be told twice."""
    others = list(pairwise(other))
    for a, b in pairwise(one):
        left, right = (a.x, b.x) if a.x <= b.x else (b.x, a.x)
        top, low = (a.y, b.y) if a.y <= b.y else (b.y, a.y)
        for c, d in others:
            # Most pairs lie apart: plain comparisons, nothing called.
            if (c.x < left - EXACT and d.x < left - EXACT) or (c.x > right + EXACT and d.x > right + EXACT):
                continue
            if (c.y < top - EXACT and d.y < top - EXACT) or (c.y > low + EXACT and d.y > low + EXACT):
                continue
            found = _meeting((a, b), (c, d))
            if found is not None:
                yield found


def _meeting(one: Segment, other: Segment) -> Meeting | None:
    (a, b), (c, d) = one, other
    ux, uy, vx, vy = b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y
    long_one, long_other = hypot(ux, uy), hypot(vx, vy)
    if long_one <= EXACT or long_other <= EXACT:
        return _at_a_point(one, other)
    cross = ux * vy - uy * vx
    sine = min(1.0, abs(cross) / (long_one * long_other))
    if sine <= EXACT:
        return _parallel(one, other, (ux / long_one, uy / long_one))
    # How far along each the lines through them cross, in shares of their lengths.
    s = ((c.x - a.x) * vy - (c.y - a.y) * vx) / cross
    t = ((c.x - a.x) * uy - (c.y - a.y) * ux) / cross
    slack_one, slack_other = EXACT / long_one, EXACT / long_other
    if not (-slack_one <= s <= 1 + slack_one and -slack_other <= t <= 1 + slack_other):
        return None
    return Meeting(Point(a.x + s * ux, a.y + s * uy), degrees(asin(sine)), 0.0)


def _at_a_point(one: Segment, other: Segment) -> Meeting | None:
    """Where one of the two has no length: it meets the other as squarely as can be."""
    short, long = (one, other) if one[0] == one[1] else (other, one)
    away = nearest_on_segment(short[0], *long)[1]
    return Meeting(short[0], 90.0, 0.0) if away <= EXACT else None


def _parallel(one: Segment, other: Segment, way: tuple[float, float]) -> Meeting | None:
    """Runs of one direction: they lie on one another, meet end to end, or lie apart."""
    (a, b), (c, d) = one, other
    if abs((c.x - a.x) * way[1] - (c.y - a.y) * way[0]) > EXACT:
        return None

    def far(point: Point) -> float:
        return (point.x - a.x) * way[0] + (point.y - a.y) * way[1]

    begins = max(0.0, min(far(c), far(d)))
    ends = min(far(b), max(far(c), far(d)))
    if ends < begins - EXACT:
        return None
    along = max(0.0, ends - begins)
    at = Point(a.x + begins * way[0], a.y + begins * way[1])
    return Meeting(at, 0.0, along if along > EXACT else 0.0)
