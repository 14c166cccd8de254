"""Temperature relief valve does not stand on the store's relief port.

Flags: A temperature relief valve on the water of a mains-fed store that is joined to the cold feed, the
    hot pipe or the secondary return instead of the store's relief port. Stores of 15 litres or less are
    outside this rule.
Why: The valve opens when the water it touches is too hot. On cold pipe it never feels the heat; on the
    hot pipe it feels it only while somebody draws. It must sit in the store's hottest water.
Remedy: Move the valve to the store's relief port, with nothing between.
Source: Approved Document G, 3.18 and following (paragraph from memory): the valve is on the store
    itself, in its hottest water; BS EN 1490.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import moved_to_relief_port
from circuitcheck.checks.store_water import above_exempt, home_of, unanswered
from circuitcheck.checks.wording import upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "relief-misplaced"

TEMPLATE = "{thing} does not stand on the relief port of {store}, where it would feel the heat."


def judge(case: Case) -> Verdict:
    """One danger for each temperature relief valve of a store that is not on its relief port."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.RELIEVES_BY_TEMPERATURE):
        home = home_of(case, place)
        if not home.store:
            continue
        if home.on_relief_port:
            sound += 1
            continue
        above = above_exempt(case, home.store)
        parts = (place.part, home.store)
        store = case.drawing.name(home.store)
        if above is None:
            template = f"{TEMPLATE} Whether it must rests on what is not known: {{missing}}."
            missing = (f"{home.store}.volume_l",)
            findings.append(unanswered(case, NAME, template, parts, missing, Grade.DANGER, store=store))
        elif above:
            says = Says(TEMPLATE, {"thing": upper(case.drawing.name(place.part)), "store": store})
            findings.append(Finding(NAME, Grade.DANGER, says, parts))
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valve moved to the store's relief port."""
    yield from moved_to_relief_port(case, *finding.components[:2])
