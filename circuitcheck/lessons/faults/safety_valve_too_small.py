"""A larger heat source was fitted in the old one's place, and the old safety valve stayed."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A safety valve that cannot let out all the heat source can make."""
    for valve in of_the_heating(site, Role.RELIEVES_HEATING):
        small = site.one(6, 8, 10)
        says = site.says("{valve} can let out {small} kW only.", valve=valve.part, small=small)
        yield Planted(site.with_value(valve.part, "capacity_kw", small), says, (valve.part,))
