"""The window while something is worked out beside it, against the window alone: wall clock, as one feels it.

Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_beside_work.py
"""

from __future__ import annotations

import sys
import threading
import time
from collections.abc import Iterator
from contextlib import contextmanager

import pytest
from PySide6.QtCore import QEvent, QPointF
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.giving_way import GIVES_WAY_S
from circuitcheck.editor.sheet import SheetView
from tests.benchmarks.sheet_settings import middle_of_held
from tests.benchmarks.test_sheet import mouse, size, view  # noqa: F401 - fixtures

INTERVALS_S = (0.005, 0.001, GIVES_WAY_S, 0.0001)
STEPS = 24


@contextmanager
def working_beside(interval_s: float) -> Iterator[None]:
    """A thread that does nothing but run Python, and lets others in after so long."""
    before, wanted = sys.getswitchinterval(), threading.Event()
    wanted.set()

    def work() -> None:
        while wanted.is_set():
            sum(range(100))

    sys.setswitchinterval(interval_s)
    thread = threading.Thread(target=work)
    thread.start()
    try:
        yield
    finally:
        wanted.clear()
        thread.join()
        sys.setswitchinterval(before)


def steps_s(view: SheetView) -> list[float]:  # noqa: F811
    """What each step of a drag takes by the clock, sorted."""
    place, took = middle_of_held(view._stage.drawing), []
    mouse(view, QEvent.Type.MouseButtonPress, place)
    for step in range(1, STEPS):
        start = time.perf_counter()
        mouse(view, QEvent.Type.MouseMove, place + QPointF(16 * step, 16 * (step % 3)))
        QApplication.processEvents()
        took.append(time.perf_counter() - start)
    view.cancel_gesture_or_selection()
    return sorted(took)


@pytest.mark.parametrize("size", [10_000], indirect=True)
def test_dragging_while_something_is_worked_out(view: SheetView, size: int) -> None:  # noqa: F811
    alone = steps_s(view)
    print(
        f"\n{size:>6} parts  a step of a drag, alone: {alone[STEPS // 2] * 1e3:6.2f} ms, at most {alone[-1] * 1e3:6.2f} ms"
    )
    for interval_s in INTERVALS_S:
        with working_beside(interval_s):
            busy = steps_s(view)
        print(
            f"        with work beside that gives way after {interval_s * 1e3:4.1f} ms: {busy[STEPS // 2] * 1e3:6.2f} ms"
            f" ({busy[STEPS // 2] / alone[STEPS // 2]:4.1f} x), at most {busy[-1] * 1e3:6.2f} ms"
        )
