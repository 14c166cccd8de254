"""A store's relief valve discharges through no tundish.

Flags: A relief valve of a mains-fed store whose discharge reaches its end without passing a tundish.
    Stores of 15 litres or less are outside this rule, as is the heating's safety valve.
Why: The tundish shows that the valve is letting by, which otherwise nobody notices until the store
    fails; its air gap keeps foul water from being drawn back into the drinking water; and it lets
    the pipe below run free, so that the valve can pass all that it must.
Remedy: Cut a tundish into the discharge, in sight, lower than the valve and within 600 mm of it.
Source: Approved Document G (England) 3.54 and 3.55; WFR guidance G19.3.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharge_cures import discharge_of, with_tundish
from circuitcheck.checks.discharging import rules_apply, unanswered
from circuitcheck.checks.wording import upper
from circuitcheck.finding import Finding, Grade, Says


def judge(case: Case) -> Verdict:
    """One danger for each store's relief valve with a way to an end that has no tundish."""
    findings, sound = [], 0
    for discharge in case.discharges:
        applies, missing = rules_apply(case, discharge)
        if not applies or not discharge.runs:
            continue
        without = [run for run in discharge.runs if run.tundish is None]
        if not without:
            sound += 1
            continue
        valve = discharge.valve.part
        thing = upper(case.drawing.name(valve))
        if missing:
            template = "{thing} discharges through no tundish; whether it needs one rests on {missing}."
            findings.append(unanswered("tundish-absent", template, {"thing": thing}, discharge, missing))
            continue
        run = without[0]
        findings.append(
            Finding(
                "tundish-absent",
                Grade.DANGER,
                Says(
                    "{thing} discharges to {end} through no tundish.",
                    {"thing": thing, "end": case.drawing.name(run.end)},
                ),
                components=(valve, run.end),
                pipes=run.pipes,
            )
        )
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To cut a tundish in, close by the valve, and to run the pipe after it a size larger."""
    discharge = discharge_of(case, finding)
    run = next(each for each in discharge.runs if each.tundish is None)
    yield Proposal(
        Says(
            "Cut a tundish into the discharge of {thing}, close by the valve.",
            {"thing": case.drawing.name(discharge.valve.part)},
        ),
        with_tundish(case, discharge, run),
    )
