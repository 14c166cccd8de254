"""Drawing in, findings out: the one recipe that the window and the command line share."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.checks.answering import Answer, answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.fields import RULE_BOOKS
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding


@dataclass(frozen=True, slots=True)
class Analysis:
    """What the checks say of one drawing, tagged with it so that a stale answer can be dropped.

    Each check is in just one of `judged`, `not_applicable` and `not_judged`; `crashed` are those
    of `not_judged` that failed inside the program. `taken` lists the defaults verdicts rest on.
    """

    drawing: Drawing
    findings: tuple[Finding, ...]
    judged: tuple[str, ...]
    not_applicable: tuple[str, ...]
    not_judged: tuple[str, ...]
    crashed: tuple[str, ...]
    taken: tuple[str, ...]
    rule_book: str


def analyse(drawing: Drawing) -> Analysis:
    """Judge a drawing by every check. Never raises for a drawing that was read or made by edits."""
    case = Case(drawing)
    answers = {name: answer(check, case) for name, check in checks().items()}
    findings = [finding for each in answers.values() for finding in each.findings]
    return Analysis(
        drawing,
        tuple(sorted(findings, key=lambda finding: finding.order)),
        judged=_named(answers, "judged"),
        not_applicable=_named(answers, "not applicable"),
        not_judged=_named(answers, "not judged"),
        crashed=tuple(name for name, each in answers.items() if each.crashed),
        taken=case.taken,
        rule_book=rule_book(drawing),
    )


def rule_book(drawing: Drawing) -> str:
    """The rule book the drawing names, else the first there is."""
    return str(drawing.design.get("rule_book") or RULE_BOOKS[0])


def _named(answers: dict[str, Answer], status: str) -> tuple[str, ...]:
    return tuple(name for name, each in answers.items() if each.status == status)
