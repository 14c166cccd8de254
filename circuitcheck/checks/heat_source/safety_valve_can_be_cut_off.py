"""Heat source can be cut off from its safety valve.

Flags: Some positions of the valves leave the heated water of a sealed circuit with no safety valve.
    A secured valve is no excuse here: no valve of any kind may stand between them.
Why: If anything can be shut between the heat source and its safety valve, then one wrong turn of a
    valve leaves a fired heat source with no limit to its pressure. That can burst it.
Remedy: Move the safety valve to the flow right at the heat source, before any valve, or take the
    valve out of the way to it.
Source: BS EN 12828, 4.6: no shut-off between the heat generator and its safety valve.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off
from circuitcheck.checks.sealed_cures import moved_to_flow
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each sealed body of heated water that valves can part from its safety valves."""
    return judge_cut_off(
        case,
        "safety-valve-can-be-cut-off",
        [water for water in heated_waters(case) if not water.is_open_vented],
        lambda water: water.reached(Role.RELIEVES_HEATING),
        "{thing} can be cut off from {devices} by shutting {valves}.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A safety valve moved to the flow, right at the heat source."""
    return moved_to_flow(case, finding, Role.RELIEVES_HEATING)
