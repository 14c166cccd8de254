"""Nothing keeps heated water from pushing back into the main.

Flags: A mains-fed store from which water can go back into the main with no check valve on the way. A
    reducing valve is not a check valve. An inlet group has one in it, and a store may have one built in.
Why: Water that swells takes the easiest way: back down the cold feed. Without a check valve, warm water
    that has stood in a store comes out of cold taps, and in the end reaches the main and other people's
    drinking water.
Remedy: Fit a check valve in the cold feed after the reducing valve and its branch for balanced cold,
    with its arrow towards the store.
Source: Water Supply (Water Fittings) Regulations 1999, Schedule 2, paragraph 15 (paragraph from memory)
    and guidance to it; that a reducing valve is no check valve is common practice.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_cures import with_check_valve
from circuitcheck.checks.store_water import StoreWater, store_waters
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.walking import Walk, along_the_flow, passage_between, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Passage, Role, Way

NAME = "cold-check-absent"

TEMPLATE = "Heated water can push back from {thing} into {main}: no check valve stands in the way."
REDUCERS = "{reducers} does not stop it: a reducing valve is no check valve."


def judge(case: Case) -> Verdict:
    """One danger for each store whose water can go back into a main."""
    findings, sound = [], 0
    mains = [Joint(place.part, place.device.port) for place in case.circuit.devices(Role.MAIN)]
    for water in store_waters(case) if mains else ():
        if not any(case.bodies.of(case.circuit.node(*main)) == water.heated.body for main in mains):
            continue
        case.rests_on_pressure_ways(water.reach)
        found = _pushed(case, water)
        reached = [main for main in mains if main in found.steps]
        if reached:
            nearest = min(reached, key=lambda main: found.steps[main])
            findings.append(_finding(case, water, found.way_to(nearest)))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _pushed(case: Case, water: StoreWater) -> Walk:
    """Where swelling water can go from the store, by its pipes."""

    def may_pass(part: str, passage: Passage, forward: bool) -> bool:
        if part == water.store:
            return False
        return passage.pressure_way is Way.REDUCING or along_the_flow(part, passage, forward)

    return walk(case.circuit, water.ports, may_pass)


def _finding(case: Case, water: StoreWater, way: tuple[Joint, ...]) -> Finding:
    steps = itertools.pairwise(way)
    crossed = [(one.part, passage_between(case.circuit, one, other)) for one, other in steps]
    reducers = tuple(part for part, passage in crossed if passage and passage.pressure_way is Way.REDUCING)
    main = way[-1].part
    name = case.drawing.name
    values: dict[str, str | float] = {"thing": name(water.store), "main": name(main)}
    template = TEMPLATE
    if reducers:
        template = f"{TEMPLATE} {REDUCERS}"
        values["reducers"] = upper(named(case.drawing, reducers))
    return Finding(
        NAME,
        Grade.DANGER,
        Says(template, values),
        tuple(dict.fromkeys((water.store, *reducers, main))),
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A check valve in the cold feed."""
    yield from with_check_valve(case, finding.components[0])
