"""The vessel that came with the smaller heat source was kept when two rooms were added."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import vessel_fields
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A vessel that cannot take the swell."""
    for part, field, _ in vessel_fields(site):
        small = site.one(4, 5, 6)
        says = site.says("{part} holds {small} l only.", part=part, small=small)
        if field != "volume_l":
            says = site.says("The vessel in {part} holds {small} l only.", part=part, small=small)
        yield Planted(site.with_value(part, field, small), says, (part,))
