"""A large drawing is laid out beside the window: what the sheet shows and takes meanwhile, and what becomes of it."""

from __future__ import annotations

import time
from collections.abc import Iterator
from dataclasses import replace
from threading import Event

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.arranging import move, turn
from circuitcheck.drawing.routing import LINES, routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.sheet.laying_out import BESIDE, MUCH, is_much
from circuitcheck.parts.catalogue import kinds
from circuitcheck.sheet.layout import Layout
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from circuitcheck.wanted import go_on
from tests.benchmarks.laid_out import houses
from tests.editor.sheet.conftest import Hand

LARGE = 500


@pytest.fixture
def large() -> Drawing:
    """Houses side by side, that nobody routed yet."""
    return replace(houses(LARGE))


@pytest.fixture
def gate(monkeypatch: pytest.MonkeyPatch) -> Iterator[Event]:
    """Holds up what is laid out beside the window, until it is set."""
    opened = Event()
    update = Layout.update

    def waits(layout: Layout, drawing: Drawing, *, passing: bool = False, hurried: bool = False) -> object:
        if len(drawing.components) > LARGE / 2 and not passing:
            assert opened.wait(20)
        return update(layout, drawing, passing=passing, hurried=hurried)

    monkeypatch.setattr(Layout, "update", waits)
    yield opened
    opened.set()


@pytest.fixture
def closing(hand: Hand) -> Iterator[Hand]:
    """The hand, and the sheet stopped at the end."""
    yield hand
    hand.view.stop()


def laid_out(hand: Hand, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: not hand.view.is_laying_out, timeout=20_000)


def lies_there(hand: Hand, drawing: Drawing, qtbot: QtBot) -> None:
    """Show a large drawing, and wait until it is laid out."""
    hand.view.set_drawing(drawing)
    laid_out(hand, qtbot)


def words(view: SheetView) -> list[str]:
    return [label.text() for label in view.viewport().findChildren(QLabel) if label.isVisible()]


