"""A burnt-out immersion heater is changed for an old one from the van, which has a thermostat and nothing else."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """An immersion heater without a cut-out of its own."""
    for store in site.parts("unvented_store"):
        if store.value("immersion_kw"):
            says = site.says("The immersion heater of {store} has no cut-out.", store=store.id)
            yield Planted(site.with_value(store.id, "immersion_cut_out", False), says, (store.id,))
