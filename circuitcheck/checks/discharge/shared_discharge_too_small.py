"""One discharge pipe for several stores is too small.

Flags: A pipe that carries the discharge of two or more mains-fed stores and is not one standard size
    larger than the largest that one of them needs by itself. Each store's pipe is sized for its whole
    run, from its tundish to the end. Valves of one store count as one; stores of 15 litres or less
    are outside this rule.
Why: When the main surges or the heat source runs away, the stores lift together. A pipe sized for one
    of them backs up with the other's boiling water, which then comes out at a tundish indoors.
Remedy: Make the common pipe one size larger than the largest single one, or lead each store's discharge
    to an end of its own.
Source: Approved Document G (England) 3.59, with Table 3.1 and 3.58 for each store's own size.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal, Verdict
from circuitcheck.checks.discharging import (
    bends_along,
    length_along,
    outlet_mm,
    over_exempt,
    stores_relieved,
    table,
)
from circuitcheck.checks.wording import figure, named, upper
from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.drawing.edits import set_field
from circuitcheck.finding import Finding, Grade, Says
from circuitcheck.sizing.discharge import Table, rows, size_above, smallest_d2

NAME = "shared-discharge-too-small"


@dataclass(frozen=True, slots=True)
class _Need:
    """The size a run needs by itself: at least `least_mm`, and just that where nothing is missing."""

    least_mm: float | None
    missing: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Carried:
    """A run that a pipe carries, the stores its valve relieves, and the fields that decide whether the
    rules hold for it (none: they do)."""

    discharge: Discharge
    run: Run
    stores: frozenset[str]
    applies_if: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Judged:
    """A common pipe: its size, the least it must have, and what is missing to say more."""

    pipe: str
    stores: frozenset[str]
    size_mm: float | None
    least_mm: float | None
    wrong: bool
    missing: tuple[str, ...]


def judge(case: Case) -> Verdict:
    """One finding for each discharge end that stores share through a pipe too small for them."""
    findings, sound = [], 0
    for end, pipes in _common(case).items():
        tabled = table(case)
        judged = [_judge_pipe(case, pipe, carried, tabled) for pipe, carried in pipes.items()]
        wrong = [each for each in judged if each.wrong]
        missing = tuple(dict.fromkeys(field for each in judged for field in each.missing))
        if wrong:
            findings.append(_finding(case, end, wrong))
        elif missing:
            findings.append(_unknown(case, end, judged, missing))
        else:
            sound += 1
    return Verdict(tuple(findings), sound)


def _common(case: Case) -> dict[str, dict[str, list[_Carried]]]:
    """By discharge end, the pipes after the tundish that carry several stores' discharge, and what each
    carries."""
    if len(case.discharges) < 2:
        return {}
    carried: dict[str, dict[str, list[_Carried]]] = {}
    for discharge in case.discharges:
        if not discharge.for_store:
            continue
        relieved = stores_relieved(case, discharge)
        applies, applies_if = over_exempt(case, relieved)
        if not applies:
            continue
        stores = frozenset(relieved)
        for run in discharge.runs:
            for pipe in run.after_tundish:
                at_end = carried.setdefault(run.end, {}).setdefault(pipe, [])
                at_end.append(_Carried(discharge, run, stores, applies_if))
    return {
        end: shared
        for end, pipes in carried.items()
        if (shared := {pipe: runs for pipe, runs in pipes.items() if _are_several(runs)})
    }


def _are_several(carried: list[_Carried]) -> bool:
    """Whether two of the runs are of different stores altogether: valves of one store are one system."""
    kinds = {each.stores for each in carried if each.stores}
    return any(one.isdisjoint(other) for one, other in combinations(kinds, 2))


def _judge_pipe(case: Case, pipe: str, carried: list[_Carried], tabled: Table) -> _Judged:
    needs = [_need(case, each, tabled) for each in carried]
    stores = frozenset().union(*(each.stores for each in carried))
    size = case.pipe_value(pipe, "size_mm")
    # A store that may be too small for the rule decides nothing by itself.
    sure = [each for each in carried if not each.applies_if]
    surely = _largest(need for need, each in zip(needs, carried, strict=True) if not each.applies_if)
    above = case.limit("discharge.sizes_above_the_largest").value
    least = _above(tabled, surely, above)
    if _are_several(sure) and size is not None and surely is not None and (least is None or size < least):
        return _Judged(pipe, stores, size, least, wrong=True, missing=())
    gaps = [field for need in needs for field in need.missing]
    if size is None:
        gaps.append(f"{pipe}.size_mm")
    at_most = _above(tabled, _largest(needs), above)
    if not gaps and size is not None and at_most is not None and size >= at_most:
        return _Judged(pipe, stores, size, at_most, wrong=False, missing=())
    gaps += [field for each in carried for field in each.applies_if]
    return _Judged(pipe, stores, size, least, wrong=False, missing=tuple(dict.fromkeys(gaps)))


def _largest(needs: Iterable[_Need]) -> float | None:
    return max((need.least_mm for need in needs if need.least_mm is not None), default=None)


def _above(tabled: Table, size_mm: float | None, steps: int) -> float | None:
    """So many standard sizes above one; None above the largest."""
    for _ in range(steps):
        size_mm = None if size_mm is None else size_above(tabled, size_mm)
    return size_mm


def _need(case: Case, carried: _Carried, tabled: Table) -> _Need:
    """The size this run needs alone, by what is known of its length and bends."""
    outlet, field = outlet_mm(case, carried.discharge)
    own = rows(tabled, outlet) if outlet is not None else ()
    if not own:
        return _Need(None, (field,))
    run = carried.run
    length, bends = length_along(case, run.after_tundish), bends_along(case, run.after_tundish)
    others = [pipe for pipe in run.after_tundish if case.pipe_value(pipe, "material") != "copper"]
    missing = (*length.missing, *bends.missing, *(f"{pipe}.material" for pipe in others))
    if others:
        return _Need(own[0].d2_mm, missing)  # the table is for copper: its first size holds for any
    known = smallest_d2(tabled, own[0].outlet_mm, length.known, bends.known + run.branches_after_tundish)
    # Longer than any size carries: discharge-too-long says so, and no size is above it.
    return _Need(known.d2_mm if known else own[-1].d2_mm, missing)


def _finding(case: Case, end: str, wrong: list[_Judged]) -> Finding:
    worst = max(wrong, key=lambda each: (each.least_mm is None, (each.least_mm or 0) - (each.size_mm or 0)))
    stores = _in_order(case, frozenset().union(*(each.stores for each in wrong)))
    template = "{pipe} carries the discharge of {stores} together and is {size} mm; "
    if worst.least_mm is None:
        template += "no size of the table is large enough: lead each to an end of its own."
    else:
        template += "one size above the largest that one of them needs is {least} mm."
    numbers = {"size_mm": worst.size_mm or 0.0}
    if worst.least_mm is not None:
        numbers["least_mm"] = worst.least_mm
    return Finding(
        NAME,
        Grade.DANGER,
        Says(
            template,
            {
                "pipe": upper(case.drawing.name(worst.pipe)),
                "stores": named(case.drawing, stores),
                "size": figure(worst.size_mm or 0.0),
                "least": figure(worst.least_mm or 0.0),
            },
        ),
        components=(end, *stores),
        pipes=tuple(each.pipe for each in wrong),
        numbers=numbers,
    )


def _unknown(case: Case, end: str, judged: list[_Judged], missing: tuple[str, ...]) -> Finding:
    stores = _in_order(case, frozenset().union(*(each.stores for each in judged)))
    template = "Whether the common discharge of {stores} is large enough is not known: {missing}."
    return Finding(
        NAME,
        Grade.UNANSWERED,
        Says(template, {"stores": named(case.drawing, stores), "missing": ", ".join(missing)}),
        components=(end, *stores),
        pipes=tuple(each.pipe for each in judged),
        missing=missing,
        would_be=Grade.DANGER,
    )


def _in_order(case: Case, ids: frozenset[str]) -> tuple[str, ...]:
    return tuple(id for id in case.drawing.components if id in ids)


def propose(case: Case, finding: Finding) -> Iterator[Proposal]:
    """To make the common pipes large enough."""
    least = finding.numbers.get("least_mm")
    if least is None:
        return
    drawing = case.drawing
    for pipe in finding.pipes:
        if (case.pipe_value(pipe, "size_mm") or 0.0) < least:
            drawing = set_field(drawing, pipe, "size_mm", least)
    yield Proposal(
        Says(
            "Make the common discharge ({pipes}) {least} mm.",
            {"pipes": named(case.drawing, finding.pipes), "least": figure(least)},
        ),
        drawing,
    )
