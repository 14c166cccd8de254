"""The bypass is screwed right in, so that it stops whistling."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"source-flow-below-minimum"})


def plant(site: Site) -> Iterator[Planted]:
    """A bypass that the pump cannot open."""
    for bypass in site.devices(Role.BYPASSES):
        high = site.one(60, 80)
        says = site.says("{bypass} is set to {high} kPa.", bypass=bypass.part, high=high)
        yield Planted(
            site.with_value(bypass.part, "set_difference_kpa", high), says, (bypass.part,), brings=BRINGS
        )
