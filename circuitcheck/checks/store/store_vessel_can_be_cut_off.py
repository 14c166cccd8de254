"""Store can be cut off from its vessel.

Flags: Some positions of the valves leave a mains-fed store without internal expansion with no expansion
    vessel. Every valve that can shut counts, and a secured one is no excuse.
Why: With the vessel shut off, the swell of every heating goes through the expansion relief valve, which
    is the last guard of its pressure and is not made to work every day.
Remedy: Move the vessel's tee to the store's side of the valve, or take the valve out of the way.
Source: Approved Document G, guidance to G3 (paragraph from memory); no valve between a store and its
    vessel is common practice.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import judge_cut_off
from circuitcheck.checks.store_water import store_waters
from circuitcheck.checks.valves_out import without_valves
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.parts.kind import Role

NAME = "store-vessel-can-be-cut-off"


def judge(case: Case) -> Verdict:
    """One danger for each store that valves can part from its vessels."""
    verdict = judge_cut_off(
        case,
        NAME,
        [water for water in store_waters(case) if not case.value(water.store, "internal_expansion")],
        lambda water: water.reached(Role.HOLDS_EXPANSION),
        "{thing} can be cut off from {devices} by shutting {valves}.",
    )
    return Verdict(tuple(_unless_internal(case, finding) for finding in verdict.findings), verdict.sound)


def _unless_internal(case: Case, finding: Finding) -> Finding:
    store = finding.components[0]
    if finding.grade is Grade.UNANSWERED or case.value(store, "internal_expansion") is not None:
        return finding
    missing = f"{store}.internal_expansion"
    says = Says(
        f"{finding.says.template} Whether that matters rests on what is not known: {{missing}}.",
        {**finding.says.values, "missing": missing},
    )
    return replace(finding, grade=Grade.UNANSWERED, would_be=Grade.DANGER, says=says, missing=(missing,))


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valves that do it taken out of the way."""
    yield from without_valves(case, finding)
