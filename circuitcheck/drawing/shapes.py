"""The simple square lines between two ends: straight, one bend, Z and U, and their kin up to four bends."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from math import floor
from operator import itemgetter
from typing import NamedTuple

from circuitcheck.drawing.sides import Leave, Seen, Way, fewest_bends, opposite
from circuitcheck.drawing.surroundings import BEND
from circuitcheck.geometry import Point

Line = tuple[Point, ...]
Place = tuple[float, float]

SHORT_STUB = 6.0
"""What it costs to bend less than a square away from a port."""
OFF_THE_MIDDLE = 0.001


class Shape(NamedTuple):
    """A line, as bare x and y, and what it costs by itself: its length, its bends and the sides it leaves by."""

    cost: float
    line: Sequence[Place]


_Draft = tuple[float, tuple[Place, ...]]
"""What a shape costs by itself, and the corners between its ends."""

_cost_of = itemgetter(0)


def length(line: Sequence[Point]) -> float:
    """The length of a square line, in squares."""
    # A plain loop: this is asked for every shape that is tried.
    total = 0.0
    x, y = line[0]
    for next_x, next_y in line:
        total += abs(next_x - x) + abs(next_y - y)
        x, y = next_x, next_y
    return total


def own_cost(line: Sequence[Point]) -> float:
    """Length and bends of a square line without idle corners."""
    return length(line) + BEND * (len(line) - 2)


def straight(start: Point, leaving: Sequence[Leave], finish: Point, arriving: Sequence[Leave]) -> bool:
    """Whether the ends face each other along the grid, by ways that cost nothing."""
    way = way_of(start, finish)
    return (
        way is not None
        and any(leave.way == way and not leave.cost for leave in leaving)
        and any(leave.way == opposite(way) and not leave.cost for leave in arriving)
    )


def way_of(a: Point, b: Point) -> Way | None:
    """The unit step from `a` to `b`; None where they are not in one line of the grid, or are the same."""
    if a.x == b.x and a.y != b.y:
        return (0, 1) if b.y > a.y else (0, -1)
    if a.y == b.y and a.x != b.x:
        return (1, 0) if b.x > a.x else (-1, 0)
    return None


def simple_shapes(
    start: Point,
    leaving: Sequence[Leave],
    finish: Point,
    arriving: Sequence[Leave],
    tracks: Callable[[], tuple[Sequence[float], Sequence[float]]],
) -> Iterator[tuple[float, Iterator[Shape]]]:
    """Simple lines between the ends, by pairs of ways out; `tracks` tells the x and the y on which they may run.

    Yields what no line of the pair can cost less than, and its lines, the cheapest by itself
    first; pairs come by that least cost. Most pipes take the first line there is: no others are made
    before they are asked for.
    """
    straight_length = abs(start.x - finish.x) + abs(start.y - finish.y)
    pairs: list[tuple[float, int, Leave, Leave]] = []
    for leave in leaving:
        for arrive in arriving:
            bends = fewest_bends(start, leave.way, Seen(finish, arrive.way))
            least = leave.cost + arrive.cost + straight_length + BEND * bends
            pairs.append((least, len(pairs), leave, arrive))
    for least, _, leave, arrive in sorted(pairs):
        yield least, _shapes(start, leave, finish, arrive, tracks)


def _shapes(
    start: Point,
    leave: Leave,
    finish: Point,
    arrive: Leave,
    tracks: Callable[[], tuple[Sequence[float], Sequence[float]]],
) -> Iterator[Shape]:
    sides = leave.cost + arrive.cost
    plain = _plainest(start, leave.way, finish, arrive.way)
    if plain is not None:
        yield Shape(sides + own_cost(plain) + _finesse(plain), plain)
    xs, ys = tracks()
    is_upright = leave.way[0] == 0
    if is_upright:
        drafts = _drafts(
            _across(start), leave.way[1], _across(finish), (arrive.way[1], arrive.way[0]), ys, xs, sides
        )
    else:
        drafts = _drafts(start, leave.way[0], finish, arrive.way, xs, ys, sides)
    drafts.sort(key=_cost_of)
    # Of the drafts few are asked for, and so only those become lines.
    for cost, corners in drafts:
        line = (start, *[(y, x) for x, y in corners], finish) if is_upright else (start, *corners, finish)
        if line != plain:
            yield Shape(cost, line)


def _plainest(start: Point, leave: Way, finish: Point, arrive: Way) -> Line | None:
    """The straight line, that with one bend, or with its cross run in the middle; None where none of them
    does. No other line by these ways costs less by itself."""
    if leave[0] == 0:
        line = _plainest(_across(start), (leave[1], 0), _across(finish), (arrive[1], arrive[0]))
        return None if line is None else tuple(_across(point) for point in line)
    ahead = (finish.x - start.x) * leave[0]
    if arrive[0] == 0:
        met_from_ahead = ahead > 0 and (start.y - finish.y) * arrive[1] > 0
        return (start, Point(finish.x, start.y), finish) if met_from_ahead else None
    if leave != opposite(arrive) or ahead <= 0:
        return None
    if start.y == finish.y:
        return start, finish
    middle = float(floor((start.x + finish.x) / 2))
    if min(abs(middle - start.x), abs(middle - finish.x)) < 1:
        return None
    return start, Point(middle, start.y), Point(middle, finish.y), finish


def _across(point: Point) -> Point:
    return Point(point.y, point.x)


def _drafts(
    start: Point,
    leave: int,
    finish: Point,
    arrive: Way,
    xs: Sequence[float],
    ys: Sequence[float],
    sides: float,
) -> list[_Draft]:
    """The lines of two bends and more that leave level, to the right (1) or to the left (-1), whose sides cost
    so much."""
    out = [x for x in xs if (x - start.x) * leave > 0]
    if arrive[0] == 0:
        return _drafts_of_three_bends(start, leave, finish, arrive[1], out, ys, sides)
    (left, top), (right, low) = start, finish
    found: list[_Draft] = []
    if top != low:
        down = abs(low - top)
        for x in out:
            if (x - right) * arrive[0] > 0:
                first, last = abs(x - left), abs(right - x)
                own = first + down + last + BEND * 2
                finesse = _short(first, last) + _off(first, last)
                found.append((sides + own + finesse, ((x, top), (x, low))))
    first_x, last_x = left + leave, right + arrive[0]
    first, over, last = abs(first_x - left), abs(last_x - first_x), abs(right - last_x)
    short = _short(first, last)
    for y in ys:
        if y not in (top, low):
            own = first + abs(y - top) + over + abs(low - y) + last + BEND * 4
            found.append((sides + own + short, ((first_x, top), (first_x, y), (last_x, y), (last_x, low))))
    return found


def _drafts_of_three_bends(
    start: Point,
    leave: int,
    finish: Point,
    arrive: int,
    out: Iterable[float],
    ys: Iterable[float],
    sides: float,
) -> list[_Draft]:
    """The lines that leave level, come in upright and bend three times."""
    stub_x, stub_y = start.x + leave, finish.y + arrive
    pairs = [(x, stub_y) for x in out]
    pairs += [(stub_x, y) for y in ys if (y - finish.y) * arrive > 0 and y != stub_y]
    (left, top), (right, low) = start, finish
    found: list[_Draft] = []
    for x, y in pairs:
        if y != top and x != right:
            first, last = abs(x - left), abs(low - y)
            own = first + abs(y - top) + abs(right - x) + last + BEND * 3
            found.append((sides + own + _short(first, last), ((x, top), (x, y), (right, y))))
    return found


def _finesse(line: Line) -> float:
    """The cost of bending too close to an end; and of a cross run off the middle, which is less calm."""
    if len(line) == 2:
        return 0.0
    first, last = length(line[:2]), length(line[-2:])
    return _short(first, last) + (_off(first, last) if len(line) == 4 else 0.0)


def _short(first: float, last: float) -> float:
    """The cost of bending too close to an end, by how long the first and the last run are."""
    return SHORT_STUB * ((first < 1) + (last < 1))


def _off(first: float, last: float) -> float:
    """The cost of a cross run off the middle."""
    return OFF_THE_MIDDLE * abs(first - last)
