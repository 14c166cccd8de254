"""Open-vented heating has no cold feed.

Flags: A circuit with an open vent whose heated water is fed from no cistern by a way that water can
    take both ways.
Why: Water lost through the vent or by evaporation must be made up by itself, and swelling water
    must be able to push back into the cistern. Without a feed the circuit slowly empties until the
    heat source heats air or steam; through a check valve it fills, but cannot swell back.
Remedy: Run a cold feed of at least 15 mm from the feed cistern to the return near the heat source,
    on the suction side of the pump, with no valve in it.
Source: BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks).
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_absent
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each open-vented body of heated water without a cold feed."""
    return judge_absent(
        case,
        "cold-feed-absent",
        [water for water in heated_waters(case) if water.is_open_vented],
        Role.FEEDS,
        lambda water: water.reached(Role.FEEDS),
        "{thing} has an open vent but no cold feed: water that is lost is not made up.",
        "{thing} has an open vent but no cold feed it can always use: {device} lies beyond {blocker}.",
    )
