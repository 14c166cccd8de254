"""Where the heating's own devices stand in a drawing into which faults are put."""

from __future__ import annotations

from circuitcheck.circuit.joining import Placed
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def of_the_heating(site: Site, role: Role) -> list[Placed]:
    """What plays a role on the water that a heat source heats, standing by itself, in random order."""
    bodies = site.case.bodies
    return [each for each in site.devices(role) if bodies.of(each.node) in bodies.with_heat_source]
