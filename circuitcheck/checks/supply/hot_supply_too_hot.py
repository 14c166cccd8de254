"""A store that can pass 80 °C feeds an outlet unblended.

Flags: A store whose water can get hotter than 80 °C (its thermostat is set above it, or heat reaches
    its coil that no store thermostat stops: uncontrolled heat, or a heat source whose own limit is
    above it) and that feeds an outlet by some way without a blending valve set to 60 °C or less.
Why: Water above 80 °C scalds at once, and it comes out of every tap, in spurts of steam where the
    pressure drops. Most taps, hoses and plastic pipes are not made for it either.
Remedy: Fit a blending valve set to 60 °C in the store's hot outlet, before the first branch; set the
    thermostat lower, and give every heat source a valve that the store's thermostat shuts.
Source: Approved Document G (England), 3.64 (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import Blending, HotReach, Maybe, StoredHeat, supplies
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.circuit.waterways import pipes_of
from circuitcheck.drawing.edits import EditError, set_field
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says

NAME = "hot-supply-too-hot"


def judge(case: Case) -> Verdict:
    """One danger for each store that can send water above 80 °C to an outlet."""
    ways = supplies(case)
    if not ways.stores or not ways.outlets:
        return Verdict()
    over_c = float(case.limit("supply.store_blended_above_c").value)
    blending = Blending(case, ways, float(case.limit("supply.blended_to_c").value))
    heat = StoredHeat(case)
    drawn = frozenset(joint for place in ways.outlets for joint in _ports(place))
    findings, sound = [], 0
    for giver in ways.givers:
        if not giver.stores:
            continue
        can = heat.can_pass(giver.part, over_c)
        if can.answer is False:
            sound += 1
            continue
        reach = HotReach(ways, blending, {giver: can})
        answer = reach.reaches(drawn)
        if answer.answer:
            findings.append(_finding(case, ways, giver, reach, drawn, over_c, blending.limit_c))
        elif answer.answer is None:
            findings.append(_unknown(case, giver, answer))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _ports(place: Placed) -> tuple[Joint, Joint]:
    return Joint(place.part, place.device.port), Joint(place.part, place.device.other)


def _finding(
    case: Case,
    ways: Supplies,
    giver: Giver,
    reach: HotReach,
    drawn: frozenset[Joint],
    over_c: float,
    limit_c: float,
) -> Finding:
    reached = [joint for joint in reach.surely if joint in drawn]
    steps = [step for joint in reached for step in ways.way(reach.surely, joint)]
    outlets = tuple(dict.fromkeys(joint.part for joint in reached))
    return Finding(
        NAME,
        Grade.DANGER,
        Says(
            "{thing} can pass {over} °C, and no blending valve set to {limit} °C or less stands before "
            "{outlets}.",
            {
                "thing": upper(case.drawing.name(giver.part)),
                "over": figure(over_c),
                "limit": figure(limit_c),
                "outlets": named(case.drawing, outlets),
            },
        ),
        components=(giver.part, *outlets),
        pipes=pipes_of(steps),
        numbers={"limit_c": over_c, "blended_to_c": limit_c},
    )


def _unknown(case: Case, giver: Giver, answer: Maybe) -> Finding:
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether {thing} can send water to an outlet that is far too hot is not known: {missing}.",
            {"thing": case.drawing.name(giver.part), "missing": ", ".join(answer.missing)},
        ),
        components=(giver.part,),
        missing=answer.missing,
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Set the thermostat to what a store is kept at; or blend right at the store's hot outlet."""
    store = finding.components[0]
    over_c = finding.numbers["limit_c"]
    usual_c = float(case.limit("supply.store_least_c").value)
    thing = case.drawing.name(store)
    after = case.drawing
    if (case.value(store, "thermostat_c") or 0) > over_c:
        after = set_field(after, store, "thermostat_c", usual_c)
    for control in StoredHeat(case).controls(store):
        if control.set_c is not None and control.set_c > over_c:
            after = set_field(after, control.id, "set_c", usual_c)
    if after is not case.drawing:
        says = Says("Set the thermostat of {thing} to {set} °C.", {"thing": thing, "set": figure(usual_c)})
        yield Proposal(says, after)
    ways = supplies(case)
    place = ways.stores[store]
    hot, inlet = Joint(store, place.device.other), Joint(store, place.device.port)
    setting = finding.numbers["blended_to_c"]
    fitting = Fitting(case.drawing)
    try:
        valve = fitting.cut_in("blending_valve", hot, port="hot", data={"set_temperature_c": setting})
        tee = fitting.tee(_cold_for(case, inlet))
        fitting.pipe(Joint(tee, "branch"), Joint(valve, "cold"))
    except EditError:
        return
    says = Says(
        "Fit a blending valve set to {set} °C in the hot outlet of {thing}.",
        {"thing": thing, "set": figure(setting)},
    )
    yield Proposal(says, fitting.drawing)


def _cold_for(case: Case, inlet: Joint) -> Joint:
    """The port whose pipe gives the blending valve its cold: before the check valve that guards the
    store's inlet, so that it is not drawn after it; else the store's own inlet."""
    ways = supplies(case)
    reached = ways.mains_water(ways.mains)
    if inlet in reached:
        for step in reversed(ways.way(reached, inlet)):
            if ways.through(step, ways.checks):
                return step.start
    return inlet
