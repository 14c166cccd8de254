"""The expansion relief valve is changed for one that was set for another store."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A relief valve that opens above what the store is made for."""
    for relief in site.parts("expansion_relief_valve"):
        says = site.says("{relief} opens at {bar} bar.", relief=relief.id, bar=10.0)
        stores = tuple(store.id for store in site.parts("unvented_store"))
        yield Planted(site.with_value(relief.id, "set_pressure_bar", 10.0), says, (relief.id, *stores))
