"""The two tables beside the sheet, in the window: menu, following the drawing, undo, saving."""

from __future__ import annotations

import csv
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.parts_counted import HEADINGS, IDS, PartsCounted
from circuitcheck.editor.window import MainWindow
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support raise", extend=True)


def gaps() -> Drawing:
    """The cottage, its pump and its first pipe known only by name."""
    full = read(data_path("samples") / "cottage.wetcircuit")
    parts = {**full.components, "pump": replace(full.components["pump"], data={})}
    pipes = {**full.pipes, "p1": replace(full.pipes["p1"], data={})}
    return replace(full, components=parts, pipes=pipes)


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made_ = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made_.files, "ask_unsaved", lambda: Answer.DISCARD)
    made_.resize(1440, 900)
    made_.show()
    qtbot.waitExposed(made_)
    made_.document.do("Draw", gaps())
    qtbot.waitUntil(lambda: made_.document.analysis is not None, timeout=15_000)
    yield made_
    made_.close()


def test_both_stand_in_the_menus_with_a_key(window: MainWindow) -> None:
    menus = {menu.title(): menu for menu in window.menuBar().findChildren(QMenu)}
    texts = {name: [each.text() for each in menu.actions()] for name, menu in menus.items()}
    assert "&Fill in what is not known" in texts["&Edit"]
    assert "Parts and &pipe, counted…" in texts["&View"]
    keys = [window.tables.fill_in_action.shortcut(), window.tables.counted_action.shortcut()]
    assert [key.toString() for key in keys] == ["Ctrl+I", "Ctrl+Shift+L"]


def test_an_answer_is_one_step_that_undo_takes_back(window: MainWindow, qtbot: QtBot) -> None:
    window.tables.fill_in_action.trigger()
    panel = window.tables.fill_in
    assert panel.table.hasFocus() and panel.current is not None
    assert panel.model.asked.needed(panel.current.key)
    row = panel.model.row_of("pump.shut_off_head_m")
    assert row is not None
    panel.table.go_to(row)
    assert window.sheet.selected_ids() == {"pump"}
    before = window.document.drawing
    QTest.keyClick(panel.table, Qt.Key.Key_Return)
    entry = QApplication.focusWidget()
    assert entry is not None
    QTest.keyClicks(entry, "2,5")
    QTest.keyClick(entry, Qt.Key.Key_Return)
    assert window.document.drawing.components["pump"].value("shut_off_head_m") == 2.5
    assert window.document.undo_text == "Set Pump’s shut-off head"
    window.document.undo()
    assert window.document.drawing is before
    assert panel.model.asked.questions["pump.shut_off_head_m"].value is None


def test_another_file_begins_anew(window: MainWindow, qtbot: QtBot) -> None:
    window.tables.fill_in_action.trigger()
    window.document.new()
    assert {question.subject for question in window.tables.fill_in.model.asked.questions.values()} == {
        "design",
        "sheet",
    }


def test_it_shuts_by_the_same_key_and_gives_the_keys_back(window: MainWindow) -> None:
    window.tables.fill_in_action.trigger()
    window.tables.fill_in_action.trigger()
    assert window.tables.dock.isHidden() and window.sheet.hasFocus()


def lines(counted: PartsCounted) -> list[list[str]]:
    """Every line of the table, as its texts."""
    found = []
    for at in range(counted.model.rowCount()):
        head = counted.model.item(at)
        for row in range(head.rowCount()):
            found.append([head.child(row, column).text() for column in range(len(HEADINGS))])
    return found


def test_the_count_goes_along_with_the_drawing(window: MainWindow) -> None:
    counted = window.tables.counted
    window.tables.counted_action.trigger()
    pump = next(line for line in lines(counted) if line[1] == "Pump")
    assert pump[0] == "1" and "shut-off head" in pump[4]
    assert "p1" in counted.notes_text
    window.document.new()
    assert lines(counted) == [] and counted.notes_text == ""


def test_a_line_shows_its_parts_on_the_sheet(window: MainWindow) -> None:
    counted = window.tables.counted
    window.tables.counted_action.trigger()
    before = window.sheet.selected_ids()
    window.document.do("Again", replace(window.document.drawing, title="Again"))
    assert window.sheet.selected_ids() == before
    head = counted.model.item(1)
    counted.tree.setCurrentIndex(head.child(1, 0).index())
    assert window.sheet.selected_ids() == set(head.child(1, 0).data(IDS))


def test_saved_and_copied_no_cell_is_a_formula(qtbot: QtBot, tmp_path: Path) -> None:
    counted = PartsCounted()
    qtbot.addWidget(counted)
    drawing = made(
        {"=cmd": "pump", "v": "isolating_valve"}, "=cmd.out - v.a", pipe_data={"p1": {"size_mm": 22}}
    )
    counted.show_drawing(drawing)
    counted.show()
    counted.copy()
    copied = [line.split("\t") for line in QGuiApplication.clipboard().text().splitlines()]
    assert ["1", "Pump", "22 mm"] in [line[1:4] for line in copied]
    counted.ask_path = lambda parent, name: str(tmp_path / "list")
    counted.save()
    text = (tmp_path / "list.csv").read_bytes().decode("utf-8-sig")
    saved = list(csv.reader(text.splitlines()))
    assert len(saved) == len(copied)
    assert not [each for row in (*copied, *saved) for each in row if each.startswith("=")]


def test_a_save_that_fails_is_told_and_one_called_off_is_not(qtbot: QtBot, tmp_path: Path) -> None:
    counted = PartsCounted()
    qtbot.addWidget(counted)
    counted.show()
    counted.ask_path = lambda parent, name: ""
    counted.save()
    assert counted.fault_text == ""
    counted.ask_path = lambda parent, name: str(tmp_path / "no such folder" / "list.csv")
    counted.save()
    assert "list.csv could not be saved" in counted.fault_text
