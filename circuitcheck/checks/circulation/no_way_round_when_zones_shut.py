"""No way round for the heat source when the zones shut.

Flags: Some position of the motor valves and thermostatic heads leaves no pump able to drive water
    round a loop through the heat source. A bypass counts only if it lets water from flow to return,
    stands before the zone valves, takes in both the pump and the heat source, and no hand valve can
    shut it. Excused where the heat source has no run-on and no least flow and the valves' end
    switches stop heat and pump: they do once every motor valve is shut, and not while one stands
    open and another bars the way. If only thermostatic heads do it then, it is advice.
Why: When the last zone is satisfied the burner stops, but the metal is still hot and the pump runs
    on to carry that heat away. With every valve shut there is nowhere to carry it: the water in the
    heat source boils, bangs, and trips the high limit; in time it cracks the exchanger.
Remedy: Join an automatic bypass valve from flow to return, between the pump and the first zone
    valve, with no hand valve in it; or leave one emitter, such as a towel rail without valves that
    anybody can shut, always open.
Source: Domestic Building Services Compliance Guide (England), 2013 edition, automatic bypass valves
    (from memory); for the place of the bypass: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.circulation_cures import backwards_turned_round, bypass_mended, with_bypass
from circuitcheck.checks.run_on import NOT_KNOWN, Ruling, rule
from circuitcheck.checks.wording import listed, upper, valves
from circuitcheck.circuit.circulation import HeatRound, Spoilers
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import shown
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word, strung, worded

NAME = "no-way-round-when-zones-shut"


def judge(case: Case) -> Verdict:
    """One finding for each heat source that some position leaves without a way round."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.HEATS):
        heat = place.part
        turn = HeatRound(case.flow, heat)
        if not turn.always_open and not turn.pumps:
            continue  # no pump, no run-on: gravity is judged by other checks
        case.rests_on_water_ways(case.bodies.of(place.other))
        if turn.always_open:
            sound += 1
            continue
        try:
            ruling = rule(case, (heat,), turn.labels, turn.shut_in, turn.is_open)
        except TooLargeError:
            findings.append(too_large(case, NAME, heat, Grade.FAULT))
            continue
        if ruling is None:
            sound += 1
        else:
            findings.append(_finding(case, heat, turn, ruling))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, heat: str, turn: HeatRound, ruling: Ruling) -> Finding:
    drawing = case.drawing
    witness = ruling.witness(case)
    reasons = _reasons(case, turn.spoilers(ruling.labels))
    own = {place.part for place in case.circuit.devices(Role.PUMPS) if place.device.built_in}
    names = {pump: drawing.name(pump) for pump in turn.pumps}
    pumps = listed(
        worded("the pump in {name}", name=name) if pump in own else name for pump, name in names.items()
    )
    if witness.shut:
        template = "With {valves} shut, {pumps} can drive no water round through {thing}."
    else:
        template = "{pumps} can drive no water round through {thing}, however the valves stand."
    if ruling.missing:
        reasons.append(a_word(NOT_KNOWN))
    says = Says(
        strung([a_word(template), *reasons], " "),
        {
            "missing": ", ".join(ruling.missing),
            "thing": drawing.name(heat),
            "valves": valves(drawing, witness.shut),
            "pumps": pumps if witness.shut else upper(pumps),
        },
    )
    return Finding(
        NAME,
        ruling.grade,
        says,
        components=tuple(dict.fromkeys((heat, *witness.parts, *turn.pumps))),
        witness=witness,
        missing=ruling.missing,
        would_be=Grade.FAULT if ruling.grade is Grade.UNANSWERED else None,
    )


def _reasons(case: Case, spoilers: Spoilers) -> list[str]:
    """Why what looks like a way round is none; braces in a name stay as they are."""
    drawing = case.drawing
    told = (
        (spoilers.backwards, a_word("is fitted the wrong way round")),
        (spoilers.shut_by_hand, a_word("can be shut by hand")),
        (spoilers.householder, a_word("can be shut by the householder")),
        (spoilers.beyond_valves, a_word("lies beyond the valves that shut")),
        (spoilers.round_pump_only, a_word("leads round the pump alone and not through the heat source")),
    )
    found: list[str] = []
    for parts, reason in told:
        for part in parts:
            name = upper(drawing.name(part)).replace("{", "{{").replace("}", "}}")
            found.append(worded("{name} does not count: it {reason}.", name=name, reason=a_word(reason)))
    return found


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """What is there mended or turned round, else a new bypass before the zone valves."""
    heat = finding.components[0]
    turn = HeatRound(case.flow, heat)
    if finding.witness is not None:
        shut = frozenset(label for label in turn.labels if shown(label) in finding.witness.shut)
        spoilers = turn.spoilers(shut)
        yield from bypass_mended(case, spoilers)
        yield from backwards_turned_round(case, spoilers.backwards)
    yield from with_bypass(case, turn.pumps, (heat,))
