"""A service valve is put into the cold feed, so that the cistern can be changed without draining down."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A valve in the cold feed, at the cistern or where it joins the circuit."""
    for pair in pairs(site):
        feed = pair.feed
        ends = [Joint(feed.part, feed.device.port)]
        below = site.beyond(feed.part, feed.device.port)
        ends += [below] if below is not None else []
        for by in site.mixed(ends):
            with tried():
                drawing, valve = site.valve_cut_in(by)
                says = site.says(
                    "{valve} can shut the cold feed from {cistern}.", drawing, valve=valve, cistern=feed.part
                )
                yield Planted(drawing, says, (valve, feed.part), drawing.pipes_of(valve))
