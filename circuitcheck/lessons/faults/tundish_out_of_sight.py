"""The tundish is boxed in behind the bath panel, where it looks tidier."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The tundish where nobody sees it."""
    for tundish in site.devices(Role.SHOWS_DISCHARGE):
        says = site.says("{tundish} is out of sight.", tundish=tundish.part)
        yield Planted(site.with_value(tundish.part, "in_sight", False), says, (tundish.part,))
