"""Smallest sets of closings, against trying them all; the two legs of one valve are never both shut."""

from __future__ import annotations

import itertools

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.labels import leg_label, other_leg, part_of, shown
from circuitcheck.circuit.positions import smallest_hitting, smallest_without_loop

LABELS = ["u", "v", "w", leg_label("x", "a"), leg_label("x", "b"), leg_label("y", "a"), leg_label("y", "b")]
SETS = st.lists(st.frozensets(st.sampled_from(LABELS), min_size=1, max_size=4), max_size=8)


def allowed(shut: frozenset[str]) -> bool:
    return not any(other_leg(label) in shut for label in shut)


def brute(sets: list[frozenset[str]], never: frozenset[str] = frozenset()) -> int | None:
    """The size of a smallest allowed set with a member of each; None where there is none."""
    free = [label for label in LABELS if label not in never]
    for size in range(len(free) + 1):
        for chosen in map(frozenset, itertools.combinations(free, size)):
            if allowed(chosen) and all(chosen & each for each in sets):
                return size
    return None


@given(SETS)
def test_smallest_hitting(sets: list[frozenset[str]]) -> None:
    found = smallest_hitting(sets)
    assert (None if found is None else len(found)) == brute(sets)
    if found is not None:
        assert allowed(found) and all(found & each for each in sets)


@given(SETS, st.frozensets(st.sampled_from(LABELS), max_size=3))
def test_smallest_without_loop(loops: list[frozenset[str]], never: frozenset[str]) -> None:
    def open_loop(shut: frozenset[str]) -> frozenset[str] | None:
        return next((loop for loop in loops if not loop & shut), None)

    found = smallest_without_loop(open_loop, never)
    assert (None if found is None else len(found)) == brute(loops, never)
    if found is not None:
        assert allowed(found) and not found & never and open_loop(found) is None


def test_a_loop_that_nothing_shuts_leaves_no_position() -> None:
    assert smallest_without_loop(lambda shut: frozenset()) is None


def test_no_loop_needs_no_closing() -> None:
    assert smallest_without_loop(lambda shut: None) == frozenset()
    assert smallest_hitting([]) == frozenset()


def test_both_legs_of_one_valve_are_never_shut() -> None:
    legs = [frozenset({leg_label("x", "a")}), frozenset({leg_label("x", "b")})]
    assert smallest_hitting(legs) is None
    assert smallest_hitting([*legs[:1], legs[1] | {"u"}]) == frozenset({leg_label("x", "a"), "u"})


def test_labels() -> None:
    label = leg_label("tp:1", "a")
    assert (part_of(label), shown(label), other_leg(label)) == ("tp:1", "tp:1:a", leg_label("tp:1", "b"))
    assert (part_of("zv:a"), shown("zv:a"), other_leg("zv:a")) == ("zv:a", "zv:a", "")
