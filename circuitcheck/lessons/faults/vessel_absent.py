"""The heat source is taken for one with a vessel inside, or the old one was taken off its bracket and
never replaced."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import left_out
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The one vessel gone, or not built in after all."""
    gone = "There is no expansion vessel on the heating water."
    lacking = "{source} has no vessel built in, and there is no other."
    return left_out(site, Role.HOLDS_EXPANSION, "vessel", gone, lacking)
