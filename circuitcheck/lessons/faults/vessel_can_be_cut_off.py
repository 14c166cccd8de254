"""A service valve is put by the expansion vessel so that it can be changed without draining down, or one
at the heat source between the two, and nobody locks it open."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating, sources
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A valve that anybody can shut, right before the vessel; or where the heat source returns."""
    for vessel in of_the_heating(site, Role.HOLDS_EXPANSION):
        with tried():
            drawing, valve = site.valve_cut_in(Joint(vessel.part, vessel.device.port))
            says = site.says("{valve} can shut {vessel} off.", drawing, valve=valve, vessel=vessel.part)
            yield Planted(drawing, says, (valve, vessel.part), drawing.pipes_of(vessel.part))
    for source in sources(site):
        with tried():
            drawing, valve = site.valve_cut_in(Joint(source.part, "return"))
            says = site.says(
                "{valve} can part {source} from its vessel.", drawing, valve=valve, source=source.part
            )
            yield Planted(drawing, says, (valve, source.part))
