"""Heating zone without a control.

Flags: A heating zone, or the radiators of a heating circuit together, that no room thermostat and no
    programmer can stop: none acts on a motor valve, a pump or a heat source that it cannot do without.
    Thermostatic heads alone are no control. One emitter that is left open on purpose, as a way round
    for the pump, is not meant; nor is one without any valve on the water of a heat source that cannot
    be switched off: it takes away the heat that must have somewhere to go.
Why: A zone that nothing stops is heated whenever anything else is: in summer, when only the store calls,
    at night, and when the room has long been warm enough.
Remedy: Give the zone a motor valve (or a pump) of its own, and let a room thermostat and a programmer
    act on it.
Source: City & Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: each space-heating circuit
    has time control of its own and a room thermostat.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.control_cures import fit_valve, own_holder, with_thermostat
from circuitcheck.checks.wording import named_again, upper
from circuitcheck.checks.zones import HEATING_CONTROLS, always_open_one, is_held, zones
from circuitcheck.circuit.takers import HEATING
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role, Way

NAME = "zone-without-control"
ROOM = "room_thermostat"

ZONE = "{things}: no room thermostat and no programmer can stop its heat."
RADIATORS = "{things}: no room thermostat and no programmer can stop their heat."


def judge(case: Case) -> Verdict:
    """One finding for each zone, and for each circuit's uncontrolled radiators together."""
    if not case.circuit.devices(Role.EMITS):
        return Verdict()
    heats = (place.part for place in case.circuit.devices(Role.HEATS))
    fires = frozenset(heat for heat in heats if case.value(heat, "heat") == "uncontrolled")
    # It rests on no other data: a part called otherwise changes the sentence alone.
    found, sound = case.circuit.keep(f"{__name__} {sorted(fires)}", lambda: _uncontrolled(case, fires))
    return Verdict(tuple(_finding(case, parts) for parts in found), sound)


def _uncontrolled(case: Case, fires: frozenset[str]) -> tuple[list[tuple[str, ...]], int]:
    """The zones, and the circuits' radiators, without a control; and how many have one."""
    fed = case.situations.takers.fed
    found: list[tuple[str, ...]] = []
    sound = 0
    loose: dict[int, list[str]] = defaultdict(list)
    body_of = case.bodies.by_node
    groups, controlled = zones(case), bool(case.drawing.controls)
    for part, _, node, _ in case.circuit.devices(Role.EMITS):
        if part not in fed:
            continue  # on no loop: another check speaks
        if (controlled and is_held(case, part, HEATING_CONTROLS)) or (
            fires and _leaks_heat(case, part, fires)
        ):
            sound += 1
        elif part in groups:
            found.append((part,))
        else:
            loose[body_of[node]].append(part)
    for parts in loose.values():
        left_open = always_open_one(case, parts)
        judged = tuple(part for part in parts if part != left_open)
        if judged:
            found.append(judged)
        elif sound or found:
            sound += 1
        else:
            found.append(tuple(parts))
    return found, sound


def _leaks_heat(case: Case, part: str, fires: frozenset[str]) -> bool:
    """Whether it takes the heat of a source that cannot be switched off, and nothing shuts it."""
    body = case.situations.rounds.of(part)
    if body is None or case.situations.holders.get(part):
        return False
    if any(passage.way is not Way.OPEN for passage in case.circuit.plans[part].passages):
        return False
    return not fires.isdisjoint(body.warms)


def _finding(case: Case, parts: tuple[str, ...]) -> Finding:
    says = Says(ZONE if len(parts) == 1 else RADIATORS, {"things": upper(named_again(case, parts))})
    return Finding(NAME, Grade.ADVICE, says, parts)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A room thermostat on the valve or pump that is the zone's own; else on a new valve before it."""
    first = finding.components[0]
    holder = own_holder(case, first, case.situations.takers.serving(frozenset({HEATING})))
    values: dict[str, str | float] = {"thing": case.drawing.name(first)}
    if holder:
        says = Says(
            "Fit a room thermostat that acts on {holder}.", {**values, "holder": case.drawing.name(holder)}
        )
        yield Proposal(says, with_thermostat(case.drawing, ROOM, holder, first))
    if len(finding.components) == 1:
        work = Fitting(case.drawing, case.lines)
        valve = fit_valve(work, case, first)
        says = Says(
            "Fit a motor valve in the flow to {thing}, and a room thermostat that acts on it.", values
        )
        yield Proposal(says, with_thermostat(work.drawing, ROOM, valve, first))
