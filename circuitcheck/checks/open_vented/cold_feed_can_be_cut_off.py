"""Heat source can be cut off from its cold feed.

Flags: Some positions of the valves leave the heated water of an open-vented circuit without its
    cold feed. A secured valve is no excuse. A valve in a store's own cold feed is usual and is not
    meant here.
Why: With the feed shut, water lost through the vent is not made up; the heat source runs short of
    water, boils, and can crack when cold water meets it again.
Remedy: Run the cold feed from the cistern to the return without any valve in it, joined where
    nothing can shut between it and the heat source.
Source: BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): no valve in
    the cold feed.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off
from circuitcheck.checks.venting_cures import reached_always
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each open-vented body of heated water that valves can part from its feeds."""
    return judge_cut_off(
        case,
        "cold-feed-can-be-cut-off",
        [water for water in heated_waters(case) if water.is_open_vented],
        lambda water: water.reached(Role.FEEDS),
        "{thing} can be cut off from its cold feed, {devices}, by shutting {valves}.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valves taken out of the pipe, or the feed joined right at the heat source's return."""
    judged = finding.components[0]
    at = [
        Joint(place.part, place.device.port)
        for place in case.circuit.devices(Role.HEATS)
        if place.part == judged
    ]
    for water in heated_waters(case):
        if water.heated.part == judged:
            yield from reached_always(case, finding, water.reached(Role.FEEDS), *at)
