"""The heating is filled through a plain valve piped to the main, to be opened when the gauge has fallen."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating, sources
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A valve where the filling link was; or one check valve alone."""
    heat = tuple(source.part for source in sources(site))
    for link in of_the_heating(site, Role.FILLS):
        for kind, label in site.mixed(
            (("isolating_valve", "Filling valve"), ("check_valve", "Filling check"))
        ):
            with tried():
                drawing = site.with_part_instead(link.part, kind, label=label)
                says = site.says(
                    "The heating is filled through {valve} and nothing else.",
                    valve=drawing.name(link.part),
                )
                yield Planted(drawing, says, (link.part, *heat), drawing.pipes_of(link.part))
