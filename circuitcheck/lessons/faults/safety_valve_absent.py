"""The heat source was bought without its valve set, and the pipe for the safety valve was never teed off."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating, sources
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A safety valve gone, with the discharge that was its alone."""
    heat = tuple(source.part for source in sources(site))
    runs = {each.valve.part: each.runs for each in site.case.discharges}
    for valve in of_the_heating(site, Role.RELIEVES_HEATING):
        ways = runs[valve.part]
        if len(ways) != 1 or len(ways[0].steps) != 1:
            continue
        drawing = site.without(valve.part, ways[0].end)
        yield Planted(drawing, site.says("There is no safety valve on the heating water."), heat)
