"""What happens when the program itself fails."""

from __future__ import annotations

import logging
import subprocess
import sys
import threading
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QStandardPaths
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QDialog, QFileDialog, QLabel
from pytestqt.qtbot import QtBot

from circuitcheck.editor import crash
from circuitcheck.editor.failing import log as failing_log
from circuitcheck.editor.failing.dialog import FailureDialog, failed_dialog, noted_dialog
from circuitcheck.editor.failing.log import DEATH_NAME, LOG_NAME, Log
from circuitcheck.editor.failing.noted import show_noted
from circuitcheck.editor.failing.report import report
from tests.editor.own_process import ran


@pytest.fixture(autouse=True)
def own_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The log and rescued drawings go to a folder of the test's own."""
    monkeypatch.setattr(QStandardPaths, "writableLocation", lambda location: str(tmp_path / "data"))
    (tmp_path / "data").mkdir()
    return tmp_path / "data"


@pytest.fixture
def log(own_folder: Path) -> Iterator[Log]:
    made = Log(own_folder)
    made.begin()
    yield made
    made.end()


@pytest.fixture
def dialogs(monkeypatch: pytest.MonkeyPatch) -> list[FailureDialog]:
    """The dialogs that would have been shown."""
    found: list[FailureDialog] = []

    def keep(dialog: FailureDialog) -> int:
        found.append(dialog)
        return 0

    monkeypatch.setattr(QDialog, "exec", keep)
    return found


@pytest.fixture
def ended(monkeypatch: pytest.MonkeyPatch) -> list[int]:
    """The statuses the application was told to end with."""
    found: list[int] = []
    monkeypatch.setattr(QApplication, "exit", lambda status=0: found.append(status))
    return found


def fail(hook: crash.CrashHook, what: str = "<b>something</b>") -> None:
    try:
        raise RuntimeError(what)
    except RuntimeError as error:
        hook.take(type(error), error, error.__traceback__)


def texts(dialog: QDialog) -> str:
    return "\n".join(each.text() for each in dialog.findChildren(QLabel))


def test_a_failure_is_logged_told_once_and_ends_the_program(
    qapp: object, log: Log, dialogs: list[FailureDialog], ended: list[int]
) -> None:
    logging.getLogger("circuitcheck").warning("noted before")
    hook = crash.CrashHook(lambda: [Path("kept.recovery")], log)
    fail(hook)
    fail(hook)
    (dialog,) = dialogs
    assert "The drawing that was not saved is kept." in dialog.words
    shown = dialog.text.toPlainText()
    assert shown.count("RuntimeError: <b>something</b>") == 1
    assert "noted before" in shown and "circuitcheck " in shown and "Qt 6" in shown
    assert ended == [crash.EXIT_STATUS]
    assert hook.status == crash.EXIT_STATUS
    assert log.last_lines().count("RuntimeError: <b>something</b>") == 2


def test_a_rescue_that_fails_does_not_hide_the_failure(
    qapp: object, log: Log, dialogs: list[FailureDialog], ended: list[int]
) -> None:
    def broken() -> list[Path]:
        raise OSError("no space")

    fail(crash.CrashHook(broken, log))
    assert "nothing is lost" in dialogs[0].words
    assert "no space" in log.last_lines()
    assert ended == [crash.EXIT_STATUS]


def test_a_dialog_that_fails_does_not_keep_the_program(
    qapp: object, log: Log, monkeypatch: pytest.MonkeyPatch, ended: list[int]
) -> None:
    def broken(dialog: object) -> int:
        raise ValueError("no screen")

    monkeypatch.setattr(QDialog, "exec", broken)
    fail(crash.CrashHook(list, log))
    assert ended == [crash.EXIT_STATUS]
    assert "something" in log.last_lines() and "no screen" in log.last_lines()


def test_a_failed_thread_shows_in_the_status(qapp: object, log: Log) -> None:
    before = (sys.excepthook, threading.excepthook)
    hook = crash.CrashHook(list, log)
    hook.install()
    thread = threading.Thread(target=lambda: 1 / 0)
    thread.start()
    thread.join()
    hook.uninstall()
    assert hook.status == crash.EXIT_STATUS
    assert (sys.excepthook, threading.excepthook) == before
    assert "ZeroDivisionError" in log.last_lines()


