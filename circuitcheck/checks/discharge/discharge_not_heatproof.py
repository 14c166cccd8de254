"""A discharge pipe does not stand the heat.

Flags: Plastic between a store's relief valve and its tundish, marked or not. After the tundish, and
    in a safety valve's discharge, plastic that is not marked as fit for hot discharge.
Why: What comes out may be as hot as 95 °C, mixed with steam. Common plastic sags, comes apart at its
    joints and pours scalding water where the pipe was meant to lead it away from.
Remedy: Run metal pipe before the tundish. After it, run metal, or plastic shown to stand the
    temperature and permanently marked so along its length.
Source: Approved Document G (England) 3.50 and 3.57; WFR guidance G19.3b is stricter after the tundish
    too: non-ferrous metal only. For the heating's safety valve: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharging import rules_apply, unanswered
from circuitcheck.checks.wording import named
from circuitcheck.circuit.discharge import Discharge
from circuitcheck.drawing.edits import clear_field, set_field
from circuitcheck.finding import Finding, Grade, Says

NAME = "discharge-not-heatproof"
PLASTIC = "plastic"


def judge(case: Case) -> Verdict:
    """One finding for each relief or safety valve with plastic in its discharge that may not stand it."""
    findings, sound = [], 0
    for discharge in case.discharges:
        if not discharge.runs:
            continue
        found = _judge_discharge(case, discharge)
        if found is None:
            sound += 1
        else:
            findings.append(found)
    return Verdict(tuple(findings), sound)


def _judge_discharge(case: Case, discharge: Discharge) -> Finding | None:
    bad: dict[str, None] = {}
    missing: dict[str, None] = {}
    for pipe, before in _pipes(discharge).items():
        unknown = _what_is_missing(case, discharge, pipe, before)
        if unknown is None:
            bad[pipe] = None
        else:
            missing.update(dict.fromkeys(unknown))
    thing = case.drawing.name(discharge.valve.part)
    if bad:
        return Finding(
            NAME,
            Grade.DANGER,
            Says(
                "The discharge of {thing} runs in plastic that may not be there: {pipes}.",
                {"thing": thing, "pipes": named(case.drawing, bad)},
            ),
            components=(discharge.valve.part,),
            pipes=tuple(bad),
        )
    if missing:
        template = "Whether the discharge of {thing} stands the heat is not known: {missing}."
        pipes = tuple(dict.fromkeys(field.partition(".")[0] for field in missing))
        known = tuple(pipe for pipe in pipes if pipe in case.drawing.pipes)
        return unanswered(NAME, template, {"thing": thing}, discharge, missing, pipes=known)
    return None


def _pipes(discharge: Discharge) -> dict[str, bool]:
    """Each pipe of the discharge, and whether it stands before a tundish."""
    found: dict[str, bool] = {}
    for run in discharge.runs:
        for pipe in run.pipes:
            before = run.tundish is not None and pipe in run.before_tundish
            found[pipe] = found.get(pipe, False) or before
    return found


def _what_is_missing(case: Case, discharge: Discharge, pipe: str, before: bool) -> tuple[str, ...] | None:
    """None: it does not stand the heat. Else the fields that are missing to say that it does."""
    material = case.pipe_value(pipe, "material")
    if material is not None and material != PLASTIC:
        return ()
    marked = case.pipe_value(pipe, "heatproof")
    # The rules of the tundish are asked for only where they decide: not every book has them.
    applies, applies_if = rules_apply(case, discharge) if before and marked is not False else (False, ())
    metal_only = applies and not applies_if
    fields = {
        f"{pipe}.material": material is None and (not marked or applies),
        f"{pipe}.heatproof": marked is None and not metal_only,
        **dict.fromkeys(applies_if, True),
    }
    missing = tuple(field for field, lacks in fields.items() if lacks)
    if material == PLASTIC and (marked is False or metal_only):
        return None
    return missing


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To run these pipes in copper."""
    drawing = case.drawing
    for pipe in finding.pipes:
        drawing = set_field(drawing, pipe, "material", "copper")
        if "bore_mm" in drawing.pipes[pipe].data:
            drawing = clear_field(drawing, pipe, "bore_mm")  # it was the plastic tube's
    yield Proposal(
        Says("Run {pipes} in copper.", {"pipes": named(case.drawing, finding.pipes)}),
        drawing,
    )
