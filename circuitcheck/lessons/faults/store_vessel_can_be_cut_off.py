"""A service valve is put before the store's vessel so that it can be changed without draining the store."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A valve that anybody can shut, right before the vessel."""
    stores = tuple(store.id for store in site.parts("unvented_store"))
    for vessel in site.devices(Role.HOLDS_EXPANSION):
        if site.case.bodies.of(vessel.node) in site.case.bodies.drinking:
            with tried():
                drawing, valve = site.valve_cut_in(Joint(vessel.part, vessel.device.port))
                says = site.says("{valve} can shut {vessel} off.", drawing, valve=valve, vessel=vessel.part)
                yield Planted(drawing, says, (valve, vessel.part, *stores))
