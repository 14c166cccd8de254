"""The tundish is put where there is a floor drain, and the valve stays on top of the store."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The pipe from the relief valve to its tundish longer than it may be."""
    for discharge, run in runs(site):
        if run.tundish is None:
            continue
        pipe = run.pipes[0]
        long = site.one(0.9, 1.2, 1.8)
        says = site.says(
            "The pipe from {valve} to {tundish} is {long} m long.",
            valve=discharge.valve.part,
            tundish=run.steps[run.tundish].part,
            long=long,
        )
        yield Planted(
            site.with_value(pipe, "length_m", long),
            says,
            (discharge.valve.part, run.steps[run.tundish].part),
            (pipe,),
        )
