"""The inlet group is left off for want of room, and its relief valve with it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """The expansion relief valve and its pipes gone."""
    for valve in site.parts("expansion_relief_valve"):
        says = site.says("{valve} is left out.", valve=valve.id)
        stores = tuple(store.id for store in site.parts("unvented_store"))
        yield Planted(site.without(valve.id), says, stores)
