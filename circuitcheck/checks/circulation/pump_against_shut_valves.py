"""Pump runs against shut valves.

Flags: Some position of the motor valves and thermostatic heads leaves a running pump with no loop at
    all to drive water round. A pump that a control acts on is judged in the positions in which the
    valves of that control are open. Excused as the run-on is, where end switches stop the pump. A
    pump in drinking water that is part of no ring, as a booster is, is not meant here.
Why: A pump with nowhere to drive water churns what is inside it until that is hot; it wears, hums
    and in the end seizes, and the pressure it makes finds the weakest joint or pushes a valve open.
Remedy: Give the pump an automatic bypass valve from its delivery to its suction side that nothing
    can shut, let the control that shuts the valves stop the pump too, or leave one way always open.
Source: Common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.circulation_cures import (
    backwards_turned_round,
    with_bypass,
    with_bypass_round_pump,
)
from circuitcheck.checks.run_on import NOT_KNOWN, Ruling, proved, rule
from circuitcheck.checks.wording import upper, valves
from circuitcheck.circuit.circulation import PumpRound
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "pump-against-shut-valves"


def judge(case: Case) -> Verdict:
    """One finding for each pump that some position leaves without a loop."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.PUMPS):
        pump = place.part
        if _boosts(case, pump, case.bodies.of(place.other)):
            continue
        case.rests_on_water_ways(case.bodies.of(place.other))
        try:
            ruling = _ruling(case, pump)
        except TooLargeError:
            findings.append(too_large(case, NAME, pump, Grade.FAULT))
            continue
        if ruling is None:
            sound += 1
        else:
            findings.append(_finding(case, pump, ruling))
    return Verdict(tuple(findings), sound)


def _boosts(case: Case, pump: str, body: int) -> bool:
    """Whether it drives drinking water on to where it is drawn: that is no ring, and is meant so."""
    if body not in case.bodies.drinking or case.flow.heats_with(pump):
        return False
    return not PumpRound(case.flow, pump).stands_in_a_ring


def _ruling(case: Case, pump: str) -> Ruling | None:
    """The worst ruling over the controls that run the pump; any position where none acts on it."""
    turn = PumpRound(case.flow, pump)
    if turn.always_open:
        return None
    heats = case.flow.heats_with(pump)
    rulings = []
    for kept_open in _kept_open(case, pump, turn.labels):

        def shut_in(more: frozenset[str], kept_open: frozenset[str] = kept_open) -> frozenset[str] | None:
            return turn.shut_in(kept_open | more)

        if heats:
            ruling = rule(case, heats, turn.labels, shut_in, turn.is_open)
        else:
            position = shut_in(frozenset())
            ruling = None if position is None else proved(Grade.FAULT, position, turn.labels, turn.is_open)
        if ruling is not None:
            # What the control holds open while the pump runs is never shut then, so does nothing alone.
            rulings.append(replace(ruling, alone=ruling.alone - kept_open))
    return min(rulings, key=lambda each: (each.grade.rank, len(each.labels)), default=None)


def _kept_open(case: Case, pump: str, labels: frozenset[str]) -> list[frozenset[str]]:
    """For each control that acts on the pump, the labels of the valves it holds open with it.

    A three-port valve is not held: which of its legs a control calls is the valve's own business.
    """
    found = []
    for control in case.drawing.controls.values():
        if pump in control.acts_on:
            found.append(frozenset(label for label in labels if label in control.acts_on))
    return found or [frozenset()]


def _finding(case: Case, pump: str, ruling: Ruling) -> Finding:
    witness = ruling.witness(case)
    if witness.shut:
        template = "{thing} has nowhere to drive water with {valves} shut."
    else:
        template = "{thing} has no loop to drive water round, however the valves stand."
    says = Says(
        f"{template} {NOT_KNOWN}" if ruling.missing else template,
        {
            "thing": upper(case.drawing.name(pump)),
            "valves": valves(case.drawing, witness.shut),
            "missing": ", ".join(ruling.missing),
        },
    )
    return Finding(
        NAME,
        ruling.grade,
        says,
        components=tuple(dict.fromkeys((pump, *witness.parts))),
        witness=witness,
        missing=ruling.missing,
        would_be=Grade.FAULT if ruling.grade is Grade.UNANSWERED else None,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """Whatever stands backwards turned round; a bypass through the heat source, or round the pump."""
    pump = finding.components[0]
    yield from backwards_turned_round(case)
    yield from with_bypass(case, (pump,), case.flow.heats_with(pump))
    if pump not in case.circuit.parts_with(Role.HEATS):
        yield from with_bypass_round_pump(case, pump)
