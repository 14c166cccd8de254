"""Heated water has no safety valve.

Flags: A sealed circuit in which the water that is heated reaches no safety valve by a way pressure
    can always take with the valves open, and none is built in. Water behind a heat exchanger is a
    body of its own and needs its own safety valve.
Why: The safety valve is the last thing between a fault (a failed vessel, a stuck thermostat, a
    filling link left open) and a burst. Without one, pressure climbs until the weakest part gives.
Remedy: Fit a safety valve on the flow, close by the heat source, set no higher than the lowest
    pressure that anything on this water is made for, with its discharge led to a safe place.
Source: BS EN 12828, 4.6.2 (from memory), each heat generator of a sealed system has a safety valve;
    a set pressure of 3 bar is usual in dwellings.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_absent
from circuitcheck.checks.sealed_cures import moved_to_flow, with_safety_valve
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each sealed body of heated water without a safety valve."""
    return judge_absent(
        case,
        "safety-valve-absent",
        [water for water in heated_waters(case) if not water.is_open_vented],
        Role.RELIEVES_HEATING,
        lambda water: water.reached(Role.RELIEVES_HEATING),
        "{thing} has no safety valve on its water: nothing limits the pressure.",
        "{thing} has no safety valve that its pressure always reaches: {device} lies beyond "
        "{blocker}, which does not let pressure through both ways.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A safety valve that is there moved to the flow; else a new one."""
    yield from moved_to_flow(case, finding, Role.RELIEVES_HEATING)
    yield from with_safety_valve(case, finding)
