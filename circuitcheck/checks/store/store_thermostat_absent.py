"""No store thermostat acts on what stops the coil.

Flags: A store that a heat source warms through its coil, where no store thermostat acts on a valve or
    pump that stops the coil's flow: danger for a mains-fed store, a fault for a vented one.
Why: The store thermostat is the first guard against water that is too hot. Without one the store is
    heated to whatever the heat source gives: it scalds at the tap, wastes heat, and a mains-fed store
    is left to its cut-out and its relief valve, which are there for failures and not for every day.
Remedy: Fit a store thermostat and let it act on the motorised valve, or the pump, of the coil.
Source: Approved Document G, 3.18 (paragraph from memory), the first of three guards; Approved Document L,
    a thermostat on every store; WFR guidance G18.1.
"""

from __future__ import annotations

from collections.abc import Iterator
from itertools import product

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.coil_cures import with_store_thermostat
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import named, upper
from circuitcheck.circuit.coil_loops import still_driven
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.heat_nets import heats_coil
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role, Way

NAME = "store-thermostat-absent"

MOST_LEGS = 8
"""Three-port valves under one thermostat; beyond, the ways to set their legs are too many to try."""


def judge(case: Case) -> Verdict:
    """One finding for each store whose coil no store thermostat stops."""
    findings, sound = [], 0
    mains_fed = case.circuit.parts_with(Role.STORES_AT_MAINS_PRESSURE)
    for coil in case.circuit.devices(Role.HEATED_BY_COIL):
        sources = heats_coil(case, coil.part)
        grade = Grade.DANGER if coil.part in mains_fed else Grade.FAULT
        heat = {source: case.value(source, "heat") for source in sources}
        if not sources or all(each == "uncontrolled" for each in heat.values()):
            continue  # no heat, or heat that no thermostat can stop: another check speaks of that
        try:
            is_stopped = any(_stops(case, coil, acted_on) for acted_on in _store_thermostats(case))
        except TooLargeError:
            findings.append(too_large(case, NAME, coil.part, grade))
            continue
        if is_stopped:
            sound += 1
        elif "switched" in heat.values():
            findings.append(_finding(case, coil.part, grade))
        else:
            template = (
                "{thing}: whether a thermostat can stop its heat rests on what is not known: {missing}."
            )
            missing = [f"{source}.heat" for source in sources if heat[source] is None]
            findings.append(unanswered(case, NAME, template, (coil.part,), missing, grade))
    return Verdict(tuple(findings), sound)


def _finding(case: Case, store: str, grade: Grade) -> Finding:
    others = tuple(
        id for id, control in case.drawing.controls.items() if _is_store_thermostat(control.kind.name)
    )
    values: dict[str, str | float] = {"thing": upper(case.drawing.name(store))}
    template = "{thing} has no store thermostat that stops its heat."
    if others:
        template = (
            "{thing} has no store thermostat that stops its heat: shutting what {others} acts on does not."
        )
        values["others"] = named(case.drawing, others)
    return Finding(NAME, grade, Says(template, values), (store,))


def _store_thermostats(case: Case) -> list[tuple[str, ...]]:
    """What each store thermostat acts on."""
    controls = case.drawing.controls.values()
    return [control.acts_on for control in controls if _is_store_thermostat(control.kind.name)]


def _is_store_thermostat(kind: str) -> bool:
    return kind == "store_thermostat"


def _stops(case: Case, coil: Placed, acted_on: tuple[str, ...]) -> bool:
    """Whether some position that these parts can be called off to leaves the coil without flow."""
    off: list[tuple[str, str]] = []
    legs: list[list[tuple[str, str]]] = []
    drives = case.circuit.parts_with(Role.PUMPS, Role.HEATS)
    for part in acted_on:
        plan = case.circuit.plans.get(part)
        motors = [passage for passage in plan.passages if passage.way is Way.MOTOR] if plan else []
        if any(passage.leg for passage in motors):
            legs.append([(part, passage.leg) for passage in motors])
        elif motors or part in drives:
            off.append((part, ""))
    if len(legs) > MOST_LEGS:
        raise TooLargeError
    if not off and not legs:
        return False
    return any(
        not still_driven(case.circuit, coil.part, frozenset((*off, *chosen))) for chosen in product(*legs)
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A store thermostat that acts on the valve or pump of the coil."""
    yield from with_store_thermostat(case, finding.components[0])
