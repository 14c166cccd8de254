"""Heated water has no expansion vessel.

Flags: A sealed circuit in which the water that is heated reaches no expansion vessel by a way that
    water can go out and come back, and none is built in. A check valve, a bypass valve or a
    reducing valve on the only way does not count as one: it lets water through one way at most.
    Water behind a heat exchanger is a body of its own and needs its own vessel.
Why: Water swells as it is heated, by about 3 % from cold to 80 °C, and it hardly squeezes. With
    nowhere to swell, the pressure climbs until the safety valve lifts, every time it heats up; the
    water lost is made up with fresh, and sooner or later the valve sticks or leaks.
Remedy: Join an expansion vessel to the heat source's return, near the pump's inlet, with nothing
    between that can shut or that lets water through one way only.
Source: BS EN 12828, expansion vessels of sealed systems (clause from memory); BS 7074-1.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_absent
from circuitcheck.checks.sealed_cures import moved_to_safety, with_vessel
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each sealed body of heated water without a vessel."""
    return judge_absent(
        case,
        "vessel-absent",
        [water for water in heated_waters(case) if not water.is_open_vented],
        Role.HOLDS_EXPANSION,
        lambda water: water.reached(Role.HOLDS_EXPANSION),
        "{thing} has no expansion vessel on its water: nothing takes up the swell when it heats.",
        "{thing} has no expansion vessel it can always use: {device} lies beyond {blocker}, which "
        "does not let water out and back.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A vessel that is there moved to where its water always reaches it; else a new one."""
    yield from moved_to_safety(case, finding, Role.HOLDS_EXPANSION)
    yield from with_vessel(case, finding)
