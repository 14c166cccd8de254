"""How well pipes are routed, measured from the lines alone: nothing here asks the routing how it went about it."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from itertools import combinations, pairwise
from math import ceil, floor

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point

Line = tuple[Point, ...]
Box = tuple[float, float, float, float]
Place = tuple[int, int]
Way = tuple[int, int]

WAYS: tuple[Way, ...] = ((1, 0), (0, 1), (-1, 0), (0, -1))
ROOM = 10
"""How far beyond a pipe's two ends the brute force looks for a way, in squares: as far as the routing."""
EXACT = 1e-9


@dataclass(frozen=True, slots=True)
class Run:
    """A straight run of a pipe along the grid: its fixed coordinate, and from where to where."""

    pipe: str
    upright: bool
    across: float
    low: float
    high: float


@dataclass
class Quality:
    """What is amiss with the lines of one drawing, each as what it concerns."""

    run_overs: list[tuple[str, str]] = field(default_factory=list)
    """A pipe, and the part whose body it runs through."""
    over_tees: list[tuple[str, str]] = field(default_factory=list)
    """A pipe, and a tee or cap of other pipes that it runs over."""
    overlaps: list[tuple[str, str]] = field(default_factory=list)
    """Two pipes that lie on the same stretch."""
    touches: list[tuple[str, str]] = field(default_factory=list)
    """Two pipes of which one bends or ends on the other, and they are not joined there."""
    too_close: list[tuple[str, str, float]] = field(default_factory=list)
    """Two pipes that run beside one another less than a square apart, and how far."""
    crossings: list[tuple[str, str, Point]] = field(default_factory=list)
    """The level pipe, the upright one, and where they cross."""


def runs_of(id: str, line: Sequence[Point]) -> Iterator[Run]:
    """The square runs of a line."""
    for a, b in pairwise(line):
        if a.x == b.x and a.y != b.y:
            yield Run(id, True, a.x, min(a.y, b.y), max(a.y, b.y))
        elif a.y == b.y and a.x != b.x:
            yield Run(id, False, a.y, min(a.x, b.x), max(a.x, b.x))


def bends(line: Sequence[Point]) -> int:
    """How often a line turns."""
    ways = [((b.x > a.x) - (b.x < a.x), (b.y > a.y) - (b.y < a.y)) for a, b in pairwise(line) if a != b]
    return sum(one != other for one, other in pairwise(ways))


def measured(drawing: Drawing, lines: Mapping[str, Line]) -> Quality:
    """All that is amiss, and every crossing."""
    found = Quality()
    runs = [run for id, line in lines.items() for run in runs_of(id, line)]
    _against_parts(drawing, runs, found)
    for one, other in combinations(runs, 2):
        if one.pipe == other.pipe:
            continue
        if one.upright == other.upright:
            _alike(one, other, found)
        else:
            level, upright = (other, one) if one.upright else (one, other)
            _crosswise(level, upright, lines, found)
    return found


def _against_parts(drawing: Drawing, runs: Iterable[Run], found: Quality) -> None:
    placed = [part for part in drawing.components.values() if part.at is not None]
    for run in runs:
        ends = {end.part for end in drawing.pipes[run.pipe].joints}
        left, top, right, low = (
            (run.across, run.low, run.across, run.high)
            if run.upright
            else (run.low, run.across, run.high, run.across)
        )
        for part in placed:
            box = part.box()
            assert box is not None
            if part.kind.name in ("tee", "cap"):
                assert part.at is not None
                if part.id not in ends and left <= part.at.x <= right and top <= part.at.y <= low:
                    found.over_tees.append((run.pipe, part.id))
            elif left < box[2] and box[0] < right and top < box[3] and box[1] < low:
                found.run_overs.append((run.pipe, part.id))


def _alike(one: Run, other: Run, found: Quality) -> None:
    shared = min(one.high, other.high) - max(one.low, other.low)
    apart = abs(one.across - other.across)
    if shared <= EXACT or apart >= 1 - EXACT:
        return
    if apart <= EXACT:
        found.overlaps.append((one.pipe, other.pipe))
    else:
        found.too_close.append((one.pipe, other.pipe, apart))


