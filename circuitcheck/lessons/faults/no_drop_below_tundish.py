"""There was no room under the tundish, so the pipe turns as soon as it leaves it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A bend close below the tundish."""
    for tundish in site.devices(Role.SHOWS_DISCHARGE):
        pipe = site.pipe_on(tundish.part, tundish.device.other)
        if pipe is None:
            continue
        bends = max(1, site.drawing.pipes[pipe].data.get("bends", 1))
        drop = site.one(0.05, 0.1, 0.15)
        drawing = site.with_values({(pipe, "straight_drop_m"): drop, (pipe, "bends"): bends})
        says = site.says("The pipe below {tundish} bends after {drop} m.", tundish=tundish.part, drop=drop)
        yield Planted(drawing, says, (tundish.part,), (pipe,))
