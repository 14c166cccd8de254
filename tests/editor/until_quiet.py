"""How long an act holds a whole window up: the longest time at a stretch in which it does not answer."""

from __future__ import annotations

import time
from collections.abc import Callable

from PySide6.QtWidgets import QApplication

from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.working_out import WorkingOut

QUIET_S = 0.4
"""For so long nothing may happen before an act counts as over: longer than any pause before work begins."""
MOST_S = 120


def until_quiet(window: MainWindow, act: Callable[[], object]) -> tuple[float, float]:
    """Do it and wait until nothing is worked out any more: the longest stretch, and all of it, in seconds.

    Raises TimeoutError where it comes to no end.
    """
    start = ended = time.perf_counter()
    act()
    longest = time.perf_counter() - start
    while True:
        began = time.perf_counter()
        QApplication.processEvents()
        now = time.perf_counter()
        longest = max(longest, now - began)
        busy = any(each.is_busy for each in window.findChildren(WorkingOut)) or now - began > 0.005
        ended = now if busy else ended
        if now - ended > QUIET_S:
            return longest, ended - start
        if now - start > MOST_S:
            raise TimeoutError(f"Still at it after {MOST_S} s.")
        time.sleep(0.001)
