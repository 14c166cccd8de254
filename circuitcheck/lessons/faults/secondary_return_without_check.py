"""The pump of the secondary return is thought to hold the water back when it stands still."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The check valve beside the pump of the hot water left out."""
    stores = tuple(part.id for part in site.parts("unvented_store"))
    for check in site.devices(Role.STOPS_BACKFLOW):
        if site.case.bodies.of(check.node) not in site.case.bodies.drinking:
            continue
        beside = (site.beyond(check.part, port) for port in ("in", "out"))
        parts = [site.drawing.components[each.part] for each in beside if each is not None]
        pumps = tuple(part.id for part in parts if part.kind.name == "pump")
        if pumps:
            with tried():
                drawing = site.with_water_through(check.part, "in", "out")
                says = site.says("{check} is left out.", check=check.part)
                yield Planted(drawing, says, (*stores, *pumps))
