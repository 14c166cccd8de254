"""Cures: what would put a finding right, tried by a fresh analysis and kept only if sound."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.checks.check import Proposal
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.routing import Routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says

MOST_CURES = 3
MOST_TRIED = 12
"""Each proposal costs an analysis of the whole drawing."""


Burden = tuple[int, ...]
"""How many findings are new, by grade, heaviest first."""


@dataclass(frozen=True, slots=True)
class Cure:
    """One edit that removes a finding and raises nothing new of its grade or a higher one."""

    says: Says
    drawing: Drawing

    @property
    def message(self) -> str:
        """What the edit does, in one English sentence."""
        return self.says.told


def cures(analysis: Analysis, finding: Finding, lines: Routes | None = None) -> tuple[Cure, ...]:
    """The safe cures of a finding of that analysis, at most three; none where none is safe.

    Those that bring least new to see to come first, and of these what the check proposed first. `lines`
    are the pipes' lines where they are known already. Each cure's drawing is one edit away from the
    analysed one.
    """
    if finding.grade is Grade.UNANSWERED:
        return ()
    case = Case(analysis.drawing)
    if lines is not None and lines.drawing is analysis.drawing:
        case.__dict__["lines"] = lines
    found: list[tuple[Burden, Cure]] = []
    for proposal in _proposals(case, finding):
        burden = _burden(analysis, finding, proposal)
        if burden is not None:
            found.append((burden, Cure(proposal.says, proposal.drawing)))
    found.sort(key=lambda each: each[0])
    return tuple(cure for _, cure in found[:MOST_CURES])


def _proposals(case: Case, finding: Finding) -> list[Proposal]:
    """What the check proposes; what went before a step that cannot be made still stands."""
    tried: list[Proposal] = []
    try:
        for proposal in checks()[finding.check].propose(case, finding):
            tried.append(proposal)
            if len(tried) == MOST_TRIED:
                break
    except EditError:
        pass
    return tried


def _burden(before: Analysis, finding: Finding, proposal: Proposal) -> Burden | None:
    """What a proposal brings that was not there, by grade; None where it is not safe."""
    if proposal.drawing is before.drawing:
        return None
    after = analyse(proposal.drawing)
    if any(each.check == finding.check and subject(each) == subject(finding) for each in after.findings):
        return None
    if set(after.crashed) - set(before.crashed):
        return None
    weighed = _heaviest(before.findings)
    new = [0] * len(Grade)
    for each in after.findings:
        new[each.grade.rank] += weighed.get((each.check, subject(each)), len(Grade)) > each.grade.rank
    return None if any(new[: finding.grade.rank + 1]) else tuple(new)


def subject(finding: Finding) -> str:
    """The thing that a finding judges; empty for the drawing as a whole."""
    return next(iter((*finding.components, *finding.pipes)), "")


def _heaviest(findings: Iterable[Finding]) -> dict[tuple[str, str], int]:
    """The heaviest grade's rank by check and thing judged."""
    found: dict[tuple[str, str], int] = {}
    for each in findings:
        key = (each.check, subject(each))
        found[key] = min(found.get(key, each.grade.rank), each.grade.rank)
    return found
