"""Valves that cut something off, taken out of the pipe: never what does more than shut."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.case import Case
from circuitcheck.checks.check import Proposal
from circuitcheck.checks.wording import named
from circuitcheck.drawing.fitting import Fitting
from circuitcheck.finding import Finding, Says
from circuitcheck.parts.kind import Way


def without_valves(case: Case, finding: Finding) -> Iterator[Proposal]:
    """All valves that do it alone taken out; where none does, each of those that do it together."""
    witness = finding.witness
    if witness is None:
        return
    alone, shut = (tuple(dict.fromkeys(each)) for each in (witness.alone, witness.shut))
    for parts in (alone,) if alone else tuple((each,) for each in shut):
        if all(only_shuts(case, part) for part in parts):
            work = Fitting(case.drawing, case.lines)
            work.take_out(*parts)
            says = Says("Take {valves} out of the pipe.", {"valves": named(case.drawing, parts)})
            yield Proposal(says, work.drawing)


def only_shuts(case: Case, entry: str) -> bool:
    """Whether a part is a hand valve in a pipe that does nothing else; no leg of a valve is."""
    plan = case.circuit.plans.get(entry)
    if plan is None or plan.devices or len(plan.passages) != 1:
        return False
    passage = plan.passages[0]
    return passage.way is Way.HAND and not passage.gives_heat
