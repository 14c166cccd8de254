"""The cistern in the loft leaks, and the main is joined straight to the store: the shower is so much better."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.venting import open_stores
from circuitcheck.drawing.filling_in import set_field
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.cisterns import cisterns
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The cistern gone, its supply and its feed one pipe."""
    bodies = site.case.bodies
    mains = tuple(each.part for each in site.devices(Role.MAIN))
    for water in site.mixed(open_stores(site.case)):
        store = water.heated.part
        for cistern in cisterns(site):
            if bodies.of(cistern.node) != water.heated.body:
                continue
            with tried():
                drawing = site.with_water_through(cistern.part, "supply", cistern.device.port)
                for vent in site.parts("open_vent"):
                    if vent.data.get("over") == cistern.part:
                        drawing = set_field(drawing, vent.id, "over", None)
                pipe = site.drawing.joined[Joint(cistern.part, "supply")]
                says = site.says(
                    "The main is joined to {store} where {cistern} stood.", store=store, cistern=cistern.part
                )
                yield Planted(drawing, says, (store, *mains), (pipe,))
