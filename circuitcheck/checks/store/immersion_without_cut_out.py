"""Immersion heater has no cut-out.

Flags: A store with an immersion heater that has no cut-out besides its thermostat. Stores of 15 litres
    or less are outside this rule.
Why: An immersion thermostat that sticks goes on heating until the water boils. In a mains-fed store that
    builds pressure without end; in a vented one it has sent boiling water into a plastic cistern, which
    gave way.
Remedy: Fit an immersion heater with a cut-out that must be reset by hand.
Source: Approved Document G, guidance to G3 (paragraph from memory); BS EN 60335-2-73 (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_water import above_exempt, unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "immersion-without-cut-out"


def judge(case: Case) -> Verdict:
    """One danger for each store whose immersion heater nothing cuts off."""
    findings, sound = [], 0
    for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        for place in case.circuit.devices(role):
            store = place.part
            power, cut_out = (case.value(store, field) for field in ("immersion_kw", "immersion_cut_out"))
            if power == 0:
                continue
            if cut_out:
                sound += 1
                continue
            finding = _finding(case, store, power, cut_out)
            if finding is not None:
                findings.append(finding)
    return Verdict(tuple(findings), sound)


def _finding(case: Case, store: str, power: float | None, cut_out: bool | None) -> Finding | None:
    above = above_exempt(case, store)
    if above is False:
        return None
    known = {"immersion_kw": power, "immersion_cut_out": cut_out, "volume_l": above}
    missing = [f"{store}.{field}" for field, value in known.items() if value is None]
    if missing or power is None:
        template = "{thing}: whether an immersion heater is cut off rests on what is not known: {missing}."
        return unanswered(case, NAME, template, (store,), missing, Grade.DANGER)
    says = Says(
        "{thing} has an immersion heater of {power} kW without a cut-out.",
        {"thing": upper(case.drawing.name(store)), "power": figure(power)},
    )
    return Finding(NAME, Grade.DANGER, says, (store,), numbers={"immersion_kw": float(power)})


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """An immersion heater with a cut-out in its place."""
    store = finding.components[0]
    says = Says(
        "Fit an immersion heater with a hand-reset cut-out in {store}.", {"store": case.drawing.name(store)}
    )
    yield Proposal(says, set_field(case.drawing, store, "immersion_cut_out", True))
