"""The thermostat is wired to the zone valve, and the pump of the same circuit to the programmer alone."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A control that acts on a valve and a pump acts on the valve alone, so that the pump runs on."""
    for pump in of_the_heating(site, Role.PUMPS):
        controls = [each.id for each in site.drawing.controls.values() if pump.part in each.acts_on]
        if not controls:
            continue
        says = site.says("Nothing stops {pump} when its valve shuts.", pump=pump.part)
        yield Planted(site.without_acting_on(controls, pump.part), says, (pump.part,))
