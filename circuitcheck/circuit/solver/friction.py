"""The law of friction over arrays of flows: Colebrook-White solved, with the slope that Newton needs."""

from __future__ import annotations

from abc import ABC, abstractmethod
from collections.abc import Callable
from typing import TYPE_CHECKING

from circuitcheck.sizing.pipe import LAMINAR_BELOW, LAMINAR_TIMES_REYNOLDS, TURBULENT_FROM

if TYPE_CHECKING:
    from numpy import float64
    from numpy.typing import NDArray

    Floats = NDArray[float64]
    Friction = Callable[[Floats], "Law"]
    """A law of friction: from relative roughnesses, in the shape in which Reynolds numbers will come, the
    law for those pipes."""


class Law(ABC):
    """From Reynolds numbers, the friction factor times Reynolds, and that product's slope times Reynolds:
    written so, both stay finite in still water. A law may go on from what it was asked last, and be exact
    only once it is asked the like again."""

    @abstractmethod
    def __call__(self, reynolds: Floats) -> tuple[Floats, Floats]:
        """The product and its slope."""

    @abstractmethod
    def forget(self) -> None:
        """Begin afresh, if anything is remembered."""

    def exactly(self, reynolds: Floats) -> tuple[Floats, Floats]:
        """The product and its slope, whatever was asked before."""
        self.forget()
        for _ in range(EXACT_FROM):
            found = self(reynolds)
        return found


TWO_OVER_LN_10 = 0.8685889638065036
SMOOTH = 2.51 * TWO_OVER_LN_10
OVER_SQUARE = 1 / TWO_OVER_LN_10**2
FIRST_ROOT = 7.5
EXACT_FROM = 4
"""Steps of Newton's; whatever the pipe and the flow, these leave less than 1e-12."""


class ColebrookWhite(Law):
    """`sizing.pipe.friction_factor` for these pipes: laminar, a straight line between, Colebrook-White.

    Newton's method on 1/√f. It begins where the call before ended and makes one step more: as the
    flows settle the root settles with them, to an error of the square of the flows' own.
    """

    def __init__(self, relative_roughness: Floats) -> None:
        import numpy as np

        self._rough = relative_roughness / 3.7
        self._root = np.full_like(self._rough, FIRST_ROOT)
        least = np.full_like(self._rough, TURBULENT_FROM)
        for _ in range(EXACT_FROM):
            product, _ = self._turbulent(least)
        self._first = self._root
        low = LAMINAR_TIMES_REYNOLDS / LAMINAR_BELOW
        self._steep = (product / TURBULENT_FROM - low) / (TURBULENT_FROM - LAMINAR_BELOW)
        self._at_laminar = low - LAMINAR_BELOW * self._steep

    def forget(self) -> None:
        """Begin from the roots at the least turbulent flow."""
        self._root = self._first

    def __call__(self, reynolds: Floats) -> tuple[Floats, Floats]:
        """The friction factor times Reynolds, and the slope of that times Reynolds."""
        import numpy as np

        product, slope = self._turbulent(np.maximum(reynolds, TURBULENT_FROM))
        slow = np.flatnonzero(reynolds < TURBULENT_FROM)
        if slow.size:
            few = np.maximum(reynolds.take(slow), LAMINAR_BELOW)
            rising = few * self._steep.take(slow)
            between = self._at_laminar.take(slow) + rising
            product.put(slow, few * between)
            slope.put(slow, few * (between + rising) * (few > LAMINAR_BELOW))
        return product, slope

    def _turbulent(self, reynolds: Floats) -> tuple[Floats, Floats]:
        """For turbulent water, by y = −ln(rough + smooth y), which is the root over 2/ln 10."""
        import numpy as np

        smooth = SMOOTH / reynolds
        inner = self._rough + smooth * self._root
        tangent = 1 + smooth / inner
        self._root = root = self._root - (self._root + np.log(inner)) / tangent
        product = OVER_SQUARE * reynolds / (root * root)
        # By the implicit function, Re dy/dRe is y (1 − 1/tangent).
        return product, product * (2 / tangent - 1)


def colebrook_white(relative_roughness: Floats) -> Law:
    """The law that holds for water in pipes."""
    return ColebrookWhite(relative_roughness)
