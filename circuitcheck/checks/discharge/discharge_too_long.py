"""A discharge pipe is too long for its bore.

Flags: After the tundish of a store's relief valve, a run whose resistance (its length, and an
    allowance for each bend) is above the table's limit for its bore. A tee entered or left by its
    branch counts as a bend. Pipes of mixed bore count by the smallest. Exactly the limit passes.
Why: Every metre and every bend holds back the mix of steam and water that comes out. Past the limit
    it backs up and spills from the tundish, scalding, inside the house.
Remedy: Run the pipe one size larger from the tundish to the end, or shorten it, or take bends out.
    Each further size carries 9 m more.
Source: Approved Document G (England), Table 3.1 and 3.58 with its worked example; WFR guidance G19.3d.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharge_cures import discharge_of, enlarged
from circuitcheck.checks.discharging import (
    bends_along,
    length_along,
    outlet_mm,
    rules_apply,
    table,
    unanswered,
)
from circuitcheck.checks.wording import figure
from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.discharge import Row, resistance_m, row, rows, smallest_d2, within

NAME = "discharge-too-long"


def judge(case: Case) -> Verdict:
    """One finding for each store's relief valve whose discharge is, or may be, too long."""
    findings, sound = [], 0
    for discharge in case.discharges:
        applies, exempt_if = rules_apply(case, discharge)
        runs = [run for run in discharge.runs if run.tundish is not None]
        if not applies or not runs:
            continue
        # To every end it has: the longest way is not always the one that its bore or bends make too long.
        outcomes = [_judge_run(case, discharge, run, exempt_if) for run in runs]
        found = [outcome for outcome in outcomes if isinstance(outcome, Finding)]
        if found:
            findings.append(_worst(case, discharge, found))
        elif 1 in outcomes:
            sound += 1
    return Verdict(tuple(findings), sound)


def _worst(case: Case, discharge: Discharge, found: list[Finding]) -> Finding:
    """The way furthest over its limit; where none is known to be over, all that is missing."""
    over = [finding for finding in found if finding.grade is Grade.DANGER]
    if over:
        return max(over, key=lambda finding: finding.numbers["resistance_m"] / finding.numbers["limit_m"])
    missing = tuple(field for finding in found for field in finding.missing)
    pipes = tuple(dict.fromkeys(pipe for finding in found for pipe in finding.pipes))
    return _unknown(case, discharge, pipes, missing)


def _judge_run(case: Case, discharge: Discharge, run: Run, exempt_if: tuple[str, ...]) -> Finding | int:
    """A finding, 1 for a sound run, or 0 where another check speaks of a bore below the table's."""
    missing, table_row = _row(case, discharge, run)
    if table_row is None:
        return _unknown(case, discharge, run.after_tundish, missing) if missing else 0
    length = length_along(case, run.after_tundish)
    bends = bends_along(case, run.after_tundish)
    count = bends.known + run.branches_after_tundish
    resistance = resistance_m(length.known, count, table_row.bend_m)
    if not within(resistance, table_row.limit_m):
        # What is known is too long already; what is not known can only add to it.
        if exempt_if or missing:
            return _unknown(case, discharge, run.after_tundish, (*missing, *exempt_if))
        return _finding(case, discharge, run, table_row, length.known, count)
    gaps = (*missing, *length.missing, *bends.missing)
    if gaps:
        return _unknown(case, discharge, run.after_tundish, gaps)
    return 1


def _row(case: Case, discharge: Discharge, run: Run) -> tuple[tuple[str, ...], Row | None]:
    """The table's row for the smallest bore after the tundish, and what is missing to be sure of it."""
    outlet, field = outlet_mm(case, discharge)
    missing: list[str] = []
    sizes: dict[str, float] = {}
    for pipe in run.after_tundish:
        size = case.pipe_value(pipe, "size_mm")
        if size is None:
            missing.append(f"{pipe}.size_mm")
        else:
            sizes[pipe] = float(size)
        if case.pipe_value(pipe, "material") != "copper":
            missing.append(f"{pipe}.material")
    tabled = rows(table(case), outlet) if outlet is not None else ()
    if not tabled:
        return (*missing, field), None
    if not sizes:
        return tuple(missing), None
    smallest = min(sizes, key=lambda pipe: sizes[pipe])
    found = row(tabled, tabled[0].outlet_mm, sizes[smallest])
    if found is None and sizes[smallest] > tabled[0].d2_mm:
        missing.append(f"{smallest}.size_mm")  # a size between or beyond those of the table
    return tuple(missing), found


def _unknown(case: Case, discharge: Discharge, pipes: tuple[str, ...], missing: tuple[str, ...]) -> Finding:
    return unanswered(
        NAME,
        "Whether the discharge of {thing} is short enough for its bore is not known: {missing}.",
        {"thing": case.drawing.name(discharge.valve.part)},
        discharge,
        missing,
        pipes=pipes,
    )


def _finding(
    case: Case, discharge: Discharge, run: Run, table_row: Row, length_m: float, bends: float
) -> Finding:
    resistance = resistance_m(length_m, bends, table_row.bend_m)
    larger = smallest_d2(table(case), table_row.outlet_mm, length_m, bends)
    template = (
        "The discharge of {thing} is too long for {size} mm: {length} m and {bends} bends count as "
        "{resistance} m, at most {limit} m is allowed. "
    )
    template += "{larger} mm would carry it." if larger else "No size of the table carries it: shorten it."
    numbers = {
        "length_m": length_m,
        "bends": bends,
        "bend_allowance_m": table_row.bend_m,
        "resistance_m": resistance,
        "limit_m": table_row.limit_m,
        "size_mm": float(table_row.d2_mm),
    }
    if larger:
        numbers["size_that_passes_mm"] = float(larger.d2_mm)
    return Finding(
        NAME,
        Grade.DANGER,
        Says(
            template,
            {
                "thing": case.drawing.name(discharge.valve.part),
                "size": figure(table_row.d2_mm),
                "length": figure(length_m),
                "bends": figure(bends),
                "resistance": figure(resistance),
                "limit": figure(table_row.limit_m),
                "larger": figure(larger.d2_mm) if larger else "",
            },
        ),
        components=(discharge.valve.part, run.end),
        pipes=run.after_tundish,
        numbers=numbers,
    )


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To run every pipe from the tundish to the end in the size that carries the longest way."""
    discharge = discharge_of(case, finding)
    outlet, _ = outlet_mm(case, discharge)
    needed = [
        smallest_d2(
            table(case),
            outlet or 0.0,
            length_along(case, run.after_tundish).known,
            bends_along(case, run.after_tundish).known + run.branches_after_tundish,
        )
        for run in discharge.runs
        if run.tundish is not None
    ]
    sizes = [each.d2_mm for each in needed if each is not None]
    if len(sizes) < len(needed):
        return  # no size carries it: only a shorter way helps
    drawing, _ = enlarged(case, discharge, max(sizes))
    yield Proposal(
        Says(
            "Run the discharge of {thing} in {size} mm from the tundish to its end.",
            {"thing": case.drawing.name(discharge.valve.part), "size": figure(max(sizes))},
        ),
        drawing,
    )
