"""What would put a sealed circuit's vessel and safety valve right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from math import ceil, inf
from typing import Any

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.cutting_off import HeatedWater, heated_waters
from circuitcheck.checks.sealed_water import flow_of
from circuitcheck.checks.wording import figure, named
from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.regions import largest_regions
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.pipes import inline_ports
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.expansion import Expansion, Vessel
from circuitcheck.finding import Finding, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.vessel import next_made_l
from circuitcheck.told import a_word, spoken, worded

OUTLET_PIPE: dict[str, Any] = {"size_mm": 15, "material": "copper"}


def _port(joint: Joint) -> str:
    """A port as a sentence calls it."""
    return spoken({"in": "inlet", "out": "outlet"}.get(joint.port, joint.port))


def rounded_up(bar: float) -> float:
    """A pressure to a hundredth of a bar upwards, as a gauge can be read."""
    return ceil(round(bar * 100, 6)) / 100


@dataclass(frozen=True, slots=True)
class Branch:
    """How a device hangs on the circuit: its own port, and the parts in line between it and the first
    part that is not, nearest first."""

    port: Joint
    between: tuple[str, ...]


def branch_of(case: Case, part: str, role: Role) -> Branch | None:
    """The branch that a device hangs on; None where it is built in or no pipe is on it."""
    places = [place for place in case.circuit.devices(role) if place.part == part]
    if not places or places[0].device.built_in:
        return None
    drawing, port = case.drawing, Joint(part, places[0].device.port)
    here = port
    between: list[str] = []
    while len(between) <= len(drawing.components):
        pipe = drawing.joined.get(here)
        far = [end for end in drawing.pipes[pipe].joints if end != here] if pipe is not None else []
        if not far:
            return None
        inline = inline_ports(drawing.components[far[0].part].kind)
        if inline is None or len(drawing.components[far[0].part].kind.ports) != 2:
            return Branch(port, tuple(between))
        between.append(far[0].part)
        here = Joint(far[0].part, inline[1] if far[0].port == inline[0] else inline[0])
    return None


def moved(case: Case, device: str, role: Role, by: Iterable[Joint]) -> Iterator[Proposal]:
    """A device moved, with its own pipe and without what stands in it, to a tee in the pipe on each of
    these ports, right at that port."""
    branch = branch_of(case, device, role)
    if branch is None:
        return
    for place in by:
        work = Fitting(case.drawing, case.lines)
        try:
            work.take_out(*branch.between)
            pipe = work.pipe_at(branch.port)
            far = next(end for end in work.drawing.pipes[pipe].joints if end != branch.port)
            work.move_end(pipe, far.part, place)
        except (EditError, StopIteration):
            continue
        template = "Join {device} to a tee right at the {port} of {thing}"
        template += ", with nothing between: take out {between}." if branch.between else "."
        says = Says(
            template,
            {
                "device": case.drawing.name(device),
                "port": _port(place),
                "thing": case.drawing.name(place.part),
                "between": named(case.drawing, branch.between),
            },
        )
        yield Proposal(says, work.drawing)


def water_judged(case: Case, finding: Finding) -> HeatedWater | None:
    """The heated water that a finding judges."""
    return next((each for each in heated_waters(case) if each.heated.part == finding.components[0]), None)


def moved_to_flow(case: Case, finding: Finding, role: Role) -> Iterator[Proposal]:
    """Each device of the finding moved to a tee in the flow, right at what heats the water."""
    water = water_judged(case, finding)
    if water is not None:
        for part in _devices(case, finding, role):
            yield from moved(case, part, role, [flow_of(case, water)])


def moved_to_safety(case: Case, finding: Finding, role: Role) -> Iterator[Proposal]:
    """Each device of the finding moved to where nothing can cut it off from the heat."""
    water = water_judged(case, finding)
    if water is not None:
        for part in _devices(case, finding, role):
            yield from moved(case, part, role, safe_places(case, water))


def safe_places(case: Case, water: HeatedWater) -> tuple[Joint, ...]:
    """Ports from which nothing can cut the heat source off, best for a vessel first: a pump's inlet, the
    heat source's return, its flow."""
    circuit, flow = case.circuit, flow_of(case, water)
    own = [
        joint
        for port in case.drawing.components[flow.part].kind.ports
        if (joint := Joint(flow.part, port.name)) != flow
        and circuit.water(circuit.node(*joint)) == water.heated.water
    ]
    inlets = [
        Joint(pump.part, pump.device.port)
        for pump in circuit.devices(Role.PUMPS)
        if not pump.device.built_in and circuit.water(pump.node) == water.heated.water
    ]
    return (*inlets, *own, flow)


def _devices(case: Case, finding: Finding, role: Role) -> tuple[str, ...]:
    return tuple(place.part for place in case.circuit.devices(role) if place.part in finding.components)


