"""An old store is kept when the open-vented heating is sealed, and nobody asks what its coil was made for."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"safety-valve-set-too-high"})
"""The safety valve lets the coil bear more than it is made for."""


def plant(site: Site) -> Iterator[Planted]:
    """A coil made for less pressure than the heating's safety valve holds back."""
    for store in site.parts("unvented_store", "vented_store"):
        if store.value("coil_maximum_pressure_bar") is not None and site.pipe_on(store.id, "coil_flow"):
            says = site.says("The coil of {store} is made for {bar} bar.", store=store.id, bar=1.0)
            drawing = site.with_value(store.id, "coil_maximum_pressure_bar", 1.0)
            yield Planted(drawing, says, (store.id,), brings=BRINGS)
