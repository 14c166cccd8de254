"""What is asked, in which order, and by whom it is needed."""

from __future__ import annotations

import random
from collections.abc import Mapping
from dataclasses import replace
from typing import Any

import pytest

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.drawing import edits
from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure
from circuitcheck.figures.plant import Plant
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.geometry import Point
from circuitcheck.report.asking import ABSENT, Asking, Question, State, in_order, needs, rests_on, touched_by
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.made import made

PARTS = {"pump": "pump", "t": "tee", "sv": "safety_valve", "end": "discharge_end"}
PIPES = "p1: pump.out - t.a\np2: sv.outlet - end.inlet"


def asked(drawing: Drawing) -> dict[str, Question]:
    asking = Asking()
    asking.take(drawing)
    return asking.all


def unanswered(check: str, grade: Grade, *missing: str) -> Finding:
    return Finding(check, Grade.UNANSWERED, Says("?"), missing=missing, would_be=grade)


def told(
    drawing: Drawing, *findings: Finding, silent: tuple[str, ...] = (), taken: tuple[str, ...] = ()
) -> Analysis:
    why = dict.fromkeys(silent, "not known")
    return Analysis(drawing, findings, (), (), silent, (), taken, "england", why)


def ordered(drawing: Drawing, analysis: Analysis) -> list[str]:
    return in_order(asked(drawing).values(), needs(analysis), rests_on(analysis))


def test_each_field_is_asked_once_and_texts_are_not() -> None:
    drawing = made(PARTS, PIPES, controls={"rt": ("room_thermostat", ("pump",)), "pr": ("programmer", ())})
    questions = asked(drawing)
    assert list(questions) == [question.key for question in questions.values()]
    fields = {question.field.name for question in questions.values() if question.subject == "pump"}
    assert fields == {"isolating_valves", "shut_off_head_m", "maximum_flow_lpm", "height_m"}
    assert "rt.set_c" in questions and "pr.set_c" not in questions
    assert {"design.fill_pressure_bar", "sheet.metres_per_square", "p1.length_m"} <= questions.keys()


@pytest.mark.parametrize(
    ("data", "state", "value"),
    [
        ({}, State.OPEN, None),
        ({"shut_off_head_m": None}, State.KEPT, None),
        ({"shut_off_head_m": 0}, State.GIVEN, 0),
    ],
)
def test_left_out_is_open_and_null_is_kept(data: dict[str, Any], state: State, value: float | None) -> None:
    question = asked(made({"pump": ("pump", data)}, ""))["pump.shut_off_head_m"]
    assert (question.state, question.value) == (state, value)
    assert question.held is data.get("shut_off_head_m", ABSENT)


@pytest.mark.parametrize(
    ("key", "data", "state"),
    [
        ("sv.set_pressure_bar", {}, State.USUAL),
        ("sv.set_pressure_bar", {"set_pressure_bar": None}, State.KEPT),
        ("end.place", {}, State.OPEN),
        ("end.place", {"place": "unknown"}, State.KEPT),
        ("end.place", {"place": "inside"}, State.GIVEN),
    ],
)
def test_usual_values_and_the_one_that_says_unknown(key: str, data: dict[str, Any], state: State) -> None:
    kinds = {"sv": "safety_valve", "end": "discharge_end"}
    id = key.partition(".")[0]
    assert asked(made({id: (kinds[id], data)}, ""))[key].state is state


def test_what_can_be_measured_or_looked_up_is_not_asked() -> None:
    drawing = made({}, "0,0 - 3,4", pipe_data={"p1": {"size_mm": 22}})
    assert asked(drawing)["p1.length_m"].state is State.OPEN
    bore = asked(drawing)["p1.bore_mm"]
    assert (bore.state, bore.value, bore.how) == (State.WORKED, 20.2, "standard tube")
    pipe = replace(drawing.pipes["p1"], via=(Point(3, 0),))
    scaled = replace(drawing, sheet={"metres_per_square": 1}, pipes={"p1": pipe})
    length = asked(scaled)["p1.length_m"]
    assert (length.state, length.value, length.how) == (State.WORKED, 7, "measured")
    assert asked(scaled)["p1.bends"].value == 1


