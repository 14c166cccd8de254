"""The check valve is left off: the inlet group is made up of single parts, and this one looks like a joint."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """The check valve in the store's cold supply left out."""
    stores = tuple(store.id for store in site.parts("unvented_store"))
    for check in site.parts("check_valve"):
        with tried():
            drawing = site.with_water_through(check.id, "in", "out")
            yield Planted(drawing, site.says("{check} is left out.", check=check.id), stores)
