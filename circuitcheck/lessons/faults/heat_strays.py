"""The check valves of the circuits were saved on, as each has its own pump anyway."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A circuit's check valve left out, or its return moved to where another pump pushes."""
    for check in site.devices(Role.STOPS_BACKFLOW):
        work = site.fitting()
        work.take_out(check.part)
        zones = tuple(part.id for part in site.parts("heating_zone", "radiator"))
        says = site.says("{check} is left out.", check=check.part)
        yield Planted(work.drawing, says, zones)
