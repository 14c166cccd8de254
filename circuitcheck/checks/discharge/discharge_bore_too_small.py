"""A discharge pipe is too small.

Flags: Before the tundish, a pipe smaller than the valve's outlet. After it, a pipe smaller than one
    size above the outlet, or one that grows smaller on its way down. For the heating's safety
    valve, which has no tundish, any pipe smaller than the outlet, or a reduction on the way.
Why: Half of what comes out may be steam, which needs far more room than water. A pipe too small
    holds the valve back just when it must let everything go, and fills the tundish until it spills.
Remedy: Make the pipe before the tundish as large as the outlet, and the one after it at least one
    size larger (22 mm for a 15 mm outlet), never smaller further down.
Source: Approved Document G (England), Table 3.1 and 3.51, 3.58; WFR guidance G19.3d. For the heating's
    safety valve: common practice, no source.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharge_cures import discharge_of, enlarged
from circuitcheck.checks.discharging import outlet_mm, rules_apply, table, unanswered
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.discharge import rows

NAME = "discharge-bore-too-small"


@dataclass(frozen=True, slots=True)
class _Stretch:
    pipes: tuple[str, ...]
    least_mm: float | None


def judge(case: Case) -> Verdict:
    """One finding for each valve with a discharge pipe too small for it."""
    findings, sound = [], 0
    no_rule: NoRuleError | None = None
    for discharge in case.discharges:
        try:
            answers = [_judge_run(case, discharge, run) for run in discharge.runs]
        except NoRuleError as error:
            no_rule = error  # the heating's safety valve needs no table: it is judged all the same
            continue
        found = [answer for answer in answers if answer is not None]
        if found:
            findings.append(_worst(case, discharge, found))
        elif answers:
            sound += 1
    if no_rule is not None and not findings:
        raise no_rule
    return Verdict(tuple(findings), sound)


def _worst(case: Case, discharge: Discharge, found: list[Finding]) -> Finding:
    """A way that is too small; where none is known to be, all that is missing."""
    too_small = next((finding for finding in found if finding.grade is Grade.DANGER), None)
    if too_small is not None:
        return too_small
    missing = [field for finding in found for field in finding.missing]
    pipes = tuple(dict.fromkeys(pipe for finding in found for pipe in finding.pipes))
    return _unknown(case, discharge, missing, pipes)


def _judge_run(case: Case, discharge: Discharge, run: Run) -> Finding | None:
    outlet, field = outlet_mm(case, discharge)
    applies, exempt_if = rules_apply(case, discharge)
    tabled = applies and run.tundish is not None
    tabled_rows = rows(table(case), outlet) if tabled and outlet is not None else ()
    d2_least = tabled_rows[0].d2_mm if tabled_rows else None
    too_small = _first_fault(case, run, outlet, d2_least if tabled else outlet)
    if too_small is not None:
        if not exempt_if or _first_fault(case, run, outlet, outlet) is not None:
            return _finding(case, discharge, *too_small)
        return _unknown(case, discharge, exempt_if, run.pipes)
    unknown = [f"{pipe}.size_mm" for pipe in run.pipes if case.pipe_value(pipe, "size_mm") is None]
    if outlet is None or (tabled and not tabled_rows):
        unknown.insert(0, field)
    return _unknown(case, discharge, unknown, run.pipes) if unknown else None


def _first_fault(
    case: Case, run: Run, before_mm: float | None, after_mm: float | None
) -> tuple[str, float, float] | None:
    """The first pipe too small for its place, before the tundish and then after it."""
    stretches = (_Stretch(run.before_tundish, before_mm), _Stretch(run.after_tundish, after_mm))
    return next((fault for stretch in stretches if (fault := _fault(case, stretch)) is not None), None)


def _unknown(case: Case, discharge: Discharge, missing: Sequence[str], pipes: tuple[str, ...]) -> Finding:
    return unanswered(
        NAME,
        "Whether the discharge of {thing} is large enough is not known: {missing}.",
        {"thing": case.drawing.name(discharge.valve.part)},
        discharge,
        missing,
        pipes=pipes,
    )


def _fault(case: Case, stretch: _Stretch) -> tuple[str, float, float] | None:
    """The first pipe too small for its place, its size, and the least it should have."""
    sizes: list[tuple[str, float]] = []
    for pipe in stretch.pipes:
        size = case.pipe_value(pipe, "size_mm")
        if size is not None:
            sizes.append((pipe, float(size)))
    if stretch.least_mm is not None:
        for pipe, size in sizes:
            if size < stretch.least_mm:
                return pipe, size, stretch.least_mm
    return _reduction(sizes)


def _reduction(sizes: Sequence[tuple[str, float]]) -> tuple[str, float, float] | None:
    largest = 0.0
    for pipe, size in sizes:
        if size < largest:
            return pipe, size, largest
        largest = max(largest, size)
    return None


def _finding(case: Case, discharge: Discharge, pipe: str, size_mm: float, least_mm: float) -> Finding:
    return Finding(
        NAME,
        Grade.DANGER,
        Says(
            "{pipe} in the discharge of {thing} is {size} mm; it must be at least {least} mm there.",
            {
                "pipe": upper(case.drawing.name(pipe)),
                "thing": case.drawing.name(discharge.valve.part),
                "size": figure(size_mm),
                "least": figure(least_mm),
            },
        ),
        components=(discharge.valve.part,),
        pipes=(pipe,),
        numbers={"size_mm": size_mm, "least_mm": least_mm},
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To make every pipe of the discharge as large as its place asks for."""
    discharge = discharge_of(case, finding)
    drawing, pipes = enlarged(case, discharge)
    yield Proposal(
        Says(
            "Make {pipes} as large as the discharge of {thing} needs.",
            {"pipes": named(case.drawing, pipes), "thing": case.drawing.name(discharge.valve.part)},
        ),
        drawing,
    )
