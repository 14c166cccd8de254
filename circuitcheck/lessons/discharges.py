"""The discharges of a drawing into which faults are put, valve by valve."""

from __future__ import annotations

from circuitcheck.circuit.discharge import Discharge, Run
from circuitcheck.lessons.site import Site


def runs(site: Site) -> list[tuple[Discharge, Run]]:
    """Every way from a relief or safety valve to a discharge end, in random order."""
    return site.mixed((each, run) for each in site.case.discharges for run in each.runs)


def own_runs(site: Site) -> list[tuple[Discharge, Run]]:
    """Those whose end serves no other valve."""
    every = runs(site)
    ends = [run.end for _, run in every]
    return [(discharge, run) for discharge, run in every if ends.count(run.end) == 1]
