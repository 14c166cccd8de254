"""In which direction a pipe leaves its end: as the port faces, or by the side of a tee that suits best."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import permutations
from typing import NamedTuple

from circuitcheck.geometry import Point

Way = tuple[int, int]
"""A unit step along the grid."""

RIGHT, DOWN, LEFT, UP = (1, 0), (0, 1), (-1, 0), (0, -1)
WAYS: tuple[Way, ...] = (RIGHT, DOWN, LEFT, UP)

A_BEND = 4.0
TAKEN_SIDE = 40.0
"""What it costs to leave a tee by a side that another pipe has, in squares of length."""
NOT_STRAIGHT_THROUGH = 1.5


@dataclass(frozen=True, slots=True)
class Leave:
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
        return min(_bends(start, way, far.at, faces) for faces in WAYS)
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


def wants(at: Point, far: Seen) -> Mapping[Way, float]:
    """What it costs a pipe to leave `at` by each way for its far end: bends, and turning its back on it."""
    return {way: A_BEND * fewest_bends(at, way, far) + _detour(at, way, far.at) for way in WAYS}


def side_costs(
    settled: Mapping[str, Way], waiting: Mapping[str, Mapping[Way, float]], through: tuple[str, str]
) -> dict[str, dict[Way, float]]:
    """What it costs the other pipes of a tee if a waiting port takes a side, by port and way.

    `settled` are the sides that laid pipes leave by, `waiting` what each other port `wants`; `through` are
    the two ports that should lie straight through. For each port the cheapest side costs 0, the others as
    many squares more as the pipes still to be laid then need for their bends. What the port's own pipe
    costs is left to its routing. A side that is taken, or leaves too few for the rest, is not among them.
    """
    names = tuple(waiting)
    taken = set(settled.values())
    free = [way for way in WAYS if way not in taken]
    wanted = list(waiting.values())
    others: dict[str, dict[Way, float]] = {name: {} for name in names}
    for ways in permutations(free, len(names)):
        own = [each[way] for each, way in zip(wanted, ways, strict=True)]
        total = sum(own) + _not_through(settled, names, ways, through)
        for name, way, mine in zip(names, ways, own, strict=True):
            costs, cost = others[name], total - mine
            if cost < costs.get(way, cost + 1):
                costs[way] = cost
    for costs in others.values():
        least = min(costs.values(), default=0.0)
        for way in costs:
            costs[way] -= least
    return others


def _not_through(
    settled: Mapping[str, Way], names: Sequence[str], ways: Sequence[Way], through: tuple[str, str]
) -> float:
    """A little where both ports that should lie straight through have a side and do not."""
    one, two = through
    first = settled.get(one) or (ways[names.index(one)] if one in names else None)
    second = settled.get(two) or (ways[names.index(two)] if two in names else None)
    return (
        NOT_STRAIGHT_THROUGH
        if first is not None and second is not None and first != opposite(second)
        else 0.0
    )


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
