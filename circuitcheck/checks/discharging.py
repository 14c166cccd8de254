"""What the discharge checks share: whose valve it is, its rules, and the sizes along its pipe."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.circuit.served_stores import stores_beside
from circuitcheck.drawing.value import Joint
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import Table, table_of, within


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
    measure = case.length_m if field == "length_m" else case.bends
    known, missing = 0.0, []
    for id in pipes:
        found = measure(id)
        if found is None:
            missing.append(f"{id}.{field}")
        else:
            known += found.value
    return Sum(known, tuple(missing))


def table(case: Case) -> Table:
    """The rule book's table of discharge sizes, with its rule carried on. Raises NoRuleError."""
    return table_of(case.limit("discharge.table").value, case.limit("discharge.length_a_size_m").value)


def stores_of(case: Case, discharge: Discharge) -> tuple[str, ...]:
    """The mains-fed stores whose water the valve stands on."""
    body = case.bodies.of(discharge.valve.node)
    stores = case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    return tuple(store.part for store in stores if case.bodies.of(store.node) == body)


def stores_relieved(case: Case, discharge: Discharge) -> tuple[str, ...]:
    """The mains-fed stores that the valve itself relieves: those nothing keeps from it, else all on
    its water."""
    return stores_beside(case.circuit, discharge.valve) or stores_of(case, discharge)


def rules_apply(case: Case, discharge: Discharge) -> tuple[bool, tuple[str, ...]]:
    """Whether the rules for a store's discharge apply to a valve, and what must be known to say so.

    They do not where every store it stands on is too small for them (15 litres or less). Raises
    NoRuleError where the rule book has no such rules.
    """
    if not discharge.for_store:
        return False, ()
    return over_exempt(case, stores_of(case, discharge))


def over_exempt(case: Case, stores: tuple[str, ...]) -> tuple[bool, tuple[str, ...]]:
    """Whether one of these stores is so large that the rules hold, and what must be known to say so;
    where it is not known which store it is, they do. Raises NoRuleError."""
    exempt_l = case.limit("discharge.exempt_store_l").value
    volumes = {store: case.value(store, "volume_l") for store in stores}
    if not stores or any(volume is not None and volume > exempt_l for volume in volumes.values()):
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


@dataclass(frozen=True, slots=True)
class Shown:
    """A tundish that shows the discharge of store's relief valves: the pipe that leaves it, the valves,
    and the fields that decide whether the rules apply to any of them (none: they do)."""

    tundish: str
    pipe: str
    valves: tuple[str, ...]
    applies_if: tuple[str, ...]


def tundishes(case: Case) -> tuple[Shown, ...]:
    """Every tundish that the discharge of a store's relief valve comes to first, each once."""
    found: dict[str, Shown] = {}
    for discharge in case.discharges:
        applies, missing = rules_apply(case, discharge)
        if not applies:
            continue
        for run in discharge.runs:
            if run.tundish is None:
                continue
            tundish, valve = run.steps[run.tundish].part, discharge.valve.part
            old = found.get(tundish, Shown(tundish, run.after_tundish[0], (), missing))
            valves = tuple(dict.fromkeys((*old.valves, valve)))
            # One valve to which the rules apply for certain settles it.
            applies_if = tuple(dict.fromkeys((*old.applies_if, *missing)))
            settled = not missing or not old.applies_if
            found[tundish] = Shown(tundish, old.pipe, valves, () if settled else applies_if)
    return tuple(found.values())


def followed(discharge: Discharge, run: Run) -> Iterator[tuple[str, Joint]]:
    """The pipes of a run, each with the port it leaves on the way to the end."""
    leaves = Joint(discharge.valve.part, discharge.valve.device.other)
    for pipe, step in zip(run.pipes, run.steps, strict=True):
        yield pipe, leaves
        leaves = Joint(step.part, step.left_by)


def fall_m(case: Case, pipe: str, leaves: Joint) -> float | None:
    """How far a pipe falls on the way from that end to its other: as given, else by the heights of its
    ends; None where that is not known."""
    rise = case.pipe_value(pipe, "rise_m")
    if rise is None:
        rise = case.heights.rise(pipe)
    if rise is None:
        return None
    return -float(rise) if case.drawing.pipes[pipe].ends[0] == leaves else float(rise)


def drop_of(case: Case, pipe: str, leaves: Joint) -> float | None:
    """How far a pipe runs straight down from a tundish that it leaves: as given, else all of a plumb
    pipe, which has no bend and falls by its whole length; None where that is not known."""
    given = case.pipe_value(pipe, "straight_drop_m")
    if given is not None:
        return float(given)
    bends, length = case.bends(pipe), case.length_m(pipe)
    if bends is None or bends.value > 0 or length is None:
        return None
    fall = fall_m(case, pipe, leaves)
    return length.value if fall is not None and within(length.value, fall) else None
