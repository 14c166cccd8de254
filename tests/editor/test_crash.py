"""What happens when the program itself fails."""

from __future__ import annotations

import os
import subprocess
import sys
import threading
from pathlib import Path

import pytest
from PySide6.QtCore import QStandardPaths
from PySide6.QtWidgets import QApplication, QMessageBox

from circuitcheck.editor import crash


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The log and rescued drawings go to a folder of the test's own."""
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda location: str(tmp_path / "data"))
    return tmp_path / "data"


@pytest.fixture
def boxes(monkeypatch: pytest.MonkeyPatch) -> list[QMessageBox]:
    """The dialogs that would have been shown."""
    found: list[QMessageBox] = []

    def keep(box: QMessageBox) -> int:
        found.append(box)
        return 0

    monkeypatch.setattr(QMessageBox, "exec", keep)
    return found


@pytest.fixture
def ended(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """The statuses the application was told to end with."""
    found: list[int] = []
    monkeypatch.setattr(QApplication, "exit", lambda status=0: found.append(status))
    return found


def fail(hook: crash.CrashHook) -> None:
    try:
        raise RuntimeError("<b>something</b>")
    except RuntimeError as error:
        hook.take(type(error), error, error.__traceback__)


def test_a_failure_is_logged_told_once_and_ends_the_program(
    qapp: object, boxes: list[QMessageBox], ended: list[int], caplog: pytest.LogCaptureFixture
) -> None:
    hook = crash.CrashHook(lambda: [Path("kept.recovery")])
    fail(hook)
    fail(hook)
    (box,) = boxes
    assert "What was not saved is kept" in box.informativeText()
    assert "kept.recovery" in box.detailedText()
    assert "RuntimeError: <b>something</b>" in box.detailedText()
    assert ended == [crash.EXIT_STATUS]
    assert hook.status == crash.EXIT_STATUS
    assert "RuntimeError: <b>something</b>" in caplog.text


def test_a_rescue_that_fails_does_not_hide_the_failure(
    qapp: object, boxes: list[QMessageBox], ended: list[int]
) -> None:
    def broken() -> list[Path]:
        raise OSError("no space")

    fail(crash.CrashHook(broken))
    assert "no unsaved drawing" in boxes[0].informativeText()
    assert ended == [crash.EXIT_STATUS]


def test_a_failed_thread_shows_in_the_status(qapp: object) -> None:
    before = (sys.excepthook, threading.excepthook)
    hook = crash.CrashHook(list)
    hook.install()
    thread = threading.Thread(target=lambda: 1 / 0)
    thread.start()
    thread.join()
    hook.uninstall()
    assert hook.status == crash.EXIT_STATUS
    assert (sys.excepthook, threading.excepthook) == before


def test_a_failure_in_a_slot_ends_the_real_program(tmp_path: Path) -> None:
    code = """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QMessageBox
from circuitcheck.editor import main
QMessageBox.exec = lambda box: print("told:", box.text())
application = QApplication([])
def fail():
    raise ZeroDivisionError
QTimer.singleShot(50, fail)
sys.exit(main.run([]))
"""
    homes = {name: str(tmp_path) for name in ("HOME", "XDG_DATA_HOME", "XDG_CONFIG_HOME")}
    environment = {**os.environ, **homes, "QT_QPA_PLATFORM": "offscreen"}
    done = subprocess.run(
        [sys.executable, "-c", code], env=environment, capture_output=True, text=True, timeout=60, check=False
    )
    assert done.returncode == crash.EXIT_STATUS
    assert "told: The program failed" in done.stdout
    (log,) = tmp_path.rglob(crash.LOG_NAME)
    assert "ZeroDivisionError" in log.read_text(encoding="utf-8")
