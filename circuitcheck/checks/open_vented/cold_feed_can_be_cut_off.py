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

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off
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
