"""Points and polylines on the sheet, in squares (x to the right, y down)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from math import ceil, floor, hypot, inf
from typing import NamedTuple


class Point(NamedTuple):
    """A place on the sheet, in squares."""

    x: float
    y: float


def turned(offset: tuple[float, float], turn: int, mirrored: bool) -> Point:
    """An offset from a part's `at` after mirroring left to right and then turning clockwise.

    `turn` is 0, 90, 180 or 270 degrees. Raises KeyError for another.
    """
    x, y = (-offset[0], offset[1]) if mirrored else offset
    along_x, along_y = _QUARTERS[turn]
    return Point(x * along_x - y * along_y, x * along_y + y * along_x)


# The cosine and sine of each turn; y points down, so a positive angle is clockwise.
_QUARTERS = {0: (1, 0), 90: (0, 1), 180: (-1, 0), 270: (0, -1)}


def distance(a: tuple[float, float], b: tuple[float, float]) -> float:
    """Between two points, in squares."""
    return hypot(a[0] - b[0], a[1] - b[1])


def nearest_on_segment(
    point: tuple[float, float], a: tuple[float, float], b: tuple[float, float]
) -> tuple[Point, float]:
    """The point of the segment a-b nearest to `point`, and how far it is, in squares."""
    dx, dy = b[0] - a[0], b[1] - a[1]
    square = dx * dx + dy * dy
    share = 0.0 if square == 0 else ((point[0] - a[0]) * dx + (point[1] - a[1]) * dy) / square
    share = min(1.0, max(0.0, share))
    foot = Point(a[0] + share * dx, a[1] + share * dy)
    return foot, distance(point, foot)


class SegmentGrid:
    """Straight segments by the squares they pass, to find those near a point without trying all.

    Each segment is (id, start, finish); one id may have several.
    """

    def __init__(self, segments: Iterable[tuple[str, Point, Point]]) -> None:
        self._cells: dict[tuple[int, int], list[tuple[str, Point, Point]]] = defaultdict(list)
        for id, start, finish in segments:
            for cell in _cells_along(start, finish):
                self._cells[cell].append((id, start, finish))

    def near(self, point: Point, within: float) -> list[tuple[str, float]]:
        """The ids with a segment at most `within` squares from the point, nearest first, each once."""
        found: dict[str, float] = {}
        left, right = floor(point.x - within), floor(point.x + within)
        top, bottom = floor(point.y - within), floor(point.y + within)
        for x in range(left, right + 1):
            for y in range(top, bottom + 1):
                for id, start, finish in self._cells.get((x, y), ()):
                    away = nearest_on_segment(point, start, finish)[1]
                    if away <= within + 1e-9 and away < found.get(id, inf):
                        found[id] = away
        return sorted(found.items(), key=lambda each: (each[1], each[0]))


def _cells_along(start: Point, finish: Point) -> Iterator[tuple[int, int]]:
    """The squares a segment passes, and those beside it where it runs on their edge."""
    steps = max(1, ceil(max(abs(finish.x - start.x), abs(finish.y - start.y)) * 2))
    seen = set()
    for step in range(steps + 1):
        x = start.x + (finish.x - start.x) * step / steps
        y = start.y + (finish.y - start.y) * step / steps
        for cell in (
            (floor(x), floor(y)),
            (ceil(x) - 1, ceil(y) - 1),
            (floor(x), ceil(y) - 1),
            (ceil(x) - 1, floor(y)),
        ):
            if cell not in seen:
                seen.add(cell)
                yield cell
