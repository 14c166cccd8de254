"""In which direction a pipe leaves its end: as the port faces, or by the side of a tee that suits best."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import cache
from itertools import permutations
from math import inf
from typing import NamedTuple

from circuitcheck.geometry import Point

Way = tuple[int, int]
"""A unit step along the grid."""

RIGHT, DOWN, LEFT, UP = (1, 0), (0, 1), (-1, 0), (0, -1)
WAYS: tuple[Way, ...] = (RIGHT, DOWN, LEFT, UP)

_PLACE = {way: place for place, way in enumerate(WAYS)}

A_BEND = 4.0
TAKEN_SIDE = 40.0
"""What it costs to leave a tee by a side that another pipe has, in squares of length."""
NOT_STRAIGHT_THROUGH = 1.5
_ASIDE = [[0.0 if abs(one - two) == 2 else NOT_STRAIGHT_THROUGH for two in range(4)] for one in range(4)]
"""What it costs two ports that should lie straight through not to: opposite sides are two apart in WAYS."""


class Leave(NamedTuple):
    """A way out of an end, and what it costs beside the others."""

    way: Way
    cost: float = 0.0


class Seen(NamedTuple):
    """The far end of a pipe as its near end sees it; `faces` None: the pipe may leave it any way."""

    at: Point
    faces: Way | None


def opposite(way: Way) -> Way:
    """The way back."""
    return -way[0], -way[1]


def fewest_bends(start: Point, way: Way, far: Seen) -> int:
    """The least bends of a square line that leaves `start` by `way`, nothing being in between."""
    if far.faces is None:
        dx, dy = far.at.x - start.x, far.at.y - start.y
        if dx * way[0] + dy * way[1] > 0:
            return 0 if dy * way[0] == dx * way[1] else 1
        return 3 if dy * way[0] == dx * way[1] else 2
    return _bends(start, way, far.at, far.faces)


def bends_to_go(here: Point, way: Way, finish: Point, faces: Way) -> int:
    """The least bends of a line that is under way by `way`, so that it may bend where it is."""
    return _bends(here, way, finish, faces, may_bend=True)


def _bends(start: Point, way: Way, finish: Point, faces: Way, *, may_bend: bool = False) -> int:
    dx, dy = finish.x - start.x, finish.y - start.y
    ahead = dx * way[0] + dy * way[1]
    aside = dy * way[0] - dx * way[1]
    facing_ahead = faces[0] * way[0] + faces[1] * way[1]
    facing_aside = faces[1] * way[0] - faces[0] * way[1]
    if facing_ahead == -1:
        if ahead <= 0:
            return 4
        return 0 if aside == 0 else 2
    if facing_ahead == 1:
        return 4 if aside == 0 else 2
    # It is met from the side it faces to: one bend where that side is where the line comes from.
    return 1 if (ahead > 0 or (may_bend and ahead == 0)) and aside * facing_aside < 0 else 3


def wanted(at: Point, far: Seen) -> tuple[float, ...]:
    """What it costs a port itself to take each side, in the order of WAYS."""
    return tuple(A_BEND * fewest_bends(at, way, far) + _detour(at, way, far.at) for way in WAYS)


def side_costs(
    port: str,
    settled: Mapping[str, Way],
    waiting: Mapping[str, Sequence[float]],
    through: tuple[str, str],
) -> dict[Way, float]:
    """What it costs the other pipes of a tee if a waiting port takes a side.

    `settled` are the sides that laid pipes leave by, `waiting` what each side costs each port that waits;
    `through` are the two ports that should lie straight through. The cheapest side costs 0, the others as
    many squares more as the pipes still to be laid then need for their bends. What the port's own pipe
    costs is left to its routing. A side that is taken, or leaves too few for the rest, is not among them.
    """
    names = tuple(waiting)
    own, which = waiting[port], names.index(port)
    taken = [_PLACE[way] for way in settled.values()]
    dealt = _dealt(len(names), tuple(place for place in range(len(WAYS)) if place not in taken))
    least = [inf] * len(WAYS)
    # Plain loops and lists: this is done for every tee some times over.
    for places, total, aside in zip(
        dealt,
        _sums(tuple(waiting.values()), dealt),
        _not_through(settled, names, dealt, through),
        strict=True,
    ):
        place = places[which]
        cost = total + aside - own[place]
        if cost < least[place]:
            least[place] = cost
    cheapest = min(least)
    return {way: cost - cheapest for way, cost in zip(WAYS, least, strict=True) if cost < inf}


@cache
def _dealt(ports: int, free: tuple[int, ...]) -> tuple[tuple[int, ...], ...]:
    """In what ways so many ports can have a free side each, by the sides' places in WAYS."""
    return tuple(permutations(free, ports))


def _sums(rows: Sequence[Sequence[float]], dealt: Sequence[tuple[int, ...]]) -> list[float]:
    """What it costs the ports together, for each way to deal the sides."""
    match rows:
        case [a]:
            return [a[i] for (i,) in dealt]
        case [a, b]:
            return [a[i] + b[j] for i, j in dealt]
        case [a, b, c]:
            return [a[i] + b[j] + c[k] for i, j, k in dealt]
    return [sum(row[place] for row, place in zip(rows, places, strict=True)) for places in dealt]


def _not_through(
    settled: Mapping[str, Way],
    names: Sequence[str],
    dealt: Sequence[tuple[int, ...]],
    through: tuple[str, str],
) -> list[float]:
    """A little where both ports that should lie straight through have a side and do not, for each way to
    deal the sides."""
    one, two = [_PLACE[settled[port]] if port in settled else None for port in through]
    first, second = [names.index(port) if port in names else None for port in through]
    if one is not None and two is not None:
        return [_ASIDE[one][two]] * len(dealt)
    if one is not None and second is not None:
        row = _ASIDE[one]
        return [row[places[second]] for places in dealt]
    if two is not None and first is not None:
        row = _ASIDE[two]
        return [row[places[first]] for places in dealt]
    if first is not None and second is not None:
        return [_ASIDE[places[first]][places[second]] for places in dealt]
    return [0.0] * len(dealt)


def _detour(at: Point, way: Way, far: Point) -> float:
    """As much as a bend for turning its back on the far end, and a trifle less the straighter it leads there."""
    dx, dy = far.x - at.x, far.y - at.y
    size = abs(dx) + abs(dy)
    if size == 0:
        return 0.0
    ahead = (dx * way[0] + dy * way[1]) / size
    return (A_BEND if ahead < 0 else 0.0) + (1 - ahead) / 2


ANY_WAY = tuple(Leave(way) for way in WAYS)
"""The ways out of an end that may be left any way."""


def leaves(costs: Mapping[Way, float]) -> tuple[Leave, ...]:
    """The ways out of a tee, the cheapest first; sides not among the costs are taken."""
    found = [Leave(way, costs.get(way, TAKEN_SIDE)) for way in WAYS]
    return tuple(sorted(found, key=lambda leave: leave.cost))
