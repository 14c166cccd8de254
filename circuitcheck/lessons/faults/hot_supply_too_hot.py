"""The store's thermostat is turned up as far as it goes, so that the water lasts for one more bath."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A store's thermostat set above 80 °C."""
    every = [id for id, control in site.drawing.controls.items() if control.kind.name == "store_thermostat"]
    for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
        for store in site.devices(role):
            hot = site.one(82, 85, 88)
            values = {(store.part, "thermostat_c"): hot} | {(id, "set_c"): hot for id in every}
            says = site.says("The thermostat of {store} is set to {hot} °C.", store=store.part, hot=hot)
            yield Planted(site.with_values(values), says, (store.part, *every))
