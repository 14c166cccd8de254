"""The panel of figures by mouse and keyboard: found, opened in place, folded, copied, and its links."""

from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import analyse
from circuitcheck.drawing.edits import set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures.card import MOST_LINES
from circuitcheck.editor.figures.panel import (
    FAILED,
    NOT_FOUND,
    NOTHING_APPLIES,
    WORKING_ANEW,
    WORKING_NOTE,
    FiguresPanel,
)
from circuitcheck.editor.theme import dark
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure, Input, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read


def without_pump() -> Drawing:
    full = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    return replace(full, components={**full.components, "pump": replace(full.components["pump"], data={})})


@pytest.fixture(scope="module")
def drawing() -> Drawing:
    return without_pump()


@pytest.fixture
def panel(qtbot: QtBot, drawing: Drawing) -> FiguresPanel:
    made = FiguresPanel()
    qtbot.addWidget(made)
    made.resize(340, 700)
    made.show()
    qtbot.waitExposed(made)
    made.show_figures(drawing, all_figures(Plant(drawing)))
    return made


def named(panel: FiguresPanel, name: str) -> Figure:
    return next(each for each in panel.model.figures if each.name == name)


def links(panel: FiguresPanel) -> dict[str, QToolButton]:
    assert panel.card is not None
    return {each.text(): each for each in panel.card.findChildren(QToolButton)}


def texts(widget: QWidget) -> str:
    return "\n".join(each.text() for each in widget.findChildren(QLabel))


def test_each_row_is_read_out_with_its_results(panel: FiguresPanel) -> None:
    spoken = [
        str(panel.model.index(row).data(Qt.ItemDataRole.AccessibleTextRole))
        for row in range(panel.model.rowCount())
    ]
    assert any("Swell" in each and " l." in each for each in spoken)
    assert any("numbers are missing" in each for each in spoken)
    assert panel.list.accessibleName() and panel.find_box.accessibleName()


def test_typing_finds_and_what_is_found_by_nothing_is_said(panel: FiguresPanel) -> None:
    whole = panel.model.rowCount()
    panel.find_box.setText("vessel heating")
    assert 0 < panel.model.rowCount() < whole
    panel.find_box.setText("no such thing")
    assert panel.model.rowCount() == 0 and panel.said == NOT_FOUND
    panel.find_box.clear()
    assert panel.model.rowCount() == whole and panel.said == ""


def test_opened_it_shows_formula_inputs_source_and_limits(panel: FiguresPanel, drawing: Drawing) -> None:
    figure = named(panel, "heating-vessel")
    panel.open(figure)
    assert panel.opened is figure and panel.card is not None
    shown = texts(panel.card)
    for part in (figure.title, figure.source, figure.limits, *figure.formula.splitlines()):
        assert part in shown
    assert "given in the drawing" in shown and panel.card.accessibleName()
    assert all(each.text() or each.accessibleName() for each in panel.card.findChildren(QToolButton))


def test_keys_open_walk_and_fold(panel: FiguresPanel, qtbot: QtBot) -> None:
    panel.focus_list()
    QTest.keyClick(panel.list, Qt.Key.Key_Down)
    QTest.keyClick(panel.list, Qt.Key.Key_Return)
    assert panel.opened is panel.model.figures[1]
    QTest.keyClick(panel.list, Qt.Key.Key_Return)
    assert panel.opened is None and panel.card is None
    QTest.keyClick(panel.list, Qt.Key.Key_Space)
    assert panel.opened is not None
    QTest.keyClick(panel.list, Qt.Key.Key_Escape)
    assert panel.opened is None


def test_escape_in_the_card_folds_it_and_the_keyboard_is_back_on_the_list(panel: FiguresPanel) -> None:
    panel.open(named(panel, "heating-vessel"))
    panel.activateWindow()
    link = links(panel)["Copy"]
    link.setFocus()
    assert QApplication.focusWidget() is link
    QTest.keyClick(link, Qt.Key.Key_Escape)
    assert panel.card is None and panel.list.hasFocus()


def test_a_missing_number_leads_to_its_field(panel: FiguresPanel, qtbot: QtBot) -> None:
    panel.open(named(panel, "flows"))
    with qtbot.waitSignal(panel.field_wanted) as told:
        links(panel)["Pump: shut-off head"].click()
    assert told.args == ["pump", "shut_off_head_m"]


def test_inputs_lead_to_their_field_subjects_to_the_sheet_and_figures_to_one_another(
    panel: FiguresPanel, qtbot: QtBot
) -> None:
    panel.open(named(panel, "heating-vessel"))
    with qtbot.waitSignal(panel.field_wanted) as told:
        links(panel)["The drawing’s fill"].click()
    assert told.args == ["design", "fill_temperature_c"]
    with qtbot.waitSignal(panel.part_wanted) as told:
        links(panel)["Heating vessel"].click()
    assert told.args == ["vessel"]
    from_another = next(
        each
        for each in panel.model.figures
        if any(one.origin.startswith("figure water-") for one in each.inputs)
    )
    other = next(one.origin for one in from_another.inputs if one.origin.startswith("figure water-"))
    panel.open(from_another)
    panel.find_box.setText(from_another.title)
    title = next(each.title for each in panel._figures if each.name == other.removeprefix("figure "))
    links(panel)[title].click()
    assert panel.opened is not None and panel.opened.title == title


