"""What a fault of practice is: a slip that happens on site, put into a drawing by an edit."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.lessons.site import Site

HEAVY = (Grade.DANGER, Grade.FAULT)
"""What practice puts in: advice is no fault."""


@dataclass(frozen=True, slots=True)
class Planted:
    """One fault put into a drawing.

    `drawing` is the drawing after the edit. `says` tells in one sentence what is wrong there now, naming the
    parts. A right answer lies on `parts` or `pipes`, the first being what the edit touched. `brings` are the
    checks that cannot but speak too, of the same slip. `check` is filled in from the name of the file.
    """

    drawing: Drawing
    says: Says
    parts: tuple[str, ...]
    pipes: tuple[str, ...] = ()
    brings: frozenset[str] = frozenset()
    check: str = ""

    @property
    def checks(self) -> frozenset[str]:
        """The checks that may speak of it."""
        return self.brings | {self.check}

    def is_told_by(self, finding: Finding) -> bool:
        """Whether a finding speaks of this fault: its check, and at least one of its places."""
        if finding.check not in self.checks:
            return False
        return finding.check in self.brings or not {*self.parts, *self.pipes}.isdisjoint(places(finding))


def places(finding: Finding) -> tuple[str, ...]:
    """The parts and pipes that a finding names: what it judges, and the valves that prove it."""
    witness = finding.witness.parts if finding.witness is not None else ()
    return tuple(dict.fromkeys((*finding.components, *witness, *finding.pipes)))


Plant = Callable[[Site], Iterator[Planted]]


@dataclass(frozen=True, slots=True)
class Fault:
    """A kind of fault: the check that finds it, its topic, how such a slip happens on site, and how to put
    it in. `plant` yields it at one place after another, in random order; none where it cannot be."""

    check: str
    topic: str
    happens: str
    plant: Plant


def exactly(faults: Sequence[Planted], findings: Iterable[Finding]) -> bool:
    """Whether findings are just those of these faults: each fault is found for what it is, as danger or
    fault, and nothing else is said."""
    findings = tuple(findings)
    if not all(any(fault.is_told_by(finding) for fault in faults) for finding in findings):
        return False
    return all(
        any(
            finding.check == fault.check and finding.grade in HEAVY and fault.is_told_by(finding)
            for finding in findings
        )
        for fault in faults
    )
