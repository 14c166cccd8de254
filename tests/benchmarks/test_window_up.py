"""A house's window until it is painted, beside an empty main window, each in a process of its own.

Time is that of the thread of the window, from the start of the interpreter: other programs do not count, nor do the
checks beside the window. Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_window_up.py
"""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path
from statistics import median

from circuitcheck.shipped import data_path

AIM = 1.5
TURNS = 7

TELL = """
def tell():
    import os, sys, time
    print(time.thread_time())
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
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
application = QApplication(sys.argv)
def look():
    windows = [each for each in application.topLevelWidgets() if hasattr(each, "sheet")]
    if windows and len(windows[0].document.drawing.components) > 20 and windows[0].sheet._content.parts:
        windows[0].repaint()
        windows[0].sheet.viewport().repaint()
        tell()
timer = QTimer()
timer.timeout.connect(look)
timer.start(1)
from circuitcheck.editor.main import run
run([sys.argv[1]])
"""
)


def up_s(script: str, home: Path, *arguments: str) -> float:
    """What the window's thread of one process needs, in seconds."""
    # What is installed has been compiled, whatever is set where this runs.
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    surroundings = {
        **kept,
        "PYTHONPYCACHEPREFIX": str(home / "compiled"),
        "QT_QPA_PLATFORM": "offscreen",
        "HOME": str(home),
        "XDG_CONFIG_HOME": str(home),
    }
    done = subprocess.run(
        [sys.executable, "-c", script, *arguments],
        env=surroundings,
        capture_output=True,
        text=True,
        check=True,
    )
    return float(done.stdout.split()[-1])


def test_window_up(tmp_path: Path) -> None:
    house = str(data_path("samples") / "terrace-as-proposed.wetcircuit")
    up_s(HOUSE, tmp_path, house)  # the first one compiles what was changed
    empty, ours = [], []
    for _ in range(TURNS):
        empty.append(up_s(EMPTY, tmp_path))
        ours.append(up_s(HOUSE, tmp_path, house))
    ratio = median(one / other for one, other in zip(ours, empty, strict=True))
    print(
        f"\nwindow up, house {median(ours) * 1e3:8.1f} ms  {ratio:5.2f} x empty main window"
        f" ({median(empty) * 1e3:.1f} ms), aim {AIM}"
    )
