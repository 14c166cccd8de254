"""The vent carries no flow, so the small pipe that was left over is thought to do."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.cisterns import own_pipes, vents
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site


def plant(site: Site) -> Iterator[Planted]:
    """A vent run in a smaller pipe."""
    for vent in vents(site):
        for pipe in site.mixed(own_pipes(site, vent.vent)):
            drawing = site.with_value(pipe, "size_mm", 15)
            says = site.says("{vent} is run in 15 mm.", vent=vent.vent.part)
            yield Planted(drawing, says, (vent.vent.part,), (pipe,))
