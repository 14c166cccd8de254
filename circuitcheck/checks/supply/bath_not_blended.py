"""A bath's hot water is not blended down.

Flags: A bath whose hot tap water above 48 °C can reach by some way without a blending valve set to
    48 °C or less: from a store whose thermostat is set above 48 °C, or that heat reaches which
    nothing stops, or from what heats water as it is drawn. A blending valve set above 48 °C is none.
    Danger in a new dwelling, advice in an existing one.
Why: A person who slips into a bath run too hot cannot get out in time. Water at 60 °C burns through
    the skin in seconds; the very young and the very old are scalded worst, and every year some die.
Remedy: Fit a blending valve with a locked setting of 48 °C or less (44 °C is usual) in the bath's hot
    pipe, close to the bath, with cold of the same pressure on its other side.
Source: Approved Document G (England), 2015 edition with 2016 amendments, requirement G3(4) and 3.65.
    A setting that the householder can change is no limit: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.supplying import Blending, HotReach, Maybe, StoredHeat, above, supplies
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import pipes_of
from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says

NAME = "bath-not-blended"
USUAL_SETTING_C = 44.0
"""What a bath's blending valve is usually set to (common practice, no source)."""


def judge(case: Case) -> Verdict:
    """One finding for each bath that unblended hot water can reach."""
    ways = supplies(case)
    baths = [
        (place, fitting)
        for place in ways.outlets
        if Joint(place.part, place.device.port) in case.drawing.joined
        and (fitting := case.value(place.part, "fitting")) in ("bath", None)
    ]
    if not baths or not ways.givers:
        return Verdict()
    limit_c = float(case.limit("supply.bath_highest_c").value)
    blending = Blending(case, ways, limit_c)
    reach = HotReach(ways, blending, above(StoredHeat(case), limit_c, ways.givers))
    any_hot = ways.hot(ways.givers, lambda valve: False)
    findings, sound = [], 0
    for place, fitting in baths:
        hot = Joint(place.part, place.device.port)
        answer = reach.reaches([hot])
        if answer.answer is False:
            sound += fitting == "bath" and hot in any_hot
        elif answer.answer and fitting == "bath":
            findings.append(_finding(case, ways, reach, place, blending))
        else:
            findings.append(_unknown(case, place, answer, fitting))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, ways: Supplies, reach: HotReach, place: Placed, blending: Blending) -> Finding:
    hot = Joint(place.part, place.device.port)
    steps = ways.way(reach.surely, hot)
    origin = ways.origin(reach.surely, hot).part
    passed = dict.fromkeys(step.start.part for step in steps if ways.through(step, ways.blends))
    grade = _grade_if_known(case)
    template = "{thing} can be given water above {limit} °C by {giver}: "
    if passed:
        template += "{valves} is set too high, to {setting} °C."
    else:
        template += "no blending valve stands between."
    if grade is None:
        template += " How heavy that is rests on what is not known: {missing}."
    numbers = {"limit_c": blending.limit_c}
    if passed:
        numbers["set_temperature_c"] = max(float(case.value(valve, "set_temperature_c")) for valve in passed)
    return Finding(
        NAME,
        grade or Grade.UNANSWERED,
        Says(
            template,
            {
                "thing": upper(case.drawing.name(place.part)),
                "giver": case.drawing.name(origin),
                "limit": figure(blending.limit_c),
                "valves": named(case.drawing, passed),
                "setting": figure(numbers.get("set_temperature_c", 0.0)),
                "missing": "design.dwelling",
            },
        ),
        components=tuple(dict.fromkeys((place.part, *passed, origin))),
        pipes=pipes_of(steps),
        numbers=numbers,
        missing=() if grade else ("design.dwelling",),
        would_be=None if grade else Grade.DANGER,
    )


def _grade_if_known(case: Case) -> Grade | None:
    """Danger in a new dwelling, advice in an existing one; None where it is not known which."""
    return {"new": Grade.DANGER, "existing": Grade.ADVICE}.get(str(case.design("dwelling")))


def _unknown(case: Case, place: Placed, answer: Maybe, fitting: str | None) -> Finding:
    missing = answer.missing if fitting else (f"{place.part}.fitting", *answer.missing)
    grade = _grade_if_known(case)
    if grade is None:
        missing = (*missing, "design.dwelling")
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether {thing} needs a blending valve, or has one that is set low enough, is not known: {missing}.",
            {"thing": case.drawing.name(place.part), "missing": ", ".join(missing)},
        ),
        components=(place.part,),
        missing=missing,
        would_be=grade or Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Set the blending valves on the way lower, or fit one in the bath's hot pipe."""
    bath = finding.components[0]
    limit_c = float(case.limit("supply.bath_highest_c").value)
    ways = supplies(case)
    valves = {part for part, _, _ in ways.blends}
    high = [part for part in finding.components if part in valves]
    setting = min(USUAL_SETTING_C, limit_c)
    if high:
        fitting = Fitting(case.drawing)
        for valve in high:
            fitting.set(valve, "set_temperature_c", setting)
        says = Says(
            "Set {valves} to {setting} °C.",
            {"valves": named(case.drawing, high), "setting": figure(setting)},
        )
        yield Proposal(says, fitting.drawing)
    place = next(place for place in ways.outlets if place.part == bath)
    cold = _cold_for(case, ways, finding.components[-1])
    for supply in cold:
        try:
            yield _fit(case, place, supply, setting)
        except EditError:
            continue


def _cold_for(case: Case, ways: Supplies, giver: str) -> Iterator[Joint]:
    """Ports whose pipe gives cold for a blending valve, the best first: a free balanced connection
    or the pipe before the check valve, then the main."""
    reached = ways.mains_water(ways.mains)
    for part, inlet, outlet in sorted(ways.reducers):
        port = Joint(part, outlet)
        if port in reached and Joint(part, inlet) in reached:
            yield port
    inlets = [each.inlet for each in ways.givers if each.part == giver]
    if not any(True for inlet in inlets if inlet.part in ways.stores) and ways.mains:
        yield from ways.mains
    yield from inlets


def _fit(case: Case, place: Placed, supply: Joint, setting: float) -> Proposal:
    """A blending valve right at the bath's hot, its cold from the pipe on `supply` or that port."""
    fitting = Fitting(case.drawing)
    hot = Joint(place.part, place.device.port)
    valve = fitting.cut_in("blending_valve", hot, port="mixed", data={"set_temperature_c": setting})
    cold = Joint(valve, "cold")
    if supply in case.drawing.joined:
        tee = fitting.tee(supply)
        fitting.pipe(Joint(tee, "branch"), cold)
    else:
        fitting.pipe(supply, cold)
    says = Says(
        "Fit a blending valve set to {setting} °C before {thing}, with cold from {supply}.",
        {
            "setting": figure(setting),
            "thing": case.drawing.name(place.part),
            "supply": case.drawing.name(supply.part),
        },
    )
    return Proposal(says, fitting.drawing)
