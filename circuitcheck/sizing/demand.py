"""Loading units of drinking water, and the flow to design for.

Source: EN 806-3:2006. One loading unit stands for a draw-off flow of 0.1 l/s (Table 2). The units of
all outlets that a pipe serves are added; the chance that all are open at once is in the curve of
its Annex B, which has one line for each size of the largest single outlet. The curve is from memory
and from published power laws fitted to it, not from the document: on logarithmic axes each line runs
straight from the flow of the largest outlet alone to 1.6 l/s at 300 units, beyond which all are one.
"""

from __future__ import annotations

from collections.abc import Iterable
from math import log, pow

UNIT_L_S = 0.1
"""The draw-off flow that one loading unit stands for, in l/s (EN 806-3:2006, Table 2)."""

LINES_MEET_UNITS = 300
LINES_MEET_L_S = 1.6


def total_units(units: Iterable[float]) -> float:
    """The loading units of these outlets together: they are added (EN 806-3:2006, 5.1)."""
    return sum(units)


def design_flow_l_s(units: float, largest: float) -> float:
    """The flow to design for, in l/s, for that many loading units in all.

    `largest`: those of the largest single outlet among them; never more than `units`. None drawn,
    no flow. Never more than every outlet open at once. The curve is from memory. Raises ValueError
    for a largest outlet that is no outlet or more than the sum.
    """
    if units == 0:
        return 0.0
    if not 0 < largest <= units:
        raise ValueError(f"the largest outlet's {largest:g} units are not within the sum of {units:g}")
    together = UNIT_L_S * units
    if units > LINES_MEET_UNITS:
        return min(together, max(UNIT_L_S * largest, LINES_MEET_L_S, 0.0482 * pow(units, 0.614)))
    alone = UNIT_L_S * largest
    if alone >= LINES_MEET_L_S or largest >= LINES_MEET_UNITS:
        return min(together, alone)
    slope: float = log(LINES_MEET_L_S / alone) / log(LINES_MEET_UNITS / largest)
    return min(together, alone * pow(units / largest, slope))


def l_min(flow_l_s: float) -> float:
    """A flow in l/s as l/min."""
    return 60 * flow_l_s
