"""What an emitter gives at a water temperature that is not the one it was tested at."""

from __future__ import annotations

from math import log1p

NOMINAL_EXCESS_K = 50.0
"""Mean water above room at which the nominal output is told: 75 and 65 °C in a room of 20 °C.

Source: EN 442-1 (from memory, and as reprinted by trade guidance).
"""

ROOM_C = 20.0
"""The room that the nominal output is told for (EN 442-1)."""

EXPONENT = 1.3
"""How the output of a radiator rises with the excess, unless its maker tells (EN 442-2; usual value)."""

ARITHMETIC_FROM = 0.7
"""Below this ratio of return excess to flow excess the arithmetic mean flatters (common practice)."""


def excess_k(flow_c: float, return_c: float, room_c: float) -> float:
    """The mean water temperature above the room's, by the arithmetic mean: EN 442-2."""
    return (flow_c + return_c) / 2 - room_c


def logarithmic_excess_k(flow_c: float, return_c: float, room_c: float) -> float:
    """The logarithmic mean of the excess at flow and return: what a body that cools as it goes
    really has. Raises ValueError where the return is not above the room or the flow below it."""
    if not room_c < return_c <= flow_c:
        raise ValueError("flow and return must be above the room, the flow not below the return")
    if flow_c == return_c:
        return flow_c - room_c
    drop = flow_c - return_c
    # log1p: the logarithm of a ratio near 1 loses its digits.
    return drop / log1p(drop / (return_c - room_c))


def cools_much(flow_c: float, return_c: float, room_c: float) -> bool:
    """Whether the water cools so far that the arithmetic mean flatters."""
    return return_c - room_c < ARITHMETIC_FROM * (flow_c - room_c)


def output_share(excess: float, exponent: float = EXPONENT) -> float:
    """The share of its nominal output that an emitter gives: (excess / 50 K) ^ exponent.

    Nothing from water no warmer than the room. Source: EN 442-2, the characteristic equation.
    """
    return float((excess / NOMINAL_EXCESS_K) ** exponent) if excess > 0 else 0.0
