"""The safety valve weeps, and is changed for one from the van that is set higher."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import built_in, of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A safety valve set above what the heat source is made for."""
    high = site.one(3.5, 4, 6)
    where = [(each.part, "set_pressure_bar") for each in of_the_heating(site, Role.RELIEVES_HEATING)]
    where += [(source, "built_in_safety_valve_bar") for source in built_in(site, "safety_valve")]
    for valve, field in site.mixed(where):
        says = site.says("{valve} lifts only at {high} bar.", valve=valve, high=high)
        if field != "set_pressure_bar":
            says = site.says("The safety valve in {valve} lifts only at {high} bar.", valve=valve, high=high)
        yield Planted(site.with_value(valve, field, high), says, (valve,))
