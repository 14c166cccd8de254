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

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off
from circuitcheck.checks.venting_cures import reached_always
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One danger for each open-vented body of heated water that valves can part from its vents."""
    return judge_cut_off(
        case,
        "open-vent-can-be-cut-off",
        [water for water in heated_waters(case) if water.is_open_vented],
        lambda water: water.vents,
        "{thing} can be cut off from {devices} by shutting {valves}.",
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valves taken out of the pipe, or the vent joined right at the heat source's flow."""
    judged = finding.components[0]
    at = [
        Joint(place.part, place.device.other)
        for place in case.circuit.devices(Role.HEATS)
        if place.part == judged
    ]
    for water in heated_waters(case):
        if water.heated.part == judged:
            yield from reached_always(case, finding, water.vents, *at)
