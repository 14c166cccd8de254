"""There is no room for the temperature relief valve at the store, so it is teed off the pipe beside it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The temperature relief valve on the cold feed or the hot pipe, the store's own port capped."""
    stores = {each.part: each for each in site.devices(Role.STORES_AT_MAINS_PRESSURE)}
    for valve in site.devices(Role.RELIEVES_BY_TEMPERATURE):
        there = site.beyond(valve.part, valve.device.port)
        if there is None or there.part not in stores:
            continue
        device = stores[there.part].device
        pipe = site.drawing.joined[there]
        for by in site.mixed((Joint(there.part, device.port), Joint(there.part, device.other))):
            with tried():
                work = site.fitting()
                tee = work.move_end(pipe, there.part, by)
                work.hang("cap", "connection", there)
                says = site.says(
                    "{valve} is teed off a pipe of {store}.", work.drawing, valve=valve.part, store=there.part
                )
                yield Planted(work.drawing, says, (valve.part, there.part, tee), (pipe,))
