"""Garbage is looked for in the window's thread, and in no other."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor

import pytest
import shiboken6
from PySide6.QtCore import QObject, QTimer

from circuitcheck.editor.collecting import Collecting


@pytest.fixture
def collecting() -> Iterator[Collecting]:
    gc.enable()
    made = Collecting()
    yield made
    made.stop()
    gc.disable()


class Closed(QObject):
    """As a closed window: a timer runs, and its parts name one another."""

    def __init__(self) -> None:
        super().__init__()
        self.me = self
        self.timer = QTimer(self, interval=1)
        self.timer.start()


def rings(count: int) -> None:
    for _ in range(count):
        ring: list[object] = []
        ring.append(ring)


def test_another_thread_deletes_nothing_of_qt(collecting: Collecting) -> None:
    before = {id(each) for each in shiboken6.getAllValidWrappers()}
    Closed()
    left = [each for each in shiboken6.getAllValidWrappers() if id(each) not in before]
    assert left
    kept = [shiboken6.getCppPointer(each)[0] for each in left]
    del left
    with ThreadPoolExecutor(1) as other:
        other.submit(rings, 50_000).result()
    assert {shiboken6.getCppPointer(each)[0] for each in shiboken6.getAllValidWrappers()}.issuperset(kept)


def test_what_is_due_is_searched(collecting: Collecting) -> None:
    assert not gc.isenabled()
    gc.collect()
    rings(gc.get_threshold()[0] + 10)
    assert gc.get_count()[0] > gc.get_threshold()[0]
    collecting.look()
    assert gc.get_count()[0] < gc.get_threshold()[0]


def test_the_timer_looks(collecting: Collecting, qtbot: object) -> None:
    collecting._timer.setInterval(1)
    rings(5_000)
    qtbot.waitUntil(lambda: gc.get_count()[0] < 700)  # type: ignore[attr-defined]


def test_stopped_it_is_as_before() -> None:
    gc.enable()
    made = Collecting()
    made.stop()
    assert gc.isenabled()
    gc.disable()
    made = Collecting()
    made.stop()
    assert not gc.isenabled()
