"""Expansion vessel is on the pump's delivery.

Flags: A vessel whose tee a pump's water comes to before any emitter, coil, exchanger or separator: it
    stands on the outlet side. It is a fault where the computed pressure then falls below atmospheric at
    a high point, or below what keeps water above 100 °C from boiling. A vessel built into the same heat
    source as the pump is its maker's arrangement and is not judged.
Why: Where the vessel joins, the pressure cannot change when the pump starts: the vessel is the fixed point of
    the circuit. On the inlet side, the pump's whole pressure is added to the rest. On the outlet side it
    is taken off instead, and at the top of the house the pressure may fall so far that air is drawn in
    through the vents, or that hot water boils.
Remedy: Move the vessel's tee to the return, close by the pump's inlet, or the pump to the other side of it.
Source: BS 7074-1 and BS 5449: the vessel on the return, close to the pump's inlet.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.sealed_cures import branch_of, moved
from circuitcheck.checks.sealed_water import sealed_with
from circuitcheck.checks.solving import barred
from circuitcheck.checks.wording import figure, named, shortened, upper
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pump_sides import PumpSides
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.expansion import sides_of
from circuitcheck.figures.lowest_pressure import Lowest, lowest_pressure
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import vapour_bar

NAME = "vessel-on-pump-delivery"
_ROUNDING_BAR = 1e-9
MOST_PLACES = 6
"""How far along a pump is tried: beyond the heat source and what stands close by it, it is no longer near."""


def judge(case: Case) -> Verdict:
    """Advice for each vessel of sealed heated water that stands on a pump's outlet side."""
    findings: list[Finding] = []
    sound = 0
    seen: set[str] = set()
    for water in sealed_with(case, Role.HOLDS_EXPANSION, Role.PUMPS):
        for vessel in water.reached(Role.HOLDS_EXPANSION):
            judged = _judged_pumps(case, vessel)
            if vessel.part in seen or not judged:
                continue
            seen.add(vessel.part)
            case.rests_on_water_ways(case.bodies.of(vessel.node))
            before = [sides.pump.part for sides in judged if sides.delivers_to(vessel.node)]
            if before:
                findings.append(_finding(case, vessel, tuple(before)))
            else:
                sound += 1
    return Verdict(tuple(findings), sound)


def _judged_pumps(case: Case, vessel: Placed) -> list[PumpSides]:
    """The two sides of each pump on the vessel's water."""
    body = case.bodies.of(vessel.node)
    return [
        sides_of(case, pump)
        for pump in case.circuit.devices(Role.PUMPS)
        if case.bodies.of(pump.node) == body
        and not (pump.device.built_in and vessel.device.built_in and pump.part == vessel.part)
    ]


def _finding(case: Case, vessel: Placed, pumps: tuple[str, ...]) -> Finding:
    lowest, missing = _lowest(case, vessel)
    least_bar = _least_bar(case)
    template = (
        "{vessel} joins on the outlet side of {pumps}: running, the pump takes its pressure off the rest of the "
        "circuit."
    )
    values: dict[str, str | float] = {
        "vessel": upper(case.drawing.name(vessel.part)),
        "pumps": named(case.drawing, pumps),
        "missing": shortened(missing),
    }
    falls = lowest is not None and lowest.bar < least_bar - _ROUNDING_BAR
    if lowest is not None and falls:
        template += " In the situation {situation} it falls to {lowest} bar at {place},"
        template += " where there must be {least} bar at least."
        values |= {
            "situation": lowest.situation,
            "lowest": figure(lowest.bar),
            "place": case.drawing.name(lowest.part),
            "least": figure(least_bar),
        }
    elif missing:
        template += " How low it falls rests on what is not known: {missing}."
    place = (lowest.part,) if lowest is not None and falls else ()
    return Finding(
        NAME,
        Grade.FAULT if falls else Grade.ADVICE,
        Says(template, values),
        components=tuple(dict.fromkeys((vessel.part, *pumps, *place))),
        numbers={} if lowest is None else {"lowest_bar": lowest.bar, "least_bar": least_bar},
    )


def _lowest(case: Case, vessel: Placed) -> tuple[Lowest | None, tuple[str, ...]]:
    """The lowest pressure anywhere on the vessel's water, or the fields that would tell it."""
    body, fill = case.solved.at(vessel), case.design("fill_pressure_bar")
    if body is None:
        return None, ()
    try:
        bar = barred(case, body)
    except TooLargeError:
        return None, ()
    missing = (
        *(bar[0] if bar is not None else ()),
        *(("design.fill_pressure_bar",) if fill is None else ()),
        *case.heights.missing_for((vessel.part,)),
    )
    if bar is not None or fill is None or missing:
        return None, tuple(dict.fromkeys(missing))
    return lowest_pressure(case, vessel, fill), ()


def _least_bar(case: Case) -> float:
    """What must be left: atmospheric pressure, and what keeps the water from boiling."""
    hottest = case.design("flow_temperature_c")
    return 0.0 if hottest is None else vapour_bar(hottest)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The vessel's branch moved to a tee right at the pump's inlet; or the pump into one of the next pipes by
    which water comes away from the vessel's tee."""
    vessel = finding.components[0]
    for pump in case.circuit.devices(Role.PUMPS):
        if pump.part in finding.components[1:]:
            port = "return" if pump.device.built_in else pump.device.port
            yield from moved(case, vessel, Role.HOLDS_EXPANSION, [Joint(pump.part, port)])
            if not pump.device.built_in:
                yield from _pump_moved(case, pump, vessel)


def _pump_moved(case: Case, pump: Placed, vessel: str) -> Iterator[Proposal]:
    known = case.drawing.components[pump.part]
    for by in _away(case, pump, vessel):
        height = case.heights.of(by.part)
        data = {**known.data, **({} if height is None else {"height_m": height})}
        work = Fitting(case.drawing, case.lines)
        pipe = case.drawing.name(work.pipe_at(by))
        try:
            work.take_out(pump.part)
            work.cut_in(known.kind.name, by, port=pump.device.port, data=data, label=known.label)
        except EditError:
            continue
        template = "Move {pump} into {pipe}, so that water comes from the tee of {vessel} to its inlet."
        names = {"pump": case.drawing.name(pump.part), "pipe": pipe, "vessel": case.drawing.name(vessel)}
        yield Proposal(Says(template, names), work.drawing)


def _away(case: Case, pump: Placed, vessel: str) -> Iterator[Joint]:
    """Where most water leaves the tee of a vessel, and each part that it then comes to, as far as the pump."""
    branch = branch_of(case, vessel, Role.HOLDS_EXPANSION)
    body = case.solved.at(pump)
    if branch is None or body is None or not body.is_known or not body.runs:
        return
    drawing = case.drawing
    hangs = {branch.port.part, *branch.between}
    ends = (end for part in hangs for pipe in drawing.pipes_of(part) for end in drawing.pipes[pipe].joints)
    part = next((end.part for end in ends if end.part not in hangs), "")
    run = max(body.runs, key=lambda each: abs(each.flow_lpm(pump.part) or 0.0))
    for _ in range(MOST_PLACES):
        leaving = [
            (abs(lpm), first, last)
            for id in drawing.pipes_of(part)
            if (lpm := run.flow_lpm(id)) and len(joints := drawing.pipes[id].joints) == 2
            for first, last in [joints if lpm > 0 else joints[::-1]]
            if first.part == part
        ]
        if not leaving or part == pump.part:
            return
        _, first, last = max(leaving)
        yield first
        part = last.part
