"""Sealed circuit has no filling link.

Flags: Sealed heated water with no filling link, none being built into the heat source, and no cistern
    that tops it up through a check valve. A link whose water can only leave the circuit, because a
    check valve stands the wrong way round, fills nothing.
Why: A sealed circuit loses a little water through joints, air vents and each time a radiator is bled.
    Where there is no proper link, somebody in time fills it by a hose from the nearest tap, and
    heating water can then get into what people drink.
Remedy: Fit a filling link with a double check valve from the cold main to the return, with a valve at
    each end, to be taken off after filling.
Source: Water Supply (Water Fittings) Regulations 1999, schedule 2, paragraph 24, with guidance G24.2;
    that a circuit has a link at all: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import HeatedWater
from circuitcheck.checks.heating_water import fitting_joints, judge_without, sealed_heating_waters
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role, Way
from circuitcheck.told import spoken

NAME = "filling-link-absent"

_ONE_WAY = frozenset({Way.ONE_WAY, Way.REDUCING, Way.SPRING})


def judge(case: Case) -> Verdict:
    """One piece of advice for each sealed heated water that nothing fills."""
    return judge_without(
        case,
        NAME,
        Grade.ADVICE,
        "{thing} has no filling link on its sealed water.",
        [(water, _is_filled(case, water)) for water in sealed_heating_waters(case)],
    )


def _is_filled(case: Case, water: HeatedWater) -> bool:
    if water.reached(Role.FILLS):
        return True
    circuit, bodies = case.circuit, case.bodies
    starts = {
        circuit.water(place.node)
        for role in (Role.FILLS, Role.FEEDS)
        for place in circuit.devices(role)
        if bodies.of(place.node) == water.heated.body
    }
    return bool(starts) and bool(_running_from(case, starts) & water.reach)


def _running_from(case: Case, starts: set[int]) -> set[int]:
    """The waters that water from there can run to with all valves open."""
    circuit = case.circuit
    onward: dict[int, list[int]] = {}
    for part, plan in circuit.plans.items():
        for passage in plan.passages:
            if passage.gap or passage.pressure_way is Way.OPEN:
                continue
            a, b = (circuit.water(circuit.node(part, port)) for port in (passage.a, passage.b))
            onward.setdefault(a, []).append(b)
            if passage.pressure_way not in _ONE_WAY:
                onward.setdefault(b, []).append(a)
    seen, todo = set(starts), list(starts)
    while todo:
        for there in onward.get(todo.pop(), ()):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return seen


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A filling link with a double check from the cold main, taken off after filling."""
    part = finding.components[0]
    for joint in fitting_joints(case, part):
        fitting = Fitting(case.drawing, case.lines)
        link = fitting.tee_off(
            joint, "filling_link", "system", data={"left_connected": False, "double_check": True}
        )
        _join_to_main(case, fitting, Joint(link, "supply"))
        says = Says(
            "Tee in a filling link with a double check valve by {thing}, on its {port}.",
            {"thing": case.drawing.name(part), "port": spoken(joint.port)},
        )
        yield Proposal(says, fitting.drawing)


def _join_to_main(case: Case, fitting: Fitting, supply: Joint) -> None:
    for main in case.circuit.devices(Role.MAIN):
        outlet = Joint(main.part, main.device.port)
        if outlet in fitting.drawing.joined:
            fitting.pipe(Joint(fitting.tee(outlet), "branch"), supply)
        else:
            fitting.pipe(outlet, supply)
        return
    fitting.hang("cold_main", "outlet", supply)
