"""Floor pipes are joined to the radiators' circuit for the time being, until the mixing set comes."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A zone that is a floor, with nothing that brings its flow down."""
    for zone in site.parts("heating_zone"):
        most = site.one(40, 45, 50)
        says = site.says(
            "{zone} is a floor for {most} °C at most, and gets the full flow.",
            zone=zone.id,
            most=most,
        )
        yield Planted(site.with_value(zone.id, "maximum_flow_temperature_c", most), says, (zone.id,))
