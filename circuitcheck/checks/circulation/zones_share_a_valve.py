"""Zones that share one motor valve.

Flags: A motor valve (or one leg of a three-port valve) that two zones depend on and that neither has a
    valve or a controlled pump of its own beside: two heating zones, two stores, heating together with
    hot water, or emitters in rooms of two room thermostats that both act on it.
Why: A valve is open or shut. When one zone calls, the other is heated with it, whether it calls or not;
    when hot water calls in summer, the radiators come on.
Remedy: Give each zone a motor valve of its own, with its own thermostat.
Source: City & Guilds Textbook: Plumbing, Book 1 (2019), controls for heating: each circuit is
    controlled by itself.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.control_cures import acting_also, fit_valve, thermostat_for, with_thermostat
from circuitcheck.checks.wording import named, upper, valve
from circuitcheck.checks.wording import part_of as part_in
from circuitcheck.checks.zones import zones
from circuitcheck.circuit.takers import HEATING, HOT_WATER
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.removing import remove
from circuitcheck.finding import Finding, Grade, Says

NAME = "zones-share-a-valve"

SHARED = "{valve} is the only valve of {zones}: none of them can be heated without the others."
TWO_THERMOSTATS = "{valve} obeys {thermostats}: when one calls, the rooms of the others are heated too."


def judge(case: Case) -> Verdict:
    """One finding for each valve that several zones share."""
    if not (case.situations.two_port or case.situations.three_port):
        return Verdict()
    holders = case.situations.holders
    alike: dict[tuple[str, ...], list[str]] = defaultdict(list)
    for part in filter(holders.__contains__, case.drawing.components):
        held = holders[part]
        if held:
            alike[held].append(part)
    findings: dict[str, Finding] = {}
    for held, parts in alike.items():
        if len(parts) < 2 and not case.drawing.controls:
            continue
        nearest = _nearest(case, held)
        if not nearest:
            continue
        finding = (_shared(case, nearest, parts) if len(parts) > 1 else None) or _two_thermostats(
            case, nearest, parts
        )
        if finding is not None:
            findings.setdefault(nearest, finding)
    return Verdict(tuple(findings.values()), len(case.situations.valves) - len(findings))


def _nearest(case: Case, held: tuple[str, ...]) -> str:
    """The motor valve among these that holds the fewest; empty where there is none."""
    valves = [each for each in held if each in case.situations.valve_names]
    if len(valves) == 1:
        return valves[0]
    return min(valves, key=lambda each: len(case.situations.behind(each)), default="")


def _shared(case: Case, entry: str, parts: list[str]) -> Finding | None:
    groups = zones(case)
    own = [part for part in parts if part in groups]
    service = case.situations.takers.service
    heating = [part for part in parts if HEATING in service(part)]
    stores = [part for part in parts if HOT_WATER in service(part)]
    judged = own if len(own) > 1 else []
    judged = stores if len(stores) > 1 and not judged else judged
    judged = parts if heating and stores else judged
    if len(judged) < 2:
        return None
    values = {"valve": upper(valve(case.drawing, entry)), "zones": named(case.drawing, judged)}
    return Finding(NAME, Grade.ADVICE, Says(SHARED, values), (part_in(case.drawing, entry), *judged))


def _two_thermostats(case: Case, entry: str, parts: list[str]) -> Finding | None:
    valve_part = part_in(case.drawing, entry)
    controls = case.drawing.controls
    rooms = [
        id for id in case.situations.acting_on(valve_part) if controls[id].kind.name == "room_thermostat"
    ]
    if len(rooms) < 2 or entry != valve_part:
        return None
    values = {"valve": upper(case.drawing.name(valve_part)), "thermostats": named(case.drawing, rooms)}
    return Finding(NAME, Grade.ADVICE, Says(TWO_THERMOSTATS, values), (valve_part, *parts))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A valve and a thermostat for each zone in place of the one they share.

    The controls there are act on the first zone of their service, a programmer on all of them.
    """
    shared, *zones = finding.components
    if shared not in case.situations.two_port or len(zones) < 2:
        return
    work = Fitting(case.drawing, case.lines)
    valves = {zone: fit_valve(work, case, zone) for zone in zones}
    after = work.drawing
    waiting = dict(valves)
    for control in case.situations.acting_on(shared):
        kind = case.drawing.controls[control].kind.name
        if kind == "programmer":
            after = acting_also(after, control, valves.values())
            continue
        first = next((zone for zone in waiting if thermostat_for(case, zone) == kind), None)
        if first is not None:
            after = acting_also(after, control, (waiting.pop(first),))
    for zone, valve_of_zone in waiting.items():
        after = with_thermostat(after, thermostat_for(case, zone), valve_of_zone, zone)
    after = remove(after, (shared,))
    values = {"zones": named(case.drawing, zones), "valve": case.drawing.name(shared)}
    says = Says("Fit a motor valve and a thermostat each for {zones}, in place of {valve}.", values)
    yield Proposal(says, after)
