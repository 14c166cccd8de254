"""The discharge is run in one piece to the outside wall, as the one of the heating's safety valve is."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The tundish left out, its two pipes one."""
    for tundish in site.devices(Role.SHOWS_DISCHARGE):
        valves = [
            each.valve.part
            for each in site.case.discharges
            if any(step.part == tundish.part for run in each.runs for step in run.steps)
        ]
        with tried():
            drawing = site.with_water_through(tundish.part, tundish.device.port, tundish.device.other)
            says = site.says("No tundish shows when {valve} discharges.", valve=valves[0] if valves else "")
            yield Planted(
                drawing,
                says,
                tuple(valves),
                (site.drawing.joined[Joint(tundish.part, tundish.device.port)],),
            )
