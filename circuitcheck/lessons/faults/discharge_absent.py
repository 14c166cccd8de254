"""The outlet dripped on the floor, so somebody plugged it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.discharges import own_runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A plug where the discharge should end; or nothing at all on the valve's outlet."""
    for discharge, run in own_runs(site):
        valve = discharge.valve.part
        drawing = site.with_part_instead(run.end, "cap", label="Plug")
        says = site.says("The discharge of {valve} is closed by a plug.", valve=valve)
        yield Planted(drawing, says, (valve, run.end), run.pipes)
