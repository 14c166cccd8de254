"""The law of friction over arrays of flows: Colebrook-White solved, with the slope that Newton needs."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from circuitcheck.sizing.pipe import LAMINAR_BELOW, LAMINAR_TIMES_REYNOLDS, TURBULENT_FROM

if TYPE_CHECKING:
    from numpy import float64
    from numpy.typing import NDArray

    Floats = NDArray[float64]
    Law = Callable[[Floats], tuple[Floats, Floats]]
    """From Reynolds numbers (one row a state, one column a pipe), the friction factor times Reynolds,
    and that product's slope times Reynolds. Written so, both stay finite in still water."""

    Friction = Callable[[Floats], Law]
    """A law of friction: from relative roughnesses, one a pipe, the law for those pipes."""

TWO_OVER_LN_10 = 0.8685889638065036


def colebrook_white(relative_roughness: Floats) -> Law:
    """`sizing.pipe.friction_factor` for these pipes: laminar, a straight line between, Colebrook-White.

    Newton's method on 1/√f from Haaland's formula; two steps leave 1e-11.
    """
    import numpy as np

    rough = relative_roughness / 3.7
    haaland = rough**1.11
    span = TURBULENT_FROM - LAMINAR_BELOW
    low = LAMINAR_TIMES_REYNOLDS / LAMINAR_BELOW

    def turbulent(reynolds: Floats) -> tuple[Floats, Floats]:
        smooth = 2.51 / reynolds
        x = (-0.9 * TWO_OVER_LN_10) * np.log(haaland + 6.9 / reynolds)
        for _ in range(2):
            inner = rough + smooth * x
            x -= (x + TWO_OVER_LN_10 * np.log(inner)) / (1 + TWO_OVER_LN_10 * smooth / inner)
        # The slope of the root itself, by the implicit function.
        share = TWO_OVER_LN_10 * smooth / (rough + smooth * x)
        grows = share * x / (1 + share)  # Re dx/dRe
        product = reynolds / (x * x)
        return product, product * (1 - 2 * grows / x)

    high = turbulent(np.full_like(rough, TURBULENT_FROM))[0] / TURBULENT_FROM

    def law(reynolds: Floats) -> tuple[Floats, Floats]:
        product, slope = turbulent(np.maximum(reynolds, TURBULENT_FROM))
        if reynolds.min(initial=np.inf) >= TURBULENT_FROM:
            return product, slope
        steep = (high - low) / span
        between = low + (reynolds - LAMINAR_BELOW) * steep
        laminar, turbulent_ = reynolds <= LAMINAR_BELOW, reynolds >= TURBULENT_FROM
        product = np.where(turbulent_, product, reynolds * between)
        slope = np.where(turbulent_, slope, reynolds * (between + reynolds * steep))
        return (
            np.where(laminar, LAMINAR_TIMES_REYNOLDS, product),
            np.where(laminar, 0.0, slope),
        )

    return law