def test_a_straight_drop_is_asked_of_a_tundishs_pipe_first() -> None:
    drawing = made(
        {"tu": "tundish", "end": "discharge_end", "pump": "pump"}, "tu.outlet - end.inlet\npump.out - 9,9"
    )
    questions = asked(drawing)
    assert questions["p1.straight_drop_m"].urgency < questions["p2.straight_drop_m"].urgency


def test_one_field_names_every_check_that_asks_the_heaviest_first() -> None:
    drawing = made(PARTS, PIPES)
    analysis = told(
        drawing,
        unanswered("pump-too-weak", Grade.FAULT, "pump.shut_off_head_m"),
        unanswered("discharge-too-long", Grade.DANGER, "pump.shut_off_head_m", "p2.length_m"),
        unanswered("pump-too-weak", Grade.FAULT, "pump.shut_off_head_m", "pump.shut_off_head_m"),
        silent=("pump-too-weak",),
    )
    first, second = needs(analysis)["pump.shut_off_head_m"]
    assert (first.check, first.grade, first.findings, first.is_silent) == (
        "discharge-too-long", Grade.DANGER, 1, False,
    )  # fmt: skip
    assert (second.check, second.findings, second.is_silent) == ("pump-too-weak", 2, True)
    assert [need.check for need in needs(analysis)["p2.length_m"]] == ["discharge-too-long"]


def test_the_order_danger_before_fault_many_before_few_needed_before_the_rest() -> None:
    drawing = made({**PARTS, "sv": ("safety_valve", {"set_pressure_bar": 3})}, PIPES)
    analysis = told(
        drawing,
        unanswered("a", Grade.ADVICE, "design.occupants"),
        unanswered("b", Grade.FAULT, "p1.length_m", "p1.size_mm"),
        unanswered("c", Grade.FAULT, "p1.size_mm"),
        unanswered("d", Grade.DANGER, "end.place"),
        taken=("sv.outlet_size_mm = 15",),
    )
    found = ordered(drawing, analysis)
    assert found[:4] == ["end.place", "p1.size_mm", "p1.length_m", "design.occupants"]
    states = [asked(drawing)[key].state.is_known for key in found]
    assert states == sorted(states)
    known = found[states.index(True) :]
    assert known[0] == "sv.outlet_size_mm" and known[-1] == "sv.set_pressure_bar"


def test_what_was_said_to_be_not_known_comes_after_what_nobody_spoke_of() -> None:
    drawing = made({"a": ("pump", {"shut_off_head_m": None}), "b": "pump"}, "")
    finding = unanswered("x", Grade.FAULT, "a.shut_off_head_m", "b.shut_off_head_m")
    assert ordered(drawing, told(drawing, finding))[:2] == ["b.shut_off_head_m", "a.shut_off_head_m"]


def test_an_answered_question_is_needed_no_longer() -> None:
    drawing = made({"a": ("pump", {"shut_off_head_m": 4})}, "")
    stale = told(drawing, unanswered("x", Grade.DANGER, "a.shut_off_head_m"))
    assert ordered(drawing, stale)[0] != "a.shut_off_head_m"


def test_only_what_a_step_touched_is_asked_anew() -> None:
    drawing = made(PARTS, PIPES)
    asking = Asking()
    asking.take(drawing)
    before = dict(asking.all)
    after = edits.set_field(drawing, "sv", "set_pressure_bar", 4)
    assert asking.take(after) == {"sv", "p2"} == touched_by(drawing, after)
    assert asking.all["p1.size_mm"] is before["p1.size_mm"]
    assert asking.all["sv.set_pressure_bar"].value == 4
    assert asking.all == asked(after)