def test_nobodys_own_folder_is_in_the_log_or_the_report(
    qapp: object,
    log: Log,
    own_folder: Path,
    dialogs: list[FailureDialog],
    ended: list[int],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(Path, "home", lambda: Path("/home/jane.roe"))
    fail(crash.CrashHook(list, log), "/home/jane.roe/Mrs Smith.wetcircuit")
    assert "jane" not in (own_folder / LOG_NAME).read_text(encoding="utf-8")
    assert "jane" not in dialogs[0].text.toPlainText()
    assert "~/Mrs Smith.wetcircuit" in dialogs[0].text.toPlainText()


def test_the_log_stays_small(log: Log, own_folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    for number in range(3000):
        logging.getLogger("circuitcheck").warning("%d %s", number, "x" * 400)
    sizes = [file.stat().st_size for file in own_folder.glob(f"{LOG_NAME}*")]
    assert len(sizes) == 1 + failing_log.BACKUPS
    assert max(sizes) <= failing_log.MOST_BYTES
    assert log.last_lines().splitlines()[-1].split()[3] == "2999"
    assert len(log.last_lines().splitlines()) <= failing_log.LAST_LINES


@pytest.mark.filterwarnings("ignore")
def test_without_a_place_for_it_the_program_works(tmp_path: Path) -> None:
    nowhere = Log(tmp_path / "absent")
    nowhere.begin()
    logging.getLogger("circuitcheck").warning("goes nowhere")
    assert nowhere.last_lines() == ""
    nowhere.end()


def test_the_report_holds_what_is_shown_and_no_more(
    qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    dialog = failed_dialog(None, report("a trace\n", "a line\n"), 2)
    qtbot.addWidget(dialog)
    assert "The 2 drawings that were not saved are kept." in texts(dialog)
    assert "sends nothing to anybody" in texts(dialog)
    dialog.text.setPlainText("only this")
    dialog.copy_button.click()
    assert QGuiApplication.clipboard().text() == "only this"
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "told"), ""))
    dialog.save_button.click()
    assert (tmp_path / "told.txt").read_text(encoding="utf-8") == "only this"
    assert "saved as told.txt" in texts(dialog)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: (str(tmp_path / "absent" / "told"), ""))
    dialog.save_button.click()
    assert "was not saved: the folder does not exist" in texts(dialog)
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *_: ("", ""))
    dialog.save_button.click()
    assert len(list(tmp_path.glob("*.txt"))) == 1
    dialog.close_button.click()
    assert dialog.result() == QDialog.DialogCode.Accepted


def test_what_was_noted_is_shown_from_the_menu(qtbot: QtBot, log: Log, dialogs: list[FailureDialog]) -> None:
    logging.getLogger("circuitcheck").error("an odd thing")
    parent = QLabel()
    qtbot.addWidget(parent)
    show_noted(parent)
    assert "an odd thing" in dialogs[0].text.toPlainText()
    assert "the end of what it has noted" in dialogs[0].words
    quiet = noted_dialog(parent, report("", ""), is_anything=False)
    assert "Nothing has gone wrong" in quiet.words


CODE = """
import sys
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication, QDialog
from circuitcheck.editor import main
QDialog.exec = lambda dialog: print("told:", dialog.heading)
application = QApplication([])
def fail():
    {fail}
QTimer.singleShot({after_ms}, fail)
sys.exit(main.run([]))
"""


@pytest.fixture
def program(tmp_path: Path) -> Callable[..., subprocess.CompletedProcess[str]]:
    def run(fail: str, after_ms: int = 50) -> subprocess.CompletedProcess[str]:
        return ran(tmp_path, "-c", CODE.format(fail=fail, after_ms=after_ms))

    return run


def test_a_failure_in_a_slot_ends_the_real_program(
    tmp_path: Path, program: Callable[..., subprocess.CompletedProcess[str]]
) -> None:
    done = program("raise ZeroDivisionError")
    assert done.returncode == crash.EXIT_STATUS
    assert "told: Something went wrong, and the program has to close." in done.stdout
    (log,) = tmp_path.rglob(LOG_NAME)
    assert "ZeroDivisionError" in log.read_text(encoding="utf-8")
    assert not list(tmp_path.rglob(DEATH_NAME))


@pytest.mark.skipif(sys.platform == "win32", reason="the signal is not raised there")
def test_what_the_system_ended_is_noted_by_the_next_start(
    tmp_path: Path, program: Callable[..., subprocess.CompletedProcess[str]]
) -> None:
    assert program("import os, signal; os.kill(os.getpid(), signal.SIGSEGV)").returncode < 0
    (death,) = tmp_path.rglob(DEATH_NAME)
    assert "Segmentation fault" in death.read_text(encoding="utf-8")
    assert program("application.closeAllWindows()", 700).returncode == 0
    (log,) = tmp_path.rglob(LOG_NAME)
    assert "ended by the system's fault" in log.read_text(encoding="utf-8")
    assert log.read_text(encoding="utf-8").count("Segmentation fault") == 1
    assert not list(tmp_path.rglob(DEATH_NAME))
