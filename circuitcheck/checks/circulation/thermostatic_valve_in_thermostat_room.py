"""Thermostatic head in the room of the room thermostat.

Flags: A radiator or zone with thermostatic heads in the room in which a room thermostat hangs.
Why: Two controls then mind one room. If the head is set lower, it shuts the radiator before the
    thermostat has enough: the room never gets as warm as the thermostat asks for, so it never stops
    calling, and the heat source runs on for the rest of the house.
Remedy: Fit plain lockshield or wheel-head valves to the radiator in the thermostat's room, left open.
Source: City & Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: thermostatic heads on the
    radiators of rooms without a room thermostat.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import named, upper
from circuitcheck.checks.zones import is_thermostatic, is_zone
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "thermostatic-valve-in-thermostat-room"


def judge(case: Case) -> Verdict:
    """One finding for each emitter with a head in a thermostat's room."""
    together: dict[str, list[str]] = {}
    for control in case.drawing.controls.values():
        if control.kind.name == "room_thermostat":
            for part in control.in_same_room_as:
                if _has_heads(case, part):
                    together.setdefault(part, []).append(control.id)
    findings, sound = [], 0
    for part, thermostats in together.items():
        case.value(part, _field(case, part))
        if not is_thermostatic(case, part):
            sound += 1
            continue
        values = {"thing": upper(case.drawing.name(part)), "thermostats": named(case.drawing, thermostats)}
        template = (
            "{thing} has a thermostatic head in the room of {thermostats}: the two work against each other."
        )
        findings.append(Finding(NAME, Grade.ADVICE, Says(template, values), (part,)))
    return Verdict(tuple(findings), sound)


def _field(case: Case, part: str) -> str:
    return "all_thermostatic" if is_zone(case, part) else "thermostatic"


def _has_heads(case: Case, part: str) -> bool:
    known = case.drawing.components.get(part)
    return known is not None and any(field.name == _field(case, part) for field in known.kind.own_fields)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A plain valve in place of the head."""
    part = finding.components[0]
    says = Says(
        "Fit plain valves to {thing} in place of thermostatic heads.", {"thing": case.drawing.name(part)}
    )
    yield Proposal(says, set_field(case.drawing, part, _field(case, part), False))
