"""The vessel is fitted as it comes out of its box, or pumped up while the circuit is under pressure, and
nobody sets its charge."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import vessel_fields
from circuitcheck.lessons.site import Site

BRINGS = frozenset({"vessel-too-small"})


def plant(site: Site) -> Iterator[Planted]:
    """A charge far below the height of water above, or above the fill pressure."""
    for part, field, charge in vessel_fields(site):
        wrong = site.one(0.1, 0.2, 2.0, 2.5)
        says = site.says("{part} is charged to {wrong} bar.", part=part, wrong=wrong)
        if field != "volume_l":
            says = site.says("The vessel in {part} is charged to {wrong} bar.", part=part, wrong=wrong)
        yield Planted(site.with_value(part, charge, wrong), says, (part,), brings=BRINGS)
