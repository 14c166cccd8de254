"""Too little water always circulates for the heat source.

Flags: A heat source that states how much water must go round through it, and a situation in which
    heating is called and less does: the motor valves stand as their controls put them, and thermostatic
    heads and what has a hand wheel are shut. Hot water by a coil or an exchanger is passed: what is
    behind it takes up the heat. So is a heat source that states it needs none, or that no pump serves.
Why: Such a heat source cannot turn its heat down as far as one room wants. What it makes too much must
    go into the water. With only a few litres going round, these are hot within a minute: it stops,
    starts again, and wears itself out; a heat pump finds no heat in them to melt its ice with.
Remedy: Leave the emitters of a room or two without thermostatic heads, put the bypass at the far end so
    that more pipe goes round, or fit a buffer that all the water passes through.
Source: The least content is what the maker of the heat source states. That thermostatic heads count as
    shut: common practice, no source.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.wording import figure, shortened, upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.situations import HEATING_ONLY
from circuitcheck.figures.going_round import GoingRound, heated_rounds
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within
from circuitcheck.told import a_word

NAME = "content-below-minimum"
FIELD = "minimum_content_l"


def judge(case: Case) -> Verdict:
    """One finding for each heat source on pumped water that heats more than coils."""
    findings: list[Finding] = []
    sound = 0
    pumped = {case.bodies.of(pump.node) for pump in case.circuit.devices(Role.PUMPS)}
    for heat in case.circuit.devices(Role.HEATS):
        if case.bodies.of(heat.other) not in pumped:
            continue
        needed = case.value(heat.part, FIELD)
        if needed is None:
            # What the lengths of pipes come to is asked for once it is known to matter.
            findings.append(_unanswered(case, heat, (f"{heat.part}.{FIELD}",)))
        elif needed == 0:
            sound += 1
        else:
            rounds = _rounds(case, heat)
            finding = _judged(case, heat, float(needed), rounds)
            findings += [] if finding is None else [finding]
            sound += bool(rounds) and finding is None
    return Verdict(tuple(findings), sound)


def _rounds(case: Case, heat: Placed) -> tuple[GoingRound, ...]:
    """What goes round in each situation that asks for it, and what its answer rests on noted."""
    case.rests_on_water_ways(case.bodies.of(heat.other))
    for part, field in case.situations.reads:
        case.value(part, field)
    return heated_rounds(case, heat)


def _judged(case: Case, heat: Placed, needed: float, rounds: tuple[GoingRound, ...]) -> Finding | None:
    short = [each for each in rounds if not within(needed, each.litres)]
    sure = [each for each in short if not each.missing]
    if sure:
        least = min(sure, key=lambda each: each.litres)
        return _finding(case, heat, needed, least)
    unsure = [each for each in short if not each.situation.missing]
    whole = case.contents.of(case.bodies.of(heat.other))
    if unsure and whole.known and not within(needed, whole.litres):
        return _all_too_little(case, heat, needed, whole.litres)
    missing = tuple(dict.fromkeys(field for each in short for field in each.missing))
    return _unanswered(case, heat, missing) if missing else None


def _finding(case: Case, heat: Placed, needed: float, least: GoingRound) -> Finding:
    called = a_word("heating alone") if least.situation.name == HEATING_ONLY else least.situation.name
    says = Says(
        "{thing} needs {needed} l of water going round through it, and {litres} l do that nothing shuts off "
        "with {called} called.",
        {
            "thing": upper(case.drawing.name(heat.part)),
            "needed": figure(needed),
            "litres": figure(least.litres),
            "called": a_word("heating and hot water") if called == "both" else called,
        },
    )
    numbers = {"circulating_l": least.litres, "minimum_content_l": needed}
    return Finding(NAME, Grade.FAULT, says, (heat.part,), numbers=numbers)


def _all_too_little(case: Case, heat: Placed, needed: float, litres: float) -> Finding:
    says = Says(
        "{thing} needs {needed} l of water going round through it, and the whole circuit holds {litres} l.",
        {
            "thing": upper(case.drawing.name(heat.part)),
            "needed": figure(needed),
            "litres": figure(litres),
        },
    )
    numbers = {"content_l": litres, "minimum_content_l": needed}
    return Finding(NAME, Grade.FAULT, says, (heat.part,), numbers=numbers)


def _unanswered(case: Case, heat: Placed, missing: tuple[str, ...]) -> Finding:
    says = Says(
        "Does enough water always go round through {thing}? It rests on what is not known: {missing}.",
        {
            "thing": case.drawing.name(heat.part),
            "missing": shortened(missing),
        },
    )
    return Finding(NAME, Grade.UNANSWERED, says, (heat.part,), missing=missing, would_be=Grade.FAULT)
