"""Tables out of a spreadsheet, as it puts them on the clipboard."""

from __future__ import annotations

from typing import Any

import pytest

from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fill_in.pasting import PasteError, pasted
from circuitcheck.report.asking import Asking, Question
from tests.made import made


@pytest.fixture
def drawing() -> Drawing:
    return made(
        {"pump": "pump", "other": "pump", "rad": "radiator"},
        "p1: pump.out - 9,0\np2: rad.flow - 0,9\np3: 0,8 - 9,8",
        pipe_data={"p2": {"length_m": 2.5}},
    )


def asked(drawing: Drawing) -> dict[str, Question]:
    asking = Asking()
    asking.take(drawing)
    return asking.all


def paste(drawing: Drawing, *lines: str) -> tuple[str, dict[str, dict[str, Any]]]:
    questions = asked(drawing)
    column = [f"p{number}.length_m" for number in (1, 2, 3)]
    step, after = pasted(drawing, questions, column, "\r\n".join(lines) + "\r\n")
    data = {id: thing.data for id, thing in after.components.items()}
    data |= {id: thing.data for id, thing in after.pipes.items()}
    return step, {id: dict(held) for id, held in data.items() if held}


def test_a_pipe_schedule_is_one_step(drawing: Drawing) -> None:
    step, data = paste(
        drawing,
        "Pipe\tSize (mm)\tlength_m\tMaterial\tNotes\t",
        "p1\t22\t1,25\tcopper\tbehind the wall\t",
        "p2\t15 mm\t\tplastic\t\t",
        "\t\t\t\t\t",
        "Pipe p3\t28\t.5\t?\t\t",
    )
    assert step == "Fill in 8 values"
    assert data["p1"] == {"size_mm": 22, "length_m": 1.25, "material": "copper"}
    assert data["p2"] == {"size_mm": 15, "length_m": 2.5, "material": "plastic"}
    assert data["p3"] == {"size_mm": 28, "length_m": 0.5, "material": None}


def test_parts_of_several_kinds_in_one_table(drawing: Drawing) -> None:
    _, data = paste(drawing, "\tShut-off head, m\tOutput", "pump\t4,5\t", "rad\t\t1200", "p1\t\t")
    assert (data["pump"], data["rad"]) == ({"shut_off_head_m": 4.5}, {"output_w": 1200})


@pytest.mark.parametrize(
    "lines",
    [
        ("key\tvalue", "p1.length_m\t3", "p3.length_m\t4"),
        ("p1.length_m\t3", "p3.length_m\t4"),
        ("3\tp1.length_m", "4\tp3.length_m"),
        ("value\tchecked by\tkey", "3\tme\tp1.length_m", "", "4\tme\tp3.length_m"),
        ("part\twhat\tvalue", "p1\tLength\t3", "p3\tlength\t4"),
        ("Length (m)", "3", "", "4"),
        ("value", "3", "", "4"),
        ('"Length (m)"', '"3"', "", '"4"'),
    ],
)
def test_headings_and_order_of_columns(drawing: Drawing, lines: tuple[str, ...]) -> None:
    step, data = paste(drawing, *lines)
    assert step == "Fill in 2 values"
    assert [data[id]["length_m"] for id in ("p1", "p2", "p3")] == [3, 2.5, 4]


@pytest.mark.parametrize(
    ("lines", "sentence"),
    [
        (("Pipe\tLength (mm)", "p1\t1250"), "Length is told in m, and not in mm"),
        (("Pipe\tSize (in)", "p1\t1"), "Size is told in mm, and not in in"),
        (("Pipe\tSize", 'p1\t1/2"'), "not a number"),
        (("Pipe\tLength", "p1\t3 ft"), "not a number"),
        (("Pipe\tLength", "p1\t1.234,5"), "not a number"),
        (("Pipe\tLength", "p1\t1 250"), "not a number"),
        (("Pipe\tLength", "p1\t-3"), "at least 0 m"),
        (("Pipe\tLength", "p9\t3"), "Nothing drawn is called “p9”"),
        (("Pipe\tLength\tLenght", "p1\t3\t4"), "“Lenght” is no field"),
        (("Pipe\tOutput", "p1\t3"), "“p1” has no field “output”"),
        (("key\tvalue", "p1.length_m\t3", "p9.length_m\t4"), "no|Nothing drawn has the key “p9.length_m”"),
        (("1\t2\t3", "4\t5\t6"), "Paste one column"),
        (("key\tamount", "p1.length_m\t3"), "Paste one column"),
        (("Length", "1", "2", "3", "4"), "4 values do not fit into 3 rows"),
    ],
)
def test_what_cannot_be_taken_says_why(drawing: Drawing, lines: tuple[str, ...], sentence: str) -> None:
    with pytest.raises(PasteError, match=sentence) as refused:
        paste(drawing, *lines)
    assert str(refused.value).endswith("Nothing was pasted.")


def test_things_of_one_name_are_told_apart_by_their_ids() -> None:
    same = made({"a": "pump", "b": "pump"}, "")
    for id in ("a", "b"):
        same = relabel(same, id, "Pump")
    with pytest.raises(PasteError, match="Several things are called “Pump”"):
        pasted(same, asked(same), [], "Part\tShut-off head\nPump\t5")
    _, after = pasted(same, asked(same), [], "Part\tShut-off head\nb\t5")
    assert after.components["b"].data == {"shut_off_head_m": 5} and not after.components["a"].data


def test_a_large_paste_of_quotes_ends(drawing: Drawing) -> None:
    with pytest.raises(PasteError):
        paste(drawing, '"\t' * 20_000)
