"""A heat source made for open-vented heating is used again on the sealed circuit, without a cut-out that
somebody must reset."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A heat source whose high limit resets itself, or has none."""
    for source in sources(site):
        limit = site.one("self_reset", None)
        says = site.says("{source} has no high limit.", source=source.part)
        if limit is not None:
            says = site.says("The high limit of {source} resets itself.", source=source.part)
        yield Planted(site.with_value(source.part, "high_limit", limit), says, (source.part,))
