"""A window that edits by itself, or one that starts after it was killed: programs of their own for the trials.

`python -m tests.editor.killing edit FILE` prints each step until it is killed;
`python -m tests.editor.killing start` opens what was left and prints its title. Both keep to the home that the
environment names.
"""

from __future__ import annotations

import sys
from pathlib import Path

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.edits import set_title
from circuitcheck.editor import main, recovering
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.windows import Windows

PACE_MS = 20
"""How far apart the steps are, where the machine is not too busy."""

offer_recovered = Windows.offer_recovered


def the_window() -> MainWindow:
    """The one window that is open."""
    (window,) = (each for each in QApplication.topLevelWidgets() if isinstance(each, MainWindow))
    return window


def edit_on(window: MainWindow, step: int = 1) -> None:
    """Make one step after the other; every twentieth is saved."""
    window.document.do("Set title", set_title(window.document.drawing, str(step)))
    print("step", step, flush=True)
    if step % 20 == 0:
        window.files.save()
        print("saved", step, flush=True)
    QTimer.singleShot(PACE_MS, window, lambda: edit_on(window, step + 1))


def edit_once_all_is_there() -> None:
    """Begin as a hand could: it finds the window whole."""
    window = the_window()
    if window.is_furnished:
        edit_on(window)
    else:
        QTimer.singleShot(PACE_MS, window, edit_once_all_is_there)


def tell(windows: Windows) -> None:
    """Offer what was left and open it, print what the window then shows, save it and close."""
    offer_recovered(windows)
    (window,) = windows.open
    document = window.document
    print("title", document.drawing.title or "none", document.is_unsaved, document.path, flush=True)
    if document.path is not None:
        # Killed between a save and what is kept after it, the file is newer than what was kept of it.
        document.save(over_changes=True)
    window.close()


def run(arguments: list[str]) -> int:
    """Be one of the two programs."""
    application = QApplication([])
    if arguments[0] == "edit":
        QTimer.singleShot(300, application, edit_once_all_is_there)
        return main.run([str(Path(arguments[1]))])
    recovering.ask = lambda window, found: "open"
    Windows.offer_recovered = tell  # type: ignore[method-assign, assignment]
    return main.run([])


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
