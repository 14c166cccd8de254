"""A valve is put into the discharge pipe to stop a drip until somebody comes."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.discharges import runs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A valve in the discharge, right at the relief valve or right before the end."""
    for discharge, run in runs(site):
        valve = discharge.valve
        for by in site.mixed((Joint(valve.part, valve.device.other), Joint(run.end, run.steps[-1].came_by))):
            with tried():
                drawing, tap = site.valve_cut_in(by)
                says = site.says(
                    "{tap} can shut the discharge of {valve}.", drawing, tap=tap, valve=valve.part
                )
                yield Planted(drawing, says, (tap, valve.part))
