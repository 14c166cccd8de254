"""The tundish is out of sight.

Flags: A tundish of a store's relief valve that is said to be out of sight. Stores of 15 litres or
    less are outside this rule.
Why: A relief valve that lets by shows it at the tundish and nowhere else. In a loft or behind a panel
    nobody sees the drip, and the fault behind it (a burst vessel, a thermostat that sticks) goes on
    until the store itself is the next thing to give way.
Remedy: Put the tundish where the household passes it, in the same room as the store and away from
    anything electrical. Where the people who live there could not notice it, consider an electronic
    warning.
Source: Approved Document G (England) 3.54 and 3.55; WFR guidance G19.3; NHBC Standards 8.1.9.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharging import Shown, tundishes
from circuitcheck.checks.wording import named, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.told import a_word

NAME = "tundish-out-of-sight"


def judge(case: Case) -> Verdict:
    """One fault for each tundish of a store's relief valve that nobody sees."""
    findings, sound = [], 0
    for shown in tundishes(case):
        in_sight = case.value(shown.tundish, "in_sight")
        if in_sight:
            sound += 1
        else:
            findings.append(_finding(case, shown, unknown=in_sight is None))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, shown: Shown, *, unknown: bool) -> Finding:
    missing = (*((f"{shown.tundish}.in_sight",) if unknown else ()), *shown.applies_if)
    values = {
        "tundish": case.drawing.name(shown.tundish),
        "let": a_word("lets") if len(shown.valves) == 1 else a_word("let"),
        "valves": named(case.drawing, shown.valves),
        "missing": ", ".join(missing),
    }
    components = (shown.tundish, *shown.valves)
    if not missing:
        values["tundish"] = upper(values["tundish"])
        says = Says("{tundish} is out of sight: nobody sees when {valves} {let} water go.", values)
        return Finding(NAME, Grade.FAULT, says, components)
    says = Says("Whether {tundish} is where {valves} can be seen to let by is not known: {missing}.", values)
    return Finding(NAME, Grade.UNANSWERED, says, components, missing=missing, would_be=Grade.FAULT)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To put the tundish in sight: on the sheet that is one word, in the house it is a move."""
    tundish = finding.components[0]
    yield Proposal(
        Says("Put {tundish} in sight.", {"tundish": case.drawing.name(tundish)}),
        set_field(case.drawing, tundish, "in_sight", True),
    )
