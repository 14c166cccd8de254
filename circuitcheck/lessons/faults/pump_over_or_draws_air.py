"""The vent is cut short under the rafters, or the pump is put into the return because that is cooler."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A vent that ends too close above the water."""
    for pair in pairs(site):
        low = site.one(100, 150, 250)
        drawing = site.with_value(pair.vent.part, "height_above_water_mm", low)
        says = site.says("{vent} ends {low} mm above the water.", vent=pair.vent.part, low=low)
        yield Planted(drawing, says, (pair.vent.part,), pair.vent_tap.pipes)
