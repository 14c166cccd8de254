"""The heating loses a little water, and whoever tops it up leaves the hose on for the next time."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The filling link not taken off."""
    for link in of_the_heating(site, Role.FILLS):
        says = site.says("{link} was left connected.", link=link.part)
        yield Planted(site.with_value(link.part, "left_connected", True), says, (link.part,))
