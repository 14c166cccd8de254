"""Drawing in, findings out: the one recipe that the window and the command line share."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from circuitcheck.checks.answering import Answer, answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.fields import RULE_BOOKS
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, NameTuple
from circuitcheck.garbage import no_collection
from circuitcheck.wanted import go_on


@dataclass(frozen=True, slots=True)
class Analysis:
    """What the checks say of one drawing, tagged with it so that a stale answer can be dropped.

    Each check is in just one of `judged`, `not_applicable` and `not_judged`; `crashed` are those
    of `not_judged` that failed inside the program. `why_not_judged` says of each of `not_judged` why.
    `taken` lists the defaults verdicts rest on.
    """

    drawing: Drawing
    findings: tuple[Finding, ...]
    judged: tuple[str, ...]
    not_applicable: tuple[str, ...]
    not_judged: tuple[str, ...]
    crashed: tuple[str, ...]
    taken: NameTuple
    rule_book: str
    why_not_judged: Mapping[str, str] = field(default_factory=dict)


def analyse(drawing: Drawing) -> Analysis:
    """Judge a drawing by every check. Never raises for a drawing that was read or made by edits."""
    # The case is gone before Python looks for garbage again.
    with no_collection(), Case(drawing) as case:
        return analysis_of(case, answers_of(case))


def answers_of(case: Case) -> dict[str, Answer]:
    """What every check answers, by its name."""
    with no_collection():
        answers = {}
        for name, check in checks().items():
            go_on()
            answers[name] = answer(check, case)
        return answers


def analysis_of(case: Case, answers: dict[str, Answer], taken: NameTuple | None = None) -> Analysis:
    """The answers put together; `taken` are all defaults taken, where some were by checks asked earlier."""
    findings = [finding for each in answers.values() for finding in each.findings]
    return Analysis(
        case.drawing,
        tuple(sorted(findings, key=lambda finding: finding.order)),
        judged=_named(answers, "judged"),
        not_applicable=_named(answers, "not applicable"),
        not_judged=_named(answers, "not judged"),
        crashed=tuple(name for name, each in answers.items() if each.crashed),
        taken=case.taken if taken is None else taken,
        rule_book=rule_book(case.drawing),
        why_not_judged={name: each.why for name, each in answers.items() if each.status == "not judged"},
    )


def rule_book(drawing: Drawing) -> str:
    """The rule book the drawing names, else the first there is."""
    return str(drawing.design.get("rule_book") or RULE_BOOKS[0])


def _named(answers: dict[str, Answer], status: str) -> tuple[str, ...]:
    return tuple(name for name, each in answers.items() if each.status == status)