def with_vessel(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A new vessel where nothing can cut it off, charged and sized where the numbers for that are known."""
    water = water_judged(case, finding)
    for by in () if water is None else safe_places(case, water):
        work = Fitting(case.drawing, case.lines)
        try:
            vessel = work.tee_off(
                by, "expansion_vessel", "connection", data=_beside(case, finding.components[0])
            )
        except EditError:
            continue
        _charge_and_size(work, vessel, finding.components[0])
        yield Proposal(_new_vessel(case, work, vessel, by), work.drawing)


def _new_vessel(case: Case, work: Fitting, vessel: str, by: Joint) -> Says:
    data = work.drawing.components[vessel].data
    size, charge = data.get("volume_l"), data.get("precharge_bar")
    what: str = a_word("an expansion vessel")
    if size is not None:
        what = worded("{vessel} of {size} l", vessel=what, size=figure(size))
    if charge is not None:
        what = worded("{vessel}, charged to {charge} bar,", vessel=what, charge=figure(charge))
    return Says(
        "Fit {vessel} on a tee right at the {port} of {thing}.",
        {"vessel": what, "port": _port(by), "thing": case.drawing.name(by.part)},
    )


def _beside(case: Case, heat: str) -> dict[str, Any]:
    """What is taken of a vessel beside a heat source: its height, and made for the same pressure."""
    found = {"height_m": case.heights.of(heat)}
    if any(place.part == heat for place in case.circuit.devices(Role.HEATS)):
        found["maximum_pressure_bar"] = case.value(heat, "maximum_pressure_bar")
    return {name: value for name, value in found.items() if value is not None}


def _charge_and_size(work: Fitting, vessel: str, heat: str) -> None:
    """The least charge, or what the others are charged to if that is more; and the next size made that
    is large enough for whatever water valves can leave to this vessel alone."""
    before = _as_asked(work, heat).vessels
    least = next(each.least_bar for each in before if each.part == vessel)
    if not least.known:
        return
    others = [each.set_bar for each in before if each.part != vessel and each.set_bar is not None]
    work.set(vessel, "precharge_bar", max(rounded_up(least.low), *others, 0.0))
    expansion = _as_asked(work, heat)
    if not expansion.safety_valves:
        return
    own = tuple(each for each in expansion.vessels if each.part == vessel)
    contents = expansion.plant.contents
    needed = (
        expansion.reckoned(content, own, best=False).needed_l
        for content in (contents.in_waters(waters) for waters in _left_to(expansion, own[0]))
    )
    most = max(needed, default=inf)
    size = next_made_l(most) if most < inf else None
    if size is not None:
        work.set(vessel, "volume_l", size)


def _left_to(expansion: Expansion, vessel: Vessel) -> tuple[frozenset[int], ...]:
    """The largest waters that valves can leave with the heat and no vessel but this one; all of the
    water where it is the only one, or there are too many to try."""
    marks = {each.water for each in expansion.vessels}
    if marks == {vessel.water}:
        return (expansion.reach,)
    circuit, start = expansion.plant.circuit, expansion.heated.water
    try:
        regions = tuple(largest_regions(circuit, start, marks, secured_stay_open=False))
    except TooLargeError:
        return (expansion.reach,)
    return tuple(each.waters for each in regions if each.marks == {vessel.water})


def _as_asked(work: Fitting, heat: str) -> Expansion:
    case = Case(work.drawing)
    heated: Heated = next(water.heated for water in heated_waters(case) if water.heated.part == heat)
    return Expansion(case, heated)


def with_safety_valve(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A new safety valve in the flow right at the heat source, led to a discharge end whose place is
    still to be said."""
    water = water_judged(case, finding)
    if water is None:
        return
    by = flow_of(case, water)
    work = Fitting(case.drawing, case.lines)
    data = _valve_data(case, water)
    valve = work.tee_off(by, "safety_valve", "inlet", data=data)
    work.hang("discharge_end", "inlet", Joint(valve, "outlet"), pipe_data=OUTLET_PIPE)
    says = Says(
        "Fit a safety valve on the flow, right at {thing}, and lead its outlet to a safe place.",
        {"thing": case.drawing.name(by.part)},
    )
    yield Proposal(says, work.drawing)


def _valve_data(case: Case, water: HeatedWater) -> dict[str, Any]:
    """What a new valve is set at and passes: the lowest pressure known that anything on the water is
    made for, and all the output, where they are known."""
    found: dict[str, Any] = {"height_m": case.heights.of(water.heated.part)}
    limits = [
        case.value(place.part, "maximum_pressure_bar")
        for role in (Role.HEATS, Role.HOLDS_EXPANSION)
        for place in water.reached(role)
    ]
    known = [limit for limit in limits if limit is not None]
    if known:
        found["set_pressure_bar"] = min(known)
    outputs = [case.value(place.part, "output_kw") for place in case.circuit.devices(Role.HEATS)]
    if outputs and None not in outputs:
        found["capacity_kw"] = sum(outputs) or None
    return {name: value for name, value in found.items() if value is not None}
