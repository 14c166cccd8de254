"""A heat pump takes the place of a heat source that could do with a few litres, and no buffer is fitted."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A heat source that needs more water going round than always does."""
    for source in sources(site):
        least = site.one(60, 80, 100)
        says = site.says("{source} needs {least} l always going round.", source=source.part, least=least)
        yield Planted(site.with_value(source.part, "minimum_content_l", least), says, (source.part,))
