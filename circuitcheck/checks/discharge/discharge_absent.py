"""A relief or safety valve discharges nowhere.

Flags: The outlet of a safety valve or of a store's relief valve, built-in ones too, from which no
    pipe leads on to a discharge end.
Why: When the valve lifts, scalding water or steam comes out with nothing to carry it away: on
    whoever stands there, on the electrics, through the ceiling below. People then plug the drip,
    and a plugged relief valve is a bomb.
Remedy: Run a discharge pipe from the outlet, falling all the way, through a tundish where it serves a
    store, to a place where hot water can come out at any time without harm.
Source: Approved Document G (England) 3.50 to 3.63; WFR guidance G19.3 and G19.4; BS EN 12828 for the
    heating's safety valve (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharge_cures import discharge_of, with_end
from circuitcheck.checks.wording import named, upper
from circuitcheck.finding import Finding, Grade, Says


def judge(case: Case) -> Verdict:
    """One danger for each valve whose outlet reaches no discharge end."""
    findings, sound = [], 0
    for discharge in case.discharges:
        if discharge.runs:
            sound += 1
            continue
        valve = discharge.valve.part
        stops = [id for id in discharge.stops_at if id != valve]
        if stops:
            template = "{thing} discharges nowhere: its pipe stops at {stops}."
        else:
            template = "{thing} discharges nowhere: no pipe leads away from its outlet."
        drawing = case.drawing
        findings.append(
            Finding(
                "discharge-absent",
                Grade.DANGER,
                Says(template, {"thing": upper(drawing.name(valve)), "stops": named(drawing, stops)}),
                components=(valve, *(id for id in stops if id in drawing.components)),
                pipes=tuple(id for id in stops if id in drawing.pipes),
            )
        )
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To lead the outlet to a discharge end, through a tundish where it serves a store."""
    drawing = with_end(case, discharge_of(case, finding))
    if drawing is not None:
        yield Proposal(
            Says(
                "Lead the discharge of {thing} to an end of its own; where it ends must be told then.",
                {"thing": case.drawing.name(finding.components[0])},
            ),
            drawing,
        )
