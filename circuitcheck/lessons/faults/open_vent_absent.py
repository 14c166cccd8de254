"""The open vent dripped, or was in the way when the loft was boarded, and is taken out and its tee capped."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """The vent gone; or a check valve in it."""
    for pair in pairs(site):
        heat = pair.water.heated.part
        with tried():
            drawing = site.without(pair.vent.part)
            says = site.says("{source} has no open vent.", source=heat)
            yield Planted(drawing, says, (heat, pair.feed.part))
        with tried():
            end = Joint(pair.vent.part, pair.vent.device.port)
            drawing, valve = site.valve_cut_in(end, "Vent check", kind="check_valve", port="out")
            says = site.says("{valve} stands in {vent}.", drawing, valve=valve, vent=pair.vent.part)
            yield Planted(drawing, says, (valve, pair.vent.part, heat), pair.vent_tap.pipes)
