"""Uncontrolled heat on a sealed circuit.

Flags: A heat source whose heat cannot be switched off, as a solid-fuel fire's, on water that reaches
    no open vent and no feed cistern. Sealed water behind a heat exchanger is not meant: the
    uncontrolled source then stands on the other side.
Why: A fire goes on giving heat when the pump stops or the power fails. An open vent lets the steam
    away and a cistern makes up what is lost; a sealed circuit can do neither: the pressure climbs to
    the safety valve, which blows until there is no water left over the fire, and a stuck valve then
    means an explosion.
Remedy: Put the uncontrolled heat source on an open-vented circuit of its own, with a vent and a cold
    feed that nothing can shut; join a sealed circuit to it only through a heat exchanger.
Source: BS 5449 and BS EN 12828 (from memory); for solid fuel: common practice, no source.
"""

from __future__ import annotations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import heated_waters
from circuitcheck.checks.wording import upper
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "uncontrolled-source-sealed"


def judge(case: Case) -> Verdict:
    """One danger for each uncontrolled heat source whose water is sealed."""
    heats = {place.part: case.value(place.part, "heat") for place in case.circuit.devices(Role.HEATS)}
    if all(heat == "switched" for heat in heats.values()):
        return Verdict()
    findings, sound = [], 0
    for water in heated_waters(case):
        part = water.heated.part
        heat = heats.get(part, "switched")
        if water.heated.by_exchanger or heat == "switched":
            continue
        case.rests_on_pressure_ways(water.reach)
        if water.is_open_vented:
            sound += 1
            continue
        values = {"thing": upper(case.drawing.name(part))}
        if heat is None:
            findings.append(
                Finding(
                    NAME,
                    Grade.UNANSWERED,
                    Says(
                        "{thing} is on a sealed circuit; whether its heat can be switched off is not known.",
                        values,
                    ),
                    (part,),
                    missing=(f"{part}.heat",),
                    would_be=Grade.DANGER,
                )
            )
            continue
        says = Says(
            "{thing} gives heat that cannot be switched off, and its water is sealed: it reaches no open "
            "vent and no feed cistern.",
            values,
        )
        findings.append(Finding(NAME, Grade.DANGER, says, (part,)))
    return Verdict(tuple(findings), sound)
