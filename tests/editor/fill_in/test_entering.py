"""What is typed and pasted, and what is said of a question, without a window."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fill_in.asked import Asked, Column, Shown
from circuitcheck.editor.fill_in.entering import (
    about,
    copied,
    limits_words,
    part_words,
    set_answer,
    value_of,
)
from circuitcheck.editor.fill_in.pasting import PasteError, pasted
from circuitcheck.editor.panels.subjects import Left
from circuitcheck.finding import Grade
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Field
from circuitcheck.report.asking import Asking, Need, Question
from tests.made import made

PIPE = {field.name: field for field in PIPE_FIELDS}
DESIGN = {field.name: field for field in DESIGN_FIELDS}
LENGTHS = ["p1.length_m", "p2.length_m", "p3.length_m"]


def asked(drawing: Drawing) -> dict[str, Question]:
    asking = Asking()
    asking.take(drawing)
    return asking.all


@pytest.fixture
def drawing() -> Drawing:
    return made(
        {"pump": "pump", "sv": "safety_valve", "end": "discharge_end"},
        "pump.out - 9,9\nsv.outlet - end.inlet\n0,0 - pump.in",
        pipe_data={"p2": {"length_m": 2.5, "rise_m": -0.5}},
    )


@pytest.mark.parametrize(
    ("field", "text", "value"),
    [
        (PIPE["length_m"], "1,5", 1.5),
        (PIPE["length_m"], " 1.5 m ", 1.5),
        (PIPE["length_m"], "22", 22),
        (PIPE["rise_m"], "−0.4", -0.4),
        (PIPE["length_m"], "", Left.OUT),
        (PIPE["length_m"], "usual", Left.OUT),
        (PIPE["length_m"], "?", None),
        (PIPE["length_m"], "Not known", None),
        (PIPE["insulated"], "Yes", True),
        (PIPE["insulated"], "no", False),
        (PIPE["material"], "Steel", "steel"),
        (kinds()["discharge_end"].field("place"), "roof or high level", "roof_or_high_level"),
        (kinds()["unvented_store"].field("built_in"), "none", ()),
        (kinds()["unvented_store"].field("built_in"), "check valve, expansion relief", ("check_valve", "expansion_relief")),
    ],
)  # fmt: skip
def test_what_a_text_says(field: Field, text: str, value: Any) -> None:
    found = value_of(field, text)
    assert type(found) is type(value) and found == value


@pytest.mark.parametrize(
    ("field", "text", "sentence"),
    [
        (PIPE["length_m"], "1.000,5", "not a number"),
        (PIPE["length_m"], "1 000", "not a number"),
        (PIPE["length_m"], "nan", "not a number"),
        (PIPE["length_m"], "=2+2", "not a number"),
        (PIPE["insulated"], "maybe", "neither yes nor no"),
        (PIPE["material"], "lead", "copper, plastic, steel"),
    ],
)
def test_what_says_nothing_is_refused(field: Field, text: str, sentence: str) -> None:
    with pytest.raises(EditError, match=sentence):
        value_of(field, text)


@pytest.mark.parametrize(
    ("field", "words"),
    [
        (PIPE["size_mm"], "more than 0 mm"),
        (PIPE["rise_m"], ""),
        (PIPE["bends"], "at least 0"),
        (DESIGN["glycol_percent"], "from 0 to 100 %"),
        (DESIGN["flow_temperature_c"], "from −50 to 300 °C"),
    ],
)
def test_limits_in_words(field: Field, words: str) -> None:
    assert limits_words(field) == words


def test_things_are_called_by_their_names(drawing: Drawing) -> None:
    assert part_words(drawing, "design") == "The drawing"
    assert part_words(drawing, "p2") == "Pipe p2, safety valve sv to discharge end end"
    assert part_words(drawing, "p3") == "Pipe p3, a free end to pump pump"


def test_what_is_said_of_a_question(drawing: Drawing) -> None:
    question = asked(drawing)["p1.size_mm"]
    need = Need("x", "Pump too weak", Grade.FAULT, 2, is_silent=True)
    said = about(drawing, question, [need], rests=False)
    assert said == (
        "Pipe p1, pump pump to a free end: size. The tube's nominal size: its outer diameter for copper and "
        "plastic. It must be more than 0 mm. "
        "Needed by: Pump too weak (would be fault, not judged without it)."
    )
    assert "No check or figure waits" in about(drawing, question, [], rests=False)
    assert "still judging" in about(drawing, question, [], rests=False, is_judged=False)
    usual = asked(drawing)["sv.set_pressure_bar"]
    assert about(drawing, usual, [], rests=True).endswith("A verdict rests on this usual value.")


def test_an_answer_is_one_step_with_a_name(drawing: Drawing) -> None:
    questions = asked(drawing)
    step, after = set_answer(drawing, questions["pump.shut_off_head_m"], 4)
    assert step == "Set pump pump’s shut-off head" and after.components["pump"].value("shut_off_head_m") == 4
    assert set_answer(drawing, questions["pump.shut_off_head_m"], Left.OUT)[1] is drawing
    kept = set_answer(drawing, questions["pump.shut_off_head_m"], None)[1]
    assert kept.components["pump"].data == {"shut_off_head_m": None}
    assert set_answer(drawing, questions["design.occupants"], 3)[1].design == {"occupants": 3}
    assert set_answer(drawing, questions["sheet.metres_per_square"], 0.1)[1].sheet == {
        "metres_per_square": 0.1
    }


def test_a_column_goes_into_the_rows_that_follow(drawing: Drawing) -> None:
    step, after = pasted(drawing, asked(drawing), LENGTHS, "1,5\r\n\r\n3\r\n")
    assert step == "Fill in 2 values"
    assert [after.pipes[id].data.get("length_m") for id in ("p1", "p2", "p3")] == [1.5, 2.5, 3]


@pytest.mark.parametrize(
    ("text", "sentence"),
    [
        ("", "no text"),
        ("1\n2\n3\n4", "4 values do not fit into 3 rows"),
        ("1\t2\n3\t4", "one column"),
        ("1\n-2", "Pipe p2.*length: Length must be at least 0 m. Nothing was pasted."),
        ("1\nabc", "not a number"),
    ],
)
def test_a_paste_that_cannot_be_taken_changes_nothing(drawing: Drawing, text: str, sentence: str) -> None:
    with pytest.raises(PasteError, match=sentence):
        pasted(drawing, asked(drawing), LENGTHS, text)


@pytest.mark.parametrize("decimal", [".", ","])
def test_what_is_copied_goes_back_as_it_was(drawing: Drawing, decimal: str) -> None:
    questions = asked(drawing)
    text = copied(drawing, list(questions.values()), {}, decimal)
    assert pasted(drawing, questions, [], text) == ("", drawing)


def test_a_copied_table_finds_its_rows_by_the_key(drawing: Drawing) -> None:
    questions = asked(drawing)
    rows = [questions["p2.rise_m"], questions["pump.shut_off_head_m"], questions["sv.set_pressure_bar"]]
    head, *lines = copied(drawing, rows, {}, ".").splitlines()
    assert lines[0].split("\t")[3:5] == ["-0.5", "m"]
    filled = [line.replace("\t\tm\t", "\t4,2\tm\t") for line in reversed(lines)]
    step, after = pasted(drawing, questions, [], "\n".join([head, *filled]))
    assert step == "Fill in 1 value"
    assert after.components["pump"].data == {"shut_off_head_m": 4.2}
    assert after.components["sv"].data == {} and after.pipes["p2"].data == {"length_m": 2.5, "rise_m": -0.5}


def test_no_copied_cell_is_a_formula() -> None:
    drawing = made({"=a": "pump"}, "")
    text = copied(drawing, list(asked(drawing).values()), {}, ".")
    assert not [each for line in text.splitlines() for each in line.split("\t") if each.startswith("=")]
    named = next(line for line in text.splitlines() if "shut_off" in line).replace("\t\tm", "\t4\tm")
    assert pasted(drawing, asked(drawing), [], named)[1].components["=a"].data == {"shut_off_head_m": 4}


def test_pipe_nine_stands_before_pipe_ten() -> None:
    asked_ = Asked()
    asked_.begin(made({}, "\n".join(f"0,{y} - 9,{y}" for y in range(11))))
    keys = asked_.chosen(Shown.OPEN, ("length",))
    keys.sort(key=lambda key: asked_.sort_key(Column.PART, key))
    assert keys[-3:] == ["p9.length_m", "p10.length_m", "p11.length_m"]


def test_values_are_spoken_with_unit_and_state(drawing: Drawing) -> None:
    asked_ = Asked()
    asked_.begin(drawing)
    spoken = {key: asked_.spoken(question, Column.VALUE) for key, question in asked_.questions.items()}
    assert spoken["p2.length_m"] == "length: 2.5 m"
    assert spoken["sv.set_pressure_bar"] == "set pressure: 3 bar, usual"
    assert spoken["p1.length_m"] == "length: not known, m"
