"""Heating water and drinking water can meet.

Flags: Water that a heat source or a plate heats for heating, or that fills a store's coil, from which
    some way leads to drinking water with fewer than two check valves against it: a plain pipe, a
    single check valve, a filling link left connected without its double check valve. A reducing or
    blending valve is no check valve. Piped for good through two check valves is a fault. A filling
    link left connected with its double check valve, or taken off, is another check's. Flagged too:
    a cistern's water, or a waste, that the main can draw back.
Why: Heating water holds rust, inhibitor and whatever lives in it. When the main's pressure drops, as
    when a hydrant is opened, it is drawn back into the pipe that people drink from, in this house and
    the next. One check valve lets by sooner or later; that is why two are asked for.
Remedy: Part the two waters. Fill the heating by a filling link with a double check valve that is taken
    off afterwards; feed a cistern through its float valve, above its water.
Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraphs 15 and 24, with WFR guidance G24.2.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.foul_water import Foul, Sort, Waters
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.waterways import Cheapest, Step, cheapest_way, pipes_of
from circuitcheck.drawing.edits import remove, set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "cross-connection"
MEETS = {
    Sort.HEATING: "Heating water of {thing} can come into drinking water at {goal}.",
    Sort.CISTERN: "Water of {thing} can be drawn back into {goal}.",
    Sort.WASTE: "Foul water can be drawn back from {thing} into {goal}.",
}
BY = "On the way there is only {by}: that is not enough."
LINKED = "{link} is left connected, and without a double check valve."
FOR_GOOD = (
    "Heating water of {thing} is joined for good to drinking water at {goal}, only check valves between."
)


def judge(case: Case) -> Verdict:
    """One finding for each heating water, cistern and waste that drinking water can meet."""
    waters = Waters(case)
    if not waters.drinking:
        return Verdict()
    findings, sound = [], 0
    for foul in (*waters.heating(), *waters.open_to_air()):
        found = _judge(case, waters, foul)
        if found is None:
            sound += 1
        else:
            findings.append(found)
    return Verdict(tuple(findings), sound)


def _judge(case: Case, waters: Waters, foul: Foul) -> Finding | None:
    if not waters.may_meet(foul):
        return None
    sure = waters.reach(foul, waters.links(perhaps=False))
    danger = _least(sure, foul, foul.enough)
    if danger is not None:
        return _finding(case, waters, foul, sure, danger)
    unsure = waters.links(perhaps=True)
    perhaps = waters.reach(foul, unsure)
    maybe = _least(perhaps, foul, foul.enough)
    if maybe is not None:
        return _unknown(case, foul, perhaps, maybe, unsure)
    for_good = _least(sure, foul, None)
    if for_good is not None and foul.sort is Sort.HEATING:
        return _finding(case, waters, foul, sure, for_good, for_good=True)
    return None


def _least(best: Cheapest, foul: Foul, enough: int | None) -> Joint | None:
    """The goal that is reached against the fewest check valves, fewer than `enough`; None for none."""
    reached = [goal for goal in best if goal in foul.goals]
    goal = min(reached, key=lambda joint: best[joint][0], default=None)
    if goal is None or (enough is not None and best[goal][0] >= enough):
        return None
    return goal


def _finding(
    case: Case, waters: Waters, foul: Foul, best: Cheapest, goal: Joint, *, for_good: bool = False
) -> Finding:
    steps = cheapest_way(best, goal)
    drawing = case.drawing
    passed = tuple(dict.fromkeys(step.start.part for step in steps if _tells(waters, step)))
    links = tuple(id for id in passed if waters.is_link(id))
    template = MEETS[foul.sort]
    if for_good:
        template = FOR_GOOD
    elif links:
        template = f"{template} {LINKED}"
    elif passed:
        template = f"{template} {BY}"
    return Finding(
        NAME,
        Grade.FAULT if for_good else Grade.DANGER,
        Says(
            template,
            {
                "thing": drawing.name(foul.part),
                "goal": drawing.name(goal.part),
                "by": named(drawing, passed),
                "link": upper(named(drawing, links)),
            },
        ),
        components=tuple(dict.fromkeys((foul.part, *passed, goal.part))),
        pipes=pipes_of(steps),
        numbers={"check_valves_in_a_row": best[goal][0]},
    )


def _tells(waters: Waters, step: Step) -> bool:
    """Whether a reader should be told of a part on the way: an arrow gone against, or a filling link."""
    if step.pipe:
        return False
    return step.against or waters.is_link(step.start.part)


def _unknown(case: Case, foul: Foul, best: Cheapest, goal: Joint, links: dict[Joint, Joint]) -> Finding:
    used = dict.fromkeys(
        step.start.part
        for step in cheapest_way(best, goal)
        if links.get(step.start) == step.finish and not step.pipe
    )
    missing = tuple(
        f"{link}.{field}"
        for link in used
        for field in ("left_connected", "double_check")
        if case.value(link, field) is None
    )
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(
            "Whether water of {thing} can come into drinking water is not known: {missing}.",
            {"thing": case.drawing.name(foul.part), "missing": ", ".join(missing)},
        ),
        components=(foul.part, *used),
        missing=missing,
        would_be=Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Take the filling link off; or take out a pipe that joins the waters, the last first."""
    for place in case.circuit.devices(Role.FILLS):
        if place.part in finding.components and place.device.other:
            after = set_field(case.drawing, place.part, "left_connected", False)
            after = set_field(after, place.part, "double_check", True)
            says = Says(
                "Take {link} off after filling, and give it a double check valve.",
                {"link": case.drawing.name(place.part)},
            )
            yield Proposal(says, after)
    for pipe in reversed(finding.pipes):
        says = Says("Take out {pipe}, which joins the two waters.", {"pipe": case.drawing.name(pipe)})
        yield Proposal(says, remove(case.drawing, [pipe]))
