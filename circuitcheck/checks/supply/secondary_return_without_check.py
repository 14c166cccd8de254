"""A secondary return without a check valve.

Flags: A store's secondary return by which water can leave the store again and come out at an outlet
    or at the store's hot side: no check valve, none that points to the store, or one with a way round
    it. A return that a pump drives into the store's cold pipe is judged the same.
Why: When a tap is opened, water takes every way to it. Through an unguarded return it comes from low
    in the store, or straight from the cold pipe: the tap runs lukewarm while the store is hot, and
    the return fills with water that is warm enough to breed legionella.
Remedy: Cut a check valve into the return, next to its pump, pointing to the store.
Source: Common practice, no source: a single check valve by the pump of a secondary return.
"""

from __future__ import annotations

from collections.abc import Iterator
from functools import partial

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import supplies
from circuitcheck.circuit.secondary import Return, hot_port, past, returns
from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.circuit.waterways import CameBy, Step, pipes_of
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "secondary-return-without-check"


def judge(case: Case) -> Verdict:
    """One fault for each store with a secondary return that water can take backwards."""
    ways = supplies(case)
    findings, sound = [], 0
    for giver in ways.givers:
        back = returns(ways, giver) if giver.stores else ()
        if not back:
            continue
        goals = _goals(ways, giver)
        backwards = [(each, steps) for each in back if (steps := _backwards(ways, each, goals))]
        if backwards:
            findings.append(_finding(case, giver.part, *backwards[0]))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _goals(ways: Supplies, giver: Giver) -> set[Joint]:
    goals = {hot_port(ways, giver)}
    for place in ways.outlets:
        goals |= {Joint(place.part, place.device.port), Joint(place.part, place.device.other)}
    return goals


def _backwards(ways: Supplies, each: Return, goals: set[Joint]) -> tuple[Step, ...]:
    """The steps by which water goes out by a return and to a goal; none where it cannot."""
    if not each.pump:
        came = ways.walk([each.enters], ways.drawn_outside)
        return _first(ways, came, goals - {each.enters})
    to_pump = ways.walk([each.enters], partial(past, ways, each.pump))
    place = next(p for p in ways.circuit.devices(Role.PUMPS) if p.part == each.pump)
    outlet, inlet = Joint(each.pump, place.device.other), Joint(each.pump, place.device.port)
    if outlet not in to_pump:
        return ()
    beyond = ways.walk([inlet], partial(past, ways, each.pump))
    onward = _first(ways, beyond, goals)
    if not onward:
        return ()
    return (*ways.way(to_pump, outlet), Step(outlet, inlet), *onward)


def _first(ways: Supplies, came: CameBy, goals: set[Joint]) -> tuple[Step, ...]:
    goal = next((joint for joint in came if joint in goals), None)
    return () if goal is None else ways.way(came, goal)


def _finding(case: Case, store: str, each: Return, steps: tuple[Step, ...]) -> Finding:
    goal = steps[-1].finish.part
    parts = (store, each.pump, goal) if each.pump else (store, goal)
    template = "Water can leave {thing} backwards by its secondary return to {goal}: no check valve stops it."
    if goal == store:
        template = "Water can leave {thing} backwards by its secondary return: no check valve stops it."
    return Finding(
        NAME,
        Grade.FAULT,
        Says(template, {"thing": case.drawing.name(store), "goal": case.drawing.name(goal)}),
        components=tuple(dict.fromkeys(parts)),
        pipes=pipes_of(steps),
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A check valve pointing to the store: by the pump's outlet, and else right at the store."""
    store = finding.components[0]
    ways = supplies(case)
    giver = next(giver for giver in ways.givers if giver.part == store)
    for each in returns(ways, giver):
        steps = _backwards(ways, each, _goals(ways, giver))
        if not steps:
            continue
        pumps = {place.part: place.device.other for place in case.circuit.devices(Role.PUMPS)}
        on_way = [step.start.part for step in steps if not step.pipe and step.start.part in pumps]
        spots = [(Joint(pump, pumps[pump]), "in") for pump in on_way]
        if not each.pump:
            spots.append((each.enters, "out"))
        for by, port in spots:
            fitting = Fitting(case.drawing)
            try:
                fitting.cut_in("check_valve", by, port=port)
            except EditError:
                continue
            says = Says(
                "Cut a check valve into the secondary return of {thing}, pointing to the store.",
                {"thing": case.drawing.name(store)},
            )
            yield Proposal(says, fitting.drawing)
