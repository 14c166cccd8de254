"""The pressure at the tap seemed low enough on the day, and the reducing valve was saved on."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried

BRINGS = frozenset({"store-vessel-too-small"})
"""At the pressure of the main the vessel has less room."""


def plant(site: Site) -> Iterator[Planted]:
    """The reducing valve before the store left out."""
    stores = tuple(store.id for store in site.parts("unvented_store"))
    for valve in site.parts("pressure_reducing_valve"):
        with tried():
            drawing = site.with_water_through(valve.id, "in", "out")
            says = site.says("{valve} is left out.", valve=valve.id)
            yield Planted(drawing, says, stores, brings=BRINGS)
