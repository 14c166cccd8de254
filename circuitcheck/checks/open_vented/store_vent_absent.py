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

from collections.abc import Iterator
from typing import Any, cast

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import judge_absent
from circuitcheck.checks.venting import OpenStore, cisterns_feeding, open_stores
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Says
from circuitcheck.parts.kind import Role

VENT_PIPE: dict[str, Any] = {"size_mm": 22, "material": "copper"}


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


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A vent of its own from the top of the store, over a cistern that feeds it."""
    store = next(each for each in open_stores(case) if each.heated.part == finding.components[0])
    for cistern in cisterns_feeding(case, case.circuit.node(*store.hot)):
        work = Fitting(case.drawing, case.lines)
        joined = store.hot in case.drawing.joined
        on = Joint(work.tee(store.hot), "branch") if joined else store.hot
        work.hang("open_vent", "connection", on, data={"over": cistern.part}, pipe_data=VENT_PIPE)
        says = Says(
            "Run an open vent in 22 mm from the top of {store} up over {cistern}.",
            {"store": case.drawing.name(store.heated.part), "cistern": case.drawing.name(cistern.part)},
        )
        yield Proposal(says, work.drawing)
