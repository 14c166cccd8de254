"""A small circuit drawn, joined, changed and taken apart by keyboard alone."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import Qt

from circuitcheck.drawing.value import Joint
from circuitcheck.geometry import Point

from .counting import CONTROL, SHIFT, CountedHand

ENTER, TAB, ESCAPE, P = Qt.Key.Key_Return, Qt.Key.Key_Tab, Qt.Key.Key_Escape, Qt.Key.Key_P
LEFT, RIGHT, UP, DOWN = Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down


def placed(hand: CountedHand, text: str, *ways: tuple[Qt.Key, int]) -> str:
    """Find a part by typing, take it in hand, move it with the arrow keys, place it."""
    before = {*hand.drawing.components}
    hand.type(text)
    hand.key(TAB)
    for way, count in ways:
        for _ in range(count // 5):
            hand.key(way, SHIFT)
        for _ in range(count % 5):
            hand.key(way)
    hand.key(ENTER)
    (new,) = {*hand.drawing.components} - before
    return new


def go(hand: CountedHand, part: str) -> None:
    """Walk from part to part until the one that is meant."""
    for _ in range(50):
        hand.key(TAB)
        if hand.window.sheet.selected_ids() == {part}:
            return
    raise AssertionError(f"{part} was not reached")


def press_until(hand: CountedHand, key: Qt.Key, port: Joint) -> None:
    """Press a key until the caret is on a port."""
    at = hand.drawing.components[port.part].port_at(port.port)
    for _ in range(40):
        if hand.window.sheet._hands.keyboard.caret == at:
            return
        hand.key(key)
    raise AssertionError(f"{port} was not reached")


def join(hand: CountedHand, start: Joint, finish: Joint) -> None:
    """From port to port: P begins at the next free port, Tab ends at the next one."""
    sheet = hand.window.sheet
    if sheet.selected_ids() != {start.part}:
        go(hand, start.part)
    hand.key(P)
    press_until(hand, P, start)
    hand.key(TAB)
    press_until(hand, TAB, finish)
    hand.key(ENTER)


def test_a_small_circuit_is_drawn_by_keyboard_alone(hand: CountedHand) -> None:
    window = hand.window
    hand.type("heat source")
    hand.key(ENTER)
    (source,) = hand.drawing.components
    pump = placed(hand, "pump", (UP, 2), (RIGHT, 3))
    zone = placed(hand, "heating zone", (RIGHT, 8), (DOWN, 1))
    join(hand, Joint(source, "flow"), Joint(pump, "in"))
    join(hand, Joint(pump, "out"), Joint(zone, "flow"))
    join(hand, Joint(zone, "return"), Joint(source, "return"))
    assert len(hand.drawing.pipes) == 3

    # A vessel below the return, its pipe ended on the return: that makes the tee.
    vessel = placed(hand, "vessel", (DOWN, 12))
    line = window.sheet._content.layout.routed(hand.drawing.joined[Joint(source, "return")])
    (x, y) = hand.drawing.components[vessel].port_at("connection") or (0, 0)
    hand.key(P)
    level = next(a for a, b in pairwise(line) if a.y == b.y and min(a.x, b.x) < x < max(a.x, b.x))
    for _ in range(int(y - level.y)):
        hand.key(UP)
    hand.key(ENTER)
    assert [part.kind.name for part in hand.drawing.components.values()].count("tee") == 1

    # A valve cut into the pipe after the pump: the caret goes there, the name is typed.
    hand.key(ESCAPE)
    at = hand.drawing.components[pump].port_at("out") or Point(0, 0)
    hand.key(RIGHT)
    for _ in range(200):
        caret = window.sheet._hands.keyboard.caret or Point(0, 0)
        if caret == (at.x + 3, at.y):
            break
        wide, high = at.x + 3 - caret.x, at.y - caret.y
        hand.key((RIGHT if wide > 0 else LEFT) if wide else (DOWN if high > 0 else UP))
    hand.type("iso")
    hand.key(ENTER)
    (valve,) = [id for id, part in hand.drawing.components.items() if part.kind.name == "isolating_valve"]
    assert len(hand.drawing.pipes_of(valve)) == 2
    assert window.document.undo_text == "Cut in isolating valve"

    # It is moved, turned and taken out again; the pipe heals.
    pipes = len(hand.drawing.pipes)
    hand.key(RIGHT)
    hand.key(Qt.Key.Key_Delete)
    assert len(hand.drawing.pipes) == pipes - 1

    # Two chosen by the walk, copied beside themselves, and all of it taken back.
    go(hand, pump)
    hand.key(LEFT, CONTROL | SHIFT)
    assert window.sheet.selected_ids() == {pump, source}
    hand.key(Qt.Key.Key_D, CONTROL)
    assert window.document.undo_text == "Duplicate 2 parts and 1 pipe"
    hand.key(Qt.Key.Key_Z, CONTROL)

    kinds = sorted(part.kind.name for part in hand.drawing.components.values())
    assert kinds == ["expansion_vessel", "heat_source", "heating_zone", "pump", "tee"]
    joined = hand.drawing.joined
    for port in (Joint(source, "flow"), Joint(source, "return"), Joint(vessel, "connection")):
        assert port in joined
    assert joined[Joint(pump, "out")] == joined[Joint(zone, "flow")]
    print(f"\n{hand.gestures} key strokes and finds")


def test_a_pipe_is_shaped_by_the_arrow_keys(hand: CountedHand) -> None:
    hand.type("pump")
    hand.key(ENTER)
    (pump,) = hand.drawing.components
    valve = placed(hand, "zone valve", (RIGHT, 8), (DOWN, 6))
    join(hand, Joint(pump, "out"), Joint(valve, "in"))
    (pipe,) = hand.drawing.pipes.values()
    assert hand.window.sheet.selected_ids() == {pipe.id}
    before = hand.window.sheet._content.layout.routed(pipe.id)
    hand.key(RIGHT)
    assert hand.window.document.undo_text == "Shape pipe"
    after = hand.window.sheet._content.layout.routed(pipe.id)
    assert {at.x for at in before} ^ {at.x for at in after}


def test_selecting_many_by_keys(hand: CountedHand) -> None:
    hand.type("pump")
    hand.key(ENTER)
    (first,) = hand.drawing.components
    second = placed(hand, "drain", (RIGHT, 5))
    hand.key(LEFT, CONTROL)
    assert hand.window.sheet.selected_ids() == {first}
    hand.key(RIGHT, CONTROL | SHIFT)
    assert hand.window.sheet.selected_ids() == {first, second}
    hand.key(Qt.Key.Key_Space, CONTROL)
    assert hand.window.sheet.selected_ids() == {first}


def test_who_types_a_name_quickly_gets_the_part_and_no_turn(hand: CountedHand) -> None:
    hand.type("pump")
    hand.key(ENTER)
    (pump,) = hand.drawing.components
    hand.type("radiator")
    assert hand.drawing.components[pump].turn == 0
    assert hand.window.sheet.finder.box.edit.text() == "radiator"
    hand.key(ENTER)
    assert sorted(part.kind.name for part in hand.drawing.components.values()) == ["pump", "radiator"]
    assert hand.window.document.undo_text == "Place radiator"
    hand.key(Qt.Key.Key_R)
    hand.key(Qt.Key.Key_R)
    (radiator,) = [part for part in hand.drawing.components.values() if part.kind.name == "radiator"]
    assert radiator.turn == 180
    hand.type("pressure gauge")
    assert hand.window.sheet.finder.box.edit.text() == "pressure gauge"
    hand.key(ESCAPE)
    assert hand.window.sheet.hasFocus() and len(hand.drawing.components) == 2
    assert not hand.window.sheet.finder.is_open and hand.window.sheet.is_at_rest
