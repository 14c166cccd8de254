"""A valve is put below the safety valve so that it can be changed without draining down."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A valve that can be shut, right before the safety valve's inlet."""
    for safety in of_the_heating(site, Role.RELIEVES_HEATING):
        with tried():
            drawing, valve = site.valve_cut_in(Joint(safety.part, safety.device.port))
            says = site.says("{valve} can shut {safety} off.", drawing, valve=valve, safety=safety.part)
            yield Planted(drawing, says, (valve, safety.part), drawing.pipes_of(safety.part))
