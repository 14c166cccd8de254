"""A vessel made for a much smaller store is taken from stock."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The store's vessel in a small size."""
    for vessel in site.devices(Role.HOLDS_EXPANSION):
        if site.case.bodies.of(vessel.node) in site.case.bodies.drinking:
            litres = site.one(2, 5)
            says = site.says("{vessel} holds {litres} l.", vessel=vessel.part, litres=litres)
            yield Planted(site.with_value(vessel.part, "volume_l", litres), says, (vessel.part,))
