"""Store's vessel is charged wrongly.

Flags: The vessel of a mains-fed store charged to more than the reducing valve before it is set at, or to
    more than 0.2 bar less. Where no reducing valve holds the feed, that is told first, and nothing is
    said here; nor of a store with internal expansion.
Why: The gas in the vessel stands against the cold water that the reducing valve lets in. Charged to less,
    the vessel is partly full of water before anything is heated, and that much is lost for the swell.
    Charged to more, it takes up nothing until the pressure has climbed to its charge, which is so much
    nearer to where the relief valve weeps.
Remedy: With a hot tap open and no pressure at the vessel, charge it to what the reducing valve is set at,
    or up to 0.2 bar less.
Source: Common practice, no source: a charge equal to the reducing valve's setting, or up to 0.2 bar below.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.store_swell import Pressure, Shared, shared_waters
from circuitcheck.checks.store_water import unanswered
from circuitcheck.checks.wording import figure, upper
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.discharge import within

NAME = "store-vessel-precharge-wrong"
FIELD = "precharge_bar"
BELOW_BAR = 0.2
"""How far under the reducing valve's setting a charge may be: common practice, no source."""

NOT_KNOWN = "{thing}: whether it is charged as the reducing valve asks rests on what is not known: {missing}."


def judge(case: Case) -> Verdict:
    """One finding for each vessel on a mains-fed store's reduced water that is charged wrongly."""
    findings: list[Finding] = []
    sound = 0
    for shared in shared_waters(case) if case.circuit.devices(Role.STORES_AT_MAINS_PRESSURE) else ():
        reduced = shared.reduced
        if not shared.vessels or reduced is None:
            continue
        if all(case.value(store, "internal_expansion") for store in shared.stores):
            continue
        case.rests_on_pressure_ways(shared.waters[0].reach)
        for vessel in shared.vessels:
            finding = _judged(case, shared, vessel, reduced)
            findings += [] if finding is None else [finding]
            sound += finding is None
    return Verdict(tuple(findings), sound)


def _judged(case: Case, shared: Shared, vessel: str, reduced: Pressure) -> Finding | None:
    charge = case.value(vessel, FIELD)
    parts = (vessel, *shared.stores)
    if charge is None or reduced.bar is None:
        own = (f"{vessel}.{FIELD}",) if charge is None else ()
        return unanswered(case, NAME, NOT_KNOWN, parts, (*own, *reduced.missing), Grade.FAULT)
    if within(charge, reduced.bar) and within(reduced.bar - BELOW_BAR, charge):
        return None
    above = not within(charge, reduced.bar)
    says = Says(
        "{thing} is charged to {charge} bar, and {reducer} before it is set at {set} bar: "
        + (
            "it takes up nothing until the pressure has climbed to its charge."
            if above
            else "it is partly full of water before anything is heated."
        ),
        {
            "thing": upper(case.drawing.name(vessel)),
            "charge": figure(charge),
            "reducer": case.drawing.name(reduced.part),
            "set": figure(reduced.bar),
        },
    )
    numbers = {"precharge_bar": float(charge), "set_pressure_bar": reduced.bar}
    return Finding(NAME, Grade.FAULT, says, (*parts, reduced.part), numbers=numbers)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The vessel charged to what the reducing valve is set at."""
    right = finding.numbers.get("set_pressure_bar")
    if right is None:
        return
    vessel = finding.components[0]
    says = Says(
        "Charge {vessel} to {right} bar, as the reducing valve is set.",
        {"vessel": case.drawing.name(vessel), "right": figure(right)},
    )
    yield Proposal(says, set_field(case.drawing, vessel, FIELD, right))
