"""Store has no expansion vessel.

Flags: A mains-fed store without internal expansion whose water reaches no expansion vessel by a way
    water can go out and come back. A vessel on the main's side of the check valve does not count.
Why: The check valve shuts the water in. As it heats to 60 °C it swells by nearly 2 %, and there is nowhere
    to go: the expansion relief valve must open at every heating, wastes water, scales up, and one day
    no longer shuts, or no longer opens.
Remedy: Join an expansion vessel for drinking water to the cold feed between the check valve and the
    store, charged at the reducing valve's setting; or use a store with internal expansion.
Source: Approved Document G, guidance to G3, and WFR guidance G17 to G19 (paragraphs from memory):
    expansion is taken up by a vessel or an air gap inside the store.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import with_vessel
from circuitcheck.checks.store_water import StoreWater, judge_absent
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role

NAME = "store-vessel-absent"


def judge(case: Case) -> Verdict:
    """One danger for each store whose swelling water finds no vessel."""
    return judge_absent(
        case,
        NAME,
        Role.HOLDS_EXPANSION,
        lambda water: water.reached(Role.HOLDS_EXPANSION),
        "{thing} has no expansion vessel on its water: nothing takes up the swell when it heats.",
        "{thing} has no expansion vessel it can always use: {device} lies beyond {blocker}, which "
        "does not let water out and back.",
        lambda water: _internal(case, water),
    )


def _internal(case: Case, water: StoreWater) -> tuple[bool, tuple[str, ...]]:
    internal = case.value(water.store, "internal_expansion")
    return internal is True, (f"{water.store}.internal_expansion",) if internal is None else ()


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The vessel that cannot serve moved to the store; else one of a size that will do."""
    yield from with_vessel(case, finding.components[0], (*finding.components, "", "")[2])
