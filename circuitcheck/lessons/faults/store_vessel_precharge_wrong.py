"""The vessel is left as it came from the works, charged to less than the reducing valve lets through."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The store's vessel charged to less than the reducing valve lets through."""
    for vessel in site.devices(Role.HOLDS_EXPANSION):
        if site.case.bodies.of(vessel.node) in site.case.bodies.drinking:
            for bar in site.mixed((1.0, 1.5)):
                says = site.says("{vessel} is charged to {bar} bar.", vessel=vessel.part, bar=bar)
                yield Planted(site.with_value(vessel.part, "precharge_bar", bar), says, (vessel.part,))
