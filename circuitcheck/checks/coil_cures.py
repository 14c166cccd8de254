"""What would put the control of a store's coil right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.control_cures import beside_controls
from circuitcheck.checks.store_cures import fitting
from circuitcheck.circuit.coil_loops import still_driven
from circuitcheck.drawing.edits import add_control, change_control
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.finding import Says
from circuitcheck.parts.catalogue import control_kinds
from circuitcheck.parts.kind import Way

STORE_THERMOSTAT = "store_thermostat"


def stopping_valves(case: Case, store: str) -> tuple[str, ...]:
    """The two-port motor valves any of which stops a store's coil, in the order of the drawing."""
    return tuple(
        part
        for part, plan in case.circuit.plans.items()
        if any(passage.way is Way.MOTOR and not passage.leg for passage in plan.passages)
        and not still_driven(case.circuit, store, frozenset({(part, "")}))
    )


def with_cut_out_valve(case: Case, store: str) -> Iterator[Proposal]:
    """The cut-out on a valve that is there and stops the coil; else on a new one right at the coil."""
    names: dict[str, str | float] = {"store": case.drawing.name(store)}
    valves = stopping_valves(case, store)
    for valve in valves:
        work = fitting(case)
        work.set(store, "energy_cut_out", valve)
        work.set(valve, "rest", "shut")
        says = Says(
            "Let the energy cut-out of {store} break the supply of {valve}, which rests shut.",
            {**names, "valve": case.drawing.name(valve)},
        )
        yield Proposal(says, work.drawing)
    if valves:
        return
    work = fitting(case)
    data = {"rest": "shut", "serves": "hot_water"}
    valve = work.cut_in("zone_valve", Joint(store, "coil_flow"), port="out", data=data)
    work.set(store, "energy_cut_out", valve)
    says = Says(
        "Fit a two-port motorised valve that rests shut in the flow to the coil of {store}, and let its "
        "energy cut-out and its thermostat act on it.",
        names,
    )
    yield Proposal(says, _thermostat_on(work.drawing, store, valve))


def with_store_thermostat(case: Case, store: str) -> Iterator[Proposal]:
    """A store thermostat on a valve that stops the coil, the cut-out's first; else on a new one."""
    own = case.value(store, "energy_cut_out") if _has_field(case, store, "energy_cut_out") else None
    valves = sorted(stopping_valves(case, store), key=lambda valve: valve != own)
    names: dict[str, str | float] = {"store": case.drawing.name(store)}
    for valve in valves:
        says = Says(
            "Fit a store thermostat on {store} that acts on {valve}.",
            {**names, "valve": case.drawing.name(valve)},
        )
        yield Proposal(says, _thermostat_on(case.drawing, store, valve))
    if valves:
        return
    work = fitting(case)
    data = {"rest": "shut", "serves": "hot_water"}
    valve = work.cut_in("zone_valve", Joint(store, "coil_flow"), port="out", data=data)
    says = Says(
        "Fit a motorised valve in the flow to the coil of {store}, and a store thermostat that acts on it.",
        names,
    )
    yield Proposal(says, _thermostat_on(work.drawing, store, valve))


def _has_field(case: Case, part: str, name: str) -> bool:
    return any(field.name == name for field in case.drawing.components[part].kind.own_fields)


def _thermostat_on(drawing: Drawing, store: str, valve: str) -> Drawing:
    """The one store thermostat there is acts on that valve too; where there is not just one, a new one
    does."""
    own = [id for id, control in drawing.controls.items() if control.kind.name == STORE_THERMOSTAT]
    if len(own) == 1:
        acts_on = (*drawing.controls[own[0]].acts_on, valve)
        return change_control(drawing, own[0], acts_on=dict.fromkeys(acts_on))
    kind = control_kinds()[STORE_THERMOSTAT]
    after, _ = add_control(drawing, kind, acts_on=(valve,), at=beside_controls(drawing, store))
    return after
