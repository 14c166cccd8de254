"""A check valve is put into the cold feed, so that no warm water comes up into the cistern."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A check valve in the cold feed: water can come down, but the swell cannot go up."""
    for pair in pairs(site):
        feed = pair.feed
        with tried():
            drawing, valve = site.valve_cut_in(
                Joint(feed.part, feed.device.port), "Feed check", kind="check_valve", port="in"
            )
            says = site.says(
                "{valve} lets nothing back into {cistern}.", drawing, valve=valve, cistern=feed.part
            )
            heat = pair.water.heated.part
            yield Planted(drawing, says, (valve, feed.part, heat), pair.feed_tap.pipes)
