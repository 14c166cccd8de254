"""What every test of the editor shares: one process for all of them, and nothing left behind."""

import gc
import itertools
import os
from collections.abc import Iterator

import pytest
import shiboken6
from PySide6.QtCore import QEvent, QThread, QTimer
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.clipboard import let_go
from circuitcheck.editor.learning import lessons_window
from circuitcheck.operating import course as courses
from tests.editor import made_once as known
from tests.editor.held_items import held_items

LOOKED_THROUGH = 100
TESTS = itertools.count(1)


@pytest.fixture(scope="session", autouse=True)
def one_process(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Fail where a parallel run deals tests of the editor to a second process."""
    if "PYTEST_XDIST_WORKER" in os.environ:
        # Above a worker's own folder lies the run's, which the workers share.
        (tmp_path_factory.getbasetemp().parent / "widgets-run-here").touch(exist_ok=False)


@pytest.fixture(scope="session", autouse=True)
def nothing_on_the_clipboard(qapp: QApplication) -> Iterator[None]:
    """Give back what was copied, as the program does when it ends; else the run ends by a segmentation fault."""
    yield
    gc.unfreeze()
    let_go()


@pytest.fixture(autouse=True)
def nothing_left_behind(qapp: QApplication) -> Iterator[None]:
    """Stop the timers, close and delete the windows, and collect; fail on a thread still running, and on an item of a
    layout that is held."""
    # As in the program, no other thread looks for garbage: what it found of Qt it would delete there.
    gc.disable()
    yield
    held, threads = stopped()
    for window in QApplication.topLevelWidgets():
        window.close()
        window.deleteLater()
    QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
    QApplication.processEvents()
    gc.collect()
    # What is still there stays: looked through again after each test it would take most of the whole run. Fixtures
    # hold some of it until just after this, so now and then all of it is looked through.
    if next(TESTS) % LOOKED_THROUGH == 0:
        gc.unfreeze()
        gc.collect()
    gc.freeze()
    gc.enable()
    there = [thread for thread in threads if shiboken6.isValid(thread) and thread is not qapp.thread()]
    assert not [thread for thread in there if thread.isRunning()]
    assert not held, "Items of layouts are held; see editor/nesting.py."


def stopped() -> tuple[list[str], list[QThread]]:
    """Stop all timers; tell the items of layouts that are held, and the threads that there are."""
    # Looked for once: a window has thousands of them.
    wrappers = shiboken6.getAllValidWrappers()
    for each in wrappers:
        if isinstance(each, QTimer):
            each.stop()
    held = [repr(item) for item in held_items(wrappers)]
    return held, [each for each in wrappers if isinstance(each, QThread)]


@pytest.fixture
def made_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Let windows show the lessons and the courses that were made before, in whichever test."""
    monkeypatch.setattr(lessons_window, "lesson", known.lesson)
    monkeypatch.setattr(courses, "course", known.course)
