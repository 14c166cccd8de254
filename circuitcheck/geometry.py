"""Points and polylines on the sheet, in squares (x to the right, y down)."""

from __future__ import annotations

from math import hypot
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
