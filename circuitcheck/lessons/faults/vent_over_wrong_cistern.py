"""Two cisterns stand side by side in the loft, and the vent is hooked over the nearer one."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.cisterns import cisterns, vents
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A vent over another cistern than the one that feeds its water."""
    bodies = site.case.bodies
    for vent in vents(site):
        for cistern in cisterns(site):
            if bodies.of(cistern.node) == bodies.of(vent.vent.node):
                continue
            drawing = site.with_value(vent.vent.part, "over", cistern.part)
            says = site.says("{vent} ends over {cistern}.", vent=vent.vent.part, cistern=cistern.part)
            yield Planted(drawing, says, (vent.vent.part, cistern.part))
