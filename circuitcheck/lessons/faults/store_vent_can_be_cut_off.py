"""A valve is put by the store, so that a tap can be mended, below where the vent leaves."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.venting import open_stores
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried


def plant(site: Site) -> Iterator[Planted]:
    """A valve on the store's hot pipe, or in the vent."""
    for water in site.mixed(open_stores(site.case)):
        for vent in water.hot_vents:
            for by in site.mixed((water.hot, Joint(vent.part, vent.device.port))):
                with tried():
                    drawing, valve = site.valve_cut_in(by)
                    says = site.says(
                        "{valve} can part {store} from {vent}.",
                        drawing,
                        valve=valve,
                        store=water.heated.part,
                        vent=vent.part,
                    )
                    yield Planted(
                        drawing, says, (valve, water.heated.part, vent.part), drawing.pipes_of(valve)
                    )
