"""A room heater with a back boiler is to heat the water too, and its pipes are led through the store's coil."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.store_water import store_waters
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"heat-leak-absent", "uncontrolled-source-sealed"})


def plant(site: Site) -> Iterator[Planted]:
    """A heat source that cannot be switched off, on the coil of a mains-fed store."""
    coils = {
        each.part for each in site.devices(Role.HEATED_BY_COIL) if site.pipe_on(each.part, each.device.port)
    }
    stores = tuple(water.store for water in store_waters(site.case) if water.store in coils)
    for source in sources(site):
        if not stores:
            continue
        drawing = site.with_value(source.part, "heat", "uncontrolled")
        says = site.says(
            "{source} cannot be switched off, and it heats {store}.", source=source.part, store=stores[0]
        )
        yield Planted(drawing, says, (source.part, *stores), brings=BRINGS)
