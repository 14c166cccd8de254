"""A map over another holds what a plain map would, step by step, and leaves the one below as it is."""

from __future__ import annotations

from collections.abc import Callable, MutableMapping
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.layers import FEW, MOST_OWN, Layers, carried_on, may_differ, over
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Drawing
from tests.drawing.laid import without_corners
from tests.drawing.layouts import LAYOUTS

KEYS = st.integers(0, 7)
STEPS = st.lists(st.tuples(st.sampled_from(("put", "take", "copy")), KEYS, st.integers(1, 9)))


def same(layers: MutableMapping[int, int], plain: dict[int, int]) -> None:
    assert dict(layers) == plain
    assert len(layers) == len(plain)
    for key in range(8):
        assert (key in layers) == (key in plain)
        assert layers.get(key) == plain.get(key)
        assert layers.get(key, -1) == plain.get(key, -1)


@given(st.dictionaries(KEYS, st.integers(1, 9)), STEPS)
def test_it_goes_like_a_plain_map(below: dict[int, int], steps: list[tuple[str, int, int]]) -> None:
    layers, plain, kept = Layers(below), dict(below), dict(below)
    left = []
    for what, key, value in steps:
        match what:
            case "put":
                layers[key] = plain[key] = value
            case "take":
                assert layers.pop(key, None) == plain.pop(key, None)
            case _:
                left.append((layers, dict(plain)))
                layers = layers.copy()
        same(layers, plain)
    for earlier, held in left:
        same(earlier, held)
    assert below == kept


@given(st.dictionaries(KEYS, st.integers(1, 9)), st.lists(KEYS))
def test_what_is_put_back_stands_where_it_stood(below: dict[int, int], keys: list[int]) -> None:
    layers = Layers(below)
    for key in keys:
        value = layers.pop(key, None)
        if value is not None:
            layers[key] = value + 1
    assert list(layers) == list(below)


def test_a_map_with_much_of_its_own_is_put_together_anew() -> None:
    many = {number: number for number in range(FEW + 1)}
    layers = carried_on(many)
    assert isinstance(layers, Layers)
    for number in range(MOST_OWN + 1):
        layers[number] = -number - 1
    again = carried_on(layers)
    assert isinstance(again, Layers)
    assert dict(again) == dict(layers) == many | {number: -number - 1 for number in range(MOST_OWN + 1)}
    assert not again._own
    assert many[0] == 0


def test_a_small_map_is_copied() -> None:
    few = {1: 2}
    assert type(carried_on(few)) is dict
    assert carried_on(few) is not few


@given(st.dictionaries(KEYS, st.integers(1, 9)), STEPS, STEPS)
def test_where_two_maps_may_differ_all_that_does_is_told(
    below: dict[int, int], one_way: list[tuple[str, int, int]], other_way: list[tuple[str, int, int]]
) -> None:
    one, other = Layers(below), Layers(below)
    for layers, steps in ((one, one_way), (other, other_way)):
        for what, key, value in steps:
            if what == "put":
                layers[key] = value
            else:
                layers.pop(key, None)
    for a, b in ((one, other), (one, below), (below, one), (one, dict(other)), (dict(one), dict(other))):
        told = list(may_differ(a, b))
        assert len(told) == len(set(told))
        assert {key for key in range(8) if a.get(key) != b.get(key)} <= set(told)


@pytest.mark.parametrize("layout", LAYOUTS.values(), ids=list(LAYOUTS))
def test_lines_are_the_same_by_layers(layout: Callable[[], Drawing], monkeypatch: pytest.MonkeyPatch) -> None:
    found = []
    for few in (10**6, 0):
        monkeypatch.setattr("circuitcheck.drawing.layers.FEW", few)
        chance, drawn = Random(1), without_corners(layout())
        lines: Routes | None = None
        for step in range(8):
            before, lines = lines, routes(drawn, lines)
            assert lines.others_than(before or lines) == {
                id for id in lines if before is not None and lines[id] != before[id]
            }
            found.append(list(lines.items()))
            chosen = chance.sample(sorted(drawn.components), 1 + step % 3)
            drawn = move(drawn, chosen, chance.randint(-3, 3), chance.randint(1, 4))
    assert found[: len(found) // 2] == found[len(found) // 2 :]


@given(st.dictionaries(KEYS, st.integers(1, 9), min_size=1), st.data())
def test_a_map_over_another_is_like_it_but_for_a_few(below: dict[int, int], data: st.DataObject) -> None:
    new = data.draw(st.dictionaries(st.sampled_from(sorted(below)), st.integers(1, 9)))
    kept = dict(below)
    plain, found = {**below, **new}, over(below, new)
    assert list(found.items()) == list(plain.items())
    assert list(found) == list(plain) and len(found) == len(plain)
    for key in range(9):
        assert (key in found) == (key in plain)
        assert found.get(key) == plain.get(key)
        assert found.get(key, -1) == plain.get(key, -1)
    with pytest.raises(KeyError):
        found[9]
    assert below == kept
    assert (found is below) == (plain == below)


def test_nothing_new_is_put_over_another() -> None:
    with pytest.raises(KeyError):
        over({1: 2}, {3: 4})


@pytest.mark.parametrize("name", sorted(LAYOUTS))
def test_a_step_of_a_drag_is_the_move_it_stands_for(name: str) -> None:
    drawing, rng = LAYOUTS[name](), Random(name)
    for _ in range(10):
        ids = rng.sample(sorted([*drawing.components, *drawing.pipes]), 2)
        off = rng.randint(-3, 3), rng.randint(1, 3)
        made, passing = move(drawing, ids, *off), move(drawing, ids, *off, passing=True)
        assert list(passing.components.items()) == list(made.components.items())
        assert list(passing.pipes.items()) == list(made.pipes.items())
        assert passing.controls == made.controls
