"""The gauge broke off when the vessel was changed, and the hole was closed with a plug."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import built_in, of_the_heating, sources, without_built_in
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The one gauge gone."""
    gauges = of_the_heating(site, Role.SHOWS_PRESSURE)
    heat = tuple(source.part for source in sources(site))
    if len(gauges) == 1:
        drawing = site.without(gauges[0].part)
        yield Planted(drawing, site.says("There is no pressure gauge on the heating water."), heat)
    for source in built_in(site, "gauge"):
        says = site.says("{source} has no gauge built in, and there is no other.", source=source)
        yield Planted(without_built_in(site, source, "gauge"), says, (source,))
