"""The program as it is started, worked by chance: `python -m tests.editor.wandering.program SEED ACTS FOLDER`.

Ends with status 0, and one line of JSON with figures, where nothing went wrong: no exception in any thread, no
warning of Qt, nothing that does not hold; asking for the network ends it on the spot. Keeps to the home that the environment names and to FOLDER.
"""

from __future__ import annotations

import faulthandler
import gc
import json
import os
import random
import resource
import shutil
import sys
import threading
import time
import traceback
from collections import Counter, deque
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QMessageLogContext, QTimer, QtMsgType, qInstallMessageHandler
from PySide6.QtWidgets import QApplication, QMainWindow, QPushButton

from circuitcheck.editor import main
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.window_menu import main_windows
from circuitcheck.shipped import data_path
from tests.editor.wandering.acts import Acts
from tests.editor.wandering.answers import Answers
from tests.editor.wandering.holding import look_at, look_closely_at, undo_all_and_redo
from tests.no_network import IS_POSSIBLE, forbid_network

MOST_WINDOWS = 3
MOST_THINGS = 250
"""Pasted again and again a drawing grows without end, and each act takes longer: then another is opened."""
IGNORED = "This plugin does not support "
"""The offscreen platform says this of what every real screen can do: raising a window, grabbing the keyboard."""


def the_windows() -> list[MainWindow]:
    """The open windows with a drawing."""
    return [each for each in main_windows() if isinstance(each, MainWindow)]


class Wanderer:
    """Does one act after the other in the windows that are open, and keeps the figures."""

    def __init__(self, seed: int, acts: int, folder: Path) -> None:
        self.chance = random.Random(seed)
        self.left = self.wanted = acts
        self.folder = folder
        self.trail: deque[str] = deque(maxlen=25)
        self.wrong: list[str] = []
        self.sorts: Counter[str] = Counter()
        self.answers = Answers(self.chance, folder)
        self.worst = (0.0, "")
        self.steps_undone = 0
        self.kib_early = 0

    def begin(self) -> None:
        """Take the dialogs and the hooks over, once the program has set its own, and go."""
        self.answers.install()
        QMainWindow.raise_ = lambda window: None  # type: ignore[method-assign]
        sys.excepthook = self.failed
        threading.excepthook = lambda hook: self.failed(
            hook.exc_type, hook.exc_value or SystemError(), hook.exc_traceback
        )
        sys.unraisablehook = lambda hook: self.failed(
            hook.exc_type, hook.exc_value or SystemError(), hook.exc_traceback
        )
        QTimer.singleShot(0, self.step)

    def failed(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        """An exception that nobody caught: told with what was done before it, and the end."""
        self.wrong.append("".join(traceback.format_exception(kind, error, trace)))
        self.end()

    def message(self, sort: QtMsgType, context: QMessageLogContext, text: str) -> None:
        """A message of Qt: a warning is as wrong as an exception."""
        if sort is not QtMsgType.QtDebugMsg and not text.startswith(IGNORED):
            self.wrong.append(f"Qt: {text}")

    def step(self) -> None:
        """One act, then what must hold; then the next, when the events are through."""
        windows = the_windows()
        if self.wrong or not self.left or not windows:
            self.end()
            return
        if not all(each.has_begun for each in windows):
            # Nobody acts in a window that is still bare; what is told over it is answered.
            told_over_it = QApplication.activeModalWidget()
            if told_over_it is not None:
                self.chance.choice(told_over_it.findChildren(QPushButton)).click()
            QTimer.singleShot(1, self.step)
            return
        self.left -= 1
        window = self.chance.choice(windows)
        began = time.perf_counter()
        try:
            told = self.in_the_window(window, windows)
            QApplication.processEvents()
        except Exception as error:
            self.failed(type(error), error, error.__traceback__)
            return
        took = time.perf_counter() - began
        self.sorts[told.split(":")[0]] += 1
        self.worst = max(self.worst, (took, told))
        QTimer.singleShot(self.chance.choice([0, 0, 0, 0, 5, 30]), self.step)

    def in_the_window(self, window: MainWindow, windows: list[MainWindow]) -> str:
        """One act in a window, noted before it is done, for a program that dies of it has no time to."""
        roll = self.chance.random()
        number = self.wanted - self.left
        if number % 25 == 0:
            gc.collect()
        if number == self.wanted // 4:
            self.kib_early = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss
        if len(windows) > 1 and roll < 0.004:
            self.note("close")
            window.close()
            return "close: a window"
        if len(windows) < MOST_WINDOWS and roll < 0.008:
            self.note("another window")
            window.another_wanted.emit(self.chance.choice([None, self.answers.file_there()]))
            return "window: another"
        drawing = window.document.drawing
        if len(drawing.components) + len(drawing.pipes) > MOST_THINGS:
            window.files.open_sample(self.chance.choice(sorted(self.folder.glob("*.wetcircuit"))))
            return self.note("file: another for a large one")
        if roll > 0.99:
            self.note("undo all")
            self.steps_undone += undo_all_and_redo(window)
            look_closely_at(window)
            return "undo_all: and redo"
        if QApplication.activeWindow() is not window:
            window.activateWindow()
        acts = Acts(window, self.chance, self.answers)
        told = self.note(acts.act())
        if window in the_windows():
            look_at(window)
        return told

    def note(self, told: str) -> str:
        """Add to the trail."""
        self.trail.append(told)
        if os.environ.get("TRAIL"):
            print(told, file=sys.stderr, flush=True)
        return told

    def end(self) -> None:
        """Close every window, giving up what is unsaved; the program then ends by itself."""
        self.answers.is_leaving = True
        self.left = 0
        popup = QApplication.activePopupWidget()
        if popup is not None:
            popup.close()
        for window in the_windows():
            window.close()
        gc.collect()
        # Where a window stays all the same.
        QTimer.singleShot(2000, QApplication.quit)

    def figures(self, took_s: float) -> dict[str, object]:
        """What is said in the end."""
        return {
            "acts": self.wanted - self.left if self.wrong else sum(self.sorts.values()),
            "seconds": round(took_s, 1),
            "sorts": dict(self.sorts.most_common()),
            "dialogs": self.answers.counts,
            "steps_undone": self.steps_undone,
            "worst_ms": round(self.worst[0] * 1000),
            "worst_act": self.worst[1][:120],
            "mib_early": self.kib_early // 1024,
            "mib": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024,
            "wrong": self.wrong,
        }


def run(arguments: list[str]) -> int:
    """Be the program. Returns its status; 1 where anything was wrong."""
    if IS_POSSIBLE:
        forbid_network()
    faulthandler.enable()
    folder = Path(arguments[2])
    for sample in data_path("samples").glob("*.wetcircuit"):
        shutil.copy(sample, folder)
    (folder / "broken.txt").write_text("no drawing", encoding="utf-8")
    wanderer = Wanderer(int(arguments[0]), int(arguments[1]), folder)
    application = QApplication([])
    qInstallMessageHandler(wanderer.message)
    QTimer.singleShot(300, application, wanderer.begin)
    began = time.perf_counter()
    status = main.run([str(wanderer.answers.file_there())])
    figures = wanderer.figures(time.perf_counter() - began)
    print(json.dumps(figures), flush=True)
    if wanderer.wrong:
        print("\n".join([*wanderer.trail, *wanderer.wrong]), file=sys.stderr)
    return status or bool(wanderer.wrong)


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
