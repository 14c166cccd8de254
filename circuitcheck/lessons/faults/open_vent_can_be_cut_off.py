"""A valve is put into the open vent to stop it dripping, or by the heat source so that it can be changed."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A valve in the vent, at its end or where it leaves the circuit."""
    for pair in pairs(site):
        ends = [Joint(pair.vent.part, pair.vent.device.port)]
        below = site.beyond(*ends[0])
        ends += [below] if below is not None else []
        for by in site.mixed(ends):
            with tried():
                drawing, valve = site.valve_cut_in(by)
                says = site.says("{valve} can shut {vent}.", drawing, valve=valve, vent=pair.vent.part)
                yield Planted(drawing, says, (valve, pair.vent.part), drawing.pipes_of(valve))
