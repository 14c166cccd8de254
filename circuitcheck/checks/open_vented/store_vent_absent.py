"""A vented store has no open vent.

Flags: A vented store whose hot side reaches no open vent by a way that water can take both ways. A
    vent on its cold feed is none: steam and air gather at the top.
Why: When the store's thermostat fails the water boils. Without a vent, steam can only push the hot
    water back down the cold feed into the cistern, or burst the store.
Remedy: Run a vent of at least 22 mm from the top of the store, rising all the way, to end over the
    cistern that feeds it, with nothing in it that can shut.
Source: WFR guidance to Schedule 2, G20.3; Approved Document G (England), G3; BS 6700 (from memory).
"""

from __future__ import annotations

from typing import cast

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import judge_absent
from circuitcheck.checks.venting import OpenStore, open_stores
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each vented store whose hot side reaches no vent."""
    return judge_absent(
        case,
        "store-vent-absent",
        open_stores(case),
        Role.VENTS,
        lambda water: cast(OpenStore, water).hot_vents,
        "{thing} has no open vent on its hot side: when it boils, steam has no way out.",
        "{thing} has no open vent that its hot side can always use: {device} lies beyond {blocker}.",
    )
