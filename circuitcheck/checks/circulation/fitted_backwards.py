"""Part fitted the wrong way round.

Flags: A pump, check valve, bypass valve, blending valve or pressure reducing valve that no loop takes in
    the direction of its arrow, though one would if it were turned round. What gives the direction is
    the heat source, the main on its way to the taps, and the secondary return of a store; behind a
    separator, that hot water leaves it by the load's flow and comes back by the load's return. A part
    that could rightly face either way is left alone.
Why: The arrow on the body is easy to miss in a dark cupboard. A check valve the wrong way round shuts
    the pipe for good; a bypass the wrong way round never opens; a pump drives against the stream.
Remedy: Turn the part round, so that its arrow points the way the water goes.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.arrows import is_backwards, with_arrows
from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.circulation_cures import turned_round
from circuitcheck.checks.wording import upper
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.finding import Finding, Grade, Says

NAME = "fitted-backwards"

BACKWARDS = "{thing} is fitted the wrong way round: water can go through it only against its arrow."


def judge(case: Case) -> Verdict:
    """One finding for each part that stands against the only way water can go."""
    findings, sound = [], 0
    for place, sort in with_arrows(case):
        try:
            wrong = is_backwards(case, place, sort)
        except TooLargeError:
            findings.append(too_large(case, NAME, place.part, Grade.FAULT))
            continue
        if wrong:
            says = Says(BACKWARDS, {"thing": upper(case.drawing.name(place.part))})
            findings.append(Finding(NAME, Grade.FAULT, says, (place.part,)))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The part turned round."""
    yield turned_round(case, finding.components[0])
