"""A room heater with a back boiler is joined to the sealed heating, because its pipes were there already."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"heat-leak-absent", "uncontrolled-heat-into-store"})


def plant(site: Site) -> Iterator[Planted]:
    """A heat source that cannot be switched off."""
    for source in sources(site):
        drawing = site.with_value(source.part, "heat", "uncontrolled")
        says = site.says("{source} cannot be switched off, and its water is sealed.", source=source.part)
        yield Planted(drawing, says, (source.part,), brings=BRINGS)
