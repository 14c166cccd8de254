"""What a killed or failed program had not saved is offered at the next start; what was given up is not."""

from __future__ import annotations

import os
import random
import signal
import subprocess
import sys
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QMessageBox

from circuitcheck.drawing.edits import set_title
from circuitcheck.editor import recovering
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.files import Files
from circuitcheck.editor.window import MainWindow
from circuitcheck.editor.windows import Windows
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from circuitcheck.storage.recovery import Left, Origin, Slot, left_behind
from tests.editor.killing import PACE_MS
from tests.editor.own_process import environment, ran

KILLS = 2
MAY_BE_LOST_S = 1.0


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    return tmp_path / "recovery"


@pytest.fixture
def start(
    qapp: QApplication, tmp_path: Path, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> Iterator[Callable[[], Windows]]:
    """Starts the program, so to say: any number of times on the same home. No window asks when it is closed."""
    monkeypatch.setattr(Files, "may_leave", lambda _: True)
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    started: list[Windows] = []

    def make() -> Windows:
        windows = Windows(settings, Appearances(settings, qapp), folder)
        started.append(windows)
        return windows

    yield make
    for windows in started:
        for window in windows.open:
            window.close()
        windows.close_documents()


@pytest.fixture
def answer(monkeypatch: pytest.MonkeyPatch) -> Callable[[str], list[list[Left]]]:
    """Answers the question what becomes of what was left; returns what was asked about."""

    def give(word: str) -> list[list[Left]]:
        asked: list[list[Left]] = []

        def ask(window: object, found: list[Left]) -> str:
            asked.append(found)
            return word

        monkeypatch.setattr(recovering, "ask", ask)
        return asked

    return give


def retitle(window: MainWindow, title: str) -> None:
    window.document.do("Set title", set_title(window.document.drawing, title))


def flush(windows: Windows) -> None:
    for followed in windows._open.values():
        assert followed is not None and followed.keeper.flush(5)


def test_what_a_failing_program_had_open_is_offered_and_gone_on_with(
    start: Callable[[], Windows], answer: Callable[[str], list[list[Left]]], tmp_path: Path
) -> None:
    file = tmp_path / "cottage.wetcircuit"
    file.write_bytes((data_path("samples") / "cottage.wetcircuit").read_bytes())
    failing = start()
    first, second = failing.new(), failing.new()
    first.document.open(file)
    retitle(first, "With a file")
    retitle(second, "Without one")
    assert len(failing.keep_all()) == 2

    asked = answer("open")
    again = start()
    again.new()
    again.offer_recovered()
    assert [sorted(left.title for left in found) for found in asked] == [["With a file", "Without one"]]
    opened = {window.document.drawing.title: window.document for window in again.open}
    assert set(opened) == {"With a file", "Without one"}
    assert all(document.is_unsaved for document in opened.values())
    with_file = opened["With a file"]
    assert with_file.path == file
    with_file.save()
    assert read(file).title == "With a file"
    flush(again)
    assert len(list(left_behind(tmp_path / "recovery"))) == 0


def test_a_file_changed_after_the_failure_is_not_overwritten_in_silence(
    start: Callable[[], Windows], answer: Callable[[str], list[list[Left]]], tmp_path: Path
) -> None:
    from circuitcheck.editor.document import FileChangedError

    file = tmp_path / "cottage.wetcircuit"
    file.write_bytes((data_path("samples") / "cottage.wetcircuit").read_bytes())
    failing = start()
    failing.new().document.open(file)
    retitle(failing.open[0], "Mine")
    failing.keep_all()
    file.write_bytes((data_path("samples") / "guest-house.wetcircuit").read_bytes())
    answer("open")
    again = start()
    window = again.new()
    again.offer_recovered()
    with pytest.raises(FileChangedError):
        window.document.save()


def test_a_window_with_a_drawing_keeps_it_when_something_is_recovered(
    start: Callable[[], Windows], answer: Callable[[str], list[list[Left]]]
) -> None:
    failing = start()
    retitle(failing.new(), "Left")
    failing.keep_all()
    answer("open")
    again = start()
    again.new().document.open_copy(data_path("samples") / "cottage.wetcircuit")
    again.offer_recovered()
    assert [window.document.drawing.title for window in again.open][1:] == ["Left"]


@pytest.mark.parametrize(("word", "still_there"), [("later", 1), ("discard", 0)])
def test_it_may_wait_or_go(
    word: str,
    still_there: int,
    start: Callable[[], Windows],
    answer: Callable[[str], list[list[Left]]],
    folder: Path,
) -> None:
    failing = start()
    retitle(failing.new(), "Left")
    failing.keep_all()
    answer(word)
    again = start()
    again.new()
    again.offer_recovered()
    assert len(again.open) == 1
    assert len(left_behind(folder)) == still_there


def test_a_window_closed_on_purpose_leaves_nothing(start: Callable[[], Windows], folder: Path) -> None:
    windows = start()
    window = windows.new()
    retitle(window, "Given up")
    flush(windows)
    window.close()
    QApplication.processEvents()
    assert windows.open == ()
    assert list(folder.iterdir()) == []


def test_undone_to_what_is_saved_nothing_is_kept(start: Callable[[], Windows], folder: Path) -> None:
    windows = start()
    window = windows.new()
    retitle(window, "Never mind")
    window.document.undo()
    flush(windows)
    assert list(folder.glob("*.recovery")) == []


def test_what_cannot_be_read_stays_and_is_told(
    start: Callable[[], Windows],
    answer: Callable[[str], list[list[Left]]],
    folder: Path,
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    failing = start()
    retitle(failing.new(), "Spoilt")
    (file,) = failing.keep_all()
    file.write_bytes(file.read_bytes()[:-10])
    answer("open")
    boxes: list[QMessageBox] = []

    def keep(box: QMessageBox) -> int:
        boxes.append(box)
        return 0

    monkeypatch.setattr(QMessageBox, "exec", keep)
    again = start()
    window = again.new()
    again.offer_recovered()
    assert "cannot be read" in boxes[0].text()
    assert str(file) in boxes[0].informativeText()
    assert window.document.drawing.title == ""
    assert len(left_behind(folder)) == 1


def test_a_disk_that_refuses_is_shown_until_it_is_mended(start: Callable[[], Windows]) -> None:
    window = start().new()
    window.show_not_kept("the disk is full")
    assert window.status.warning == "Unsaved work is not kept safe: the disk is full."
    window.show_not_kept("")
    assert window.status.warning == ""


@pytest.mark.parametrize("count", [1, 2])
@pytest.mark.parametrize("press", ["Open", "Throw", "Ask"])
def test_the_question(
    press: str, count: int, folder: Path, start: Callable[[], Windows], monkeypatch: pytest.MonkeyPatch
) -> None:
    for number in range(count):
        slot = Slot(folder)
        slot.keep(set_title(read(data_path("samples") / "cottage.wetcircuit"), f"<b>{number}"), Origin())
        slot.leave()
    shown: list[QMessageBox] = []

    def choose(box: QMessageBox) -> int:
        shown.append(box)
        next(each for each in box.buttons() if each.text().startswith(press)).click()
        return 0

    monkeypatch.setattr(QMessageBox, "exec", choose)
    word = recovering.ask(start().new(), left_behind(folder))
    assert word == {"Open": "open", "Throw": "discard", "Ask": "later"}[press]
    assert len(shown[0].informativeText().splitlines()) == count
    assert "<b>0, never saved to a file, as of " in shown[0].informativeText()


@pytest.mark.parametrize("seed", range(KILLS))
def test_a_killed_window_loses_at_most_a_second(seed: int, tmp_path: Path) -> None:
    file = tmp_path / "drawing.wetcircuit"
    file.write_bytes((data_path("samples") / "cottage.wetcircuit").read_bytes())
    command = ["-m", "tests.editor.killing"]
    editing = subprocess.Popen(
        [sys.executable, *command, "edit", str(file)],
        env=environment(tmp_path),
        stdout=subprocess.PIPE,
        text=True,
    )
    assert editing.stdout is not None
    told = [editing.stdout.readline().split()]
    time.sleep(random.Random(seed).uniform(0, 2.5))
    editing.send_signal(signal.SIGKILL if os.name == "posix" else signal.SIGTERM)
    told += [line.split() for line in editing.communicate(timeout=60)[0].splitlines()]
    on_file = read(file).title
    saved = [step for what, step in told if what == "saved"]
    steps = [step for what, step in told if what == "step"]
    assert on_file in {"Larch Cottage, store room", *steps}
    if saved:
        assert int(on_file) >= int(saved[-1])

    done = ran(tmp_path, *command, "start")
    assert done.returncode == 0, done.stderr
    (_, title, is_unsaved, path) = done.stdout.split(maxsplit=3)
    if title == "none":
        # Killed when all was saved.
        title = on_file
    else:
        assert (is_unsaved, path.strip()) == ("True", str(file))
    assert int(steps[-1]) - int(title) <= MAY_BE_LOST_S * 1000 / PACE_MS
    assert not list(tmp_path.rglob("*.recovery"))
    assert "Traceback" not in done.stderr
