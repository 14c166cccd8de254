"""What the checks of controls share: which controls hold each emitter, coil and exchanger."""

from __future__ import annotations

from collections.abc import Iterable
from functools import cache

from circuitcheck.checks.case import Case
from circuitcheck.checks.wording import part_of
from circuitcheck.circuit.plan import Plan
from circuitcheck.parts.kind import Kind, Role, Way

THERMOSTATS = frozenset({"room_thermostat", "store_thermostat"})
HEATING_CONTROLS = frozenset({"room_thermostat", "programmer"})


def controls_on(case: Case, holder: str) -> frozenset[str]:
    """The kinds of controls that act on a valve, a leg of one (`tv1:a`), a pump or a heat source."""
    part = part_of(case.drawing, holder)
    controls = case.drawing.controls
    return frozenset(controls[id].kind.name for id in case.situations.acting_on(part))


def is_held(case: Case, part: str, kinds: frozenset[str]) -> bool:
    """Whether a control of one of these kinds acts on something that the part has no loop without.

    Raises TooLargeError beyond the search bound.
    """
    if not case.drawing.controls:
        return False
    return any(controls_on(case, holder) & kinds for holder in case.situations.holders.get(part, ()))


def emitters(case: Case) -> tuple[str, ...]:
    """Everything that gives heat to a room, in the order of the drawing."""
    return tuple(place.part for place in case.circuit.devices(Role.EMITS))


@cache
def _has_head(plan: Plan) -> bool:
    return any(passage.way is Way.THERMOSTAT for passage in plan.passages)


def is_thermostatic(case: Case, part: str) -> bool:
    """Whether a thermostatic head shuts that emitter."""
    return _has_head(case.circuit.plans[part])


def is_zone(case: Case, part: str) -> bool:
    """Whether it is a group of emitters drawn as one."""
    return _is_group(case.drawing.components[part].kind)


@cache
def _is_group(kind: Kind) -> bool:
    return any(field.name == "all_thermostatic" for field in kind.own_fields)


def zones(case: Case) -> frozenset[str]:
    """The groups of emitters drawn as one."""
    return case.kept(f"{__name__} zones", lambda: _zones(case))


def _zones(case: Case) -> frozenset[str]:
    ids, parts = case.circuit.ids, case.drawing.components
    return frozenset(
        ids[place]
        for alike in case.circuit.by_plan.values()
        if _is_group(parts[ids[alike[0]]].kind)
        for place in alike
    )


def _left_open(case: Case) -> frozenset[Plan]:
    """The plans of parts that are no zone, and that no head shuts: told once for all parts alike."""
    circuit, parts = case.circuit, case.drawing.components
    return frozenset(
        plan
        for plan, alike in circuit.by_plan.items()
        if not _has_head(plan) and not _is_group(parts[circuit.ids[alike[0]]].kind)
    )


def always_open_one(case: Case, parts: Iterable[str]) -> str:
    """The one emitter among these that no head shuts, left open as a way round for the pump; empty
    where there is none, or more than one."""
    left_open = case.kept(f"{__name__} left open", lambda: _left_open(case))
    plans = case.circuit.plans
    open_ones = [part for part in parts if plans[part] in left_open]
    return open_ones[0] if len(open_ones) == 1 else ""
