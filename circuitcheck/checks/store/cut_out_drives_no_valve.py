"""Store's energy cut-out shuts no valve that stops the coil.

Flags: A mains-fed store of more than 15 litres, heated through its coil by a heat source, whose energy
    cut-out names no motorised valve, or one that cannot do it: a three-port valve, a valve that does not
    rest shut when its supply fails, or one with a way round it.
Why: The thermostat is the first guard, the cut-out the second: when the thermostat sticks, the cut-out
    breaks the supply of a valve, and the valve must then shut by its own spring and stop all heat to
    the coil. A three-port valve is never shut both ways, and one that stays where it stands shuts
    nothing.
Remedy: Put a two-port motorised valve that rests shut in the flow to the coil, after every branch, and
    let the cut-out break its supply.
Source: Approved Document G, 3.18 and following (paragraph from memory): a non-self-resetting energy
    cut-out that acts on the motorised valve of the primary flow; that a two-port valve serves and a
    three-port valve does not is common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from circuitcheck.checks.bounds import too_large
from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.coil_cures import with_cut_out_valve
from circuitcheck.checks.store_water import above_exempt, unanswered
from circuitcheck.checks.wording import upper
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.stopping import stops
from circuitcheck.figures.heat_nets import heats_coil
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role, Way

NAME = "cut-out-drives-no-valve"

NONE_NAMED = (
    "{thing} names no motorised valve that its energy cut-out shuts: if its thermostat fails, nothing "
    "stops the heat."
)
NO_MOTOR = "The energy cut-out of {store} acts on {valve}, which is no motorised valve."
THREE_PORT = (
    "The energy cut-out of {store} acts on {valve}, a three-port valve: it is never shut both ways, so "
    "it does not serve."
)
WAY_ROUND = "The energy cut-out of {store} shuts {valve}, and heat still reaches its coil by another way."
RESTS = (
    "The energy cut-out of {store} acts on {valve}, which does not rest shut when its supply fails: the "
    "cut-out cannot shut it."
)


def judge(case: Case) -> Verdict:
    """One danger for each store whose cut-out would not stop the heat."""
    findings, sound = [], 0
    for place in case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE):
        if not heats_coil(case, place.part):
            continue
        try:
            finding = _judged(case, place.part)
        except TooLargeError:
            findings.append(too_large(case, NAME, place.part, Grade.DANGER))
            continue
        if finding is None:
            sound += 1
            continue
        above = above_exempt(case, place.part)
        if above is None:
            findings.append(_unless_small(case, finding))
        elif above:
            findings.append(finding)
    return Verdict(tuple(findings), sound)


def _judged(case: Case, store: str) -> Finding | None:
    valve = case.value(store, "energy_cut_out")
    if valve is None:
        says = Says(NONE_NAMED, {"thing": upper(case.drawing.name(store))})
        return Finding(NAME, Grade.DANGER, says, (store,))
    template = _wrong(case, valve, store)
    if template:
        values = {"store": case.drawing.name(store), "valve": case.drawing.name(valve)}
        return Finding(NAME, Grade.DANGER, Says(template, values), (store, valve))
    rest = case.value(valve, "rest")
    if rest is None:
        missing = (f"{valve}.rest",)
        template = (
            "{thing}: whether its energy cut-out can shut {valve} rests on what is not known: {missing}."
        )
        return unanswered(
            case, NAME, template, (store, valve), missing, Grade.DANGER, valve=case.drawing.name(valve)
        )
    return None


def _wrong(case: Case, valve: str, store: str) -> str:
    """Why that part cannot serve as the cut-out's valve, as far as is known; empty where it can."""
    plan = case.circuit.plans.get(valve)
    motors = [passage for passage in plan.passages if passage.way is Way.MOTOR] if plan else []
    if not motors:
        return NO_MOTOR
    if any(passage.leg for passage in motors):
        return THREE_PORT
    if not stops(case.circuit, valve, store):
        return WAY_ROUND
    return RESTS if case.value(valve, "rest") in ("open", "stays") else ""


def _unless_small(case: Case, finding: Finding) -> Finding:
    """The finding as one that stands only where the store is large enough for the rule."""
    missing = (*finding.missing, f"{finding.components[0]}.volume_l")
    template = finding.says.template
    if not finding.missing:
        template += " Whether that matters rests on what is not known: {missing}."
    says = Says(template, {**finding.says.values, "missing": ", ".join(missing)})
    return replace(finding, grade=Grade.UNANSWERED, would_be=Grade.DANGER, says=says, missing=missing)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A two-port valve that rests shut in the flow to the coil, shut by the cut-out."""
    yield from with_cut_out_valve(case, finding.components[0])
