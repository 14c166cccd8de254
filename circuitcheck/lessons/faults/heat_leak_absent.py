"""A solid-fuel fire takes the place of a heat source that could be switched off, and the pumped pipework
stays as it was."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import sources
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A heat source under an open vent that cannot be switched off, and no loop that always takes its heat:
    on sealed water it would be more faults than this one."""
    bodies = site.case.bodies
    vented = {bodies.of(vent.node) for vent in site.devices(Role.VENTS)}
    for source in sources(site):
        if bodies.of(source.node) not in vented:
            continue
        drawing = site.with_value(source.part, "heat", "uncontrolled")
        says = site.says(
            "{source} cannot be switched off, and nothing takes its heat when the pump stops.",
            source=source.part,
        )
        yield Planted(drawing, says, (source.part,))
