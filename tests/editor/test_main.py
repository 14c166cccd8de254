"""The program as it is started: with a file, and with one that cannot be read."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest

from circuitcheck.editor.theme import dark, light
from circuitcheck.shipped import data_path
from tests.editor.own_process import ran

CODE = """
import os, pathlib, sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox
from circuitcheck.editor import main
QMessageBox.exec = lambda box: print("told:", box.text())
application = QApplication([])
def told_of_network():
    # What Qt itself would open goes past any function of Python that a test can replace.
    maps, descriptors = pathlib.Path("/proc/self/maps"), pathlib.Path("/proc/self/fd")
    loaded = {line.rpartition("/")[2] for line in maps.read_text().splitlines()} if maps.exists() else set()
    held = [os.readlink(each) for each in descriptors.iterdir() if each.exists()] if maps.exists() else []
    print("network:", [name for name in loaded if "Network" in name], [each for each in held if "socket" in each])
def look():
    (window,) = [each for each in application.topLevelWidgets() if each.isWindow() and each.isVisible()]
    print("title:", window.windowTitle(), "| icon:", not window.windowIcon().isNull())
    told_of_network()
    window.close()
QTimer.singleShot(700, look)
sys.exit(main.run(sys.argv[1:]))
"""


def start(home: Path, *arguments: str, code: str = CODE) -> subprocess.CompletedProcess[str]:
    return ran(home, "-c", code, *arguments)


@pytest.mark.parametrize(
    ("name", "said"),
    [
        ("cottage.wetcircuit", "title: Larch Cottage, store room[*] – circuitcheck | icon: True"),
        ("absent.wetcircuit", "told: absent.wetcircuit cannot be opened."),
        (None, "title: Untitled drawing[*] – circuitcheck | icon: True"),
    ],
)
def test_it_starts_and_ends_well(tmp_path: Path, name: str | None, said: str) -> None:
    done = start(tmp_path, *([str(data_path("samples") / name)] if name else []))
    assert said in done.stdout
    assert (done.returncode, "Traceback" in done.stderr) == (0, False)


@pytest.mark.skipif(sys.platform != "linux", reason="only Linux tells what a process has loaded and open")
def test_qt_has_no_means_of_reaching_a_network(tmp_path: Path) -> None:
    done = start(tmp_path, str(data_path("samples") / "cottage.wetcircuit"))
    assert "network: [] []" in done.stdout


BARE = """
import sys
from PySide6 import QtCore
from PySide6.QtCore import QEvent, QObject, QSettings
from PySide6.QtWidgets import QApplication, QMainWindow
from circuitcheck.editor import main, remembered
if sys.argv[1:]:
    remembered.settings().setValue("window/appearance", sys.argv[1])
application = QApplication([])
class Looking(QObject):
    steps = set()
    def eventFilter(self, watched, event):
        if event.type() is QEvent.Type.Paint and isinstance(watched, QMainWindow):
            step = "whole" if watched.is_furnished else "sheet" if watched.has_begun else "bare"
            if step not in self.steps:
                self.steps.add(step)
                # The first window stands on the screen before the names of `Qt` are made.
                made = "Qt" in vars(QtCore)
                print(step, made, application.palette().window().color().name(), bool(application.styleSheet()))
                if step == "whole":
                    QtCore.QTimer.singleShot(0, application.closeAllWindows)
        return False
looking = Looking()
application.installEventFilter(looking)
print("system", application.palette().window().color().name())
main.run([])
"""


@pytest.mark.parametrize("name", ["", "Dark"])
def test_the_bare_window_is_as_chosen_by_hand_or_as_the_system_has_it(tmp_path: Path, name: str) -> None:
    done = start(tmp_path, *([name] if name else []), code=BARE)
    assert (done.returncode, "Traceback" in done.stderr) == (0, False), done.stderr
    told = [line.split() for line in done.stdout.splitlines()]
    (_, system), rest = told[0], {line[0]: line[1:] for line in told[1:]}
    theme = dark() if name else light()
    ours = [str(True), theme.hex("panel"), str(True)]
    assert rest["bare"] == (ours if name else [str(False), system, str(False)])
    assert rest["sheet"] == rest["whole"] == ours
