"""Feed cistern is too small for its circuit.

Flags: The cisterns that feed an open-vented heating circuit hold less than its water gains as it is
    heated, taken as 4 % of its content. Advice where they take up the swell but hold less than 18
    litres, the smallest that is made for the purpose.
Why: Heated water swells, and an open-vented circuit pushes what it gains back into its cistern. A cistern
    that has no room for it runs over through the warning pipe at every heating, and draws the same
    amount of fresh water at every cooling. Fresh water brings air and lime, and the radiators rust.
Remedy: Fit a cistern large enough, and set its float valve so low that the swell finds room below the
    warning pipe.
Source: BS 5449 and WFR guidance to Schedule 2, as taught in trade textbooks: 4 % of the content, and 18
    litres at least. Others take 5 % (from memory): sources disagree.
"""

from __future__ import annotations

from collections.abc import Iterator
from math import ceil

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.sizing.open_vent import cistern_l
from circuitcheck.told import a_word

NAME = "cistern-too-small"
FIELD = "content_l"


def judge(case: Case) -> Verdict:
    """One finding for each heating water whose feed cisterns are too small for it."""
    findings: list[Finding] = []
    sound = 0
    seen: set[tuple[str, ...]] = set()
    for water in heated_waters(case) if case.circuit.devices(Role.FEEDS) else ():
        cisterns = tuple(dict.fromkeys(place.part for place in water.reached(Role.FEEDS)))
        if not cisterns or cisterns in seen or water.heated.body in case.bodies.drinking:
            continue
        seen.add(cisterns)
        case.rests_on_pressure_ways(water.reach)
        finding = _judged(case, water, cisterns)
        findings += [] if finding is None else [finding]
        sound += finding is None
    return Verdict(tuple(findings), sound)


def _judged(case: Case, water: HeatedWater, cisterns: tuple[str, ...]) -> Finding | None:
    share = float(case.limit("open_vent.cistern_share").value)
    smallest = float(case.limit("open_vent.least_cistern_l").value)
    content = case.contents.of(water.heated.body)
    swell = cistern_l(content.litres, share)
    held = {cistern: case.value(cistern, FIELD) for cistern in cisterns}
    missing = [f"{cistern}.{FIELD}" for cistern, litres in held.items() if litres is None]
    holds = sum(float(litres) for litres in held.values() if litres is not None)
    numbers = {"smallest_cistern_l": smallest, "swell_share": share}
    if missing:
        return _unanswered(case, cisterns, (*missing, *content.missing), numbers)
    numbers |= {"content_l": holds}
    if not within(swell, holds):
        numbers |= {"circuit_content_l": content.litres, "swell_l": swell}
        template = "{cisterns} {verb} {holds} l, and the {litres} l of water that {they} swell by {swell} l."
        return _finding(case, cisterns, Grade.FAULT, template, numbers)
    if not within(smallest, holds):
        template = "{cisterns} {verb} {holds} l; no feed cistern should hold less than {smallest} l."
        return _finding(case, cisterns, Grade.ADVICE, template, numbers, tuple(content.missing))
    return None if content.known else _unanswered(case, cisterns, tuple(content.missing), numbers)


def _finding(
    case: Case,
    cisterns: tuple[str, ...],
    grade: Grade,
    template: str,
    numbers: dict[str, float],
    missing: tuple[str, ...] = (),
) -> Finding:
    one = len(cisterns) == 1
    values: dict[str, str | float] = {
        "cisterns": upper(named(case.drawing, cisterns)),
        "verb": a_word("holds") if one else a_word("hold"),
        "they": a_word("it feeds") if one else a_word("they feed"),
        "holds": figure(numbers["content_l"]),
        "litres": figure(numbers.get("circuit_content_l", 0.0)),
        "swell": figure(numbers.get("swell_l", 0.0)),
        "smallest": figure(numbers["smallest_cistern_l"]),
    }
    says = Says(template, values)
    return Finding(NAME, grade, says, cisterns, numbers=numbers, missing=missing)


def _unanswered(
    case: Case, cisterns: tuple[str, ...], missing: tuple[str, ...], numbers: dict[str, float]
) -> Finding:
    says = Says(
        "Whether {cisterns} takes up what the heating water gains is not known: {missing}.",
        {"cisterns": named(case.drawing, cisterns), "missing": shortened(missing)},
    )
    return Finding(
        NAME, Grade.UNANSWERED, says, cisterns, numbers=numbers, missing=missing, would_be=Grade.FAULT
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The one cistern made as large as it must be, in whole litres."""
    if len(finding.components) != 1:
        return
    cistern = finding.components[0]
    needed = max(finding.numbers.get("swell_l", 0.0), finding.numbers["smallest_cistern_l"])
    litres = ceil(round(needed, 6))
    says = Says(
        "Fit a cistern that holds {litres} l in place of {cistern}.",
        {"litres": figure(litres), "cistern": case.drawing.name(cistern)},
    )
    yield Proposal(says, set_field(case.drawing, cistern, FIELD, litres))
