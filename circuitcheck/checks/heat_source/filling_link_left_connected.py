"""Filling link left connected.

Flags: A filling link that is stated to stay connected after filling, on water that is not open-vented.
Why: Two valves are then all that parts heating water, with what is dissolved in it, from drinking
    water, and valves let by. A link that lets by also fills the circuit day and night: the pressure
    climbs until the safety valve weeps, and leaks stay hidden because the main makes up for them.
Remedy: Take the hose off after filling and cap its ends; where the circuit must top itself up, use an
    arrangement that the water supplier accepts for that fluid category.
Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2;
    disconnected after filling.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import judge_switch
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "filling-link-left-connected"


def judge(case: Case) -> Verdict:
    """One fault for each link left connected."""
    return judge_switch(
        case,
        NAME,
        "left_connected",
        Grade.FAULT,
        wrong=True,
        template="{link} is left connected: after filling it must be taken off.",
        unknown="Whether {link} is taken off after filling is not known.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Take the link off after filling."""
    link = finding.components[0]
    says = Says("Take {link} off after filling.", {"link": case.drawing.name(link)})
    yield Proposal(says, set_field(case.drawing, link, "left_connected", False))
