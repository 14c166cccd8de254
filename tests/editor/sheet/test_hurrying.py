"""While a part is dragged its pipes are laid in a hurry; once the hand rests, and when it lets go, as they are."""

from __future__ import annotations

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.routing import Routes, routes
from circuitcheck.drawing.value import Drawing
from tests.benchmarks.laid_out import houses

from .conftest import Hand

Place = tuple[float, float]
Hard = tuple[Drawing, str, Place, Place]
"""A house, a part of it, where it is and where it is dragged."""


@pytest.fixture(scope="module")
def hard() -> Hard:
    """A house, a part of it, where it is and where to drag it, so that its pipes are not found in a hurry."""
    house = houses(48)
    before = routes(house)
    for id, part in house.components.items():
        # Alone where the pointer takes hold of it, and large enough to be taken hold of.
        if part.at is None or part.kind.size[0] < 3:
            continue
        for across in range(-9, 10):
            one, two = move(house, [id], across, 3), move(house, [id], across, 3)
            if routes(one, before, hurried=True).others_than(routes(two, before)):
                return house, id, (part.at.x, part.at.y), (part.at.x + across, part.at.y + 3)
    raise AssertionError("nothing in the house is hard to move")


def dragged(hand: Hand, hard: Hard) -> Hard:
    """The part is taken hold of and dragged there, not let go."""
    house, _, start, end = hard
    hand.show(house)
    hand.view.centerOn(start[0] * 16, start[1] * 16)
    hand.press(*start)
    hand.move(*end)
    return hard


def shown(hand: Hand) -> Routes:
    return hand.view._content.layout.routes


def test_once_the_hand_rests_the_pipes_lie_as_they_will(hand: Hand, qtbot: QtBot, hard: Hard) -> None:
    house, id, start, end = dragged(hand, hard)
    assert hand.view._content.drawing is not house
    assert hand.view._content.layout.is_rough

    qtbot.waitUntil(lambda: not hand.view._content.layout.is_rough, timeout=5_000)

    by = (end[0] - start[0], end[1] - start[1])
    as_it_will = routes(move(house, [id], *by), routes(house))
    assert dict(shown(hand)) == dict(as_it_will)
    hand.release(*end)
    assert dict(shown(hand)) == dict(as_it_will)


def test_let_go_at_once_they_lie_the_same(hand: Hand, hard: Hard) -> None:
    house, id, start, end = dragged(hand, hard)

    hand.release(*end)

    by = (end[0] - start[0], end[1] - start[1])
    assert not hand.view._content.layout.is_rough
    assert dict(shown(hand)) == dict(routes(move(house, [id], *by), routes(house)))
    assert len(hand.steps) == 1


def test_put_back_by_escape_nothing_is_left_of_it(hand: Hand, qtbot: QtBot, hard: Hard) -> None:
    house, *_ = dragged(hand, hard)

    hand.view.cancel_gesture_or_selection()
    qtbot.wait(150)

    assert dict(shown(hand)) == dict(routes(house))
    assert hand.steps == []
