"""Heat source can be cut off from its open vent.

Flags: Some positions of the valves leave the heated water of an open-vented circuit without its
    open vent. A secured valve is no excuse.
Why: The open vent is the safety valve of an open-vented circuit. A valve that can shut it off turns
    the heat source into a closed pot: when its thermostat fails, it bursts.
Remedy: Take the vent from the flow right at the heat source, before any valve or pump that can be
    shut, with nothing in it that can shut.
Source: BS 5449 and BS EN 12828 with its national annex (as taught in trade textbooks): no valve in
    the open vent.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off


def judge(case: Case) -> Verdict:
    """One danger for each open-vented body of heated water that valves can part from its vents."""
    return judge_cut_off(
        case,
        "open-vent-can-be-cut-off",
        [water for water in heated_waters(case) if water.is_open_vented],
        lambda water: water.vents,
        "{thing} can be cut off from {devices} by shutting {valves}.",
    )
