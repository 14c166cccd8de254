"""Scores an answer to an exercise: what was found, for the right reason or another, and what was accused wrongly."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from enum import StrEnum

from circuitcheck.checks.catalogue import lesson
from circuitcheck.checks.check import Lesson
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding
from circuitcheck.lessons.fault import Planted, places
from circuitcheck.lessons.generator import Exercise

WHOLE = ""
"""The place of a mark that is on no part: something is missing from the drawing."""
OF_MISSING = ("-absent", "-without-", "no-")
"""What the name of a check has at its end, within or at its start that says that something is missing."""


class Outcome(StrEnum):
    """What came of one fault."""

    FOUND = "found"
    WRONG_REASON = "wrong reason"
    MISSED = "missed"


POINTS = {Outcome.FOUND: 1.0, Outcome.WRONG_REASON: 0.5, Outcome.MISSED: 0.0}
FALSE_COSTS = 0.5
"""So that marking everything wins nothing."""


@dataclass(frozen=True, slots=True)
class Mark:
    """What the apprentice says: a part, pipe or control (WHOLE: something is missing), and the check
    that names what is wrong there."""

    place: str
    reason: str


@dataclass(frozen=True, slots=True)
class Told:
    """One fault and what came of it: the marks that met it, the findings that speak of it, and its lesson."""

    planted: Planted
    outcome: Outcome
    marks: tuple[Mark, ...]
    findings: tuple[Finding, ...]

    @property
    def lesson(self) -> Lesson:
        """Why it matters, and what puts it right."""
        return lesson(self.planted.check)


@dataclass(frozen=True, slots=True)
class Score:
    """An answer scored: every fault in the order put in, and the marks that accuse what is sound."""

    told: tuple[Told, ...]
    false: tuple[Mark, ...]

    @property
    def points(self) -> float:
        """One for a fault found, half for the right place with another reason, half off for a false
        accusation; never below nothing."""
        won = sum(POINTS[each.outcome] for each in self.told)
        return max(0.0, won - FALSE_COSTS * len(self.false))

    @property
    def most(self) -> int:
        """The points to be won."""
        return len(self.told)

    def count(self, outcome: Outcome) -> int:
        """How many faults came out so."""
        return sum(each.outcome is outcome for each in self.told)


def score(exercise: Exercise, marks: Iterable[Mark]) -> Score:
    """Score an answer. A mark said twice counts once; several marks that meet one fault are no fault."""
    left = list(dict.fromkeys(marks))
    met: list[list[Mark]] = [[] for _ in exercise.planted]
    answers = [_Answer(exercise, each) for each in exercise.planted]
    for number, answer in enumerate(answers):
        met[number] = [mark for mark in left if answer.is_right(mark)]
        left = [mark for mark in left if mark not in met[number]]
    right = [bool(marks_met) for marks_met in met]
    for number, answer in enumerate(answers):
        if not right[number]:
            near = next((mark for mark in left if mark.place in answer.places), None)
            if near is not None:
                met[number].append(near)
                left.remove(near)
    told = tuple(
        Told(each, _outcome(right[number], met[number]), tuple(met[number]), answers[number].findings)
        for number, each in enumerate(exercise.planted)
    )
    return Score(told, tuple(left))


def _outcome(right: bool, met: Sequence[Mark]) -> Outcome:
    if right:
        return Outcome.FOUND
    return Outcome.WRONG_REASON if met else Outcome.MISSED


class _Answer:
    """What counts as a right answer to one fault."""

    def __init__(self, exercise: Exercise, planted: Planted) -> None:
        self.planted = planted
        told = [each for each in exercise.findings if planted.is_told_by(each)]
        self.findings = tuple(sorted(told, key=lambda each: each.check != planted.check))
        own = [each for each in told if each.check == planted.check]
        self.places = _with_neighbours(exercise, planted) | {id for each in own for id in places(each)}
        self._others = {
            each.check: {id for one in told if one.check == each.check for id in places(one)}
            for each in told
            if each.check != planted.check
        }

    def is_right(self, mark: Mark) -> bool:
        """Right part and right reason. What the fault brings with it is a right reason too, said of the
        fault's own place or of what that finding names."""
        if mark.reason == self.planted.check:
            return mark.place in self.places or (mark.place == WHOLE and _is_of_missing(mark.reason))
        return mark.reason in self._others and mark.place in self.places | self._others[mark.reason]


def _is_of_missing(check: str) -> bool:
    end, within, start = OF_MISSING
    return check.endswith(end) or within in check or check.startswith(start)


def _with_neighbours(exercise: Exercise, planted: Planted) -> set[str]:
    """The places of a fault; of a part on one or two pipes these too, of a pipe what it joins: who marks
    the pipe up to the valve means the valve."""
    drawing = exercise.drawing
    found = {*planted.parts, *planted.pipes}
    for part in planted.parts[:1]:
        if part in drawing.components and len(pipes := drawing.pipes_of(part)) <= 2:
            found.update(pipes)
    for pipe in planted.pipes:
        if pipe in drawing.pipes:
            found.update(end.part for end in drawing.pipes[pipe].ends if isinstance(end, Joint))
    return found
