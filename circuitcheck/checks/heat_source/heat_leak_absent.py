"""Uncontrolled heat has nowhere to go that nothing can shut.

Flags: A heat source whose heat cannot be switched off, with no loop through an emitter or a store's
    coil that works without a pump and that nothing can shut. Any valve spoils it: a motor valve, a
    thermostatic head, a hand valve on the emitter itself, a secured one. So does a pump in the way,
    and a check valve: it stops water that only its warmth moves. A heating zone is a group of emitters
    that can each be shut by hand. A plain pipe is no heat leak: it gives no heat away. Two loops
    through the two legs of one three-port valve cannot both be shut by it.
Why: A fire cannot be turned off. When the power fails or every room is warm, the pumps stop and the
    valves shut, and the fire burns on. If its heat can rise by itself to a radiator or a coil that is
    always open, nothing happens; if it cannot, the water boils within minutes.
Remedy: Lead a loop of 28 mm pipe that rises all the way from the heat source to a radiator without
    valves or to a store's coil above it, and back, with no pump and no valve of any kind in it.
Source: common practice for solid fuel, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import part_of, upper, valves
from circuitcheck.circuit.gravity import GravityRound
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import shown
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.parts.kind import Role

NAME = "heat-leak-absent"


def judge(case: Case) -> Verdict:
    """One danger for each uncontrolled heat source without a heat leak."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.HEATS):
        heat = case.value(place.part, "heat")
        if heat == "switched":
            continue
        body = case.bodies.of(place.node)
        case.rests_on_water_ways(body)
        turn = GravityRound(case.circuit, case.bodies, place.part)
        try:
            if turn.never_shut:
                sound += 1
                continue
        except TooLargeError:
            findings.append(too_large(case, NAME, place.part, Grade.DANGER))
            continue
        findings.append(_finding(case, place.part, turn, is_known=heat is not None))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, part: str, turn: GravityRound, *, is_known: bool) -> Finding:
    drawing = case.drawing
    labels = turn.shut_in
    shut = tuple(sorted(map(shown, labels or ())))
    alone = tuple(sorted(map(shown, turn.alone(labels or frozenset()))))
    parts = tuple(dict.fromkeys(part_of(drawing, entry) for entry in shut))
    if labels is None:
        template = "Every loop by which {thing}'s heat could rise to an emitter or coil can be shut"
    elif shut:
        template = "With {valves} shut, {thing}'s heat cannot rise by itself to any emitter or coil"
    else:
        template = (
            "{thing}'s heat cannot rise by itself to any emitter or coil: there is no loop without a pump"
        )
    values: dict[str, str | float] = {"thing": drawing.name(part), "valves": valves(drawing, shut)}
    if labels is not None and not shut:
        values["thing"] = upper(drawing.name(part))
    if is_known:
        says = Says(template + ", and that heat cannot be switched off.", values)
        missing: tuple[str, ...] = ()
    else:
        says = Says(
            template + ". Whether that heat can be switched off is not known.",
            values,
        )
        missing = (f"{part}.heat",)
    return Finding(
        NAME,
        Grade.DANGER if is_known else Grade.UNANSWERED,
        says,
        tuple(dict.fromkeys((part, *parts))),
        witness=Witness(shut, alone, parts),
        missing=missing,
        would_be=None if is_known else Grade.DANGER,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A radiator without valves between the heat source's flow and return."""
    part = finding.components[0]
    fitting = Fitting(case.drawing, case.lines)
    leaves = Joint(fitting.tee(Joint(part, "flow")), "branch")
    enters = Joint(fitting.tee(Joint(part, "return")), "branch")
    data = {"thermostatic": False, "valves": False, "hand_wheel": False}
    wide = {"size_mm": 28}
    radiator = fitting.hang("radiator", "flow", leaves, data=data, pipe_data=wide)
    fitting.pipe(Joint(radiator, "return"), enters, data=wide)
    says = Says(
        "Join a radiator without valves, above {thing}, to its flow and return, with no pump between.",
        {"thing": case.drawing.name(part)},
    )
    yield Proposal(says, fitting.drawing)
