"""What the checks of heating water share: its sealed waters, its filling links, its pipes and parts."""

from __future__ import annotations

from collections.abc import Iterable

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Verdict
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters
from circuitcheck.checks.wording import upper
from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role


def sealed_waters(case: Case) -> tuple[HeatedWater, ...]:
    """The heated waters that are not open-vented, in the order of the drawing."""
    return tuple(water for water in heated_waters(case) if not water.is_open_vented)


def sealed_heating_waters(case: Case) -> tuple[HeatedWater, ...]:
    """The sealed waters but for those of a store that is heated directly: the main fills these."""
    bodies = set(heating_bodies(case))
    return tuple(water for water in sealed_waters(case) if water.heated.body in bodies)


def heating_bodies(case: Case) -> tuple[int, ...]:
    """The bodies of heating water, each once. Water that a store holds for drawing is none, though a
    heat source stands in it."""
    stores = {
        case.bodies.of(place.node)
        for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN)
        for place in case.circuit.devices(role)
    }
    return tuple(dict.fromkeys(heated.body for heated in case.bodies.heated if heated.body not in stores))


def heater_of(case: Case, body: int) -> str:
    """The first part that heats a body of heating water."""
    return next(heated.part for heated in case.bodies.heated if heated.body == body)


def judge_without(
    case: Case, check: str, grade: Grade, template: str, waters: Iterable[tuple[HeatedWater, bool]]
) -> Verdict:
    """One finding for each water that has not what the check asks for; `template` takes {thing}."""
    findings, sound = [], 0
    for water, has_it in waters:
        case.rests_on_pressure_ways(water.reach)
        if has_it:
            sound += 1
            continue
        part = water.heated.part
        says = Says(template, {"thing": upper(case.drawing.name(part))})
        findings.append(Finding(check, grade, says, (part,)))
    return Verdict(tuple(findings), sound)


def filling_links(case: Case) -> tuple[Placed, ...]:
    """The filling links that stand as parts of their own, but for those on open-vented water."""
    links = [link for link in case.circuit.devices(Role.FILLS) if not link.device.built_in]
    if not links:
        return ()
    sealed: dict[int, bool] = {}
    for water in heated_waters(case):
        body = water.heated.body
        sealed[body] = sealed.get(body, False) or not water.is_open_vented
    for role in (Role.VENTS, Role.FEEDS):
        for place in case.circuit.devices(role):
            sealed.setdefault(case.bodies.of(place.node), False)
    return tuple(link for link in links if sealed.get(case.bodies.of(link.node), True))


def judge_switch(
    case: Case,
    check: str,
    field: str,
    grade: Grade,
    *,
    wrong: bool,
    template: str,
    unknown: str,
) -> Verdict:
    """Judges each filling link by a switch of its data. Both templates take {link}."""
    findings, sound = [], 0
    for link in filling_links(case):
        state = case.value(link.part, field)
        name = case.drawing.name(link.part)
        if state is None:
            findings.append(
                Finding(
                    check,
                    Grade.UNANSWERED,
                    Says(unknown, {"link": name}),
                    (link.part,),
                    missing=(f"{link.part}.{field}",),
                    would_be=grade,
                )
            )
        elif state is wrong:
            findings.append(Finding(check, grade, Says(template, {"link": upper(name)}), (link.part,)))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def joints_of(case: Case, part: str, body: int) -> tuple[Joint, ...]:
    """A part's joined ports on that body of water, its return's side first."""
    joined = case.drawing.joined
    joints = [Joint(part, port.name) for port in case.drawing.components[part].kind.ports]
    on_it = [
        joint for joint in joints if joint in joined and case.bodies.of(case.circuit.node(*joint)) == body
    ]
    return tuple(sorted(on_it, key=lambda joint: not joint.port.endswith(("return", "_in"))))


def fitting_joints(case: Case, part: str) -> tuple[Joint, ...]:
    """Where something may be fitted on the water that a part heats, its return's side first."""
    body = next((heated.body for heated in case.bodies.heated if heated.part == part), None)
    return () if body is None else joints_of(case, part, body)
