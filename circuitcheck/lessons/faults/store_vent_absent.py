"""A house goes over to a sealed circuit, and the store's vent is taken out with the heating's."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.venting import open_stores
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """The store's vent gone; or a check valve in it."""
    for water in site.mixed(open_stores(site.case)):
        store = water.heated.part
        if len(water.hot_vents) != 1:
            continue
        vent = water.hot_vents[0]
        with tried():
            drawing = site.without(vent.part)
            yield Planted(drawing, site.says("{store} has no open vent.", store=store), (store,))
        with tried():
            end = Joint(vent.part, vent.device.port)
            drawing, valve = site.valve_cut_in(end, "Vent check", kind="check_valve", port="in")
            says = site.says("{valve} stands in {vent}.", drawing, valve=valve, vent=vent.part)
            yield Planted(drawing, says, (valve, vent.part, store), drawing.pipes_of(vent.part))
