"""A house's window until it stands on the screen, bare; until the house is painted in it; and until all of it is
there: beside an empty main window.

Each in a process of its own. Time is that of the thread of the window, from the start of the interpreter: other
programs do not count, nor do the checks beside the window. Beside it stands the time on the clock, where they do.
Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_window_up.py
"""

from __future__ import annotations

import os
import subprocess
import sys
import tempfile
import time
from pathlib import Path
from statistics import median
from typing import NamedTuple

from circuitcheck.shipped import data_path

AIM = 1.5
TURNS = 7

TELL = """
def tell():
    import os, sys, time
    print(time.thread_time(), time.monotonic())
    sys.stdout.flush()
    os._exit(0)
"""
EMPTY = (
    TELL
    + """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMainWindow
application = QApplication(sys.argv)
window = QMainWindow()
window.resize(1280, 800)
window.show()
def painted():
    window.repaint()
    tell()
QTimer.singleShot(0, painted)
application.exec()
"""
)
HOUSE = (
    TELL
    + """
import sys
# As the program does where it is started.
from circuitcheck.garbage import no_collection
with no_collection():
    from circuitcheck.editor.main import run
from PySide6.QtCore import QEvent, QObject, QTimer
from PySide6.QtWidgets import QApplication
application = QApplication(sys.argv)
def the_window():
    windows = [each for each in application.topLevelWidgets() if hasattr(each, "has_begun")]
    return windows[0] if windows else None
class Painting(QObject):
    # Sees the window or the house painted, and tells right after that, before anything else in the event loop.
    def eventFilter(self, watched, event):
        if event.type() is QEvent.Type.Paint:
            window = the_window()
            if window is None:
                return False
            if sys.argv[2] == "bare":
                is_there = watched is window
            else:
                is_there = window.has_begun and watched is window.sheet.viewport() and window.sheet._content.parts
            if is_there:
                QApplication.postEvent(self, QEvent(QEvent.Type.User), 1)
        return False
    def customEvent(self, event):
        window = the_window()
        assert not window.is_furnished and window.has_begun == (sys.argv[2] == "painted")
        # So that nothing of the window is left out, all of it is painted once more.
        window.repaint()
        if window.has_begun:
            window.sheet.viewport().repaint()
        tell()
def look():
    window = the_window()
    if window is not None and window.is_furnished:
        window.repaint()
        tell()
painting, timer = Painting(), QTimer()
if sys.argv[2] != "whole":
    application.installEventFilter(painting)
else:
    timer.timeout.connect(look)
    timer.start(1)
run([sys.argv[1]])
"""
)


class Up(NamedTuple):
    """How long the window's thread worked, and how long it took on the clock, in seconds."""

    thread_s: float
    clock_s: float


def up(script: str, home: Path, *arguments: str) -> Up:
    """What one process needs until it tells."""
    # What is installed has been compiled, whatever is set where this runs.
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    # At home nothing is left of the run before, which ended without taking leave.
    user = tempfile.mkdtemp(dir=home)
    surroundings = {
        **kept,
        "PYTHONPYCACHEPREFIX": str(home / "compiled"),
        "QT_QPA_PLATFORM": "offscreen",
        "HOME": user,
        "XDG_CONFIG_HOME": user,
    }
    begun = time.monotonic()
    done = subprocess.run(
        [sys.executable, "-c", script, *arguments],
        env=surroundings,
        capture_output=True,
        text=True,
        check=True,
    )
    thread_s, told_at = map(float, done.stdout.split()[-2:])
    return Up(thread_s, told_at - begun)


STEPS = {
    "bare": "bare, on the screen",
    "painted": "the house painted",
    "whole": "all of it there",
}


def test_window_up(tmp_path: Path) -> None:
    house = str(data_path("samples") / "terrace-as-proposed.wetcircuit")
    up(HOUSE, tmp_path, house, "whole")  # the first one compiles what was changed
    empty, ours = list[Up](), {step: list[Up]() for step in STEPS}
    for _ in range(TURNS):
        empty.append(up(EMPTY, tmp_path))
        for step, taken in ours.items():
            taken.append(up(HOUSE, tmp_path, house, step))
    for step, taken in ours.items():
        by_thread = median(one.thread_s / other.thread_s for one, other in zip(taken, empty, strict=True))
        by_clock = median(one.clock_s / other.clock_s for one, other in zip(taken, empty, strict=True))
        print(
            f"\nwindow up, {STEPS[step]:19} {median(each.thread_s for each in taken) * 1e3:8.1f} ms of its thread"
            f"  {by_thread:5.2f} x empty main window, {median(each.clock_s for each in taken) * 1e3:8.1f} ms on the"
            f" clock  {by_clock:5.2f} x, aim {AIM} x"
        )
