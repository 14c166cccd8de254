"""The as-proposed sample is drawn from an empty sheet in at most 1.2 gestures for each part and pipe."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

import pytest
from PySide6.QtCore import Qt

from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

from .counting import CONTROL, CountedHand, same_joins

R, M = Qt.Key.Key_R, Qt.Key.Key_M
MOST = 1.2


def on(hand: CountedHand, part: str, port: str, wanted: Callable[[Point], float]) -> tuple[float, float]:
    """Where the eye sees the pipe on a port run nearest to what is wanted: a whole square on its line."""
    pipe = hand.drawing.joined[Joint(part, port)]
    line = hand.window.sheet._content.layout.routed(pipe)
    squares = [
        Point(a.x + (b.x - a.x) * step / far, a.y + (b.y - a.y) * step / far)
        for a, b in pairwise(line)
        for far in [max(abs(b.x - a.x), abs(b.y - a.y))]
        for step in range(1, int(far))
    ]
    return min(squares, key=wanted)


def near(x: float, y: float) -> Callable[[Point], float]:
    return lambda at: abs(at.x - x) + abs(at.y - y)


def shift_upright(hand: CountedHand, part: str, port: str, x: float) -> None:
    """Drag the upright run of the pipe on a port to where one wants it."""
    line = hand.window.sheet._content.layout.routed(hand.drawing.joined[Joint(part, port)])
    a, b = max(((a, b) for a, b in pairwise(line) if a.x == b.x), key=lambda run: abs(run[1].y - run[0].y))
    y = round((a.y + b.y) / 2)
    hand.drag((a.x, y), (x, y))


def draw(hand: CountedHand) -> None:
    """Draw it as one would: what is large first, the runs between, then what is cut in and teed in."""
    for _ in range(2):
        hand.key(Qt.Key.Key_Minus, CONTROL)
    source = hand.place("heat so", 8, 15)
    store = hand.place("unv", 46, 20)
    hand.place("heating zone", 41, 5)
    hand.place("dirt", 20, 28)

    hand.drag((11, 13), (40, 13), (43, 21))
    shift_upright(hand, source, "flow", 40)
    hand.place("pump", 20, 13)
    valve = hand.place("zone v", 33, 13)
    hand.drag((43, 24), (40, 28), (21, 28))
    shift_upright(hand, store, "coil_return", 40)
    hand.drag((19, 28), (14, 28), (11, 17))

    hand.place("safety", 13, 10, M)
    hand.drag((13, 11), (13, 12), (13, 13))
    hand.place("gauge", 16, 10)
    hand.drag((16, 11), (16, 13))
    hand.place("bypass", 24, 20, R)
    hand.drag((24, 19), (24, 13))
    hand.drag((24, 21), (24, 28))
    hand.place("zone v", 30, 10, R, R, R)
    hand.drag((30, 11), (30, 13))
    hand.drag((30, 9), (30, 4), (38, 4))
    hand.place("drain", 26, 8)
    (rooms_valve,) = {c.id for c in hand.drawing.components.values() if c.kind.name == "zone_valve"} - {valve}
    hand.drag((26, 7), on(hand, rooms_valve, "out", near(30, 6)))
    hand.drag((38, 6), (37, 28))
    hand.place("air", 40, 10)
    hand.drag((40, 11), (39, 13))

    hand.place("drain", 17, 31)
    hand.drag((17, 30), (17, 28))
    hand.place("vessel", 9, 25)
    hand.drag((9, 23), on(hand, source, "return", near(14, 22)))
    hand.place("filling", 28, 32, R, R, R)
    hand.drag((28, 30), (28, 28))

    hand.place("cold main", 8, 37)
    hand.drag((9, 37), (46, 37), (46, 25))
    hand.place("iso", 13, 37)
    hand.place("strai", 18, 37)
    hand.place("prv", 32, 37)
    hand.place("check", 38, 37)
    hand.drag((28, 34), (28, 37))
    hand.place("vessel", 41, 33, R, R)
    hand.drag((41, 35), (41, 37))
    hand.place("expansion relief", 49, 34, R)
    hand.drag((48, 34), on(hand, store, "cold", near(46, 34)))
    hand.place("drain", 49, 30)
    hand.drag((49, 29), on(hand, store, "cold", near(46, 28)))

    hand.place("outlet", 47, 5)
    hand.drag((46, 15), (46, 6))
    hand.place("blend", 60, 9)
    hand.drag((59, 9), (46, 9))
    hand.place("outlet", 64, 5)
    hand.drag((61, 9), (63, 6))
    hand.drag((60, 10), (35, 37))
    hand.place("temp", 54, 17, R)
    hand.drag((49, 17), (53, 17))
    hand.place("tund", 54, 40)
    hand.drag((54, 18), (54, 39))
    hand.drag((49, 35), (54, 37))
    hand.place("discharge", 54, 48)
    hand.drag((54, 41), (54, 47))
    hand.place("discharge", 3, 22)
    hand.drag((12, 10), (3, 21))

    hand.place("prog", 5, 2)
    hand.place("room th", 13, 2)
    hand.place("store th", 22, 2)


@pytest.fixture(scope="module")
def sample() -> Drawing:
    return read(data_path("samples") / "terrace-as-proposed.wetcircuit")


def test_the_sample_is_drawn_in_few_gestures(hand: CountedHand, sample: Drawing) -> None:
    draw(hand)
    things = len(sample.components) + len(sample.pipes) + len(sample.controls)
    each = hand.gestures / things
    print(
        f"\n{hand.gestures} gestures for {len(sample.components)} parts, {len(sample.controls)} controls "
        f"and {len(sample.pipes)} pipes: {each:.2f} for each"
    )
    drawing = hand.drawing
    assert len(drawing.components) == len(sample.components)
    assert len(drawing.pipes) == len(sample.pipes)
    assert same_joins(drawing, sample)
    assert hand.gestures <= MOST * (len(sample.components) + len(sample.pipes))

    names = []
    while step := hand.window.document.undo_text:
        names.append(step)
        hand.window.actions_.undo.trigger()
    assert all(names) and not hand.drawing.components and not hand.drawing.pipes
    while hand.window.document.redo_text:
        hand.window.actions_.redo.trigger()
    assert hand.drawing == drawing


def test_other_joins_are_told_apart(sample: Drawing) -> None:
    from circuitcheck.drawing.edits import remove
    from circuitcheck.drawing.pipes import join

    assert same_joins(sample, sample)
    assert not same_joins(sample, remove(sample, {"gauge"}))
    freed = join(sample, "p11", 1, Point(0, 0))
    assert not same_joins(
        sample, join(join(freed, "p12", 0, Joint("bypass", "in")), "p11", 1, Joint("bypass", "out"))
    )
