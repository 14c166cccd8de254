"""F6 goes from area to area of the window, also out of a sheet full of parts."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from pathlib import Path

import pytest
import shiboken6
from PySide6.QtCore import QEvent, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.areas import entry_of
from circuitcheck.editor.window import MainWindow
from tests.editor.screens import USUAL, Screens

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    screens = Screens(qtbot, tmp_path, monkeypatch, lambda name, seen: None)
    made = screens.window(USUAL)
    screens.draw(made)
    made.activateWindow()
    yield made
    made.close()


def press(window: MainWindow, keys: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> str:
    """Press F6 where the keyboard is; returns the area it is in then."""
    QTest.keyClick(QApplication.focusWidget() or window, Qt.Key.Key_F6, keys)
    now = QApplication.focusWidget()
    assert now is not None
    areas = {
        "sheet": window.sheet,
        "shelf": window.shelf,
        "details": window.details_section,
        "findings": window.findings_section,
        "figures": window.panes.figures_section,
        "outline": window.panes.dock,
        "bar": window.bar,
        "status": window.status,
    }
    return next(name for name, area in areas.items() if area is now or area.isAncestorOf(now))


def test_it_goes_round_all_areas_that_are_shown(window: MainWindow) -> None:
    window.sheet.setFocus()
    round_ = ["shelf", "details", "findings", "figures", "status", "bar", "sheet"]
    assert [press(window) for _ in round_] == round_
    back = [press(window, Qt.KeyboardModifier.ShiftModifier) for _ in round_]
    assert back == [*round_[-2::-1], "sheet"]
    window.panes.dock.show()
    assert [press(window) for _ in range(5)][-1] == "outline"


def test_it_comes_back_to_where_one_was(window: MainWindow) -> None:
    window.sheet.select(())
    window.details.field("static_height_m").setFocus()
    before = QApplication.focusWidget()
    press(window)
    press(window, Qt.KeyboardModifier.ShiftModifier)
    assert QApplication.focusWidget() is before


def test_to_look_for_a_stop_makes_nobody_the_child_of_another(window: MainWindow) -> None:
    bars = window.sheet.horizontalScrollBar(), window.sheet.verticalScrollBar()
    without_a_stop = QWidget(window)
    without_a_stop.show()
    assert entry_of(without_a_stop) is None
    for id in window.document.drawing.components:
        # Each time the fields of the one before go.
        window.sheet.select((id,))
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete)
        gc.collect()
    assert all(shiboken6.isValid(bar) for bar in bars)