def _crosswise(level: Run, upright: Run, lines: Mapping[str, Line], found: Quality) -> None:
    x, y = upright.across, level.across
    if not (level.low <= x <= level.high and upright.low <= y <= upright.high):
        return
    at = Point(x, y)
    if level.low < x < level.high and upright.low < y < upright.high:
        found.crossings.append((level.pipe, upright.pipe, at))
        return
    a, b = lines[level.pipe], lines[upright.pipe]
    if not {a[0], a[-1]} & {b[0], b[-1]} & {at}:
        found.touches.append((level.pipe, upright.pipe))


class Squares:
    """The sheet as unit steps of the grid, those through parts' bodies barred: the ways a pipe could take."""

    def __init__(self, drawing: Drawing, others: Mapping[str, Line] | None = None) -> None:
        self.drawing = drawing
        self._barred_level: set[Place] = set()
        self._barred_upright: set[Place] = set()
        self._no_bend: set[Place] = set()
        for part in drawing.components.values():
            box = part.box()
            if box is not None and box[0] < box[2] and part.kind.name != "cap":
                self._bar(box)
        for id, line in (others or {}).items():
            for run in runs_of(id, line):
                self._bar_along(run)

    def _bar(self, box: Box) -> None:
        left, top, right, low = box
        for x in range(floor(left), ceil(right)):
            for y in range(floor(top) + 1, ceil(low)):
                self._barred_level.add((x, y))
        for x in range(floor(left) + 1, ceil(right)):
            for y in range(floor(top), ceil(low)):
                self._barred_upright.add((x, y))

    def _bar_along(self, run: Run) -> None:
        """On a pipe none may lie, and none may bend or end."""
        barred = self._barred_upright if run.upright else self._barred_level
        for along in range(floor(run.low), ceil(run.high)):
            barred.add((int(run.across), along) if run.upright else (along, int(run.across)))
        for along in range(floor(run.low), ceil(run.high) + 1):
            self._no_bend.add((int(run.across), along) if run.upright else (along, int(run.across)))

    def fewest_bends(self, pipe: Pipe, taken: Line) -> int | None:
        """The least bends of a way between the pipe's ends as their ports face; None where there is no way.

        A tee is left by the side by which its line in `taken` leaves: the other sides are for its other pipes.
        """
        start, finish = taken[0], taken[-1]
        leaving = self._ways(pipe.ends[0], taken[:2])
        arriving = self._ways(pipe.ends[1], taken[:-3:-1])
        backwards = {(-dx, -dy) for dx, dy in arriving}
        goal = (int(finish.x), int(finish.y))
        least_x, most_x = min(start.x, finish.x) - ROOM, max(start.x, finish.x) + ROOM
        least_y, most_y = min(start.y, finish.y) - ROOM, max(start.y, finish.y) + ROOM
        ahead = [(int(start.x), int(start.y), way) for way in leaving]
        seen: set[tuple[int, int, Way]] = set()
        for bent in range(40):
            after = []
            for x, y, (dx, dy) in ahead:
                while self._is_free(x, y, dx, dy):
                    x, y = x + dx, y + dy
                    if (x, y, (dx, dy)) in seen or not (least_x <= x <= most_x and least_y <= y <= most_y):
                        break
                    seen.add((x, y, (dx, dy)))
                    if (x, y) == goal:
                        if (dx, dy) in backwards:
                            return bent
                        continue
                    if (x, y) not in self._no_bend:
                        after += [(x, y, (dy, dx)), (x, y, (-dy, -dx))]
            ahead = [each for each in after if each not in seen]
        return None

    def _is_free(self, x: int, y: int, dx: int, dy: int) -> bool:
        if dx:
            return (min(x, x + dx), y) not in self._barred_level
        return (x, min(y, y + dy)) not in self._barred_upright

    def _ways(self, end: Joint | Point, taken: Sequence[Point]) -> Sequence[Way]:
        if not isinstance(end, Joint):
            return WAYS
        part = self.drawing.components[end.part]
        faces = part.port_faces(end.port)
        if faces is not None:
            return (faces,)
        a, b = taken
        side = ((b.x > a.x) - (b.x < a.x), (b.y > a.y) - (b.y < a.y))
        return (side,) if part.kind.name == "tee" else WAYS


def stands_clear(part: Component, others: Iterable[Component], apart: float) -> bool:
    """Whether a part keeps so many squares off all these."""
    box = part.box()
    assert box is not None
    for other in others:
        b = other.box()
        if b is None or other.id == part.id:
            continue
        if max(box[0] - b[2], b[0] - box[2], box[1] - b[3], b[1] - box[3]) < apart:
            return False
    return True
