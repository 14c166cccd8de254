"""Filling link without a double check valve.

Flags: A filling link that is stated to have no double check valve, on water that is not open-vented.
Why: While the link is on, a drop of pressure in the main (a burst in the street, a fire engine) pulls
    heating water back into the pipes people drink from. Heating water of a dwelling is fluid category
    3; a single check valve is not enough for it, since one bit of grit holds it open.
Remedy: Fit a double check valve on the supply side of the link, between it and the main.
Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2:
    a double check valve on the supply side, accepted for fluid category 3.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import judge_switch
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "filling-link-without-double-check"


def judge(case: Case) -> Verdict:
    """One danger for each link without a double check valve."""
    return judge_switch(
        case,
        NAME,
        "double_check",
        Grade.DANGER,
        wrong=False,
        template="{link} has no double check valve: heating water can be drawn back into the main.",
        unknown="Whether {link} has a double check valve is not known.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Fit a link with a double check valve."""
    link = finding.components[0]
    says = Says("Fit a double check valve in {link}, on its supply side.", {"link": case.drawing.name(link)})
    yield Proposal(says, set_field(case.drawing, link, "double_check", True))