def test_the_sheet_is_empty_and_says_why_until_all_lies_there(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    view = closing.view
    view.set_drawing(large)
    assert view.is_laying_out and not view.is_at_rest
    assert not view._content.parts and not view._content.pipes
    assert "The drawing is being laid out…" in words(view)
    gate.set()
    laid_out(closing, qtbot)
    assert words(view) == []
    assert view._content.drawing is large and view._stage.drawing is large
    assert view._content.parts.keys() == {id for id, part in view._content.layout.things.items() if part.at}
    fresh = Layout(lambda _: {})
    fresh.update(large)
    assert view._content.layout.lines == fresh.lines
    assert dict(view._content.layout.routes) == dict(routes(large))


def test_what_was_shown_before_is_not_taken_for_the_new_drawing(
    closing: Hand, row: Drawing, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    closing.show(row)
    closing.view.select(("pump1",))
    closing.view.set_drawing(large)
    assert closing.view.is_laying_out and not closing.view._content.parts
    assert closing.view.selected_ids() == frozenset()
    gate.set()
    laid_out(closing, qtbot)
    assert "pump1" not in closing.view._content.parts


def test_another_drawing_opened_meanwhile_is_the_one_that_is_shown(
    closing: Hand, row: Drawing, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    closing.view.set_drawing(large)
    closing.view.set_drawing(row)
    assert not closing.view.is_laying_out and closing.view._content.parts.keys() == {"pump1", "zv1", "ev1"}
    gate.set()
    qtbot.wait(300)
    assert closing.view._content.drawing is row and words(closing.view) == []


def test_an_edit_meanwhile_is_in_what_comes(closing: Hand, large: Drawing, gate: Event, qtbot: QtBot) -> None:
    closing.view.set_drawing(large)
    qtbot.wait(50)
    part = next(id for id, each in large.components.items() if each.at is not None)
    edited = move(large, [part], 0, -1)
    closing.view.set_drawing(edited)
    assert closing.view.is_laying_out and not closing.view._content.parts
    gate.set()
    laid_out(closing, qtbot)
    assert closing.view._content.drawing is edited
    at = edited.components[part].at
    assert at is not None and closing.view._content.parts[part].view.at == (at.x * 16, at.y * 16)


def test_nothing_can_be_taken_hold_of_meanwhile(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    view = closing.view
    view.set_drawing(large)
    closing.drag((10, 10), (14, 12))
    view.select_all()
    for key in (Qt.Key.Key_Delete, Qt.Key.Key_R, Qt.Key.Key_Right, Qt.Key.Key_P, Qt.Key.Key_Return):
        closing.key(key)
    view.turn_selection()
    view.mirror_selection()
    view.remove_selection()
    view.begin_placing(kinds()["pump"])
    view.begin_finding()
    assert closing.steps == [] and view._hands.gesture is None
    gate.set()
    laid_out(closing, qtbot)
    view.remove_selection()
    assert len(closing.steps) == 1


def test_it_is_shown_whole_where_that_was_asked_for_meanwhile(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    closing.view.set_drawing(large)
    closing.view.fit()
    gate.set()
    laid_out(closing, qtbot)
    assert closing.view._scroller.seen().contains(closing.view._content.bounds())


def test_the_sheet_can_be_left_meanwhile(hand: Hand, large: Drawing, gate: Event, qtbot: QtBot) -> None:
    hand.view.set_drawing(large)
    qtbot.wait(50)
    gate.set()
    hand.view.stop()
    qtbot.wait(50)
    assert not hand.view._content.parts


@pytest.fixture
def endless(monkeypatch: pytest.MonkeyPatch) -> Event:
    """Makes laying large drawings out take for ever, but for asking whether they are wanted. Set once it began."""
    begun = Event()
    update = Layout.update

    def lasts(layout: Layout, drawing: Drawing, *, passing: bool = False, hurried: bool = False) -> object:
        while len(drawing.components) > LARGE / 2 and not passing:
            begun.set()
            go_on()
            time.sleep(0.001)
        return update(layout, drawing, passing=passing, hurried=hurried)

    monkeypatch.setattr(Layout, "update", lasts)
    return begun


def test_leaving_the_sheet_does_not_wait_for_the_drawing(
    hand: Hand, large: Drawing, endless: Event, qtbot: QtBot
) -> None:
    hand.view.set_drawing(large)
    qtbot.waitUntil(endless.is_set)
    hand.view.stop()  # its thread has ended when this returns
    assert not hand.view._content.parts and not hand.view.is_laying_out


def test_another_large_drawing_does_not_wait_for_the_first(
    closing: Hand, large: Drawing, endless: Event, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    closing.view.set_drawing(large)
    qtbot.waitUntil(endless.is_set)
    monkeypatch.undo()  # the next one ends
    other = replace(large, title="Another")
    closing.view.set_drawing(other)
    laid_out(closing, qtbot)
    assert closing.view._content.drawing is other


def test_an_edit_of_a_large_drawing_keeps_the_lines_it_had(
    closing: Hand, large: Drawing, qtbot: QtBot
) -> None:
    lies_there(closing, large, qtbot)
    lines = dict(closing.view._content.layout.lines)
    part = next(id for id, each in large.components.items() if each.at is not None)
    closing.view.set_drawing(move(large, [part], 0, -1))
    assert not closing.view.is_laying_out
    after = closing.view._content.layout.lines
    assert sum(after[id] != line for id, line in lines.items()) < 20


def test_an_edit_of_much_of_it_is_laid_out_beside_the_window_too(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    view = closing.view
    gate.set()
    lies_there(closing, large, qtbot)
    view.centerOn(700, 500)
    seen = view._scroller.seen()
    gate.clear()
    view.select_all()
    view.turn_selection()
    turned = closing.drawing
    assert view.is_laying_out and not view._content.parts
    assert "The drawing is being laid out…" in words(view)
    assert view.selected_ids() == {*turned.components, *turned.controls, *turned.pipes}
    view.turn_selection()
    assert closing.drawing is turned  # nothing can be taken hold of
    gate.set()
    laid_out(closing, qtbot)
    assert view._content.drawing is turned and words(view) == []
    assert view._scroller.seen() == seen and view._content.pipes
    assert len(view.selected_ids()) == len(turned.components) + len(turned.controls) + len(turned.pipes)
    # The lines are those that the edit makes of the lines there were.
    before = routes(large)
    alone = replace(turned)
    assert dict(view._content.layout.routes) == dict(routes(alone, before))
    view.set_drawing(large)
    assert view.is_laying_out
    laid_out(closing, qtbot)
    assert dict(view._content.layout.routes) == dict(before)


def away_and_back(view: SheetView, large: Drawing) -> Drawing:
    """Move a part there and back: a line is another then than a drawing that was just opened would have."""
    away = move(large, ["gauge-0"], 30, 0)
    view.set_drawing(away)
    back = move(away, ["gauge-0"], -30, 0)
    view.set_drawing(back)
    assert not view.is_laying_out
    assert dict(view._content.layout.routes) != dict(routes(replace(large)))
    return back


def test_what_lines_there_were_counts_for_an_edit_of_much(
    closing: Hand, large: Drawing, qtbot: QtBot
) -> None:
    view = closing.view
    lies_there(closing, large, qtbot)
    back = away_and_back(view, large)
    before = view._content.layout.routes
    most = move(back, list(back.components)[9:], 2, 2)
    view.set_drawing(most)
    assert view.is_laying_out
    laid_out(closing, qtbot)
    assert dict(view._content.layout.routes) == dict(routes(replace(most), before))


def test_taken_back_while_it_is_laid_out_all_is_as_it_was(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    view = closing.view
    gate.set()
    lies_there(closing, large, qtbot)
    lines = dict(view._content.layout.lines)
    gate.clear()
    turned = turn(large, large.components)
    view.set_drawing(turned)
    qtbot.wait(50)
    view.set_drawing(large)
    assert view.is_laying_out
    gate.set()
    laid_out(closing, qtbot)
    assert view._content.drawing is large and view._content.layout.lines == lines


def test_the_checks_do_not_settle_its_lines_first(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    gate.set()
    lies_there(closing, large, qtbot)
    before = closing.view._content.layout.routes
    gate.clear()
    most = move(large, list(large.components)[9:], 2, 2)
    closing.view.set_drawing(most)
    # While nothing of it is laid out yet.
    qtbot.waitUntil(lambda: most.kept(LINES) is not None, timeout=20_000)
    assert closing.view.is_laying_out
    assert dict(routes(most)) == dict(routes(replace(most), before))
    gate.set()
    laid_out(closing, qtbot)
    assert dict(closing.view._content.layout.routes) == dict(routes(most))


def test_another_drawing_opened_while_an_edit_is_laid_out_has_its_own_lines(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot
) -> None:
    gate.set()
    lies_there(closing, large, qtbot)
    back = away_and_back(closing.view, large)
    gate.clear()
    closing.view.set_drawing(turn(back, back.components))
    other = parse(dump(large), "another file")
    closing.view.set_drawing(other)
    gate.set()
    laid_out(closing, qtbot)
    assert closing.view._content.drawing is other
    assert dict(closing.view._content.layout.routes) == dict(routes(parse(dump(large), "once more")))


@pytest.mark.parametrize("which", ["turned", "first"])
def test_an_edit_while_an_edit_is_laid_out_goes_on_from_the_lines_there_were(
    closing: Hand, large: Drawing, gate: Event, qtbot: QtBot, which: str
) -> None:
    gate.set()
    lies_there(closing, large, qtbot)
    before = closing.view._content.layout.routes
    gate.clear()
    turned = turn(large, large.components)
    closing.view.set_drawing(turned)
    after = move(turned if which == "turned" else large, list(large.components)[9:], 2, 2)
    closing.view.set_drawing(after)
    gate.set()
    laid_out(closing, qtbot)
    assert dict(closing.view._content.layout.routes) == dict(routes(replace(after), before))


def test_all_of_it_taken_out_is_seen_at_once(
    closing: Hand, large: Drawing, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    view = closing.view
    lies_there(closing, large, qtbot)
    lines = dict(view._content.layout.lines)
    monkeypatch.setattr(Layout, "_forget_part", lambda *_: pytest.fail("Forgotten thing by thing."))
    view.select_all()
    view.remove_selection()
    assert closing.drawing.is_empty and not view.is_laying_out
    assert view._content.drawing is closing.drawing and not view._content.parts
    assert "The drawing is being laid out…" not in words(view)
    monkeypatch.undo()
    lies_there(closing, large, qtbot)
    assert view._content.layout.lines == lines


def test_another_drawing_in_its_place_is_seen_at_once(
    closing: Hand, row: Drawing, large: Drawing, qtbot: QtBot
) -> None:
    lies_there(closing, large, qtbot)
    closing.view.set_drawing(row)
    assert not closing.view.is_laying_out and closing.view._content.parts.keys() == {"pump1", "zv1", "ev1"}
    assert closing.view._content.layout.obstacles.near([(-1e6, -1e6, 1e6, 1e6)])
    fresh = Layout(lambda _: {})
    fresh.update(row)
    assert closing.view._content.layout.lines == fresh.lines


def test_what_is_left_of_most_keeps_its_lines(closing: Hand, large: Drawing, qtbot: QtBot) -> None:
    view = closing.view
    lies_there(closing, large, qtbot)
    lines = dict(view._content.layout.lines)
    ids = [*large.components]
    view.select(ids[30:])
    view.remove_selection()
    left = closing.drawing
    assert view.is_laying_out and len(left.components) <= 30
    laid_out(closing, qtbot)
    assert view._content.drawing is left
    kept = [id for id, pipe in left.pipes.items() if pipe is large.pipes.get(id) and id in lines]
    assert kept and all(view._content.layout.lines[id] == lines[id] for id in kept)


def test_an_edit_of_some_parts_is_shown_at_once(closing: Hand, large: Drawing, qtbot: QtBot) -> None:
    lies_there(closing, large, qtbot)
    few = move(large, list(large.components)[:60], 0, 1)
    assert not is_much(large, few)
    closing.view.set_drawing(few)
    assert not closing.view.is_laying_out and closing.view._content.drawing is few


@pytest.mark.parametrize("kept", [0, 1, 100])
def test_how_much_is_another_is_counted_in_parts_and_pipes(large: Drawing, kept: int) -> None:
    pipes = {id: replace(pipe) for id, pipe in list(large.pipes.items())[kept:]}
    others = replace(large, pipes={**large.pipes, **pipes})
    assert is_much(large, others) is (
        len(pipes) > max(BESIDE, MUCH * (len(large.components) + len(large.pipes)))
    )
    fewer = {id: pipe for id, pipe in large.pipes.items() if id not in pipes}
    assert is_much(large, replace(large, pipes=fewer)) is is_much(large, others)
    assert not is_much(large, large) and is_much(large, Drawing()) and is_much(Drawing(), large)


def test_a_house_is_shown_at_once(closing: Hand) -> None:
    house = houses(48)
    closing.view.set_drawing(house)
    assert not closing.view.is_laying_out and len(closing.view._content.pipes) == len(house.pipes)


def test_where_it_fails_beside_the_window_it_is_laid_out_in_it(
    closing: Hand, large: Drawing, monkeypatch: pytest.MonkeyPatch, qtbot: QtBot
) -> None:
    def fails(drawing: Drawing) -> Layout:
        raise RuntimeError("as a mistake of the program would")

    monkeypatch.setattr(closing.view._laying_out._out, "_work_out", fails)
    lies_there(closing, large, qtbot)
    assert closing.view._content.drawing is large and closing.view._content.parts
