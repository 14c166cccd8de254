"""The tundish is too far from the relief valve.

Flags: More than 600 mm of pipe between a store's relief valve and its tundish. Exactly 600 mm
    passes.
Why: Before the tundish the pipe runs under pressure and out of sight. The longer it is, the more it
    holds the valve back, and the easier a drip goes unseen.
Remedy: Move the tundish to within 600 mm of the valve, lower than it and in sight.
Source: Approved Document G (England) 3.54, from the 2010 edition; WFR guidance G19.3a. Editions
    before 2010 said 500 mm; the program uses 600 mm.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharging import length_along, rules_apply, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.discharge import within

NAME = "tundish-too-far"


def judge(case: Case) -> Verdict:
    """One finding for each store's relief valve with more than 0.6 m to its tundish."""
    findings, sound = [], 0
    for discharge in case.discharges:
        applies, missing = rules_apply(case, discharge)
        runs = [run for run in discharge.runs if run.tundish is not None]
        if not applies or not runs:
            continue
        limit_m = case.limit("discharge.tundish_within_m").value
        sums = [(run, length_along(case, run.before_tundish)) for run in runs]
        run, length = max(sums, key=lambda each: each[1].known)
        unknown = tuple(field for _, each in sums for field in each.missing)
        valve = discharge.valve.part
        thing = upper(case.drawing.name(valve))
        too_far = not within(length.known, limit_m)
        if not too_far and unknown:
            template = "How far {thing} stands from its tundish is not known: {missing}."
            gaps = (*unknown, *missing)
        elif too_far and missing:
            template = (
                "{thing} stands {length} m from its tundish; whether that is too far rests on {missing}."
            )
            gaps = missing
        elif not too_far:
            sound += 1
            continue
        else:
            tundish = run.steps[run.tundish or 0].part
            findings.append(_finding(case, valve, tundish, run.before_tundish, length.known, limit_m))
            continue
        values: dict[str, str | float] = {"thing": thing, "length": figure(length.known)}
        findings.append(unanswered(NAME, template, values, discharge, gaps, pipes=run.before_tundish))
    return Verdict(tuple(findings), sound)


def _finding(
    case: Case, valve: str, tundish: str, pipes: tuple[str, ...], length_m: float, limit_m: float
) -> Finding:
    return Finding(
        NAME,
        Grade.DANGER,
        Says(
            "{thing} stands {length} m of pipe from {tundish}; at most {limit} m is allowed.",
            {
                "thing": upper(case.drawing.name(valve)),
                "tundish": case.drawing.name(tundish),
                "length": figure(length_m),
                "limit": figure(limit_m),
            },
        ),
        components=(valve, tundish),
        pipes=pipes,
        numbers={"length_m": length_m, "limit_m": limit_m},
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To shorten the longest pipe before the tundish, where its length is given, by what is too much."""
    too_much = finding.numbers["length_m"] - finding.numbers["limit_m"]
    given = {
        pipe: measure.value
        for pipe in finding.pipes
        if (measure := case.length_m(pipe)) is not None and measure.how == "given"
    }
    longest = max(given, key=lambda pipe: given[pipe], default=None)
    if longest is None or given[longest] <= too_much:
        return
    length = round(given[longest] - too_much, 6)
    rise = case.drawing.pipes[longest].data.get("rise_m")
    drawing = set_field(case.drawing, longest, "length_m", length)
    if rise is not None and abs(rise) > length:
        drawing = set_field(drawing, longest, "rise_m", length if rise > 0 else -length)
    yield Proposal(
        Says(
            "Move {tundish} closer: {pipe} {length} m long.",
            {
                "tundish": case.drawing.name(finding.components[1]),
                "pipe": case.drawing.name(longest),
                "length": figure(length),
            },
        ),
        drawing,
    )
