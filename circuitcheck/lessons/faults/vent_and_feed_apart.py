"""The vent is joined by the heat source and the feed where the pipe comes past the airing cupboard."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.cisterns import pairs
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """More pipe between the tees of vent and feed."""
    for pair in pairs(site):
        for pipe in pair.pipes_between or ():
            apart = site.one(0.4, 0.8, 1.5)
            drawing = site.with_value(pipe, "length_m", apart)
            says = site.says(
                "{apart} m of pipe lie between the tees of {vent} and of {feed}.",
                apart=apart,
                vent=pair.vent.part,
                feed=pair.feed.part,
            )
            tees = (pair.vent_tap.joint.part, pair.feed_tap.joint.part)
            yield Planted(drawing, says, (*tees, pair.vent.part, pair.feed.part), (pipe,))
