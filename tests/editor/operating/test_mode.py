"""Operate in the main window: in and out by key, a finding opened with its valves set, edits followed."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QToolButton
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.operating.live_view import LiveView
from circuitcheck.editor.window import MainWindow
from circuitcheck.finding import Finding
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]


def sample(name: str) -> Drawing:
    return read(data_path("samples") / f"{name}.wetcircuit")


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    qtbot.waitExposed(made)
    made.document.do("Draw", sample("terrace-valve-before-vessel"))
    yield made
    made.close()


def settled(window: MainWindow, qtbot: QtBot) -> LiveView:
    """Wait until what stands is solved; its course in time, which takes longest, is not waited for."""
    view = window.operate.view
    qtbot.waitUntil(
        lambda: view.standing is not None and view.standing.positions == view.positions, timeout=40_000
    )
    return view


def proved(window: MainWindow, qtbot: QtBot) -> Finding:
    """The finding that valves prove."""
    qtbot.waitUntil(lambda: bool(window.findings.findings), timeout=40_000)
    return next(each for each in window.findings.findings if each.witness is not None and each.witness.shut)


def test_f7_puts_the_drawing_to_work_and_escape_leaves(window: MainWindow, qtbot: QtBot) -> None:
    assert window.operate.action.shortcut().toString() == "F7"
    menus = {menu.title(): menu for menu in window.menuBar().findChildren(QMenu)}
    assert window.operate.action in menus["&View"].actions()
    window.sheet.select(("pump",))
    window.operate.action.trigger()
    view = settled(window, qtbot)
    assert view.isVisible() and window.sheet.isHidden() and window.shelf.isHidden()
    assert window.details_section.isHidden() and window.findings.isVisible()
    assert not window.sheet.selected_ids() and view.sheet.hasFocus()
    assert "not changed" in window.status.hint
    assert not window.actions_.place.isEnabled() and not window.actions_.delete.isEnabled()
    before = window.document.drawing
    for key in (Qt.Key.Key_R, Qt.Key.Key_Delete, Qt.Key.Key_P, Qt.Key.Key_H):
        QTest.keyClick(view.sheet, key)
    assert window.document.drawing is before
    QTest.keyClick(view.sheet, Qt.Key.Key_Escape)
    assert not window.operate.is_on and window.sheet.isVisible() and window.shelf.isVisible()
    assert window.details_section.isVisible() and window.actions_.place.isEnabled()
    assert window.sheet.hasFocus() and not view.sheet.is_moving


def test_it_stands_as_it_was_left_while_the_drawing_is_the_same(window: MainWindow, qtbot: QtBot) -> None:
    window.operate.action.trigger()
    view = settled(window, qtbot)
    view.choose("both")
    view.press("return_valve")
    settled(window, qtbot)
    stands = view.positions
    window.operate.leave()
    window.operate.action.trigger()
    assert view.positions is stands


def test_a_finding_opens_with_the_valves_that_prove_it(window: MainWindow, qtbot: QtBot) -> None:
    finding = proved(window, qtbot)
    assert finding.witness is not None
    window.findings.choose(finding)
    card = window.findings.card
    assert card is not None
    link = next(each for each in card.findChildren(QToolButton) if each.text() == "Operate this")
    link.click()
    view = settled(window, qtbot)
    assert window.operate.is_on and view.positions is not None
    assert view.positions.shut == frozenset(finding.witness.shut)
    assert view.standing is not None and view.standing.cut_off[0].lacks == "expansion vessel"
    window.operate.leave()
    view.choose("both")
    QApplication.processEvents()
    window.operate.action.trigger()
    settled(window, qtbot)
    assert view.positions.shut == frozenset(finding.witness.shut), "the finding is still the chosen one"


def test_a_double_click_on_a_finding_does_the_same(window: MainWindow, qtbot: QtBot) -> None:
    finding = proved(window, qtbot)
    panel = window.findings
    row = panel.visualRect(panel.model().index(panel.findings.index(finding), 0)).center()
    QTest.mouseDClick(
        panel.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, QPoint(row.x(), row.y())
    )
    view = settled(window, qtbot)
    assert window.operate.is_on and finding.witness is not None
    assert view.positions is not None and view.positions.shut == frozenset(finding.witness.shut)


def test_a_finding_chosen_meanwhile_sets_its_valves(window: MainWindow, qtbot: QtBot) -> None:
    finding = proved(window, qtbot)
    window.operate.action.trigger()
    view = settled(window, qtbot)
    assert view.positions is not None and not view.positions.is_own
    window.findings.choose(finding)
    settled(window, qtbot)
    assert finding.witness is not None and view.positions.shut == frozenset(finding.witness.shut)


def test_an_edit_meanwhile_is_followed_and_another_drawing_begins_anew(
    window: MainWindow, qtbot: QtBot
) -> None:
    window.operate.action.trigger()
    view = settled(window, qtbot)
    view.choose("both")
    settled(window, qtbot)
    stands = view.positions
    before = view.standing.through["pump"]  # type: ignore[union-attr]
    window.document.do("Pump", set_field(window.document.drawing, "pump", "shut_off_head_m", 6.0))
    settled(window, qtbot)
    assert view.drawing is window.document.drawing and view.positions == stands
    assert view.standing is not None and view.standing.through["pump"] > before
    window.document.undo()
    settled(window, qtbot)
    assert view.standing.through["pump"] == pytest.approx(before, rel=1e-9)


def test_zoom_and_fit_go_to_the_sheet_in_view(window: MainWindow, qtbot: QtBot) -> None:
    was = window.sheet.zoom
    window.operate.action.trigger()
    view = settled(window, qtbot)
    zoom = view.sheet.zoom
    window.actions_.zoom_in.trigger()
    assert view.sheet.zoom > zoom and window.sheet.zoom == was
    assert window.status.zoom == f"{round(100 * view.sheet.zoom)} %"
    window.actions_.fit.trigger()
    assert view.sheet.zoom == zoom
    window.operate.leave()
    assert window.status.zoom == f"{round(100 * was)} %"


def test_missing_numbers_lead_to_the_table_to_fill_in(window: MainWindow, qtbot: QtBot) -> None:
    window.document.do("Strip", set_field(window.document.drawing, "pump", "shut_off_head_m", None))
    window.operate.action.trigger()
    view = settled(window, qtbot)
    assert view.standing is not None and view.standing.missing == ("pump.shut_off_head_m",)
    view.bar.fill_in.click()
    assert not window.operate.is_on and not window.tables.dock.isHidden()


def test_flows_on_the_sheet_are_put_away_meanwhile(window: MainWindow, qtbot: QtBot) -> None:
    window.live.flows_action.setChecked(True)
    window.operate.action.trigger()
    settled(window, qtbot)
    assert not window.live.flows_action.isChecked() and not window.live.flows_action.isEnabled()
    window.operate.leave()
    assert window.live.flows_action.isEnabled()
