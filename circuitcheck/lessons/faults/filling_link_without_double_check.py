"""The heating is filled by a plain hose between two taps."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The filling link without its double check valve."""
    for link in of_the_heating(site, Role.FILLS):
        says = site.says("{link} has no double check valve.", link=link.part)
        yield Planted(site.with_value(link.part, "double_check", False), says, (link.part,))
