"""The new heat source is small outside and has a narrow heat exchanger, and nobody reads how much water it
needs."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A heat source that needs more flow than it gets."""
    for source in sources(site):
        least = site.one(14, 18, 24)
        says = site.says("{source} needs {least} l/min.", source=source.part, least=least)
        yield Planted(site.with_value(source.part, "minimum_flow_lpm", least), says, (source.part,))
