"""Waste pipe is cheap, is in the van, and is taken for good enough, as it will hardly ever carry anything."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"discharge-too-long"})


def plant(site: Site) -> Iterator[Planted]:
    """One pipe of a discharge in plastic that is not marked."""
    for discharge, run in runs(site):
        for pipe in site.mixed(run.pipes):
            size = site.drawing.pipes[pipe].data["size_mm"]
            plastic = {"material": "plastic", "bore_mm": round(size * 0.94, 1), "heatproof": False}
            drawing = site.with_values({(pipe, field): value for field, value in plastic.items()})
            says = site.says("The discharge of {valve} goes through plastic.", valve=discharge.valve.part)
            yield Planted(drawing, says, (discharge.valve.part,), (pipe,), BRINGS)
