"""The store is taken for one with an air gap inside, or its vessel was taken off waterlogged and not replaced."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The store's vessel gone."""
    stores = tuple(store.id for store in site.parts("unvented_store"))
    for vessel in site.devices(Role.HOLDS_EXPANSION):
        if site.case.bodies.of(vessel.node) in site.case.bodies.drinking:
            says = site.says("The store has no vessel: {vessel} is left out.", vessel=vessel.part)
            yield Planted(site.without(vessel.part), says, stores)
