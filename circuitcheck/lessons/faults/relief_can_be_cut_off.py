"""A service valve is put before a relief valve, so that a dripping one can be changed."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A valve that anybody can shut, right before the relief valve."""
    stores = tuple(store.id for store in site.parts("unvented_store"))
    for relief in site.parts("expansion_relief_valve", "temperature_relief_valve"):
        with tried():
            drawing, valve = site.valve_cut_in(Joint(relief.id, "inlet"))
            says = site.says("{valve} can shut {relief} off.", drawing, valve=valve, relief=relief.id)
            yield Planted(drawing, says, (valve, relief.id, *stores))
