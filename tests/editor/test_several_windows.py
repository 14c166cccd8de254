"""Several windows: each its own drawing; they close without a trace."""

from __future__ import annotations

import gc
import weakref
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtCore import QEvent, QMimeData, QPointF, QSettings, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QGraphicsItem, QMainWindow, QMessageBox
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import place, set_title
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.files import Answer, Files
from circuitcheck.editor.opened_twice import FOLDER
from circuitcheck.editor.window_menu import WindowMenu
from circuitcheck.editor.windows import Windows
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds
from circuitcheck.shipped import data_path
from circuitcheck.storage.claims import Claim
from circuitcheck.storage.reading import read

SAMPLES = sorted(data_path("samples").glob("*.wetcircuit"))


@pytest.fixture
def windows(tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> Iterator[Windows]:
    monkeypatch.setattr(Files, "ask_unsaved", lambda files: Answer.DISCARD)
    # The screen of the tests cannot put one window above another, and says so.
    monkeypatch.setattr(QMainWindow, "raise_", lambda window: None)
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = Windows(settings, Appearances(settings), tmp_path / "kept")
    yield made
    for window in made.open:
        window.close()
    made.close_documents()


def settled(check: Callable[[], bool]) -> bool:
    for _ in range(50):
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        QApplication.processEvents()
        gc.collect()
        if check():
            return True
        QTest.qWait(20)
    return False


def test_a_new_window_has_a_drawing_of_its_own(windows: Windows) -> None:
    first = windows.new()
    first.actions_.new_window.trigger()
    _, second = windows.open
    drawing, _ = place(second.document.drawing, kinds()["pump"], Point(0, 0))
    second.document.do("Place pump", drawing)
    assert not first.document.drawing.components and not first.document.undo_text
    second.actions_.undo.trigger()
    assert not second.document.drawing.components


def test_several_files_dropped_open_several_windows(windows: Windows, qtbot: QtBot) -> None:
    first = windows.new()
    data = QMimeData()
    data.setUrls([QUrl.fromLocalFile(str(path)) for path in SAMPLES[:3]])
    action, button, keys = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier
    over = QPointF(700, 400)
    enter = QDragEnterEvent(over.toPoint(), action, data, button, keys)
    QApplication.sendEvent(first, enter)
    assert enter.isAccepted()
    QApplication.sendEvent(first, QDropEvent(over, action, data, button, keys))
    qtbot.waitUntil(lambda: len(windows.open) == 3, timeout=20_000)
    assert [window.document.path for window in windows.open] == SAMPLES[:3]
    first.another_wanted.emit(SAMPLES[1])
    assert len(windows.open) == 3


def test_the_window_menu_names_them(windows: Windows) -> None:
    first, second = windows.new(), windows.new()
    second.files.read(SAMPLES[0])
    menus = [child for child in first.children() if isinstance(child, WindowMenu)]
    (menu,) = menus
    menu.menu.aboutToShow.emit()
    named = [action for action in menu.menu.actions() if action.isCheckable()]
    assert [action.data()() for action in named if action.isChecked()] == [first]
    assert [action.data()() for action in named if not action.isChecked()] == [second]
    named[0].trigger()


def test_a_window_closed_since_the_menu_was_filled_is_not_brought(windows: Windows) -> None:
    first, second = windows.new(), windows.new()
    menu = first.menus.windows
    menu.aboutToShow.emit()
    entries = [each for each in menu.actions() if each.isCheckable() and not each.isChecked()]
    assert len(entries) == 1
    second.close()
    assert settled(lambda: len(windows.open) == 1)
    for entry in entries:
        entry.trigger()
    assert windows.open == (first,)


def test_quit_closes_all_unless_one_is_kept(windows: Windows, monkeypatch: pytest.MonkeyPatch) -> None:
    first, second = windows.new(), windows.new()
    drawing, _ = place(second.document.drawing, kinds()["pump"], Point(0, 0))
    second.document.do("Place pump", drawing)
    monkeypatch.setattr(Files, "ask_unsaved", lambda files: Answer.CANCEL)
    first.actions_.quit.trigger()
    assert windows.open == (first, second)
    monkeypatch.setattr(Files, "ask_unsaved", lambda files: Answer.DISCARD)
    first.actions_.quit.trigger()
    assert not windows.open


class Told:
    """What the dialogs say, and a user who presses the button that is named."""

    def __init__(self) -> None:
        self.said: list[str] = []
        self.presses = "Cancel"

    def press(self, box: QMessageBox) -> int:
        self.said.append(box.text())
        pressed = next(each for each in box.buttons() if self.presses in each.text().replace("&", ""))
        answer = box.standardButton(pressed).value
        pressed.click()
        return int(answer)


@pytest.fixture
def told(monkeypatch: pytest.MonkeyPatch) -> Told:
    def exec_box(box: QMessageBox) -> int:
        return made.press(box)

    made = Told()
    monkeypatch.setattr(QMessageBox, "exec", exec_box)
    return made


def test_a_file_open_in_another_window_is_told_of(windows: Windows, told: Told, tmp_path: Path) -> None:
    file = tmp_path / "hall.wetcircuit"
    file.write_bytes(SAMPLES[0].read_bytes())
    first, second = windows.new(), windows.new()
    assert first.files.read(file)
    assert not second.files.read(tmp_path / ".." / tmp_path.name / file.name)
    assert told.said == ["hall.wetcircuit is open in another window already."]
    assert second.document.path is None
    told.presses = "Go to that window"
    assert not second.files.read(file)
    assert second.document.path is None
    told.presses = "Open it here too"
    assert second.files.read(file)
    assert len(told.said) == 3
    # Once more in its own window is no second time; nor is a file that the other window has left.
    assert first.files.read(file)
    second.document.new()
    first.close()
    assert second.files.read(file)
    assert len(told.said) == 3


def test_of_two_windows_on_one_file_the_second_to_save_is_asked(
    windows: Windows, told: Told, tmp_path: Path
) -> None:
    file = tmp_path / "hall.wetcircuit"
    file.write_bytes(SAMPLES[0].read_bytes())
    first, second = windows.new(), windows.new()
    told.presses = "Open it here too"
    for window in (first, second):
        window.files.read(file)
        title = f"of the {'first' if window is first else 'second'}"
        window.document.do("Set title", set_title(window.document.drawing, title))
    assert first.files.save()
    told.presses = "Cancel"
    assert not second.files.save()
    assert told.said[-1] == "hall.wetcircuit was changed by somebody else since it was opened here."
    assert second.document.is_unsaved and read(file).title == "of the first"
    told.presses = "Replace"
    assert second.files.save()
    assert read(file).title == "of the second"
    told.presses = "Cancel"
    first.document.do("Set title", set_title(first.document.drawing, "again"))
    assert not first.files.save()


@pytest.mark.parametrize("action", ["figures_action", "flows_action"])
def test_a_window_closes_with_a_panel_open(windows: Windows, action: str) -> None:
    first = windows.new()
    window = windows.new()
    window.files.read(SAMPLES[0])
    getattr(window.live, action).trigger()
    window.tables.fill_in_action.trigger()
    QTest.qWait(50)
    gone = weakref.ref(window)
    window.close()
    del window
    assert settled(lambda: gone() is None), "the window is held by something"
    assert windows.open == (first,)


def test_a_closed_window_is_told_nothing_more_by_what_goes_with_it(windows: Windows) -> None:
    windows.new()
    window = windows.new()
    window.close()
    table, panel = window.tables.fill_in, window.panes.figures
    shiboken6.delete(panel)
    # Qt hides what is in view while it takes the window apart, one widget after the other.
    table.figures_unwanted.emit()
    table.figures_wanted.emit()


def test_windows_close_without_leaving_anything(windows: Windows) -> None:
    def items() -> int:
        return sum(isinstance(each, QGraphicsItem) for each in shiboken6.getAllValidWrappers())

    windows.new()
    assert settled(lambda: True)
    before = items()
    gone = []
    for path in SAMPLES[:4]:
        window = windows.new()
        window.files.read(path)
        window.sheet.begin_finding()
        window.sheet.setFocus()
        window.editing.search.begin()
        window.sheet.select_all()
        window.editing._copy()
        window.editing.menu_for_selection().deleteLater()
        gone.append(weakref.ref(window))
        window.close()
        del window
    assert settled(lambda: all(ref() is None for ref in gone)), "a window is held by something"
    assert settled(lambda: items() <= before), f"{items() - before} items are left"


@pytest.mark.parametrize("says", ["Open it here too", "Cancel"])
@pytest.mark.parametrize("when", ["before it is read", "before it is claimed"])
def test_a_program_started_at_the_same_time_is_told_of(
    when: str, says: str, windows: Windows, tmp_path: Path, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    told: list[str] = []

    def answered(box: QMessageBox) -> int:
        told.append(box.text())
        pressed = next(each for each in box.buttons() if says in each.text().replace("&", ""))
        answer = box.standardButton(pressed).value
        pressed.click()
        return int(answer)

    monkeypatch.setattr(QMessageBox, "exec", answered)
    other = Claim(tmp_path / FOLDER)
    window = windows.first()
    if when == "before it is read":
        other.follow(SAMPLES[0])
    windows.begin(window, SAMPLES[0])
    assert window.document.path == (None if (when, says) == ("before it is read", "Cancel") else SAMPLES[0])
    other.follow(SAMPLES[0])
    windows.furnish(window)
    qtbot.wait(50)
    # Once, whichever of the two saw the other.
    assert told == [f"{SAMPLES[0].name} is open already: the program runs twice."]
    assert window.document.path == (None if says == "Cancel" else SAMPLES[0])
    other.close()


def test_a_program_that_is_alone_is_told_nothing(
    windows: Windows, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(QMessageBox, "exec", lambda box: pytest.fail(box.text()))
    window = windows.first()
    windows.begin(window, SAMPLES[0])
    windows.furnish(window)
    qtbot.wait(50)
    assert window.document.path == SAMPLES[0]
