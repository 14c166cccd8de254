"""Zoom in fixed steps: at each a square is a whole number of pixels, so that nothing is blurred."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from math import floor

from PySide6.QtCore import QRectF, QSize

STEPS = (0.125, 0.1875, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0, 1.25, 1.5, 1.75, 2.0, 2.5, 3.0, 4.0)
FINEST = 1 / 16
MOST_FITTED = 1.5
MARGIN_PX = 40.0
NOTCH = 120
"""One notch of a wheel, as Qt counts."""


def step_up(zoom: float) -> float:
    """The next larger step."""
    return STEPS[min(bisect_right(STEPS, zoom), len(STEPS) - 1)]


def step_down(zoom: float) -> float:
    """The next smaller step."""
    return STEPS[max(bisect_left(STEPS, zoom) - 1, 0)]


def fitting(box: QRectF, view: QSize) -> float:
    """The largest zoom, in sixteenths, at which a box and a margin are wholly in view."""
    across = (view.width() - MARGIN_PX) / max(box.width(), 1)
    down = (view.height() - MARGIN_PX) / max(box.height(), 1)
    return min(MOST_FITTED, max(FINEST, floor(min(across, down) / FINEST) * FINEST))


class Notches:
    """Adds up the small turns of a wheel or a pinch until a whole step is reached."""

    def __init__(self, notch: float) -> None:
        self._notch = notch
        self._sum = 0.0

    def add(self, amount: float) -> int:
        """How many steps this makes up or down, the rest kept for the next turn."""
        if amount * self._sum < 0:
            self._sum = 0.0
        self._sum += amount
        steps = int(self._sum / self._notch)
        self._sum -= steps * self._notch
        return steps