def test_the_open_one_stays_open_and_is_not_made_anew_where_nothing_changed(
    panel: FiguresPanel, drawing: Drawing
) -> None:
    panel.open(named(panel, "heating-vessel"))
    card = panel.card
    panel.show_figures(drawing, all_figures(Plant(drawing)))
    assert panel.card is card
    other = replace(drawing, design={**drawing.design, "fill_temperature_c": 5})
    panel.show_figures(other, all_figures(Plant(other)))
    assert panel.card is not None and panel.card is not card and "5 °C" in texts(panel.card)
    panel.show_figures(Drawing(), ())
    assert panel.card is None and panel.said == NOTHING_APPLIES


def test_copy_puts_the_working_on_the_clipboard(panel: FiguresPanel) -> None:
    panel.open(named(panel, "swell"))
    links(panel)["Copy"].click()
    copied = QGuiApplication.clipboard().text()
    assert copied.startswith("Swell") and "Formula:" in copied and "Source:" in copied
    panel.fold()
    panel.list.setCurrentIndex(panel.model.index(0))
    QTest.keyClick(panel.list, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text().startswith(panel.model.figures[0].title)


def test_a_long_list_of_inputs_is_cut_until_asked(panel: FiguresPanel, drawing: Drawing) -> None:
    inputs = tuple(Input(f"x{index}", "length", 1.0, "m", "table") for index in range(MOST_LINES + 5))
    figure = Figure("swell", "Long", (), (Result("sum", 1.0, "m"),), "", inputs, "", "")
    panel.show_figures(drawing, (figure,))
    panel.open(figure)
    assert panel.card is not None
    shown = [each for each in panel.card.findChildren(QLabel) if each.text().startswith("x")]
    assert sum(each.isVisibleTo(panel.card) for each in shown) == MOST_LINES
    before = panel.card.height()
    links(panel)["Show 5 more"].click()
    assert all(each.isVisibleTo(panel.card) for each in shown)
    QApplication.processEvents()
    assert panel.delegate.opened_high > before


def test_a_failure_of_all_is_said(panel: FiguresPanel, drawing: Drawing, qtbot: QtBot) -> None:
    panel.show_figures(drawing, None)
    assert panel.said == FAILED and panel.model.rowCount() == 0


def test_it_paints_in_another_theme_and_a_narrow_column(panel: FiguresPanel) -> None:
    panel.set_theme(dark())
    panel.open(named(panel, "flows"))
    panel.resize(260, 500)
    QApplication.processEvents()
    assert not panel.grab().isNull()
    assert panel.card is not None and panel.card.width() <= 260


def test_figures_of_an_older_drawing_say_that_they_are(panel: FiguresPanel, qtbot: QtBot) -> None:
    notes: list[str] = []
    panel.note_changed.connect(notes.append)
    panel.open(named(panel, "heating-vessel"))
    panel.expect()
    assert panel.is_stale and notes == [WORKING_NOTE] and panel.said == ""
    panel.copy()
    assert QGuiApplication.clipboard().text().startswith("Of the drawing before")
    qtbot.waitUntil(lambda: panel.said == WORKING_ANEW)
    drawing = without_pump()
    panel.show_figures(drawing, all_figures(Plant(drawing)))
    assert not panel.is_stale and panel.said == "" and "worked" in notes[-1]
    assert panel.opened is not None and panel.card is not None
    panel.copy()
    assert QGuiApplication.clipboard().text().startswith("Expansion vessel")
    panel.outdate()
    assert notes[-1] == ""


def test_what_is_too_small_leads_to_the_finding_and_its_cures(panel: FiguresPanel, qtbot: QtBot) -> None:
    small = set_field(read(data_path("samples") / "terrace-as-proposed.wetcircuit"), "vessel", "volume_l", 2)
    panel.show_figures(small, all_figures(Plant(small)))
    panel.show_findings(analyse(small).findings)
    panel.open(named(panel, "heating-vessel"))
    assert panel.card is not None and "Not kept to" in texts(panel.card)
    link = links(panel)["What puts it right"]
    with qtbot.waitSignal(panel.finding_wanted) as told:
        link.click()
    assert told.args[0].check in ("vessel-too-small", "fill-pressure-below-reserve")
    panel.open(named(panel, "water-content"))
    assert "Not kept to" not in texts(panel.card)
    panel.open(named(panel, "heating-vessel"))
    panel.show_findings(())
    assert "Not kept to" not in texts(panel.card)
