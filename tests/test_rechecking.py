"""Judging one drawing after another gives what judging each by itself gives."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from functools import partial
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from circuitcheck import rechecking
from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks.answering import Answer, answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Check
from circuitcheck.checks.depending import words_of_check
from circuitcheck.drawing.arranging import move, turn
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.difference import difference
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.filling_in import clear_field, set_design, set_field, set_sheet, set_title
from circuitcheck.drawing.pipes import set_corners
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.figures.plant import Plant
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.rechecking import Rechecker
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from circuitcheck.wanted import NoLongerWantedError, while_wanted

SAMPLES = [read(path) for path in sorted(data_path("samples").glob("*.wetcircuit"))]
Edit = Callable[[Drawing], Drawing]


def value_for(draw: st.DrawFn, field: Field) -> object:
    """A value that the field takes, or None."""
    if field.type is FieldType.NUMBER:
        return draw(st.sampled_from([None, 0.1, 0.5, 1, 3, 6, 15, 22, 48, 60, 75, 90, 200]))
    if field.type is FieldType.SWITCH:
        return draw(st.sampled_from([None, True, False]))
    if field.type is FieldType.CHOICE:
        return draw(st.sampled_from([None, *field.choices]))
    return None


@st.composite
def edited(draw: st.DrawFn, drawing: Drawing) -> Drawing:
    """The drawing after one edit of any sort."""
    part = draw(st.sampled_from(list(drawing.components)))
    pipe = draw(st.sampled_from(list(drawing.pipes)))
    what = draw(st.integers(0, 9))
    try:
        if what <= 3:
            field = draw(st.sampled_from(drawing.components[part].kind.fields))
            if draw(st.booleans()):
                return clear_field(drawing, part, field.name)
            return set_field(drawing, part, field.name, value_for(draw, field))
        if what == 4:
            field = draw(st.sampled_from(PIPE_FIELDS))
            return set_field(drawing, pipe, field.name, value_for(draw, field))
        if what == 5:
            field = draw(st.sampled_from(DESIGN_FIELDS))
            return set_design(drawing, field.name, value_for(draw, field))
        if what == 6:
            dx, dy = draw(st.tuples(st.integers(-3, 3), st.integers(-3, 3)))
            return draw(st.sampled_from([move(drawing, [part], dx, dy), turn(drawing, [part])]))
        if what == 7:
            label = draw(st.sampled_from(["", "Same", "same ", "Other"]))
            return draw(st.sampled_from([relabel(drawing, part, label), set_title(drawing, label)]))
        if what == 8:
            corners = draw(st.lists(st.tuples(st.integers(0, 40), st.integers(0, 40)), max_size=3))
            scale = draw(st.sampled_from([None, 0.5]))
            cornered = set_corners(drawing, pipe, [Point(*corner) for corner in corners])
            return draw(st.sampled_from([cornered, set_sheet(drawing, "metres_per_square", scale)]))
        return remove(drawing, [draw(st.sampled_from([part, pipe]))])
    except EditError:
        return drawing


def told(analysis: Analysis) -> tuple[object, ...]:
    return (
        [(each, each.message) for each in analysis.findings],
        analysis.judged,
        analysis.not_applicable,
        analysis.why_not_judged,
        analysis.crashed,
        analysis.rule_book,
    )


@settings(max_examples=60)
@given(st.data())
def test_after_any_edits_it_says_what_a_fresh_analysis_says(data: st.DataObject) -> None:
    drawing = data.draw(st.sampled_from(SAMPLES))
    checker = Rechecker()
    checker.analyse(drawing)
    for _ in range(data.draw(st.integers(1, 5))):
        drawing = data.draw(edited(drawing))
        again, fresh = checker.analyse(drawing), analyse(drawing)
        assert again.drawing is drawing
        assert told(again) == told(fresh)
        # A usual value that some check no longer comes to may still be listed, never one that is given.
        assert set(fresh.taken) <= set(again.taken)


def test_what_bears_on_nothing_is_told_from_what_does() -> None:
    drawing = SAMPLES[0]
    part, pipe = next(iter(drawing.components)), next(iter(drawing.pipes))
    assert difference(drawing, set_title(drawing, "Another")).is_nothing
    assert difference(drawing, move(drawing, [part], 1, 0)).moved
    assert difference(drawing, relabel(drawing, part, "Another")).renamed == {part}
    assert difference(drawing, set_field(drawing, pipe, "length_m", 7.5)).fields == {"length_m"}
    assert difference(drawing, remove(drawing, [part])).joins_anew
    assert difference(drawing, drawing).is_nothing


def test_a_move_asks_only_who_looks_at_where_things_lie(monkeypatch: pytest.MonkeyPatch) -> None:
    drawing = SAMPLES[0]
    checker = Rechecker()
    checker.analyse(drawing)
    asked: list[str] = []

    def noted(check: Check, case: Case) -> Answer:
        asked.append(check.name)
        return answer(check, case)

    monkeypatch.setattr(rechecking, "answer", noted)
    checker.analyse(move(drawing, [next(iter(drawing.components))], 1, 0))
    assert sorted(asked) == ["near-miss", "overlapping-parts", "unclear-crossing"]


READS = ((Plant, "value"), (Plant, "pipe_value"), (Plant, "design"), (Component, "value"))


def test_every_field_that_a_check_reads_is_among_its_words(monkeypatch: pytest.MonkeyPatch) -> None:
    """What is asked again after an edit is told from the code; here from what is read in earnest."""
    read_now: set[str] = set()

    def noted(method: Callable[..., Any]) -> Callable[..., Any]:
        def reading(self: object, *names: str) -> Any:
            read_now.add(names[-1])
            return method(self, *names)

        return reading

    for owner, name in READS:
        monkeypatch.setattr(owner, name, noted(getattr(owner, name)))
    unknown = {}
    for drawing in SAMPLES:
        for name, check in checks().items():
            read_now.clear()
            answer(check, Case(drawing))
            words = words_of_check(f"circuitcheck.checks.{check.topic}.{name.replace('-', '_')}")
            if not read_now <= words:
                unknown[name] = read_now - words
    assert not unknown


@pytest.mark.parametrize("questions", [0, 1, 30, 60])
def test_given_up_on_the_way_it_judges_on_as_before(questions: int) -> None:
    """What it began of a drawing that nobody wants any more is in no later answer."""
    checker = Rechecker()
    first = read(data_path("samples") / "cottage.wetcircuit")
    joined = remove(first, [next(iter(first.pipes))])
    moved = move(joined, list(joined.components)[:3], 2, 1)
    for drawing in (first, joined, moved, set_title(moved, "Another")):
        asked = iter([True] * questions)
        with suppress(NoLongerWantedError), while_wanted(partial(next, asked, False)):
            checker.analyse(drawing)
        if next(asked, None) is None:
            assert told(checker.analyse(drawing)) == told(analyse(drawing))
