"""Asks one check about a drawing made from words, and tells what it found in few words."""

from __future__ import annotations

import itertools
from dataclasses import dataclass

from circuitcheck.checks.answering import Answer, answer
from circuitcheck.checks.case import Case
from circuitcheck.checks.catalogue import checks
from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding


def way(*texts: str) -> str:
    """Pipes from part to part, one line a pipe: `hs.flow t1.a:b iv.a:b ev.connection` is three pipes."""
    lines = []
    for text in texts:
        stops = text.split()
        for start, finish in itertools.pairwise(stops):
            part, _, ports = start.partition(".")
            leaves = f"{part}.{ports.rpartition(':')[2]}"
            lines.append(f"{leaves} - {finish.partition(':')[0]}")
    return "\n".join(lines)


def asked(check: str, drawing: Drawing) -> Answer:
    """What a check answers."""
    return answer(checks()[check], Case(drawing))


def found(check: str, drawing: Drawing) -> tuple[Finding, ...]:
    """What a check finds."""
    return asked(check, drawing).findings


def only(check: str, drawing: Drawing) -> Finding:
    """The one finding of a check."""
    (finding,) = found(check, drawing)
    return finding


@dataclass(frozen=True)
class Told:
    """One finding in few words: what is judged, how heavy, what is shut and what does it alone."""

    subject: str
    grade: str
    shut: frozenset[str] = frozenset()
    alone: frozenset[str] = frozenset()


def told(check: str, drawing: Drawing) -> list[Told]:
    """A check's findings in few words."""
    return [
        Told(
            finding.components[0],
            finding.grade.value,
            frozenset(finding.witness.shut if finding.witness else ()),
            frozenset(finding.witness.alone if finding.witness else ()),
        )
        for finding in found(check, drawing)
    ]


def danger(subject: str, shut: str = "", alone: str = "") -> Told:
    """A danger, by what is shut and what does it alone, as ids with blanks between."""
    return Told(subject, "danger", frozenset(shut.split()), frozenset(alone.split()))


def fault(subject: str, shut: str = "", alone: str = "") -> Told:
    """A fault, by what is shut and what does it alone, as ids with blanks between."""
    return Told(subject, "fault", frozenset(shut.split()), frozenset(alone.split()))


def advice(subject: str, shut: str = "", alone: str = "") -> Told:
    """Advice, by what is shut and what does it alone, as ids with blanks between."""
    return Told(subject, "advice", frozenset(shut.split()), frozenset(alone.split()))
