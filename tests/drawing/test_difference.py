"""What one edit changed is told the same, however often and in whatever order it is asked after."""

from __future__ import annotations

import gc
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path
from random import Random
from weakref import ref

import pytest

from circuitcheck.drawing import difference
from circuitcheck.drawing.arranging import mirror, move, shift, turn
from circuitcheck.drawing.difference import changed_items, changes, made_of
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.pipes import set_corners
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
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


def _all_looked_at(before: Drawing, after: Drawing) -> tuple[set[tuple[int, int]], set[tuple[int, int]]]:
    """What a look at every item tells, whoever made one drawing of the other."""
    parts = changed_items(before.components, after.components)
    pipes = changed_items(before.pipes, after.pipes)
    assert parts is not None and pipes is not None
    return _told(parts), _told(pipes)


def _told(pairs: Iterable[tuple[object, object]]) -> set[tuple[int, int]]:
    return {(id(old), id(new)) for old, new in pairs}


def _rearranged(rng: Random, drawing: Drawing, ids: list[str]) -> Drawing:
    """These parts, controls and pipes elsewhere, by one of the edits of place."""
    x, y = rng.randint(-4, 4), rng.randint(-4, 4)
    match rng.randrange(4):
        case 0:
            return move(drawing, ids, x, y)
        case 1:
            return shift(drawing, {each: Point(x, number) for number, each in enumerate(ids)})
        case 2:
            return turn(drawing, ids)
    return mirror(drawing, ids)


@pytest.mark.parametrize(
    "sample", sorted(data_path("samples").glob("*.wetcircuit")), ids=lambda path: path.stem
)
def test_a_change_of_place_says_all_that_it_changed(sample: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    rng, drawing = Random(sample.stem), read(sample)
    assert drawing.joined
    made = []
    for _ in range(30):
        ids = rng.sample([*drawing.components, *drawing.controls, *drawing.pipes], rng.choice((1, 1, 2, 5)))
        after = _rearranged(rng, drawing, ids)
        with monkeypatch.context() as patch:
            if after is not drawing:
                patch.setattr(difference, "changed_items", None)  # nobody has to look at all
            parts, pipes = changes(drawing, after)
        assert parts is not None and pipes is not None
        assert (_told(parts), _told(pipes)) == _all_looked_at(drawing, after)
        assert "joined" in after.__dict__ and list(after.joined.items()) == list(
            replace(after).joined.items()
        )
        made.append(after)
        drawing = rng.choice((drawing, after))
    assert any(after is not made[0] for after in made)


def test_setting_corners_says_all_that_it_changed(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = plant(60)
    assert drawing.joined
    after = set_corners(drawing, "p3", [Point(1, 2)])
    monkeypatch.setattr(difference, "changed_items", None)
    assert changes(drawing, after) == ([], [(drawing.pipes["p3"], after.pipes["p3"])])
    assert after.joined is drawing.joined


def test_what_pipes_join_goes_along_only_where_none_joins_anything_else() -> None:
    drawing = plant(60)
    assert drawing.joined
    pipe = drawing.pipes["p3"]
    elsewhere = replace(pipe, ends=(pipe.ends[0], Point(0, 0)))
    after = replace(drawing, pipes={**drawing.pipes, "p3": elsewhere})
    assert made_of(drawing, after, (), ("p3",)) is after
    assert pipe.ends[1] in drawing.joined
    assert pipe.ends[1] not in after.joined


def test_keeps_no_drawing() -> None:
    first = plant(60)
    second = relabel(first, "c12", "Hall")
    changes(first, second)
    gone = ref(first)
    del first
    gc.collect()
    assert gone() is None
    assert changes(second, second) == ([], [])
