"""The bathroom's cold is teed off where the pipe is easiest to reach: past the check valve, by the store."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.store_feed import feeds
from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The cold of a blending valve from between the check valve and the store."""
    bodies = site.case.bodies
    stores = tuple(feed.water.store for feed in feeds(site.case))
    for valve in site.devices(Role.BLENDS):
        pipe = site.pipe_on(valve.part, "cold")
        tee = site.beyond(valve.part, "cold")
        if not stores or pipe is None or tee is None:
            continue
        for check in site.devices(Role.STOPS_BACKFLOW):
            if bodies.of(check.node) not in bodies.drinking or _is_secondary(site, check):
                continue
            with tried():
                drawing, new = site.rejoined(pipe, tee.part, Joint(check.part, check.device.other))
                says = site.says(
                    "{valve} takes its cold from behind {check}.", valve=valve.part, check=check.part
                )
                yield Planted(drawing, says, (valve.part, new, *stores), (pipe,))


def _is_secondary(site: Site, check: Placed) -> bool:
    there = site.beyond(check.part, check.device.other)
    return there is None or there.port == "secondary_return"
