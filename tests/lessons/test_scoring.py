"""Scores: the right part for the right reason, what is near enough, what is missed, what is accused wrongly."""

from __future__ import annotations

import pytest

from circuitcheck.lessons.generator import Exercise, exercise
from circuitcheck.lessons.scoring import WHOLE, Mark, Outcome, score

SEED = 5


@pytest.fixture(scope="module")
def valve() -> Exercise:
    """A valve before a vessel, and nothing else."""
    return exercise(SEED, kinds={"vessel-can-be-cut-off"}, arrangement="no-store")


@pytest.fixture(scope="module")
def two() -> Exercise:
    return exercise(
        SEED, kinds={"vessel-absent", "filling-link-left-connected"}, count=2, arrangement="no-store"
    )


def outcomes(made: Exercise, *marks: Mark) -> list[Outcome]:
    return [each.outcome for each in score(made, marks).told]


def test_right_part_and_right_reason(valve: Exercise) -> None:
    (fault,) = valve.planted
    for place in (*fault.parts, *fault.pipes):
        result = score(valve, [Mark(place, fault.check)])
        assert [each.outcome for each in result.told] == [Outcome.FOUND]
        assert (result.points, result.most, result.false) == (1, 1, ())


def test_what_the_finding_names_is_right_too(valve: Exercise) -> None:
    for finding in valve.findings:
        for place in finding.components:
            assert outcomes(valve, Mark(place, "vessel-can-be-cut-off")) == [Outcome.FOUND]


def test_right_part_and_wrong_reason_is_half(valve: Exercise) -> None:
    place = valve.planted[0].parts[0]
    result = score(valve, [Mark(place, "gauge-absent")])
    assert [each.outcome for each in result.told] == [Outcome.WRONG_REASON]
    assert result.points == 0.5 and result.false == ()


def test_nothing_marked_is_missed(valve: Exercise) -> None:
    result = score(valve, [])
    assert [each.outcome for each in result.told] == [Outcome.MISSED] and result.points == 0


def test_a_sound_part_is_accused_wrongly_whatever_the_reason(valve: Exercise) -> None:
    result = score(valve, [Mark("kitchen", "vessel-can-be-cut-off"), Mark("stop", "open-end")])
    assert len(result.false) == 2 and result.points == 0
    assert [each.outcome for each in result.told] == [Outcome.MISSED]


def test_marking_everything_wins_nothing(valve: Exercise) -> None:
    marks = [Mark(part, "vessel-can-be-cut-off") for part in valve.drawing.components]
    result = score(valve, marks)
    assert result.points == 0 and result.told[0].outcome is Outcome.FOUND


def test_marks_that_meet_the_same_fault_are_no_accusation(valve: Exercise) -> None:
    (fault,) = valve.planted
    result = score(valve, [Mark(place, fault.check) for place in fault.parts])
    assert result.points == 1 and result.false == () and len(result.told[0].marks) == len(fault.parts)


def test_said_twice_counts_once(valve: Exercise) -> None:
    wrong = Mark("kitchen", "open-end")
    assert len(score(valve, [wrong, wrong]).false) == 1


def test_what_is_missing_can_be_said_of_the_whole_drawing(two: Exercise) -> None:
    result = score(two, [Mark(WHOLE, "vessel-absent"), Mark(WHOLE, "filling-link-left-connected")])
    found = {each.planted.check: each.outcome for each in result.told}
    assert found == {"vessel-absent": Outcome.FOUND, "filling-link-left-connected": Outcome.MISSED}
    assert [mark.reason for mark in result.false] == ["filling-link-left-connected"]
    assert result.points == 0.5


def test_each_fault_is_explained(two: Exercise) -> None:
    for each in score(two, []).told:
        assert each.findings and each.findings[0].check == each.planted.check
        assert each.lesson.why and each.lesson.remedy and str(each.planted.says).endswith(".")


def test_what_a_fault_brings_is_a_right_reason() -> None:
    made = exercise(SEED, kinds={"no-way-round-when-zones-shut"}, arrangement="no-store")
    (fault,) = made.planted
    brought = [each for each in made.findings if each.check != fault.check]
    assert brought
    for finding in brought:
        assert outcomes(made, Mark(finding.components[0], finding.check)) == [Outcome.FOUND]
        assert outcomes(made, Mark("kitchen", finding.check)) == [Outcome.MISSED]


@pytest.mark.parametrize("seed", range(6))
def test_the_answer_itself_has_all_points(seed: int) -> None:
    made = exercise(seed, count=3)
    result = score(made, [Mark((*each.parts, *each.pipes)[0], each.check) for each in made.planted])
    assert result.points == result.most == 3 and result.false == ()
