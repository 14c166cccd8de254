"""Which findings somebody has accepted, with a reason, until a day."""

from __future__ import annotations

from datetime import date

from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.finding import Finding, Grade


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
