"""Which findings somebody has accepted, with a reason, until a day: accept one, take it back, what holds."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from datetime import date
from enum import StrEnum

from circuitcheck.drawing.changing import EditError, changed
from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.finding import Finding, Grade
from circuitcheck.told import a_word


def acceptance_of(finding: Finding, drawing: Drawing, today: date) -> Acceptance | None:
    """The acceptance that holds for a finding on that day; None where none does.

    It must name the check and the same set of ids, and holds up to and on its `until`.
    """
    ids = {*finding.components, *finding.pipes}
    for acceptance in drawing.acceptances:
        holds = acceptance.until is None or today <= date.fromisoformat(acceptance.until)
        if holds and acceptance.check == finding.check and set(acceptance.on) == ids:
            return acceptance
    return None


def weight(finding: Finding, *, accepted: bool, strict: bool) -> Grade | None:
    """The grade a finding counts at; None where it does not count.

    An accepted fault or advice does not count, an accepted danger does. An unanswered finding
    counts only under `strict`, at the grade it would have.
    """
    grade = finding.grade
    if grade is Grade.UNANSWERED:
        if not strict or finding.would_be is None:
            return None
        grade = finding.would_be
    return None if accepted and grade is not Grade.DANGER else grade


class Standing(StrEnum):
    """What has become of an acceptance on a day."""

    HOLDS = "holds"
    RUN_OUT = "run out"
    NO_FINDING = "no such finding"


@dataclass(frozen=True, slots=True)
class Accepted:
    """An acceptance of the drawing and how it stands; `finding` is what it accepts, where there is such."""

    acceptance: Acceptance
    standing: Standing
    finding: Finding | None = None


def accept(
    drawing: Drawing, finding: Finding, reason: str, author: str, day: date, until: date | None = None
) -> Drawing:
    """Accept a finding: its check and just its ids, so that a finding on other parts is not accepted too.

    One that stands for the same finding gives way. Raises EditError without a reason or a name, or
    where `until` lies before `day`.
    """
    if not reason.strip():
        raise EditError(a_word("A finding is accepted with a reason."))
    if not author.strip():
        raise EditError(a_word("A finding is accepted by somebody: give a name."))
    if until is not None and until < day:
        raise EditError(a_word("An acceptance that has run out already accepts nothing."))
    on = (*finding.components, *finding.pipes)
    last = until.isoformat() if until else None
    made = Acceptance(finding.check, on, reason.strip(), author.strip(), day.isoformat(), last)
    kept = tuple(each for each in drawing.acceptances if not _is_of(each, finding))
    return changed(drawing, acceptances=(*kept, made))


def take_back(drawing: Drawing, acceptance: Acceptance) -> Drawing:
    """The drawing without that acceptance. Raises EditError where it has none such."""
    kept = tuple(each for each in drawing.acceptances if each is not acceptance)
    if len(kept) == len(drawing.acceptances):
        raise EditError(a_word("This acceptance is no longer in the drawing."))
    return changed(drawing, acceptances=kept)


def standings(drawing: Drawing, findings: Iterable[Finding], today: date) -> tuple[Accepted, ...]:
    """Every acceptance of the drawing in the file's order, and how it stands that day."""
    by_key = {
        (finding.check, frozenset((*finding.components, *finding.pipes))): finding for finding in findings
    }
    return tuple(
        _standing(each, by_key.get((each.check, frozenset(each.on))), today) for each in drawing.acceptances
    )


def _standing(acceptance: Acceptance, finding: Finding | None, today: date) -> Accepted:
    if finding is None:
        return Accepted(acceptance, Standing.NO_FINDING)
    if acceptance.until is not None and today > date.fromisoformat(acceptance.until):
        return Accepted(acceptance, Standing.RUN_OUT, finding)
    return Accepted(acceptance, Standing.HOLDS, finding)


def _is_of(acceptance: Acceptance, finding: Finding) -> bool:
    return acceptance.check == finding.check and set(acceptance.on) == {*finding.components, *finding.pipes}
