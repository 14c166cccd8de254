"""One checked file: its analysis or what is wrong with it, as the outputs need it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING, Any

from circuitcheck.analysis import Analysis, analyse
from circuitcheck.drawing.value import Acceptance
from circuitcheck.finding import Finding, NameTuple
from circuitcheck.review.acceptances import Accepted, acceptance_of, standings
from circuitcheck.storage.reading import DrawingError, content, parse

if TYPE_CHECKING:
    from circuitcheck.review.holding import Held

MOST_LINES = 12
"""Changes named of a broken record in one answer; `compare` names all."""


@dataclass(frozen=True, slots=True)
class Told:
    """A finding, whether it is accepted today and why, and its cures where they were asked for."""

    finding: Finding
    accepted: bool
    reason: str = ""
    cures: tuple[str, ...] | None = None
    acceptance: Acceptance | None = None


@dataclass(frozen=True, slots=True)
class Checked:
    """A file that was checked. `error` holds what is wrong with it; then there is no analysis."""

    file: str
    title: str
    error: tuple[str, ...]
    told: tuple[Told, ...]
    judged: tuple[str, ...] = ()
    not_applicable: tuple[str, ...] = ()
    not_judged: tuple[str, ...] = ()
    crashed: tuple[str, ...] = ()
    taken: NameTuple = ()
    rule_book: str | None = None
    why_not_judged: Mapping[str, str] = field(default_factory=dict)
    acceptances: tuple[Accepted, ...] = ()
    records: tuple[Held, ...] = ()

    def as_object(self) -> dict[str, Any]:
        """The file as JSON shows it."""
        told: dict[str, Any] = {
            "file": self.file,
            "title": self.title,
            "error": list(self.error) or None,
            "rule_book": self.rule_book,
            "taken": list(self.taken),
            "judged": list(self.judged),
            "not_applicable": list(self.not_applicable),
            "not_judged": list(self.not_judged),
            "why_not_judged": dict(self.why_not_judged),
            "findings": [_finding_object(told) for told in self.told],
        }
        if self.acceptances:
            told["acceptances"] = [_acceptance_object(each) for each in self.acceptances]
        if self.records:
            told["reviews"] = [record_object(each) for each in self.records]
        return told


def check_file(path: Path, today: date, *, with_cures: bool = False) -> Checked:
    """Read and judge one file, and look for cures if asked. Never raises for what the file holds."""
    try:
        data = content(path)
    except OSError as error:
        return Checked(str(path), "", (f"cannot be read: {error.strerror or error}",), ())
    return check_content(data, str(path), today, with_cures=with_cures)


def check_content(data: bytes, file: str, today: date, *, with_cures: bool = False) -> Checked:
    """`check_file` for what was read of the file of that name."""
    try:
        drawing = parse(data, file)
    except DrawingError as error:
        return Checked(file, "", tuple(fault.message for fault in error.faults), ())
    return told_of(file, analyse(drawing), today, with_cures=with_cures)


def told_of(file: str, analysis: Analysis, today: date, *, with_cures: bool = False) -> Checked:
    """An analysis as the outputs need it."""
    return Checked(
        file,
        analysis.drawing.title,
        (),
        tuple(_told(analysis, finding, today, with_cures=with_cures) for finding in analysis.findings),
        analysis.judged,
        analysis.not_applicable,
        analysis.not_judged,
        analysis.crashed,
        analysis.taken,
        analysis.rule_book,
        analysis.why_not_judged,
        standings(analysis.drawing, analysis.findings, today),
        _records(analysis),
    )


def _records(analysis: Analysis) -> tuple[Held, ...]:
    if not analysis.drawing.reviews:
        return ()
    from circuitcheck.review.holding import held

    return held(analysis.drawing, analysis)


def _told(analysis: Analysis, finding: Finding, today: date, *, with_cures: bool) -> Told:
    acceptance = acceptance_of(finding, analysis.drawing, today)
    found = None
    if with_cures:
        from circuitcheck.cures import cures

        found = tuple(cure.message for cure in cures(analysis, finding))
    reason = acceptance.reason if acceptance else ""
    return Told(finding, acceptance is not None, reason, found, acceptance)


def _finding_object(told: Told) -> dict[str, Any]:
    finding = told.finding
    witness = finding.witness
    found: dict[str, Any] = {
        "check": finding.check,
        "grade": finding.grade.value,
        "message": finding.message,
        "components": list(finding.components),
        "pipes": list(finding.pipes),
        "witness": witness and {"shut": list(witness.shut), "alone": list(witness.alone)},
        "numbers": {name: float(f"{value:.4g}") for name, value in finding.numbers.items()},
        "missing": list(finding.missing),
        "accepted": told.accepted,
    }
    if finding.would_be is not None:
        found["would_be"] = finding.would_be.value
    if told.cures is not None:
        found["cures"] = list(told.cures)
    if told.acceptance is not None:
        accepted = told.acceptance
        names = ("reason", "author", "date", "until")
        found["acceptance"] = {name: getattr(accepted, name) for name in names}
    return found


def _acceptance_object(each: Accepted) -> dict[str, Any]:
    accepted = each.acceptance
    names = ("check", "reason", "author", "date", "until")
    told = {name: getattr(accepted, name) for name in names}
    return {**told, "on": list(accepted.on), "standing": each.standing.value}


def record_object(each: Held) -> dict[str, Any]:
    """A review record as JSON shows it: what it says, how it stands, and what changed since."""
    from circuitcheck.review.words import held_lines

    review = each.review
    names = ("author", "role", "date", "decision", "remarks", "program", "rule_book")
    seals = ("meaning", "layout", "findings", "previous")
    return {
        **{name: getattr(review, name) for name in names},
        "state": each.state,
        **{name: getattr(each, name).value for name in seals},
        "told": list(held_lines(each, MOST_LINES)),
    }
