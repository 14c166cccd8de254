"""The table to fill in, worked with keys as its users would."""

from __future__ import annotations

from collections.abc import Iterator

import pytest
from PySide6.QtCore import QAbstractItemModel, Qt
from PySide6.QtGui import QGuiApplication
from PySide6.QtTest import QAbstractItemModelTester, QTest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import Analysis
from circuitcheck.drawing.edits import relabel, remove, set_field
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fill_in.asked import FILLED, Column, Shown
from circuitcheck.editor.fill_in.entries import ChoiceEntry, NumberEntry
from circuitcheck.editor.fill_in.panel import FillInPanel
from circuitcheck.editor.theme import dark
from circuitcheck.finding import Finding, Grade, Says
from tests.made import made

ENTER, ESCAPE = Qt.Key.Key_Return, Qt.Key.Key_Escape
SHIFT = Qt.KeyboardModifier.ShiftModifier
NEEDED = ("p1.length_m", "p2.length_m", "pump.shut_off_head_m", "end.place", "sv.set_pressure_bar")


def house() -> Drawing:
    return made(
        {
            "pump": "pump",
            "sv": ("safety_valve", {"set_pressure_bar": None}),
            "end": "discharge_end",
            "store": ("unvented_store", {"built_in": None}),
        },
        "pump.out - 9,9\nsv.outlet - end.inlet",
    )


def judged(drawing: Drawing, *missing: str) -> Analysis:
    finding = Finding("pump-too-weak", Grade.UNANSWERED, Says("?"), missing=missing, would_be=Grade.FAULT)
    why = {"pump-too-weak": "not known"}
    return Analysis(
        drawing, (finding,) if missing else (), (), (), ("pump-too-weak",), (), (), "england", why
    )


class Desk:
    """A panel and the drawing it edits, with every step it made."""

    def __init__(self, panel: FillInPanel) -> None:
        self.panel = panel
        self.steps: list[str] = []
        self.drawing = house()
        panel.edited.connect(self._do)

    def _do(self, step: str, drawing: Drawing) -> None:
        self.steps.append(step)
        self.drawing = drawing
        self.panel.show_drawing(drawing)

    def begin(self, *missing: str) -> None:
        self.panel.show_drawing(self.drawing, is_another=True)
        self.panel.show_analysis(judged(self.drawing, *missing))
        self.panel.show()
        self.panel.activateWindow()
        QTest.qWaitForWindowActive(self.panel)
        self.panel.focus_table()

    @property
    def keys(self) -> list[str]:
        return self.panel.model.keys

    @property
    def current(self) -> str:
        question = self.panel.current
        return question.key if question else ""

    @property
    def entry(self) -> QWidget:
        found = QApplication.focusWidget()
        assert isinstance(found, NumberEntry | ChoiceEntry)
        return found

    def text(self, key: str, column: Column) -> str:
        model = self.panel.model
        row = model.row_of(key)
        assert row is not None
        return str(model.index(row, column).data())

    def at(self, key: str) -> None:
        row = self.panel.model.row_of(key)
        assert row is not None
        self.panel.table.go_to(row)

    def refusal(self) -> str:
        fault = self.panel._fault
        return "" if fault.isHidden() else fault.text()


@pytest.fixture
def desk(qtbot: QtBot) -> Iterator[Desk]:
    panel = FillInPanel()
    qtbot.addWidget(panel)
    panel.resize(1000, 500)
    panel.set_theme(dark())
    QAbstractItemModelTester(panel.model, QAbstractItemModelTester.FailureReportingMode.Fatal, panel)
    yield Desk(panel)
    panel.close()


def test_what_is_needed_stands_first_and_known_things_do_not_stand_at_all(desk: Desk) -> None:
    desk.begin("p2.length_m", "pump.shut_off_head_m")
    assert set(desk.keys[:2]) == {"p2.length_m", "pump.shut_off_head_m"}
    assert "pump.isolating_valves" not in desk.keys
    assert desk.text("p2.length_m", Column.NEEDED) == desk.text("pump.shut_off_head_m", Column.NEEDED) != ""
    assert desk.current == desk.keys[0]


