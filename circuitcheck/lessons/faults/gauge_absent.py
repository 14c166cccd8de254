"""The gauge broke off when the vessel was changed, and the hole was closed with a plug."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import left_out
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """The one gauge gone, or not built in after all."""
    gone = "There is no pressure gauge on the heating water."
    lacking = "{source} has no gauge built in, and there is no other."
    return left_out(site, Role.SHOWS_PRESSURE, "gauge", gone, lacking)
