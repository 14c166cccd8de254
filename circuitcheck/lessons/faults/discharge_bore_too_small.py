"""The roll of the next size down was in the van."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

SMALLER = {28: 22, 22: 15, 15: 10}


def plant(site: Site) -> Iterator[Planted]:
    """One pipe of a discharge a size too small."""
    for discharge, run in runs(site):
        for pipe in site.mixed(run.pipes):
            size = SMALLER.get(site.drawing.pipes[pipe].data.get("size_mm", 0))
            if size is None:
                continue
            says = site.says(
                "The discharge of {valve} goes through {size} mm.", valve=discharge.valve.part, size=size
            )
            drawing = site.with_value(pipe, "size_mm", size)
            yield Planted(drawing, says, (discharge.valve.part,), (pipe,))
