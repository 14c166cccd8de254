"""Lines told in a hurry, while something is on the move: as they will be wherever that is found soon enough."""

from __future__ import annotations

from dataclasses import replace
from random import Random

import pytest

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.laying import HURRIED, HURRIED_A_PIPE, Laying
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.sheet.layout import Layout
from tests.benchmarks.laid_out import houses

MOVES = 150
ONE_LOOK = 120
"""A pipe that has begun to look for a way asks what lies about it once more at most before it stops."""


def moves(seed: int) -> list[tuple[Drawing, Drawing]]:
    """The same move of one part of a house twice, as two drawings."""
    house, chance = houses(48), Random(seed)
    ids = sorted(house.components)
    made = []
    for _ in range(MOVES):
        id, by = chance.choice(ids), (chance.randint(-9, 9), chance.randint(-9, 9))
        made.append((move(house, [id], *by), move(house, [id], *by)))
    return made


def test_what_is_not_rough_is_as_without_hurry() -> None:
    before = routes(houses(48))
    alike = rough = 0
    for one, two in moves(1):
        hurried, full = routes(one, before, hurried=True), routes(two, before)
        assert hurried.keys() == full.keys()
        if hurried.is_rough:
            rough += 1
        else:
            assert dict(hurried) == dict(full)
        alike += dict(hurried) == dict(full)

    assert rough, "no move was hard enough to tell anything"
    assert alike > 0.6 * MOVES


def test_full_lines_after_rough_ones_are_as_if_nobody_had_hurried() -> None:
    before = routes(houses(48))
    for one, two in moves(2):
        routes(one, before, hurried=True)
        assert dict(routes(one, before)) == dict(routes(two, before))


def test_nothing_goes_on_from_rough_lines() -> None:
    house = houses(48)
    before = routes(house)
    rough = next(found for one, _ in moves(1) if (found := routes(one, before, hurried=True)).is_rough)

    with pytest.raises(ValueError, match="rough"):
        routes(house, rough)


def test_a_hurried_run_looks_at_little_however_crowded_it_is(monkeypatch: pytest.MonkeyPatch) -> None:
    spent: list[float] = []
    lay_best = Laying._lay_best

    def counted(self: Laying, id: str) -> float:
        had = self._effort.left
        met = lay_best(self, id)
        spent.append(had - self._effort.left)
        return met

    monkeypatch.setattr(Laying, "_lay_best", counted)
    before: Routes = routes(houses(48))
    for one, _ in moves(3):
        spent.clear()
        routes(one, before, hurried=True)
        assert sum(spent) <= HURRIED + len(spent) * HURRIED_A_PIPE + ONE_LOOK


def test_what_ran_out_of_effort_while_looking_for_trouble_is_rough(monkeypatch: pytest.MonkeyPatch) -> None:
    def looks_in_vain(self: Laying, id: str) -> list[str]:
        self._effort.left = 0
        return []

    before = routes(houses(48))
    easy = next(one for one, _ in moves(4) if not routes(one, before, hurried=True).is_rough)
    monkeypatch.setattr(Laying, "_met", looks_in_vain)
    found = routes(replace(easy), before, hurried=True)
    assert found.is_rough or not found.others_than(before)


def test_a_preview_is_thought_over_once_there_is_time() -> None:
    house, before = houses(48), routes(houses(48))
    drawing = next(
        one for one, two in moves(1) if dict(routes(one, before, hurried=True)) != dict(routes(two, before))
    )
    shown, at_once = Layout(lambda _: {}), Layout(lambda _: {})
    shown.update(house)
    shown.update(drawing, passing=True, hurried=True)
    assert shown.is_rough

    changes = shown.update(drawing, passing=True)

    assert not shown.is_rough
    at_once.update(house)
    at_once.update(drawing, passing=True)
    assert shown.lines == at_once.lines
    assert shown.hops == at_once.hops
    assert changes.pipes
