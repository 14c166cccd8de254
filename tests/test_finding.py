"""Findings: their grades, sentences and order."""

from __future__ import annotations

import dataclasses
import random

import pytest

from circuitcheck.finding import Finding, Grade, Says, Witness


def finding(grade: Grade, check: str = "a-check", *components: str, pipes: tuple[str, ...] = ()) -> Finding:
    would_be = Grade.FAULT if grade is Grade.UNANSWERED else None
    return Finding(check, grade, Says("It is so."), components, pipes, would_be=would_be)


def test_grades_from_heaviest_on() -> None:
    assert [grade.value for grade in sorted(Grade, key=lambda grade: grade.rank)] == [
        "danger", "fault", "advice", "unanswered",
    ]  # fmt: skip


def test_a_sentence_is_its_template_with_its_values() -> None:
    assert str(Says("{thing} is {length} m away.", {"thing": "The tundish", "length": 0.61})) == (
        "The tundish is 0.61 m away."
    )


def test_values_are_never_read_as_a_template_or_markup() -> None:
    assert str(Says("{thing} leaks.", {"thing": "<b>{other}</b> %s {0}"})) == "<b>{other}</b> %s {0} leaks."


def test_a_value_that_is_missing_is_seen() -> None:
    with pytest.raises(KeyError):
        str(Says("{thing} leaks."))


def test_order_by_grade_then_check_then_first_part() -> None:
    ordered = [
        finding(Grade.DANGER, "b-check", "x"),
        finding(Grade.FAULT, "a-check", "a"),
        finding(Grade.FAULT, "a-check", "b", "a"),
        finding(Grade.FAULT, "a-check", "b", "c"),
        finding(Grade.FAULT, "b-check", "a", pipes=("p1",)),
        finding(Grade.FAULT, "b-check", "a", pipes=("p2",)),
        finding(Grade.ADVICE),
        finding(Grade.UNANSWERED, "a-check", "a"),
    ]
    for seed in range(20):
        mixed = ordered[:]
        random.Random(seed).shuffle(mixed)
        assert sorted(mixed, key=lambda each: each.order) == ordered


@pytest.mark.parametrize("grade", [Grade.DANGER, Grade.FAULT, Grade.ADVICE])
def test_only_the_unanswered_say_what_they_would_be(grade: Grade) -> None:
    with pytest.raises(ValueError, match="unanswered"):
        Finding("a-check", grade, Says("It is so."), would_be=Grade.DANGER)
    with pytest.raises(ValueError, match="unanswered"):
        Finding("a-check", Grade.UNANSWERED, Says("It is so."))


def test_findings_and_witnesses_cannot_be_changed() -> None:
    with pytest.raises(dataclasses.FrozenInstanceError):
        finding(Grade.FAULT).check = "other"  # type: ignore[misc]
    with pytest.raises(dataclasses.FrozenInstanceError):
        Witness(("iv",)).shut = ()  # type: ignore[misc]
