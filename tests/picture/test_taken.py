"""Boxes that stand already are found as by holding each against each."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.picture.labels import Rect, overlap
from circuitcheck.picture.taken import Taken

edges = st.integers(-300, 300).map(float) | st.floats(-1e7, 1e7)


@st.composite
def boxes(draw: st.DrawFn) -> Rect:
    (left, right), (top, low) = (sorted((draw(edges), draw(edges))) for _ in range(2))
    return left, top, right, low


@given(st.lists(boxes(), max_size=12), boxes())
def test_they_are_found_as_by_holding_each_against_each(stand: list[Rect], box: Rect) -> None:
    taken = Taken(stand)
    met = [each for each in stand if overlap(box, each) > 0]
    assert taken.met(box) == met
    assert taken.is_met(box) == bool(met)
    assert taken.overlap(box) == sum(overlap(box, each) for each in stand)
    assert list(taken) == stand and len(taken) == len(stand)


def test_the_same_box_stands_twice_where_it_came_twice() -> None:
    box = (0.0, 0.0, 10.0, 10.0)
    taken = Taken([box])
    taken.append(box)
    assert taken.overlap(box) == 200.0
