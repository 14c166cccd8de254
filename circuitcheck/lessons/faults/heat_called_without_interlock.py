"""The thermostat is left out because the radiators have heads, or the heat source is wired to the
programmer alone."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A room thermostat left out, or the heat source called by the programmer alone."""
    heat = tuple(source.part for source in sources(site))
    rooms = [each for each in site.drawing.controls.values() if each.kind.name == "room_thermostat"]
    for control in site.mixed(rooms):
        says = site.says("{control} is gone: nothing tells when its rooms are warm.", control=control.id)
        parts = (*heat, *control.acts_on)
        yield Planted(site.without_controls(control.id), says, parts)
    says = site.says("The programmer calls the heat source, whatever the thermostats say.")
    yield Planted(site.with_design("heat_called_by", "programmer_only"), says, heat)
