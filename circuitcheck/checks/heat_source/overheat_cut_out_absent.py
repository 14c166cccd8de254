"""Sealed heat source has no hand-reset high limit.

Flags: A switched heat source on a sealed circuit for which no hand-reset high limit is stated: none
    at all, or one that resets itself.
Why: A thermostat can stick. On a sealed circuit nothing lets the steam away as an open vent does, and
    water held under pressure boils well above 100 °C, so what stops the heat must be a second device
    that the thermostat has nothing to do with. Reset by hand, it makes somebody come and ask why it
    acted; one that resets itself lets the fault repeat itself unseen.
Remedy: Use a heat source with its own hand-reset high limit (overheat cut-out) and state it in the
    drawing; or add one as the heat source's maker allows.
Source: BS EN 12828, 4.6, protection of sealed systems against overheating (clause from memory);
    BS 5449, sealed systems (from memory).
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.heating_water import sealed_waters
from circuitcheck.checks.wording import upper
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "overheat-cut-out-absent"

_NONE = "{thing} heats a sealed circuit, and no hand-reset high limit is stated for it."
_RESETS_ITSELF = (
    "{thing} heats a sealed circuit, and its high limit resets itself: a hand-reset one is needed."
)


def judge(case: Case) -> Verdict:
    """One danger for each switched heat source on a sealed circuit without a hand-reset high limit."""
    findings, sound = [], 0
    for water in sealed_waters(case):
        part = water.heated.part
        if water.heated.by_exchanger or case.value(part, "heat") == "uncontrolled":
            continue
        case.rests_on_pressure_ways(water.reach)
        limit = case.value(part, "high_limit")
        if limit == "hand_reset":
            sound += 1
            continue
        template = _NONE if limit is None else _RESETS_ITSELF
        values = {"thing": upper(case.drawing.name(part))}
        if case.value(part, "heat") is None:
            findings.append(
                Finding(
                    NAME,
                    Grade.UNANSWERED,
                    Says(
                        template + " Whether its heat can be switched off is not known.",
                        values,
                    ),
                    (part,),
                    missing=(f"{part}.heat",),
                    would_be=Grade.DANGER,
                )
            )
        else:
            findings.append(Finding(NAME, Grade.DANGER, Says(template, values), (part,)))
    return Verdict(tuple(findings), sound)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """A heat source with a hand-reset high limit."""
    part = finding.components[0]
    says = Says("Use a hand-reset high limit on {thing}.", {"thing": case.drawing.name(part)})
    yield Proposal(says, set_field(case.drawing, part, "high_limit", "hand_reset"))
