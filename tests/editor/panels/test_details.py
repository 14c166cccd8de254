"""The details panel, filled in by mouse and keyboard."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QLocale, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox, QComboBox, QLineEdit, QPlainTextEdit, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.panels.details import DetailsPanel
from circuitcheck.editor.panels.number_field import NumberField
from tests.made import made


class Bench:
    """A panel whose edits are taken on, as the document does it."""

    def __init__(self, qtbot: QtBot) -> None:
        self.panel = DetailsPanel()
        self.steps: list[str] = []
        self.ids: tuple[str, ...] = ()
        self.drawing = made(
            {
                "hs": "heat_source",
                "pump": ("pump", {"shut_off_head_m": 6}),
                "zv1": "zone_valve",
                "zv2": ("zone_valve", {"kv_m3h": 3.5}),
                "sv": "safety_valve",
                "end": "discharge_end",
            },
            "p1: hs.flow - pump.in",
            controls={"rt": ("room_thermostat", ("zv1",))},
        )
        self.panel.edited.connect(self._take)
        qtbot.addWidget(self.panel)
        self.panel.resize(320, 700)
        self.panel.show()
        self.show()

    def show(self, *ids: str) -> None:
        self.ids = ids
        self.panel.show_selection(self.drawing, ids)

    def _take(self, step: str, drawing: Drawing) -> None:
        self.steps.append(step)
        self.drawing = drawing
        self.panel.show_selection(drawing, self.ids)

    def line(self, name: str) -> QLineEdit:
        field = self.panel.field(name)
        assert isinstance(field, QLineEdit)
        return field

    def type(self, name: str, text: str, *, enter: bool = True) -> None:
        line = self.line(name)
        line.setFocus()
        line.selectAll()
        if text:
            QTest.keyClicks(line, text)
        else:
            QTest.keyClick(line, Qt.Key.Key_Delete)
        if enter:
            QTest.keyClick(line, Qt.Key.Key_Return)


@pytest.fixture
def bench(qtbot: QtBot) -> Bench:
    return Bench(qtbot)


@pytest.fixture(params=["en_GB", "de_DE"])
def place(request: pytest.FixtureRequest, qapp: object) -> object:
    """Runs a test in two places of the world."""
    before = QLocale()
    QLocale.setDefault(QLocale(request.param))
    yield request.param
    QLocale.setDefault(before)


@pytest.mark.parametrize("text", ["1.5", "1,5"])
def test_one_and_a_half_is_one_and_a_half_wherever_it_is_typed(place: str, text: str, bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", text)
    assert bench.drawing.components["pump"].data["shut_off_head_m"] == 1.5
    assert bench.steps == ["Set pump pump’s shut-off head"]
    assert bench.line("shut_off_head_m").text() == ("1,5" if place == "de_DE" else "1.5")


def test_a_field_left_as_it_was_is_no_step(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "6")
    bench.line("label").setFocus()
    bench.line("maximum_flow_lpm").setFocus()
    assert bench.steps == []


def test_what_is_no_number_is_refused_beside_the_field(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "1.000,5")
    assert bench.panel.refusal("shut_off_head_m") == "“1.000,5” is not a number. It stays at 6 m."
    assert bench.line("shut_off_head_m").text() == "6"
    assert bench.steps == []
    bench.type("shut_off_head_m", "5")
    assert bench.panel.refusal("shut_off_head_m") == ""
    assert bench.drawing.components["pump"].data["shut_off_head_m"] == 5


def test_a_number_beyond_its_limits_is_refused_beside_the_field(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "-1")
    assert "at least 0 m" in bench.panel.refusal("shut_off_head_m")
    assert "It stays at 6 m." in bench.panel.refusal("shut_off_head_m")
    assert bench.line("shut_off_head_m").text() == "6"
    assert bench.drawing.components["pump"].data["shut_off_head_m"] == 6


def test_an_emptied_number_is_not_known(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "")
    assert "shut_off_head_m" not in bench.drawing.components["pump"].data
    assert bench.line("shut_off_head_m").placeholderText() == "not known"


def test_the_usual_value_shows_as_such(bench: Bench) -> None:
    bench.show("sv")
    field = bench.panel.field("set_pressure_bar")
    assert isinstance(field, NumberField)
    assert (field.text(), field.placeholderText()) == ("", "3 (usual)")
    unknown, usual = field.extra_actions()
    assert (unknown.text(), usual.text()) == ("Not known", "Usual: 3 bar")
    unknown.trigger()
    assert bench.drawing.components["sv"].data["set_pressure_bar"] is None
    assert field.placeholderText() == "not known"
    usual.trigger()
    assert "set_pressure_bar" not in bench.drawing.components["sv"].data
    bench.type("set_pressure_bar", "2,5")
    assert bench.drawing.components["sv"].data["set_pressure_bar"] == 2.5


def test_escape_puts_back_what_was_there(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "9", enter=False)
    QTest.keyClick(bench.line("shut_off_head_m"), Qt.Key.Key_Escape)
    assert bench.line("shut_off_head_m").text() == "6"
    bench.line("label").setFocus()
    assert bench.steps == []


def choose(box: QComboBox, text: str) -> None:
    box.setCurrentIndex(box.findText(text))
    box.activated.emit(box.currentIndex())


def test_a_switch_says_usual_yes_no_or_not_known(bench: Bench) -> None:
    bench.show("pump")
    box = bench.panel.field("isolating_valves")
    assert isinstance(box, QComboBox)
    assert [box.itemText(index) for index in range(box.count())] == ["yes (usual)", "yes", "no", "not known"]
    assert box.currentText() == "yes (usual)"
    for text, value in (("no", False), ("yes", True), ("not known", None)):
        choose(box, text)
        assert bench.drawing.components["pump"].data["isolating_valves"] is value
        assert box.currentText() == text
    choose(box, "yes (usual)")
    assert "isolating_valves" not in bench.drawing.components["pump"].data


def test_a_choice_that_means_not_known_is_offered_once(bench: Bench) -> None:
    bench.show("end")
    box = bench.panel.field("place")
    assert isinstance(box, QComboBox)
    texts = [box.itemText(index) for index in range(box.count())]
    assert texts[0] == "not known" and len(texts) == len(set(texts)) == 6
    choose(box, "gully below grating")
    assert bench.drawing.components["end"].data["place"] == "gully_below_grating"


def test_built_in_things_are_ticked(bench: Bench) -> None:
    bench.show("hs")
    boxes = {box.text(): box for box in bench.panel.field("built_in").findChildren(QCheckBox)}
    assert boxes["none (usual)"].isChecked()
    boxes["safety valve"].click()
    boxes["pump"].click()
    assert bench.drawing.components["hs"].data["built_in"] == ("pump", "safety_valve")
    assert not boxes["none (usual)"].isChecked()
    boxes["pump"].click()
    boxes["safety valve"].click()
    assert "built_in" not in bench.drawing.components["hs"].data
    boxes["none, for certain"].click()
    assert bench.drawing.components["hs"].data["built_in"] == ()
    boxes["not known"].click()
    assert bench.drawing.components["hs"].data["built_in"] is None
    assert [text for text, box in boxes.items() if box.isChecked()] == ["not known"]


def test_a_control_is_told_what_it_acts_on(bench: Bench) -> None:
    bench.show("rt")
    boxes = {box.text(): box for box in bench.panel.field("acts_on").findChildren(QCheckBox)}
    assert [text for text, box in boxes.items() if box.isChecked()] == ["Zone valve zv1"]
    boxes["Zone valve zv2"].click()
    assert list(bench.drawing.controls["rt"].acts_on) == ["zv1", "zv2"]
    boxes["Zone valve zv1"].click()
    assert list(bench.drawing.controls["rt"].acts_on) == ["zv2"]


def test_a_note_is_kept_when_the_focus_leaves_it(bench: Bench) -> None:
    bench.show("pump")
    note = bench.panel.field("note")
    assert isinstance(note, QPlainTextEdit)
    note.setFocus()
    QTest.keyClicks(note, "<b>Spare in the van</b>")
    bench.line("label").setFocus()
    assert bench.drawing.components["pump"].data["note"] == "<b>Spare in the van</b>"


def test_several_are_set_in_one_step(bench: Bench) -> None:
    bench.show("zv1", "zv2")
    assert bench.line("kv_m3h").placeholderText() == "several"
    bench.type("kv_m3h", "4,2")
    assert [bench.drawing.components[id].data["kv_m3h"] for id in ("zv1", "zv2")] == [4.2, 4.2]
    assert len(bench.steps) == 1


def test_what_is_typed_goes_to_what_was_selected_then(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "7", enter=False)
    # The sheet takes the focus and selects another part at once.
    bench.panel.setFocus()
    bench.show("zv1")
    assert bench.drawing.components["pump"].data["shut_off_head_m"] == 7
    assert "shut_off_head_m" not in bench.drawing.components["zv1"].data


def test_an_edit_that_ends_typing_may_show_something_else(bench: Bench) -> None:
    bench.show("pump")
    bench.type("label", "Pump two", enter=False)
    # What is selected by the time the edit is told is what counts.
    bench.ids = ("sv",)
    bench.panel.show_selection(bench.drawing, ("zv1",))
    assert bench.drawing.components["pump"].label == "Pump two"
    bench.type("label", "Relief")
    assert bench.drawing.components["sv"].label == "Relief"


def test_what_is_refused_as_something_else_is_shown_is_left(bench: Bench) -> None:
    bench.show("pump")
    bench.type("shut_off_head_m", "much", enter=False)
    bench.show("zv1")
    assert bench.steps == []
    bench.type("label", "Zone")
    assert bench.drawing.components["zv1"].label == "Zone"


def test_another_drawing_keeps_the_editors_and_their_focus(bench: Bench) -> None:
    bench.show("pump")
    line = bench.line("shut_off_head_m")
    bench.type("maximum_flow_lpm", "57")
    assert bench.line("shut_off_head_m") is line
    assert bench.line("maximum_flow_lpm").hasFocus()


def test_what_is_gone_is_no_more_shown(bench: Bench) -> None:
    bench.show("pump")
    headings: list[str] = []
    bench.panel.heading_changed.connect(headings.append)
    bench.panel.show_selection(Drawing(), ("pump",))
    assert headings == ["Drawing"]


@pytest.mark.parametrize("ids", [(), ("hs",), ("p1",), ("rt",)])
def test_every_editor_has_a_name_that_can_be_heard(bench: Bench, ids: tuple[str, ...]) -> None:
    bench.show(*ids)
    kinds = QLineEdit | QComboBox | QPlainTextEdit | QCheckBox
    editors = [widget for widget in bench.panel.findChildren(QWidget) if isinstance(widget, kinds)]
    assert editors
    assert all(editor.accessibleName() for editor in editors)
