"""The heat source is taken for one with a vessel inside, or the old one was taken off its bracket and
never replaced."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import built_in, of_the_heating, sources, without_built_in
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The one vessel gone, or not built in after all."""
    vessels = of_the_heating(site, Role.HOLDS_EXPANSION)
    heat = tuple(source.part for source in sources(site))
    if len(vessels) == 1:
        drawing = site.without(vessels[0].part)
        yield Planted(drawing, site.says("There is no expansion vessel on the heating water."), heat)
    for source in built_in(site, "vessel"):
        says = site.says("{source} has no vessel built in, and there is no other.", source=source)
        yield Planted(without_built_in(site, source, "vessel"), says, (source,))
