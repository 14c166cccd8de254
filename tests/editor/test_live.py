"""Figures and flows in the window: only while seen, following edits, links to where numbers live."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMenu, QToolButton
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import live as live_module
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.figures import panel as panel_module
from circuitcheck.editor.figures.heights import Said
from circuitcheck.editor.figures.panel import FiguresPanel
from circuitcheck.editor.files import Answer
from circuitcheck.editor.flow_bar import FlowBar
from circuitcheck.editor.live import missing_sentence
from circuitcheck.editor.window import MainWindow
from circuitcheck.figures.figure import Figure
from circuitcheck.report.flows import NO_WATER, By, Flows, PipeFlow, SituationFlows
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support raise", extend=True)


def proposed() -> Drawing:
    return read(data_path("samples") / "terrace-as-proposed.wetcircuit")


def without_pump() -> Drawing:
    full = proposed()
    return replace(full, components={**full.components, "pump": replace(full.components["pump"], data={})})


@pytest.fixture
def window(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[MainWindow]:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    made = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
    made.resize(1440, 900)
    made.show()
    qtbot.waitExposed(made)
    made.document.do("Draw", proposed())
    yield made
    made.close()


def bar(window: MainWindow) -> FlowBar:
    return window.findChildren(FlowBar)[0]


def panel(window: MainWindow) -> FiguresPanel:
    return window.findChildren(FiguresPanel)[0]


def shown(window: MainWindow, qtbot: QtBot) -> Flows:
    """Wait for the flows of the present drawing."""
    qtbot.waitUntil(
        lambda: window.live.flows is not None and window.live.flows.drawing is window.document.drawing,
        timeout=20_000,
    )
    found = window.live.flows
    assert found is not None
    return found


def test_nothing_is_worked_out_or_shown_until_asked(window: MainWindow, qtbot: QtBot) -> None:
    assert bar(window).isHidden() and panel(window).isHidden()
    qtbot.wait(200)
    assert not window.live.is_busy and window.live.flows is None
    assert panel(window).model.rowCount() == 0
    menus = {menu.title(): menu for menu in window.menuBar().findChildren(QMenu)}
    texts = [each.text() for each in menus["&View"].actions()]
    assert "Fi&gures" in texts and "F&lows on the sheet" in texts
    assert window.live.figures_action.shortcut().toString() == "Ctrl+G"
    assert window.live.flows_action.shortcut().toString() == "F9"


def test_the_figures_come_follow_an_edit_and_stop_when_folded(window: MainWindow, qtbot: QtBot) -> None:
    window.live.figures_action.trigger()
    assert panel(window).isVisible() and panel(window).list.hasFocus()
    assert window.details_section.is_folded and window.findings_section.is_folded
    qtbot.waitUntil(lambda: panel(window).model.rowCount() > 20, timeout=20_000)
    panel(window).open_named("flows")
    window.document.do("Strip", without_pump())
    qtbot.waitUntil(lambda: bool(getattr(panel(window).opened, "missing", ())), timeout=20_000)
    window.live.figures_action.trigger()
    assert panel(window).isHidden() and window.sheet.hasFocus()
    assert not window.details_section.is_folded and not window.findings_section.is_folded
    window.document.undo()
    qtbot.wait(250)
    assert not window.live.is_busy and getattr(panel(window).opened, "missing", ())


def test_the_rows_of_many_figures_are_found_beside_the_window(
    window: MainWindow, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch
) -> None:
    figures = panel(window)
    window.live.figures_action.trigger()
    qtbot.waitUntil(lambda: not window.live.is_busy and bool(figures.model.figures), timeout=20_000)
    width = figures.list.viewport().width()
    high = [
        figures.list.visualRect(figures.model.index(row)).height()
        for row in range(len(figures.model.figures))
    ]
    figures.delegate.rows.forget()
    figures.show_figures(Drawing(), ())
    for module in (live_module, panel_module):
        monkeypatch.setattr(module, "MANY_ROWS", 5)
    in_the_window: list[Figure] = []
    measure = figures.delegate.rows._measure

    def measured(figure: Figure, said: Said) -> int:
        in_the_window.append(figure)
        return measure(figure, said)

    monkeypatch.setattr(figures.delegate.rows, "_measure", measured)
    window.live._want_figures()
    qtbot.waitUntil(lambda: not window.live.is_busy and bool(figures.model.figures), timeout=20_000)
    assert not in_the_window
    assert figures.list.viewport().width() == width
    assert high == [
        figures.list.visualRect(figures.model.index(row)).height()
        for row in range(len(figures.model.figures))
    ]
    # The list is measured for another width once what made it so is through.
    figures.list.setFixedWidth(figures.list.width() - 60)
    assert not in_the_window
    qtbot.waitUntil(lambda: len(in_the_window) == len(figures.model.figures))
    assert figures.delegate.width == figures.list.viewport().width() == width - 60


def test_a_missing_number_jumps_to_the_details(window: MainWindow, qtbot: QtBot) -> None:
    window.document.do("Strip", without_pump())
    window.live.figures_action.trigger()
    qtbot.waitUntil(lambda: panel(window).model.rowCount() > 20, timeout=20_000)
    panel(window).open_named("flows")
    card = panel(window).card
    assert card is not None
    link = next(each for each in card.findChildren(QToolButton) if each.text() == "Pump: shut-off head")
    link.click()
    assert window.sheet.selected_ids() == {"pump"} and not window.details_section.is_folded
    entry = QApplication.focusWidget()
    assert entry is not None and window.details.isAncestorOf(entry)
    assert not window.panes.figures_section.is_folded


def test_flows_stand_by_the_pipes_and_follow_an_edit(window: MainWindow, qtbot: QtBot) -> None:
    window.live.flows_action.trigger()
    assert bar(window).isVisible()
    first = shown(window, qtbot)
    assert bar(window).chosen == "heating only"
    before = dict(window.sheet.flows.figures)
    assert before and all(said.endswith("l/min") for said in before.values())
    window.document.do("Set", set_field(window.document.drawing, "pump", "shut_off_head_m", 2.0))
    assert shown(window, qtbot) is not first
    assert window.sheet.flows.figures != before
    window.document.undo()
    shown(window, qtbot)
    assert window.sheet.flows.figures == before


def test_situation_and_figure_are_chosen_by_keys_and_menu(window: MainWindow, qtbot: QtBot) -> None:
    window.live.by_actions[By.VELOCITY].trigger()
    assert window.live.flows_action.isChecked()
    shown(window, qtbot)
    assert all(said.endswith("m/s") for said in window.sheet.flows.figures.values())
    window.live.next_situation.trigger()
    assert bar(window).chosen == "hot water only"
    bar(window).by.setFocus()
    QTest.keyClick(bar(window).by, Qt.Key.Key_Down)
    assert bar(window).chosen_by is By.LOSS and window.live.by_actions[By.LOSS].isChecked()
    assert all(said.endswith("Pa") for said in window.sheet.flows.figures.values())
    names = [
        each.accessibleName() for each in (bar(window).situation, bar(window).by, bar(window).close_button)
    ]
    assert all(names)


def test_the_line_says_the_position_and_the_selected_pipe(window: MainWindow, qtbot: QtBot) -> None:
    window.live.flows_action.trigger()
    found = shown(window, qtbot)
    assert bar(window).said == "Shut: Store valve. Running: Pump."
    pipe = next(id for id, each in found.situations[0].pipes.items() if not each.is_still)
    window.sheet.select((pipe,))
    assert "l/min towards" in bar(window).said and bar(window).accessibleDescription() == bar(window).said
    window.sheet.select(())
    assert bar(window).said.startswith("Shut:")


def test_missing_numbers_are_counted_and_lead_to_the_table(window: MainWindow, qtbot: QtBot) -> None:
    window.document.do("Strip", without_pump())
    window.live.flows_action.trigger()
    shown(window, qtbot)
    assert bar(window).said == "2 numbers are missing to work out the flows."
    assert bar(window).fill_in.isVisible() and window.sheet.flows.figures == {}
    bar(window).fill_in.click()
    assert window.tables.dock.isVisible() and window.tables.fill_in.table.hasFocus()
    current = window.tables.fill_in.current
    assert current is not None and current.key in {"pump.shut_off_head_m", "pump.maximum_flow_lpm"}
    bar(window).fill_in.click()
    assert window.tables.dock.isVisible()


def test_hidden_again_the_sheet_is_as_it_was(window: MainWindow, qtbot: QtBot) -> None:
    window.live.flows_action.trigger()
    shown(window, qtbot)
    bar(window).close_button.click()
    assert bar(window).isHidden() and not window.live.flows_action.isChecked()
    assert window.sheet.flows.figures == {} and window.sheet.hasFocus()
    window.document.do("Set", set_field(window.document.drawing, "pump", "shut_off_head_m", 2.0))
    qtbot.wait(100)
    assert window.live.flows is None and not window.live.is_busy


def test_another_drawing_has_its_own_situations(window: MainWindow, qtbot: QtBot) -> None:
    window.live.flows_action.trigger()
    shown(window, qtbot)
    bar(window).step(-1)
    assert bar(window).chosen == "power off"
    window.document.do("Other", read(data_path("samples") / "village-hall.wetcircuit"))
    shown(window, qtbot)
    assert bar(window).chosen == "power off"
    window.document.new()
    shown(window, qtbot)
    assert bar(window).said == NO_WATER and not bar(window).situation.isEnabled()


@pytest.mark.parametrize(
    ("missing", "known", "said"),
    [
        ((), False, ""),
        (("a.b",), False, "1 number is missing to work out the flows."),
        (("a.b", "a.c"), True, "2 numbers are missing: some flows are not known."),
    ],
)
def test_what_is_missing_in_one_line(missing: tuple[str, ...], known: bool, said: str) -> None:
    told = SituationFlows("both", {"p1": PipeFlow(1.0)} if known else {})
    assert missing_sentence(Flows(Drawing(), (told,), missing)) == said


def test_the_table_names_the_figures_that_wait_for_a_number(window: MainWindow, qtbot: QtBot) -> None:
    window.document.do("Forget", without_pump())
    window.tables.fill_in_action.trigger()
    table = window.tables.fill_in
    key = "pump.maximum_flow_lpm"
    qtbot.waitUntil(lambda: any(each.is_figure for each in table.model.asked.needed(key)), timeout=20_000)
    words = table.model.asked.needed_words(table.model.asked.questions[key])
    assert "figures: " in words.casefold() and "Flows of the pumped water" in words
    assert table.model.row_of(key) is not None
    window.document.do("Fill in", set_field(window.document.drawing, "pump", "maximum_flow_lpm", 40))
    qtbot.waitUntil(lambda: not window.live.is_busy, timeout=20_000)
    qtbot.waitUntil(lambda: not table.model.asked.needed(key), timeout=20_000)
    window.tables.fill_in_action.trigger()
    assert not window.live.is_busy
