"""The command `circuitcheck FILE` with a user who follows a script: programs of their own for the trials.

`python -m tests.editor.whole_runs edit FILE` opens, renames and copies a part by keys, saves and closes;
`... twice FILE` opens, prints what it is told, and waits for words on standard input: `edit TITLE`, `save` (prints what
it is told, and presses the button that standard input names next), `close`. Both keep to the home that the
environment names.
"""

from __future__ import annotations

import sys
from collections.abc import Callable

from PySide6.QtCore import Qt, QTimer
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit, QMainWindow, QMessageBox

from circuitcheck import __main__ as program
from circuitcheck.drawing.edits import set_title
from circuitcheck.editor.window import MainWindow
from tests.no_network import IS_POSSIBLE, forbid_network

LABEL = "Renamed"
CONTROL = Qt.KeyboardModifier.ControlModifier


def the_window() -> MainWindow:
    """The one window that is open."""
    (window,) = (each for each in QApplication.topLevelWidgets() if isinstance(each, MainWindow))
    return window


def edit() -> None:
    """Choose the first part, give it a label, turn it, undo that, copy it, save, close: all by keys."""
    window = the_window()
    window.activateWindow()
    QTest.qWaitForWindowActive(window)
    part = next(iter(window.document.drawing.components))
    window.sheet.setFocus()
    window.sheet.select([part])
    QTest.keyClick(window.sheet, Qt.Key.Key_F2)
    field = window.details.field("label")
    assert isinstance(field, QLineEdit)
    field.selectAll()
    QTest.keyClicks(field, LABEL)
    QTest.keyClick(field, Qt.Key.Key_Return)
    window.sheet.setFocus()
    QTest.keyClick(window.sheet, Qt.Key.Key_R)
    QTest.keyClick(window.sheet, Qt.Key.Key_Z, CONTROL)
    QTest.keyClick(window.sheet, Qt.Key.Key_C, CONTROL)
    QTest.keyClick(window.sheet, Qt.Key.Key_S, CONTROL)
    QTest.qWait(50)
    print("saved", not window.document.is_unsaved, flush=True)
    window.close()


def press(box: QMessageBox) -> int:
    """Print what is told, press the button that is named on standard input."""
    print("told:", box.text(), flush=True)
    wanted = sys.stdin.readline().strip()
    pressed = next(each for each in box.buttons() if wanted in each.text().replace("&", ""))
    answer = box.standardButton(pressed).value
    pressed.click()
    return int(answer)


def obey() -> None:
    """Do what standard input says, word by word, until it says close."""
    window = the_window()
    print("shows", window.document.path is not None, flush=True)
    while True:
        word, _, rest = sys.stdin.readline().strip().partition(" ")
        if word == "edit":
            window.document.do("Set title", set_title(window.document.drawing, rest))
        elif word == "save":
            print("saved", window.files.save(), flush=True)
        else:
            window.close()
            return


def once_it_is_whole(does: Callable[[], None]) -> None:
    """Begin once the window is furnished, however slow the machine."""
    if any(isinstance(each, MainWindow) and each.is_furnished for each in QApplication.topLevelWidgets()):
        does()
    else:
        QTimer.singleShot(50, lambda: once_it_is_whole(does))


def run(arguments: list[str]) -> int:
    """Be one of the programs. Asking for the network ends it."""
    if IS_POSSIBLE:
        forbid_network()
    does: Callable[[], None] = edit if arguments[0] == "edit" else obey
    QMessageBox.exec = press  # type: ignore[method-assign, assignment]
    QMainWindow.raise_ = lambda window: None  # type: ignore[method-assign]
    application = QApplication([])
    QTimer.singleShot(800, application, lambda: once_it_is_whole(does))
    sys.argv = ["circuitcheck", arguments[1]]
    return program.main()


if __name__ == "__main__":
    sys.exit(run(sys.argv[1:]))
