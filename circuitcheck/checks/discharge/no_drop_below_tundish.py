"""The pipe below the tundish bends too soon.

Flags: Less than 300 mm straight down below the tundish of a store's relief valve before the first
    bend. Exactly 300 mm passes. A pipe without a bend that falls by its whole length is straight down
    all the way.
Why: Water falls freely through the tundish. It needs a straight drop to gather speed; a bend close
    below holds it up, and scalding water spills over the rim into the room.
Remedy: Let the pipe run straight down for at least 300 mm below the tundish, and only then turn it.
Source: Approved Document G (England) 3.56a; WFR guidance G19.3c.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharging import Shown, drop_of, fall_m, tundishes
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.discharge import within

NAME = "no-drop-below-tundish"


def judge(case: Case) -> Verdict:
    """One danger for each tundish of a store's relief valve with a bend too close below it."""
    findings, sound = [], 0
    for shown in tundishes(case):
        least_m = float(case.limit("discharge.straight_drop_m").value)
        drop_m = _drop_m(case, shown)
        if drop_m is not None and within(least_m, drop_m):
            sound += 1
        else:
            findings.append(_finding(case, shown, drop_m, least_m))
    return Verdict(tuple(findings), sound)


def _drop_m(case: Case, shown: Shown) -> float | None:
    """How far the pipe runs straight down below the tundish: as given, else all of a plumb pipe."""
    leaves = next(end for end in case.drawing.pipes[shown.pipe].joints if end.part == shown.tundish)
    return drop_of(case, shown.pipe, leaves)


def _finding(case: Case, shown: Shown, drop_m: float | None, least_m: float) -> Finding:
    missing = (*((f"{shown.pipe}.straight_drop_m",) if drop_m is None else ()), *shown.applies_if)
    values: dict[str, str | float] = {
        "pipe": case.drawing.name(shown.pipe),
        "tundish": case.drawing.name(shown.tundish),
        "drop": figure((drop_m or 0) * 1000),
        "least": figure(least_m * 1000),
        "missing": ", ".join(missing),
    }
    components = (shown.tundish, *shown.valves)
    if missing or drop_m is None:
        template = "Whether {pipe} runs straight down far enough below {tundish} is not known: {missing}."
        return Finding(
            NAME,
            Grade.UNANSWERED,
            Says(template, values),
            components,
            (shown.pipe,),
            missing=missing,
            would_be=Grade.DANGER,
        )
    values["pipe"] = upper(str(values["pipe"]))
    template = "{pipe} runs {drop} mm straight down below {tundish}; it must be at least {least} mm."
    return Finding(
        NAME,
        Grade.DANGER,
        Says(template, values),
        components,
        (shown.pipe,),
        numbers={"straight_drop_m": drop_m, "least_m": least_m},
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The least drop, where the pipe is known to fall and to be long enough for it."""
    least_m = float(case.limit("discharge.straight_drop_m").value)
    for shown in tundishes(case):
        if shown.tundish != finding.components[0] or shown.pipe not in finding.pipes:
            continue
        leaves = next(end for end in case.drawing.pipes[shown.pipe].joints if end.part == shown.tundish)
        fall, length = fall_m(case, shown.pipe, leaves), case.length_m(shown.pipe)
        if fall is None or length is None or not within(least_m, min(fall, length.value)):
            continue
        says = Says(
            "Turn {pipe} so that it runs straight down for {least} mm below {tundish} first.",
            {
                "pipe": case.drawing.name(shown.pipe),
                "tundish": case.drawing.name(shown.tundish),
                "least": figure(least_m * 1000),
            },
        )
        yield Proposal(says, set_field(case.drawing, shown.pipe, "straight_drop_m", least_m))
