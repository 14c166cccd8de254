"""Hot water is slow to come.

Flags: An outlet at which, wide open, the water that has gone cold in the pipe takes longer to run out
    than the rule book allows before hot water comes: 30 seconds. It counts from what gives the hot
    water, or from where a secondary return keeps it hot, by the way that holds least. An outlet of which
    the drawing does not say what is drawn there (`other`) is left out.
Why: Whoever opens the tap lets that water run down the drain, with the heat it once had, several times a
    day. And pipe that is neither hot nor cold between times is where legionella grows.
Remedy: Run the pipe shorter or in a smaller size, or bring a secondary return near the outlet.
Source: WFR guidance G18.4: 50 °C within 30 seconds of opening; EN 806-2 likewise (from memory). HSG274
    part 2 and BS 8558 allow a minute: sources disagree. Draw-off flows: EN 806-3:2006, Table 2.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import inf

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import figure, shortened, upper
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.hot_legs import HotLegs, hot_legs
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.demand import UNIT_L_S, l_min
from circuitcheck.sizing.discharge import within
from circuitcheck.sizing.waiting import wait_s

NAME = "hot-water-slow"
HOT_FLOW = "hot_flow_lpm"
FITTING = "fitting"
NO_FLOW_TOLD = "other"


@dataclass(frozen=True, slots=True)
class _Flow:
    """What an outlet draws in l/min, at least and at most, and what is missing to know it."""

    least: float
    most: float
    missing: tuple[str, ...] = ()


def judge(case: Case) -> Verdict:
    """One piece of advice for each outlet that waits too long."""
    legs = hot_legs(case) if case.circuit.devices(Role.DRAWS) else None
    if legs is None or not legs.outlets:
        return Verdict()
    limit = float(case.limit("supply.hot_within_s").value)
    units = case.limit("supply.loading_units").value
    findings, sound = [], 0
    for joint in legs.outlets:
        fitting = case.value(joint.part, FITTING)
        if fitting == NO_FLOW_TOLD:
            continue
        finding = _judged(case, legs, joint, limit, _flow(case, legs, joint, fitting, units))
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _flow(case: Case, legs: HotLegs, joint: Joint, fitting: str | None, units: Mapping[str, float]) -> _Flow:
    """What the outlet draws, or what a heat source that stores none gives if that is less."""
    own = units.get(fitting) if fitting is not None else None
    drawn = [float(each) for each in (units.values() if own is None else (own,))]
    least, most = l_min(min(drawn) * UNIT_L_S), l_min(max(drawn) * UNIT_L_S)
    missing = (f"{joint.part}.{FITTING}",) if own is None else ()
    giver = legs.giver(joint)
    fields = {field.name for field in case.drawing.components[giver.part].kind.own_fields}
    if giver.stores or HOT_FLOW not in fields:
        return _Flow(least, most, missing)
    gives = case.value(giver.part, HOT_FLOW)
    if gives is None:
        return _Flow(0.0, most, (*missing, f"{giver.part}.{HOT_FLOW}"))
    return _Flow(min(least, gives), min(most, gives), missing)


def _wait(litres: float, flow_lpm: float) -> float:
    """Seconds until water has run out; without end where none flows."""
    if litres == 0:
        return 0.0
    return inf if flow_lpm <= 0 or litres == inf else wait_s(litres, flow_lpm)


def _judged(case: Case, legs: HotLegs, joint: Joint, limit: float, flow: _Flow) -> Finding | None:
    litres = legs.least[joint][0]
    if not within(_wait(litres, flow.most), limit):
        return _finding(case, legs, joint, limit, flow)
    if within(_wait(legs.most[joint][0], flow.least), limit):
        return None
    pipes = legs.pipes(joint)
    missing = tuple(dict.fromkeys((*(field for _, pipe in pipes for field in pipe.missing), *flow.missing)))
    says = Says(
        "Whether hot water comes to {thing} within {limit} s is not known: {missing}.",
        {
            "thing": case.drawing.name(joint.part),
            "limit": figure(limit),
            "missing": shortened(missing),
        },
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        says,
        (joint.part,),
        tuple(pipe for pipe, _ in pipes),
        numbers={"limit_s": limit},
        missing=missing,
        would_be=Grade.ADVICE,
    )


def _finding(case: Case, legs: HotLegs, joint: Joint, limit: float, flow: _Flow) -> Finding:
    giver, litres = legs.giver(joint).part, legs.least[joint][0]
    wait = _wait(litres, flow.most)
    values = {
        "thing": upper(case.drawing.name(joint.part)),
        "giver": case.drawing.name(giver),
        "litres": figure(litres),
        "flow": figure(flow.most),
        "wait": figure(wait),
        "limit": figure(limit),
    }
    template = (
        "{thing} waits {wait} s for hot water: {litres} l stand in the pipe from {giver} and run out at {flow} "
        "l/min; {limit} s are allowed."
    )
    numbers = {"water_l": litres, "flow_lpm": flow.most, "limit_s": limit}
    if wait == inf:
        template = "{thing} never gets hot water: {giver} gives none."
    else:
        numbers["wait_s"] = wait
    parts = tuple(dict.fromkeys((joint.part, giver)))
    pipes = tuple(pipe for pipe, _ in legs.pipes(joint))
    return Finding(NAME, Grade.ADVICE, Says(template, values), parts, pipes, numbers=numbers)
