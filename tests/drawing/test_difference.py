"""What one edit changed is told the same, however often and in whatever order it is asked after."""

from __future__ import annotations

import gc
from weakref import ref

from circuitcheck.drawing.difference import changed_items, changes
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.removing import remove
from tests.benchmarks.synthetic import plant


def test_is_what_a_look_at_every_item_tells() -> None:
    first = plant(60)
    second = relabel(first, "c12", "Hall")
    third = set_field(second, "p3", "length_m", 2.0)
    fourth = remove(third, ["p3"])
    pairs = [
        (first, second),
        (first, second),
        (second, third),
        (first, third),
        (third, first),
        (third, fourth),
    ]
    for before, after in (*pairs, *reversed(pairs)):
        told = changed_items(before.components, after.components), changed_items(before.pipes, after.pipes)
        assert changes(before, after) == told
    parts, pipes = changes(first, third)
    assert parts is not None and [new.label for _, new in parts] == ["Hall"]
    assert pipes is not None and [new.id for _, new in pipes] == ["p3"]
    assert changes(third, fourth)[1] is None


def test_keeps_no_drawing() -> None:
    first = plant(60)
    second = relabel(first, "c12", "Hall")
    changes(first, second)
    gone = ref(first)
    del first
    gc.collect()
    assert gone() is None
    assert changes(second, second) == ([], [])
