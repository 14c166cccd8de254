"""Water with glycol: the few points published for it, and a refusal for everything between them."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from circuitcheck.sizing.water import OutsideLimitsError

REFUSAL = (
    "the water holds glycol, and what is published here is a few points of 30 % by volume, and the drawing "
    "does not say which glycol; ask its supplier for density, heat capacity, viscosity and swell"
)


@dataclass(frozen=True, slots=True)
class Swell:
    """A published swell: the glycol and its share by volume, and the swell of it and of water between
    the same two temperatures."""

    glycol: str
    percent: float
    from_c: float
    to_c: float
    swell: float
    water_swell: float
    source: str

    @property
    def times_water(self) -> float:
        """How many times water's swell it is."""
        return self.swell / self.water_swell


PUBLISHED_SWELLS = (
    Swell(
        "ethylene glycol",
        30,
        10,
        82,
        0.0359,
        0.0305,
        "ASHRAE Fundamentals, density of ethylene glycol solutions",
    ),
    Swell(
        "propylene glycol",
        30,
        10,
        45,
        0.0167,
        0.0096,
        "ASHRAE Fundamentals, density of propylene glycol solutions",
    ),
)
"""From the tables' densities, in their own rounding. Other shares, and propylene glycol above 45 °C, are not
to be had from these."""

_FREEZES_C = ((25.0, -8.9), (30.0, -12.8), (40.0, -20.6))
FREEZING_SOURCE = "Lange's Handbook of Chemistry, Table 5.13: propylene glycol by volume"


def propylene_freezing_c(percent: float) -> float:
    """Where water with that share by volume of propylene glycol freezes, in °C; between the points
    published for 25, 30 and 40 % along straight lines.

    Source: Lange's Handbook of Chemistry, Table 5.13. Raises OutsideLimitsError outside 25 to 40 %.
    """
    points = _FREEZES_C
    if not points[0][0] <= percent <= points[-1][0]:
        raise OutsideLimitsError(
            f"{percent:g} % of propylene glycol: freezing points are published here from "
            f"{points[0][0]:g} to {points[-1][0]:g} %"
        )
    for (low, below), (high, above) in pairwise(points):
        if percent <= high:
            return below + (above - below) * (percent - low) / (high - low)
    return points[-1][1]
