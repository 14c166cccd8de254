"""Sizes of the discharge pipe from a store's relief valve, in copper.

Source: Approved Document G (England), Table 3.1 and paragraphs 3.50 to 3.63, 2010 edition and the
2015 edition with 2016 amendments. The table gives its rows for G 1/2, G 3/4 and G 1 outlets, here
named by the tube that fits them: 15, 22 and 28 mm.
"""

from __future__ import annotations

from dataclasses import dataclass

TUBE_SIZES_MM = (15, 22, 28, 35, 42, 54)

D1_LIMIT_M = 0.6
"""D1, from valve to tundish: 600 mm at most (Approved Document G 3.54; WFR guidance G19.3)."""

EXEMPT_STORE_L = 15
"""A store of 15 litres or less stands outside these rules (Approved Document G)."""

LENGTH_A_SIZE_M = 9
"""Each further size of D2 carries a further 9 m (Approved Document G 3.58)."""

BEND_RESISTANCE_M = {22: 0.8, 28: 1.0, 35: 1.4, 42: 1.7, 54: 2.3}
"""Metres of straight pipe that one elbow or bend counts as, by D2's size (Table 3.1)."""


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the table. `printed` is False where the document's rule carries the table on."""

    outlet_mm: int
    d1_least_mm: int
    d2_mm: int
    limit_m: float
    bend_m: float
    printed: bool


def rows(outlet_mm: float) -> tuple[Row, ...]:
    """The rows for a valve's outlet, smallest D2 first; none where the table has no such outlet.

    Three rows stand in the table; beyond them its rule gives one more size for each further 9 m.
    """
    if outlet_mm not in (15, 22, 28):
        return ()
    outlet = int(outlet_mm)
    larger = TUBE_SIZES_MM[TUBE_SIZES_MM.index(outlet) + 1 :]
    return tuple(
        Row(outlet, outlet, size, LENGTH_A_SIZE_M * step, BEND_RESISTANCE_M[size], printed=step <= 3)
        for step, size in enumerate(larger, start=1)
    )


def row(outlet_mm: float, d2_mm: float) -> Row | None:
    """The row for that outlet and D2; None where D2 is too small, or no size the table knows."""
    return next((each for each in rows(outlet_mm) if each.d2_mm == d2_mm), None)


def resistance_m(length_m: float, bends: float, bend_m: float) -> float:
    """Length and bends as metres of straight pipe."""
    return length_m + bends * bend_m


def smallest_d2(outlet_mm: float, length_m: float, bends: float) -> Row | None:
    """The smallest D2 that carries that run; None where no size of the table does.

    Each size has its own allowance for a bend, so the run is worked anew at each.
    """
    for each in rows(outlet_mm):
        if within(resistance_m(length_m, bends, each.bend_m), each.limit_m):
            return each
    return None


def within(value: float, limit: float) -> bool:
    """At or under a limit: exactly the limit passes, so does a sum that misses it by rounding."""
    return value <= limit + 1e-9 * max(1.0, abs(limit))
