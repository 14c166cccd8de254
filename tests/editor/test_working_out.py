"""Working out beside the window: only the last answer counts, a failure is told, and it can be stopped."""

from __future__ import annotations

import threading
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.working_out import WorkingOut


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
