"""A vented store can be cut off from its open vent.

Flags: Some positions of the valves leave the hot side of a vented store without its open vent. A
    secured valve is no excuse.
Why: The open vent is the safety valve of a vented store. With it shut, a store whose thermostat
    fails becomes a closed pot.
Remedy: Take the vent from the top of the store, before any valve, with nothing in it that can shut.
Source: WFR guidance to Schedule 2, G20.3; Approved Document G (England), G3: no valve in the vent.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import cast

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import judge_cut_off
from circuitcheck.checks.venting import OpenStore, open_stores
from circuitcheck.checks.venting_cures import reached_always
from circuitcheck.finding import Finding


def judge(case: Case) -> Verdict:
    """One danger for each vented store that valves can part from its vents."""
    return judge_cut_off(
        case,
        "store-vent-can-be-cut-off",
        open_stores(case),
        lambda water: cast(OpenStore, water).hot_vents,
        "{thing} can be cut off from {devices} by shutting {valves}.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valves taken out of the pipe, or the vent joined right at the store."""
    for store in open_stores(case):
        if store.heated.part == finding.components[0]:
            yield from reached_always(case, finding, store.hot_vents, store.hot)
