"""Working out beside the window: only the last answer counts, a failure is told, and it can be stopped."""

from __future__ import annotations

import threading
import time
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.wanted import go_on


class Slow:
    """Work that waits until it is let go, and remembers what it was given."""

    def __init__(self) -> None:
        self.asked: list[Drawing] = []
        self.go = threading.Event()

    def __call__(self, drawing: Drawing) -> object:
        self.asked.append(drawing)
        self.go.wait(5)
        return len(self.asked)


@pytest.fixture
def slow() -> Iterator[Slow]:
    made = Slow()
    yield made
    made.go.set()


def test_an_answer_to_an_older_drawing_is_dropped(qtbot: QtBot, slow: Slow) -> None:
    work = WorkingOut(slow, "test", 0)
    first, second, third = Drawing(), Drawing(), Drawing()
    found: list[tuple[Drawing, object]] = []
    work.found.connect(lambda drawing, result: found.append((drawing, result)))
    work.ask(first)
    qtbot.waitUntil(lambda: slow.asked == [first])
    work.ask(second)
    work.ask(third)
    assert work.is_busy
    slow.go.set()
    qtbot.waitUntil(lambda: bool(found))
    assert [drawing is third for drawing, _ in found] == [True]
    assert len(slow.asked) == 2 and not work.is_busy
    work.close()


def test_what_is_no_longer_wanted_is_not_told(qtbot: QtBot, slow: Slow) -> None:
    work = WorkingOut(slow, "test", 0)
    work.ask(Drawing())
    qtbot.waitUntil(lambda: bool(slow.asked))
    work.forget()
    slow.go.set()
    with qtbot.assertNotEmitted(work.found, wait=100):
        pass
    # It works again when asked again.
    with qtbot.waitSignal(work.found, timeout=5_000):
        work.ask(Drawing())
    work.close()


def test_a_failure_is_told_and_the_next_answer_comes(qtbot: QtBot, caplog: pytest.LogCaptureFixture) -> None:
    def fails(drawing: Drawing) -> object:
        if drawing.title:
            return "well"
        raise RuntimeError("broken")

    work = WorkingOut(fails, "test", 0)
    with qtbot.waitSignal(work.found, timeout=5_000) as told:
        work.ask(Drawing())
    assert told.args is not None and told.args[1] is None and "broken" in caplog.text
    with qtbot.waitSignal(work.found, timeout=5_000) as told:
        work.ask(Drawing(title="x"))
    assert told.args is not None and told.args[1] == "well"
    work.close()


def test_once_closed_it_neither_works_nor_tells(qtbot: QtBot, slow: Slow) -> None:
    work = WorkingOut(slow, "test", 0)
    slow.go.set()
    work.ask(Drawing())
    work.close()
    with qtbot.assertNotEmitted(work.found, wait=100):
        work.ask(Drawing())
    assert slow.asked == []


class Endless:
    """Work on a drawing without a title that never comes to an end, but for asking whether it is wanted."""

    def __init__(self) -> None:
        self.begun = threading.Event()

    def __call__(self, drawing: Drawing) -> object:
        while not drawing.title:
            self.begun.set()
            go_on()
            time.sleep(0.001)
        return drawing.title


def test_closing_ends_what_asks_whether_it_is_wanted(qtbot: QtBot) -> None:
    endless = Endless()
    work = WorkingOut(endless, "test", 0)
    work.ask(Drawing())
    qtbot.waitUntil(endless.begun.is_set)
    work.close()  # returns only once the thread has ended
    with qtbot.assertNotEmitted(work.found, wait=50):
        pass
    assert not work.is_busy


@pytest.mark.parametrize("first_forgotten", [False, True])
def test_what_gives_up_does_so_where_something_else_is_asked(qtbot: QtBot, first_forgotten: bool) -> None:
    endless = Endless()
    work = WorkingOut(endless, "test", 0, gives_up=True)
    work.ask(Drawing())
    qtbot.waitUntil(endless.begun.is_set)
    if first_forgotten:
        work.forget()
    with qtbot.waitSignal(work.found, timeout=5_000) as told:
        work.ask(Drawing(title="the next"))
    assert told.args is not None and told.args[1] == "the next"
    assert not work.is_busy
    work.close()


def test_what_was_given_up_and_is_asked_again_is_worked_out(qtbot: QtBot, slow: Slow) -> None:
    def slowly(drawing: Drawing) -> object:
        answer = slow(drawing)
        go_on()
        return answer

    work = WorkingOut(slowly, "test", 0, gives_up=True)
    drawing = Drawing()
    work.ask(drawing)
    qtbot.waitUntil(lambda: len(slow.asked) == 1)
    work.forget()
    slow.go.set()
    qtbot.waitUntil(lambda: work._running is None)
    with qtbot.waitSignal(work.found, timeout=5_000) as told:
        work.ask(drawing)
    assert told.args == [drawing, 2]
    work.close()


def test_what_does_not_give_up_is_done_to_its_end(qtbot: QtBot, slow: Slow) -> None:
    """Its answer is dropped, but what it learnt on the way may serve the next."""
    ended: list[Drawing] = []

    def slowly(drawing: Drawing) -> object:
        answer = slow(drawing)
        go_on()
        ended.append(drawing)
        return answer

    work = WorkingOut(slowly, "test", 0)
    first, second = Drawing(), Drawing()
    work.ask(first)
    qtbot.waitUntil(lambda: len(slow.asked) == 1)
    with qtbot.waitSignal(work.found, timeout=5_000):
        work.ask(second)
        qtbot.wait(20)
        slow.go.set()
    assert [each is drawing for each, drawing in zip(ended, (first, second), strict=True)] == [True, True]
    work.close()
