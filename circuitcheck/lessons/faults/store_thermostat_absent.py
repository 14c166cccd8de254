"""The store's thermostat is left in its box: the programmer opens the valve, and the store gets hot."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"hot-supply-too-hot", "heat-called-without-interlock"})
"""Nothing stops the heat then: the hot water is as hot as the heat source, which goes on for nobody."""


def plant(site: Site) -> Iterator[Planted]:
    """The store's thermostat gone."""
    stores = tuple(store.id for store in site.parts("unvented_store", "vented_store"))
    for id, control in site.drawing.controls.items():
        if control.kind.name == "store_thermostat":
            says = site.says("{control} is left out.", control=id)
            yield Planted(site.without_controls(id), says, stores, brings=BRINGS)
