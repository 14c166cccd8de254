"""Store can be cut off from a relief valve.

Flags: Some positions of the valves leave a mains-fed store without its temperature relief valve, or
    without any expansion relief valve. Every valve that can shut counts, and a secured one is no
    excuse: nothing of any kind may stand between. A one-way or reducing part on the only way is told
    as an absent valve.
Why: A relief valve behind a shut valve is no relief valve. Whoever shuts it, to work on a tap, does
    not know that he has just taken the last guard off a closed vessel of hot water.
Remedy: Take the valve out of the way, or move the relief valve to the store's side of it.
Source: Approved Document G, guidance to G3 (paragraph from memory): no valve between store and relief
    valve; WFR guidance G19; stores of 15 litres or less are outside the temperature relief rule.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.cutting_off import judge_cut_off
from circuitcheck.checks.store_water import StoreWater, above_exempt, store_waters
from circuitcheck.checks.valves_out import without_valves
from circuitcheck.checks.wording import named
from circuitcheck.circuit.joining import Placed
from circuitcheck.finding import Finding, Grade, Says, Witness
from circuitcheck.parts.kind import Role

NAME = "relief-can-be-cut-off"

TEMPLATE = "{thing} can be cut off from {devices} by shutting {valves}."


def judge(case: Case) -> Verdict:
    """One danger for each store that valves can part from either of its relief valves."""
    findings, sound = [], 0
    for water in store_waters(case):
        by_temperature = _asked(case, water, water.temperature_reliefs)
        by_pressure = _asked(case, water, water.reached(Role.RELIEVES_BY_PRESSURE))
        told = [*_where_it_applies(case, water, by_temperature.findings), *by_pressure.findings]
        if told:
            findings.append(_as_one(case, told))
        elif by_temperature.sound or by_pressure.sound:
            sound += 1
    return Verdict(tuple(findings), sound)


def _asked(case: Case, water: StoreWater, valves: tuple[Placed, ...]) -> Verdict:
    return judge_cut_off(case, NAME, [water], lambda _: valves, TEMPLATE)


def _where_it_applies(case: Case, water: StoreWater, findings: tuple[Finding, ...]) -> tuple[Finding, ...]:
    """What is said of the temperature relief valve: nothing of it for a small store."""
    above = above_exempt(case, water.store) if findings else True
    if above is None:
        return tuple(_unless_small(water, finding) for finding in findings)
    return findings if above else ()


def _unless_small(water: StoreWater, finding: Finding) -> Finding:
    missing = f"{water.store}.volume_l"
    says = Says(
        f"{finding.says.template} Whether that matters rests on what is not known: {{missing}}.",
        {**finding.says.values, "missing": missing},
    )
    return replace(finding, grade=Grade.UNANSWERED, would_be=Grade.DANGER, says=says, missing=(missing,))


def _as_one(case: Case, told: list[Finding]) -> Finding:
    """One finding for the store: the surest, with the fewest to shut, and what is said of the other."""
    first, *others = sorted(told, key=lambda each: (each.grade.rank, _how_many(each)))
    for other in others:
        if other.grade is not first.grade or not other.witness or not first.witness:
            continue
        lost = tuple(id for id in other.components[1:] if id not in other.witness.parts)
        first = replace(
            first,
            says=Says(
                f"{first.says.template} It can be cut off from {{others}} too.",
                {**first.says.values, "others": named(case.drawing, lost)},
            ),
            components=tuple(dict.fromkeys((*first.components, *lost))),
            witness=Witness(
                first.witness.shut,
                tuple(dict.fromkeys((*first.witness.alone, *other.witness.alone))),
                first.witness.parts,
            ),
        )
    return first


def _how_many(finding: Finding) -> int:
    return len(finding.witness.shut) if finding.witness else 0


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """The valves that do it taken out of the way."""
    yield from without_valves(case, finding)
