"""Floor heating that nothing keeps from the full flow temperature.

Flags: A heating zone whose highest flow temperature is below the flow's, with a loop from the heat
    source to it that passes no blending valve set to that temperature or less. A zone whose limit is
    not stated is not judged.
Why: Floor pipes lie in screed. Water at radiator temperature cracks it, lifts the boards and burns
    bare feet; some floor pipe is not made for it either.
Remedy: Put a blending valve, set to the zone's limit or less, in the flow to the zone before its pump,
    with its cold port on the zone's return.
Source: Common practice, no source; that the zone's limit is what its maker states is its own data.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.wording import figure, listed, upper
from circuitcheck.checks.zones import is_zone
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.rounds import key_of, part_of_key
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "floor-heating-unlimited"
FIELD = "maximum_flow_temperature_c"

UNLIMITED = (
    "{thing} takes water of at most {limit} °C, and water of {flow} °C reaches it with no blending valve "
    "on the way that is set to that or less."
)
NOT_KNOWN = (
    "{thing} takes water of at most {limit} °C. Whether hotter water reaches it rests on what is not "
    "known: {missing}."
)


def judge(case: Case) -> Verdict:
    """One finding for each zone that too hot water can reach."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.EMITS):
        zone = place.part
        limit = case.value(zone, FIELD) if is_zone(case, zone) else None
        if limit is None:
            continue
        body = case.situations.rounds.of(zone)
        if body is None or not body.warms:
            continue
        try:
            finding = _judged(case, zone, limit)
        except TooLargeError:
            finding = too_large(case, NAME, zone, Grade.FAULT)
        if finding is None:
            sound += 1
        else:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, zone: str, limit: float) -> Finding | None:
    flow, missing = _flow_temperature(case)
    if flow is not None and flow <= limit:
        return None
    blending = [place.part for place in case.circuit.devices(Role.BLENDS) if _is_heating(case, place)]
    settings = {valve: case.value(valve, "set_temperature_c") for valve in blending}
    fitting = [valve for valve, setting in settings.items() if setting is not None and setting <= limit]
    case.rests_on_water_ways(case.bodies.of(case.circuit.node(zone, "flow")))
    if not _reached_past(case, zone, fitting):
        return None
    unknown = [valve for valve, setting in settings.items() if setting is None]
    if unknown and not _reached_past(case, zone, fitting + unknown):
        missing += tuple(f"{valve}.set_temperature_c" for valve in unknown)
    thing = upper(case.drawing.name(zone))
    if flow is None or missing:
        values: dict[str, str | float] = {"thing": thing, "limit": figure(limit), "missing": listed(missing)}
        says = Says(NOT_KNOWN, values)
        return Finding(NAME, Grade.UNANSWERED, says, (zone,), missing=missing, would_be=Grade.FAULT)
    says = Says(UNLIMITED, {"thing": thing, "limit": figure(limit), "flow": figure(flow)})
    numbers = {FIELD: limit, "flow_temperature_c": flow}
    return Finding(NAME, Grade.FAULT, says, (zone, *blending), numbers=numbers)


def _flow_temperature(case: Case) -> tuple[float | None, tuple[str, ...]]:
    """The flow's temperature in °C: as designed, else the highest that the heat sources give."""
    flow = case.design("flow_temperature_c")
    if flow is not None:
        return flow, ()
    highest = [case.value(place.part, FIELD) for place in case.circuit.devices(Role.HEATS)]
    if highest and None not in highest:
        return max(highest), ()
    return None, ("design.flow_temperature_c",)


def _is_heating(case: Case, place: Placed) -> bool:
    """Whether a blending valve stands on heated water that something takes heat from."""
    body = case.situations.rounds.of(key_of(place.part, place.device.port))
    return body is not None and bool(body.warms and body.takes)


def _reached_past(case: Case, key: str, valves: list[str]) -> bool:
    """Whether a loop leads from a heat source to the zone and passes none of these blending valves;
    where an exchanger heats its water, hot water must reach the exchanger so too."""
    body = case.situations.rounds.of(key)
    if body is None:
        return False
    edges = tuple(edge for edge in body.edges if not {part_of_key(each) for each in edge.pumps} & set(valves))
    if key not in body.fed_in(edges):
        return False
    before = [each for each in map(part_of_key, body.warms) if each not in case.situations.takers.heats]
    if len(before) < len(body.warms):
        return True
    return any(
        _reached_past(case, each, valves)
        for part in before
        for other in case.situations.rounds.bodies
        for each in other.takes
        if part_of_key(each) == part
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A blending valve that is there set lower; else a new one right before the zone, fed by its return."""
    zone = finding.components[0]
    limit = finding.numbers[FIELD]
    values: dict[str, str | float] = {"zone": case.drawing.name(zone), "limit": figure(limit)}
    for valve in finding.components[1:]:
        work = Fitting(case.drawing, case.lines)
        work.set(valve, "set_temperature_c", limit)
        says = Says("Set {valve} to {limit} °C.", {**values, "valve": case.drawing.name(valve)})
        yield Proposal(says, work.drawing)
    work = Fitting(case.drawing, case.lines)
    blending = work.cut_in(
        "blending_valve", Joint(zone, "flow"), port="mixed", data={"set_temperature_c": limit}
    )
    tee = work.tee(Joint(zone, "return"))
    work.pipe(Joint(tee, "branch"), Joint(blending, "cold"))
    says = Says("Fit a blending valve set to {limit} °C before {zone}, its cold port on the return.", values)
    yield Proposal(says, work.drawing)
