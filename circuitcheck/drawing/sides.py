"""In which direction a pipe leaves its end: as the port faces, or by the side of a tee that suits best."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import permutations
from typing import NamedTuple

from circuitcheck.geometry import Point

Way = tuple[int, int]
"""A unit step along the grid."""

RIGHT, DOWN, LEFT, UP = (1, 0), (0, 1), (-1, 0), (0, -1)
WAYS: tuple[Way, ...] = (RIGHT, DOWN, LEFT, UP)

OTHER_SIDE = 5.0
"""What it costs to leave a tee by another side than the one that suits best, in squares of length."""
TAKEN_SIDE = 40.0
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


def _bends(start: Point, way: Way, finish: Point, faces: Way) -> int:
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
    return 1 if ahead > 0 and aside * facing_aside < 0 else 3


def best_sides(
    at: Point, settled: Mapping[str, Way], open_ports: Mapping[str, Seen], through: tuple[str, str]
) -> dict[str, Way]:
    """A side of its own for each port of a tee that has none yet, the fewest bends in all.

    `settled` are the sides pipes have already; `through` are the two ports that should lie
    straight through. Ties go to the earlier way in `WAYS`, port by port.
    """
    names = list(open_ports)
    taken = set(settled.values())
    free = [way for way in WAYS if way not in taken]
    if len(free) < len(names):
        free = list(WAYS)
    wanted = {
        (name, way): 4.0 * fewest_bends(at, way, open_ports[name]) + _detour(at, way, open_ports[name].at)
        for name in names
        for way in free
    }
    best: tuple[float, dict[str, Way]] | None = None
    for ways in permutations(free, len(names)):
        chosen = dict(zip(names, ways, strict=True))
        cost = sum(wanted[name, way] for name, way in chosen.items())
        every = {**settled, **chosen}
        if all(port in every for port in through):
            one, two = (every[port] for port in through)
            cost += 0.0 if one == opposite(two) else NOT_STRAIGHT_THROUGH
        if best is None or cost < best[0]:
            best = cost, chosen
    return {} if best is None else best[1]


def _detour(at: Point, way: Way, far: Point) -> float:
    """A little less for the way that leads where the far end mostly lies, so that ties mean nothing."""
    dx, dy = far.x - at.x, far.y - at.y
    size = abs(dx) + abs(dy)
    return 0.0 if size == 0 else (1 - (dx * way[0] + dy * way[1]) / size) / 2


def leaves(preferred: Way | None, taken: Iterable[Way]) -> tuple[Leave, ...]:
    """The ways out of an end that may be left any way: the preferred one first."""
    used = set(taken)
    found = [
        Leave(way, (0.0 if preferred in (None, way) else OTHER_SIDE) + (TAKEN_SIDE if way in used else 0.0))
        for way in WAYS
    ]
    return tuple(sorted(found, key=lambda leave: leave.cost))