def test_enter_answers_and_goes_on_each_answer_one_step(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m", "pump.shut_off_head_m")
    first = desk.keys[:3]
    QTest.keyClick(desk.panel.table, ENTER)
    for text in ("1,5", "2.5", "3"):
        QTest.keyClicks(desk.entry, text)
        QTest.keyClick(desk.entry, ENTER)
    assert desk.keys[:3] == first and len(desk.steps) == 3
    assert [desk.panel.model.asked.questions[key].value for key in first] == [1.5, 2.5, 3]
    assert {desk.text(key, Column.NEEDED) for key in first} == {FILLED}
    assert desk.current == desk.keys[3] and isinstance(desk.entry, QWidget)


def test_typing_begins_by_itself_and_shift_enter_goes_back(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m")
    desk.at(desk.keys[1])
    QTest.keyClick(desk.panel.table, Qt.Key.Key_7)
    QTest.keyClick(desk.entry, ENTER, SHIFT)
    assert desk.panel.model.asked.questions[desk.keys[1]].value == 7
    assert desk.current == desk.keys[0]


def test_rows_stay_where_they_are_until_they_are_put_in_order(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m")
    before = list(desk.keys)
    desk.panel.answer(4)
    desk.panel.show_analysis(judged(desk.drawing, "end.place"))
    assert desk.keys == before
    desk.panel.put_in_order()
    assert desk.keys[0] == "end.place" and before[0] not in desk.keys


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("-1", "Length must be at least 0 m. It stays not known."),
        ("a lot", "“a lot” is not a number. It stays not known."),
        ("1.000,5", "“1.000,5” is not a number. It stays not known."),
    ],
)
def test_a_refusal_says_why_keeps_the_place_and_changes_nothing(desk: Desk, text: str, sentence: str) -> None:
    desk.begin("p1.length_m")
    QTest.keyClick(desk.panel.table, ENTER)
    QTest.keyClicks(desk.entry, text)
    QTest.keyClick(desk.entry, ENTER)
    assert desk.refusal() == sentence
    assert desk.steps == [] and desk.current == "p1.length_m"
    QTest.keyClicks(desk.entry, "2")
    QTest.keyClick(desk.entry, ENTER)
    assert desk.refusal() == "" and desk.drawing.pipes["p1"].data == {"length_m": 2}


def test_not_known_can_be_kept(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m")
    first, second = desk.keys[:2]
    QTest.keyClick(desk.panel.table, ENTER)
    QTest.keyClick(desk.entry, ENTER)
    assert desk.steps == [] and desk.current == second
    QTest.keyClicks(desk.entry, "?")
    QTest.keyClick(desk.entry, ENTER)
    assert desk.drawing.pipes[second.partition(".")[0]].data == {"length_m": None}
    desk.panel.put_in_order()
    assert desk.keys[:2] == [first, second]


def test_escape_leaves_what_was_typed(desk: Desk) -> None:
    desk.begin("p1.length_m")
    QTest.keyClick(desk.panel.table, ENTER)
    entry = desk.entry
    QTest.keyClicks(entry, "9")
    QTest.keyClick(entry, ESCAPE)
    QApplication.processEvents()
    assert desk.steps == [] and not desk.panel.table.is_typing


def test_an_answer_of_the_checks_takes_nothing_from_who_is_typing(desk: Desk) -> None:
    desk.begin("p1.length_m")
    QTest.keyClick(desk.panel.table, ENTER)
    QTest.keyClicks(desk.entry, "1")
    desk.panel.show_analysis(judged(desk.drawing, *NEEDED))
    QTest.keyClicks(desk.entry, "2")
    QTest.keyClick(desk.entry, ENTER)
    assert desk.drawing.pipes["p1"].data == {"length_m": 12}


def test_a_choice_is_made_by_keys_and_counts_once(desk: Desk) -> None:
    desk.begin("end.place")
    QTest.keyClick(desk.panel.table, ENTER)
    QTest.keyClick(desk.entry, Qt.Key.Key_Down)
    QTest.keyClick(desk.entry, Qt.Key.Key_Down)
    assert desk.steps == []
    QTest.keyClick(desk.entry, ENTER)
    assert desk.steps == ["Set discharge end end’s place"]
    assert desk.drawing.components["end"].data == {"place": "gully_below_grating"}


def test_a_list_of_several_is_filled_in_in_the_details(desk: Desk) -> None:
    desk.begin("store.built_in")
    told: list[tuple[str, str]] = []
    desk.panel.field_wanted.connect(lambda id, field: told.append((id, field)))
    QTest.keyClick(desk.panel.table, ENTER)
    assert told == [("store", "built_in")] and not desk.panel.table.is_typing


def test_the_usual_value_and_not_known_are_in_the_menu(desk: Desk) -> None:
    desk.begin("sv.set_pressure_bar")
    menu = desk.panel.menu()
    actions = {action.text(): action for action in menu.actions() if action.text()}
    assert list(actions) == ["Not known", "Usual: 3 bar", "Show in the details", "Copy", "&Paste"]
    actions["Usual: 3 bar"].trigger()
    assert desk.drawing.components["sv"].data == {}
    assert desk.text("sv.set_pressure_bar", Column.VALUE) == "3"


def test_the_choice_the_search_and_the_counts(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m")
    choice = desk.panel.choice
    assert choice.itemText(1) == "Needed by checks and figures (2)"
    choice.setCurrentIndex(1)
    choice.activated.emit(1)
    assert sorted(desk.keys) == ["p1.length_m", "p2.length_m"]
    desk.panel.find_box.setText("discharge end LENGTH")
    assert desk.keys == ["p2.length_m"]
    desk.panel.find_box.setText("no such thing")
    assert desk.keys == [] and desk.panel.current is None
    desk.panel.find_box.clear()
    desk.panel.model.choose(Shown.ALL)
    assert "pump.isolating_valves" in desk.keys
    assert len(desk.keys) == len(desk.panel.model.asked.questions)


def test_sorting_and_back_to_the_order_of_asking(desk: Desk) -> None:
    desk.begin("p2.length_m")
    asked = list(desk.keys)
    desk.panel.table.sortByColumn(Column.PART, Qt.SortOrder.AscendingOrder)
    names = [desk.text(key, Column.PART).casefold() for key in desk.keys]
    assert names == sorted(names) and set(desk.keys) == set(asked)
    desk.panel.table.sortByColumn(-1, Qt.SortOrder.AscendingOrder)
    assert desk.keys == asked


def test_what_is_drawn_meanwhile_comes_last_and_what_is_taken_out_goes(desk: Desk) -> None:
    desk.begin("p1.length_m")
    before = list(desk.keys)
    bigger = made(
        {"pump": "pump", "sv": "safety_valve", "end": "discharge_end", "x": "pump"}, "pump.out - 9,9"
    )
    parts = {**desk.drawing.components, "x": bigger.components["x"]}
    grown = Drawing(desk.drawing.title, components=parts, pipes=desk.drawing.pipes)
    desk.panel.show_drawing(grown)
    assert desk.keys[: len(before)] == before and "x.shut_off_head_m" in desk.keys[len(before) :]
    desk.panel.show_drawing(remove(grown, ["pump"]))
    assert not [key for key in desk.keys if key.startswith("pump.")]
    desk.panel.show_drawing(relabel(remove(grown, ["pump"]), "end", "Gully"))
    assert "gully" in desk.text("p2.length_m", Column.PART)


def test_nothing_is_worked_out_while_nobody_looks(desk: Desk) -> None:
    desk.panel.show_drawing(desk.drawing, is_another=True)
    assert desk.keys == []
    desk.begin("p1.length_m")
    desk.panel.hide()
    desk.panel.show_drawing(set_field(desk.drawing, "p1", "length_m", 3))
    assert desk.panel.model.drawing is desk.drawing
    desk.panel.show()
    assert "p1.length_m" not in desk.keys


def test_copy_and_paste_through_the_clipboard(desk: Desk) -> None:
    desk.begin("p1.length_m", "p2.length_m")
    QGuiApplication.clipboard().setText("1.5\n2.5")
    QTest.keyClick(desk.panel.table, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert desk.steps == ["Fill in 2 values"]
    assert {desk.drawing.pipes[id].data["length_m"] for id in ("p1", "p2")} == {1.5, 2.5}
    QGuiApplication.clipboard().setText("1\nmuch")
    QTest.keyClick(desk.panel.table, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    assert "Nothing was pasted." in desk.refusal() and len(desk.steps) == 1
    desk.panel.table.selectRow(0)
    QTest.keyClick(desk.panel.table, Qt.Key.Key_C, Qt.KeyboardModifier.ControlModifier)
    assert QGuiApplication.clipboard().text().splitlines()[1].startswith(f"{desk.keys[0]}\t")


def test_the_row_is_shown_on_the_sheet_and_explained(desk: Desk) -> None:
    desk.begin("p1.length_m", "pump.shut_off_head_m")
    told: list[frozenset[str]] = []
    desk.panel.chosen.connect(told.append)
    desk.panel.activateWindow()
    QTest.keyClick(desk.panel.table, Qt.Key.Key_Down)
    assert told == [frozenset({desk.current.partition(".")[0]})]
    assert "would be fault, not judged without it" in desk.panel._about.text()


def test_ten_thousand_rows_are_rows_of_a_model_and_no_widgets(desk: Desk) -> None:
    drawing = made({f"r{n}": "radiator" for n in range(3500)}, "")
    desk.panel.show_drawing(drawing, is_another=True)
    desk.panel.show_analysis(judged(drawing))
    desk.panel.show()
    model: QAbstractItemModel = desk.panel.model
    assert model.rowCount() > 10_000
    assert len(desk.panel.table.findChildren(QWidget)) < 30
