"""In the wiring centre the lead of the store's energy cut-out is put on the terminal of the rooms' valve."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """An energy cut-out that shuts another circuit's valve."""
    for store in site.parts("unvented_store"):
        shuts = store.value("energy_cut_out")
        for valve in site.parts("zone_valve"):
            if shuts and valve.id != shuts:
                says = site.says("The cut-out of {store} shuts {valve}.", store=store.id, valve=valve.id)
                drawing = site.with_value(store.id, "energy_cut_out", valve.id)
                yield Planted(drawing, says, (store.id, valve.id))
