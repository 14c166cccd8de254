"""The formulas of the discharge table: sizes, limits and what lies at them."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.rules.book import book
from circuitcheck.sizing.discharge import (
    Row,
    fall_of,
    resistance_m,
    row,
    rows,
    size_above,
    smallest_d2,
    table_of,
    within,
)

LIMITS = book("england").limits
TABLE = table_of(LIMITS["discharge.table"].value, LIMITS["discharge.length_a_size_m"].value)
TUBE_SIZES_MM = (15, 22, 28, 35, 42, 54)
BEND_RESISTANCE_M: dict[float, float] = {22: 0.8, 28: 1.0, 35: 1.4, 42: 1.7, 54: 2.3}

OUTLETS = (15, 22, 28)


@pytest.mark.parametrize("outlet", [0, 8, 10, 12, 14.9, 15.1, 20, 35, 54])
def test_no_rows_for_an_outlet_the_table_does_not_know(outlet: float) -> None:
    assert rows(TABLE, outlet) == ()
    assert row(TABLE, outlet, 22) is None
    assert smallest_d2(TABLE, outlet, 1, 0) is None


@pytest.mark.parametrize("outlet", OUTLETS)
def test_rows_begin_one_size_above_the_outlet_and_end_with_the_largest_tube(outlet: int) -> None:
    sizes = [each.d2_mm for each in rows(TABLE, outlet)]
    assert sizes == [size for size in TUBE_SIZES_MM if size > outlet]
    assert all(each.bend_m == BEND_RESISTANCE_M[each.d2_mm] for each in rows(TABLE, outlet))


def test_a_number_may_be_a_float() -> None:
    assert row(TABLE, 15.0, 22.0) == row(TABLE, 15, 22) is not None


@pytest.mark.parametrize("d2", [15, 12, 25, 67])
def test_no_row_for_a_size_too_small_or_unknown(d2: float) -> None:
    assert row(TABLE, 15, d2) is None


@pytest.mark.parametrize(
    ("outlet", "length", "bends", "d2"),
    [
        (15, 0, 0, 22),
        (15, 9.0, 0, 22),
        (15, 9.01, 0, 28),
        (15, 18, 0, 28),
        (15, 18.01, 0, 35),
        (15, 27, 0, 35),
        (15, 27.01, 0, 42),
        (15, 45, 0, 54),
        (15, 7, 4, 28),
        (15, 5.8, 4, 22),
        (15, 10, 8, 28),
        (15, 10, 9, 35),
        (22, 9, 0, 28),
        (22, 9.01, 0, 35),
        (28, 27, 0, 54),
    ],
)
def test_smallest_size_that_carries_a_run(outlet: float, length: float, bends: int, d2: int) -> None:
    found = smallest_d2(TABLE, outlet, length, bends)
    assert found is not None and found.d2_mm == d2


@pytest.mark.parametrize(("outlet", "length"), [(15, 45.01), (22, 36.01), (28, 27.01)])
def test_no_size_carries_what_is_too_long_for_all(outlet: float, length: float) -> None:
    assert smallest_d2(TABLE, outlet, length, 0) is None


def test_resistance_is_length_and_bends() -> None:
    assert resistance_m(7, 4, 0.8) == pytest.approx(10.2)
    assert resistance_m(0, 0, 0.8) == 0


@pytest.mark.parametrize(
    ("value", "limit", "passes"),
    [(9, 9, True), (9.01, 9, False), (9.000001, 9, False), (0.2 + 0.2 + 0.2, 0.6, True), (0.1 * 3, 0.3, True), (0.61, 0.6, False)],
)  # fmt: skip
def test_exactly_a_limit_passes_and_a_step_over_does_not(value: float, limit: float, passes: bool) -> None:
    assert within(value, limit) is passes


@given(st.sampled_from(OUTLETS), st.floats(0, 60), st.integers(0, 40))
def test_the_answer_carries_the_run_and_no_smaller_size_does(outlet: int, length: float, bends: int) -> None:
    found = smallest_d2(TABLE, outlet, length, bends)
    carrying = [
        each
        for each in rows(TABLE, outlet)
        if length + bends * each.bend_m <= each.limit_m + 1e-9 * each.limit_m
    ]
    assert found == (carrying[0] if carrying else None)


@given(st.floats(0, 60), st.floats(0, 5), st.integers(0, 20))
def test_a_longer_run_never_needs_a_smaller_size(length: float, more: float, bends: int) -> None:
    def size(length_m: float) -> float:
        found = smallest_d2(TABLE, 15, length_m, bends)
        return found.d2_mm if found else 1000

    assert size(length + more) >= size(length)


def test_a_table_is_carried_on_to_the_largest_tube_it_names() -> None:
    printed = [
        {"outlet_mm": 10, "d1_least_mm": 10, "d2_mm": 20, "limit_m": 5, "bend_m": 0.1},
        {"outlet_mm": 20, "d1_least_mm": 20, "d2_mm": 30, "limit_m": 5, "bend_m": 0.2},
    ]
    assert table_of(printed, 4) == (
        Row(10, 10, 20, 5, 0.1),
        Row(10, 10, 30, 9, 0.2, printed=False),
        Row(20, 20, 30, 5, 0.2),
    )
    with pytest.raises(KeyError):
        table_of([{"outlet_mm": 10}], 4)


@pytest.mark.parametrize(
    ("size", "above"), [(15, 22), (22, 28), (28, 35), (35, 42), (42, 54), (54, None), (20, 22)]
)
def test_the_next_standard_size(size: float, above: float | None) -> None:
    assert size_above(TABLE, size) == above


@pytest.mark.parametrize(
    ("fall", "length", "drop", "slope"),
    [
        (0.05, 10, 0, 0.005),
        (0.45, 10.4, 0.4, 0.005),
        (-0.1, 10, 0, -0.01),
        (0.4, 0.4, 0.4, float("inf")),
        (0, 0, 0, float("inf")),
        (0.2, 0.4, 0.4, float("-inf")),
        (-0.1, 0, 0, float("-inf")),
    ],
)
def test_fall_without_the_drop(fall: float, length: float, drop: float, slope: float) -> None:
    assert fall_of(fall, length, drop) == pytest.approx(slope)
