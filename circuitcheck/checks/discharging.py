"""What the discharge checks share: whose valve it is, and the sizes along its pipe."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.circuit.discharge import Discharge
from circuitcheck.drawing import measuring
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import EXEMPT_STORE_L


@dataclass(frozen=True, slots=True)
class Sum:
    """A sum along a pipe: of what is known, and the fields that are not known."""

    known: float
    missing: tuple[str, ...]


def length_along(case: Case, pipes: Iterable[str]) -> Sum:
    """The length of these pipes together, in metres."""
    return _sum(case, pipes, "length_m")


def bends_along(case: Case, pipes: Iterable[str]) -> Sum:
    """The bends in these pipes together."""
    return _sum(case, pipes, "bends")


def _sum(case: Case, pipes: Iterable[str], field: str) -> Sum:
    measure = measuring.length_m if field == "length_m" else measuring.bends
    known, missing = 0.0, []
    for id in pipes:
        found = measure(case.drawing, case.drawing.pipes[id])
        if found is None:
            missing.append(f"{id}.{field}")
        else:
            known += found.value
    return Sum(known, tuple(missing))


def stores_of(case: Case, discharge: Discharge) -> tuple[str, ...]:
    """The mains-fed stores whose water the valve stands on."""
    body = case.bodies.of(discharge.valve.node)
    stores = case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    return tuple(store.part for store in stores if case.bodies.of(store.node) == body)


def rules_apply(case: Case, discharge: Discharge) -> tuple[bool, tuple[str, ...]]:
    """Whether the rules for a store's discharge apply to a valve, and what must be known to say so.

    They do not where every store it stands on holds 15 litres or less.
    """
    if not discharge.for_store:
        return False, ()
    stores = stores_of(case, discharge)
    volumes = {store: case.value(store, "volume_l") for store in stores}
    if not stores or any(volume is not None and volume > EXEMPT_STORE_L for volume in volumes.values()):
        return True, ()
    missing = tuple(f"{store}.volume_l" for store, volume in volumes.items() if volume is None)
    return bool(missing), missing


def outlet_mm(case: Case, discharge: Discharge) -> tuple[float | None, str]:
    """The size of the valve's outlet in mm (None: not known) and the field it stands in."""
    part = discharge.valve.part
    return case.value(part, "outlet_size_mm"), f"{part}.outlet_size_mm"


def unanswered(
    check: str,
    template: str,
    values: dict[str, str | float],
    discharge: Discharge,
    missing: Iterable[str],
    *,
    pipes: tuple[str, ...] = (),
    would_be: Grade = Grade.DANGER,
) -> Finding:
    """A finding that says which numbers are missing for this valve."""
    fields = tuple(dict.fromkeys(missing))
    return Finding(
        check,
        Grade.UNANSWERED,
        Says(template, {**values, "missing": ", ".join(fields)}),
        components=(discharge.valve.part,),
        pipes=pipes,
        missing=fields,
        would_be=would_be,
    )
