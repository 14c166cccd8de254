"""What would put the controls of zones and stores right: proposals that several checks make."""

from __future__ import annotations

from collections.abc import Iterable

from circuitcheck.checks.case import Case
from circuitcheck.circuit.takers import HEATING
from circuitcheck.drawing.edits import add_control, change_control
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import control_kinds
from circuitcheck.parts.kind import Role


def thermostat_for(case: Case, part: str) -> str:
    """The kind of thermostat that an emitter, a coil or an exchanger obeys."""
    return "room_thermostat" if HEATING in case.situations.takers.service(part) else "store_thermostat"


def own_holder(case: Case, part: str, among: Iterable[str]) -> str:
    """A two-port motor valve, else a pump, that part has no loop without and that holds nothing but
    `among`; empty where there is none."""
    wanted = frozenset(among)
    for holder in (*case.situations.two_port, *case.situations.pumps):
        behind = case.situations.behind(holder)
        if part in behind and behind <= wanted:
            return holder
    return ""


def fit_valve(work: Fitting, case: Case, part: str) -> str:
    """A motor valve that rests shut in the flow to an emitter, a coil or an exchanger."""
    serves = "heating" if thermostat_for(case, part) == "room_thermostat" else "hot_water"
    data = {"serves": serves}
    return work.cut_in("zone_valve", Joint(part, inlet_of(case, part)), port="out", data=data)


def inlet_of(case: Case, part: str) -> str:
    """The port by which water comes to what takes its heat."""
    for role in (Role.HEATED_BY_COIL, Role.EMITS, Role.EXCHANGES):
        for place in case.circuit.devices(role):
            if place.part == part:
                return place.device.port
    raise KeyError(part)


def with_thermostat(drawing: Drawing, kind: str, holder: str, beside: str) -> Drawing:
    """A new thermostat that acts on a valve or pump."""
    at = beside_controls(drawing, beside)
    after, _ = add_control(drawing, control_kinds()[kind], acts_on=(holder,), at=at)
    return after


def acting_also(drawing: Drawing, control: str, valves: Iterable[str]) -> Drawing:
    """A control that acts on these valves too."""
    acts_on = dict.fromkeys((*drawing.controls[control].acts_on, *valves))
    return change_control(drawing, control, acts_on=tuple(acts_on))


def beside_controls(drawing: Drawing, part: str) -> Point | None:
    """Where a new control stands: after the last of the others, else well above the part."""
    placed = [control.at for control in drawing.controls.values() if control.at is not None]
    if placed:
        last = max(placed, key=lambda at: (at.y, at.x))
        return Point(last.x + 8, last.y)
    at = drawing.components[part].at
    return None if at is None else Point(at.x + 8, at.y - 8)
