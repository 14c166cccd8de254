"""Heat source can be cut off from its vessel.

Flags: Some positions of the valves leave the heated water of a sealed circuit with no expansion
    vessel, a built-in one counted. Every valve that can shut counts: by hand, by a motor, by a
    thermostatic head. A three-port valve never shuts both its legs. Where only secured valves
    (locked, sealed or capped) do it, it is advice.
Why: Heated water swells. Once the valves stand so that no vessel is left to take the swell, the
    pressure climbs within minutes until the safety valve lifts; if that sticks, something bursts.
    Nobody shuts such a valve on purpose: it is shut for a repair, and forgotten.
Remedy: Move the vessel's tee to a stretch between it and the heat source that nothing can shut, or
    take the valve out of the way to it. A valve kept for servicing the vessel must be secured open.
Source: BS EN 12828, 4.6.3 (from memory): a vessel may be isolated only by a valve secured against
    unintended shutting; BS 7074-1: no valve in the vessel's connecting pipe.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import heated_waters, judge_cut_off
from circuitcheck.checks.sealed_cures import moved_to_safety, with_vessel
from circuitcheck.checks.valves_out import without_valves
from circuitcheck.finding import Finding
from circuitcheck.parts.kind import Role


def judge(case: Case) -> Verdict:
    """One finding for each sealed body of heated water that valves can part from its vessels."""
    return judge_cut_off(
        case,
        "vessel-can-be-cut-off",
        [water for water in heated_waters(case) if not water.is_open_vented],
        lambda water: water.reached(Role.HOLDS_EXPANSION),
        "{thing} can be cut off from {devices} by shutting {valves}.",
        secured_excuses=True,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A vessel moved to where nothing can cut it off: a pump's inlet, the return or the flow; one of its
    own for a heat source that can be shut in; the valves taken out."""
    yield from moved_to_safety(case, finding, Role.HOLDS_EXPANSION)
    yield from with_vessel(case, finding)
    yield from without_valves(case, finding)
