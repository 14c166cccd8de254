"""Sizes of the discharge pipe from a store's relief valve, in copper.

The table comes from a rule book as rows; outlets are named by the tube that fits them (15, 22 and
28 mm for G 1/2, G 3/4 and G 1). Beyond its printed rows its rule goes on: one size more for each
further length (Approved Document G (England), Table 3.1 and 3.58).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Row:
    """One row of the table. `printed` is False where the document's rule carries the table on."""

    outlet_mm: float
    d1_least_mm: float
    d2_mm: float
    limit_m: float
    bend_m: float
    printed: bool = True


Table = tuple[Row, ...]
"""Every row, each outlet's smallest D2 first."""


def table_of(printed: Iterable[Mapping[str, float]], length_a_size_m: float) -> Table:
    """The table from its printed rows, carried on to the largest tube it names.

    Each row has `outlet_mm`, `d1_least_mm`, `d2_mm`, `limit_m` and `bend_m`; each further size of D2
    carries `length_a_size_m` more. Raises KeyError for a row that lacks one.
    """
    rows_printed = [
        Row(row["outlet_mm"], row["d1_least_mm"], row["d2_mm"], row["limit_m"], row["bend_m"])
        for row in printed
    ]
    bend_m = {each.d2_mm: each.bend_m for each in rows_printed}
    found: list[Row] = []
    for outlet in sorted({each.outlet_mm for each in rows_printed}):
        own = sorted((each for each in rows_printed if each.outlet_mm == outlet), key=lambda row: row.d2_mm)
        last = own[-1]
        larger = sorted(size for size in bend_m if size > last.d2_mm)
        found += own
        found += [
            Row(
                outlet,
                last.d1_least_mm,
                size,
                last.limit_m + length_a_size_m * step,
                bend_m[size],
                printed=False,
            )
            for step, size in enumerate(larger, start=1)
        ]
    return tuple(found)


def rows(table: Table, outlet_mm: float) -> Table:
    """The rows for a valve's outlet, smallest D2 first; none where the table has no such outlet."""
    return tuple(each for each in table if each.outlet_mm == outlet_mm)


def row(table: Table, outlet_mm: float, d2_mm: float) -> Row | None:
    """The row for that outlet and D2; None where D2 is too small, or no size the table knows."""
    return next((each for each in rows(table, outlet_mm) if each.d2_mm == d2_mm), None)


def resistance_m(length_m: float, bends: float, bend_m: float) -> float:
    """Length and bends as metres of straight pipe."""
    return length_m + bends * bend_m


def smallest_d2(table: Table, outlet_mm: float, length_m: float, bends: float) -> Row | None:
    """The smallest D2 that carries that run; None where no size of the table does.

    Each size has its own allowance for a bend, so the run is worked anew at each.
    """
    for each in rows(table, outlet_mm):
        if within(resistance_m(length_m, bends, each.bend_m), each.limit_m):
            return each
    return None


def size_above(table: Table, size_mm: float) -> float | None:
    """The next standard size above one; None above the largest that the table names."""
    sizes = {each.d1_least_mm for each in table} | {each.d2_mm for each in table}
    return min((size for size in sizes if size > size_mm), default=None)


def fall_of(fall_m: float, length_m: float, drop_m: float = 0.0) -> float:
    """The fall of a pipe, in metres a metre, without the part of it that drops straight down.

    Of a pipe that is nothing but a drop, and of one without length, it is without limit where the
    pipe falls by no less than its drop.
    """
    rest_m, rest_fall_m = length_m - drop_m, fall_m - drop_m
    if rest_m > 1e-9:
        return rest_fall_m / rest_m
    return float("inf") if rest_fall_m >= -1e-9 else float("-inf")


def within(value: float, limit: float) -> bool:
    """At or under a limit: exactly the limit passes, so does a sum that misses it by rounding."""
    return value <= limit + 1e-9 * max(1.0, abs(limit))
