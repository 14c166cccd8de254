"""Nothing shuts the house off from the main.

Flags: A main whose water comes to an outlet, a store, a heat source or a cistern with no valve on the
    way that can be shut by hand. A valve before each of these serves as well as one for all; a filling
    link has its own. Motorised valves, check valves and reducing valves shut nothing off.
Why: When a pipe bursts somebody must be able to stop the water at once, and whoever works on a tap or a
    float valve must be able to do so without the water undertaker. With no valve the water runs until
    one is found in the street.
Remedy: Fit a stop valve where the main comes in, above the floor and within reach.
Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraphs 10 and 11, and guidance
    G11 (from memory); that it stands where the main comes in: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import fitting
from circuitcheck.checks.supplying import supplies
from circuitcheck.checks.wording import listed, upper
from circuitcheck.circuit.walking import along_the_flow, walk
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Passage, Role, Way
from circuitcheck.told import worded

NAME = "stop-valve-absent"
NAMED_AT_MOST = 3


def judge(case: Case) -> Verdict:
    """One piece of advice for each main that nothing shuts off by hand from all it feeds."""
    mains = supplies(case).mains if case.circuit.devices(Role.MAIN) else ()
    if not mains:
        return Verdict()
    takers = _takers(case)
    findings, sound = [], 0
    for main in mains:
        case.rests_on_pressure_ways(frozenset({case.circuit.water(case.circuit.node(*main))}))
        if not _reached(case, main, takers, by_hand=True):
            continue
        unguarded = _reached(case, main, takers, by_hand=False)
        if unguarded:
            findings.append(_finding(case, main, unguarded))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _takers(case: Case) -> dict[Joint, str]:
    """Where the main's water is wanted: by port, the part."""
    ways, circuit = supplies(case), case.circuit
    found = {giver.inlet: giver.part for giver in ways.givers}
    for place in ways.outlets:
        found |= {Joint(place.part, port): place.part for port in (place.device.port, place.device.other)}
    for place in circuit.devices(Role.FEEDS):
        found[Joint(place.part, "supply")] = place.part
    return found


def _reached(case: Case, main: Joint, takers: dict[Joint, str], *, by_hand: bool) -> tuple[str, ...]:
    """What takes the main's water by ways through no other taker, and where not `by_hand` through no
    valve that can be shut by hand; nearest first."""
    parts = frozenset(takers.values())

    def passes(part: str, passage: Passage, forward: bool) -> bool:
        shut = passage.way is Way.HAND and not by_hand
        return part not in parts and not shut and along_the_flow(part, passage, forward)

    found = walk(case.circuit, [main], passes).steps
    reached = sorted((found[joint], joint) for joint in takers if joint in found)
    return tuple(dict.fromkeys(takers[joint] for _, joint in reached))


def _finding(case: Case, main: Joint, unguarded: tuple[str, ...]) -> Finding:
    names = [case.drawing.name(part) for part in unguarded[:NAMED_AT_MOST]]
    more = len(unguarded) - len(names)
    says = Says(
        "{main} comes to {things} with no valve on the way that can be shut by hand.",
        {
            "main": upper(case.drawing.name(main.part)),
            "things": listed([*names, worded("{more} more", more=more)] if more else names),
        },
    )
    return Finding(NAME, Grade.ADVICE, says, (main.part, *unguarded))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A stop valve right where the main comes in."""
    main = finding.components[0]
    port = next(joint for joint in supplies(case).mains if joint.part == main)
    work = fitting(case)
    try:
        work.cut_in("isolating_valve", port, port="a", data={"secured": False})
    except EditError:
        return
    says = Says("Fit a stop valve right at {main}.", {"main": case.drawing.name(main)})
    yield Proposal(says, work.drawing)