@pytest.mark.parametrize("seed", range(8))
def test_step_by_step_is_the_same_as_all_at_once(seed: int) -> None:
    """Whatever is set, taken out and brought back, the kept questions are those of a fresh start."""
    dice = random.Random(seed)
    drawing = read(data_path("samples") / "cottage.wetcircuit")
    past, asking = [drawing], Asking()
    asking.take(drawing)
    for _ in range(40):
        drawing = _stepped(dice, drawing, past)
        past.append(drawing)
        asking.take(drawing)
        assert asking.all == asked(drawing)


def _stepped(dice: random.Random, drawing: Drawing, past: list[Drawing]) -> Drawing:
    match dice.randrange(5):
        case 0 if drawing.pipes:
            return edits.set_field(drawing, dice.choice(list(drawing.pipes)), "length_m", dice.random())
        case 1:
            return edits.remove(drawing, [dice.choice(list(drawing.components))])
        case 2:
            return edits.set_sheet(drawing, "metres_per_square", dice.choice([None, 0.1, 0.2]))
        case 3:
            return edits.set_design(drawing, "occupants", dice.randrange(9))
        case _:
            return dice.choice(past)


def test_a_house_with_gaps_every_missing_field_can_be_asked() -> None:
    """What the real checks miss is in the table, under the name they give it, and comes first."""
    dice = random.Random(3)
    full = read(data_path("samples") / "cottage.wetcircuit")

    def gaps(data: Any) -> dict[str, Any]:
        return {name: value for name, value in data.items() if dice.random() > 0.35}

    drawing = replace(
        full,
        design=gaps(full.design),
        components={id: replace(part, data=gaps(part.data)) for id, part in full.components.items()},
        pipes={id: replace(pipe, data=gaps(pipe.data)) for id, pipe in full.pipes.items()},
    )
    analysis = analyse(drawing)
    missing = {key for finding in analysis.findings for key in finding.missing}
    questions = asked(drawing)
    assert missing and missing <= questions.keys()
    assert not any(questions[key].state.is_known for key in missing)
    assert set(ordered(drawing, analysis)[: len(missing)]) == missing


def lacking(name: str, *missing: str) -> Figure:
    return Figure(name, name.title(), (), (), "", (), "", "", refused="numbers are missing", missing=missing)


def test_figures_ask_after_checks_and_before_what_nothing_needs() -> None:
    drawing = made(PARTS, PIPES)
    analysis = told(drawing, unanswered("x", Grade.ADVICE, "p2.length_m"))
    figures = [
        lacking("swell", "p1.size_mm", "p2.length_m"),
        lacking("swell", "p1.size_mm"),
        lacking("flows", "p1.size_mm"),
    ]
    found = needs(analysis, figures)
    assert [(need.check, need.is_figure) for need in found["p2.length_m"]] == [("x", False), ("swell", True)]
    assert [(need.check, need.findings) for need in found["p1.size_mm"]] == [("flows", 1), ("swell", 2)]
    questions = asked(drawing)
    assert in_order(questions.values(), found, frozenset())[:2] == ["p2.length_m", "p1.size_mm"]
    assert len(in_order(questions.values(), found, frozenset())) == len(questions)


@pytest.mark.parametrize("name", ["cottage", "guest-house", "village-hall"])
def test_each_number_that_a_figure_lacks_can_be_answered(name: str) -> None:
    """Every sample, all its numbers taken away: what a figure misses is a question of the table."""
    drawing = without_numbers(read(data_path("samples") / f"{name}.wetcircuit"))
    found = needs(analyse(drawing), all_figures(Plant(drawing)))
    assert any(need.is_figure for wanting in found.values() for need in wanting)
    questions = asked(drawing)
    assert not [key for key in found if key not in questions]
    assert not [key for key in found if questions[key].state is State.GIVEN]


def without_numbers(drawing: Drawing) -> Drawing:
    def kept(data: Mapping[str, Any]) -> dict[str, Any]:
        return {field: held for field, held in data.items() if isinstance(held, str | bool | list)}

    parts = {id: replace(part, data=kept(part.data)) for id, part in drawing.components.items()}
    pipes = {id: replace(pipe, data=kept(pipe.data)) for id, pipe in drawing.pipes.items()}
    return replace(drawing, design={}, components=parts, pipes=pipes)
