"""The arrow on the body is overlooked, or it is turned so that the head faces the wall."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

ROLES = (Role.PUMPS, Role.STOPS_BACKFLOW, Role.BYPASSES)
BRINGS = frozenset(
    {
        "cold-check-absent",
        "emitter-not-in-a-loop",
        "heat-strays",
        "no-way-round-when-zones-shut",
        "pump-against-shut-valves",
        "pump-over-or-draws-air",
        "source-flow-below-minimum",
    }
)


def plant(site: Site) -> Iterator[Planted]:
    """A pump, a check valve or a bypass against the way the water must go."""
    every = [each for role in ROLES for each in site.devices(role)]
    for each in site.mixed(every):
        with tried():
            says = site.says("{thing} is fitted the wrong way round.", thing=each.part)
            yield Planted(site.turned_round(each.part), says, (each.part,), brings=BRINGS)
