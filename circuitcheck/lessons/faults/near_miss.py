"""The pipe is drawn up to the part and let go a little short of it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.ends import hanging, short_of
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried

BRINGS = frozenset(
    {
        "air-vent-absent",
        "drain-absent",
        "emitter-not-in-a-loop",
        "gauge-absent",
        "no-way-round-when-zones-shut",
        "open-end",
        "pump-against-shut-valves",
        "source-flow-below-minimum",
    }
)


def plant(site: Site) -> Iterator[Planted]:
    """A pipe that ends half a square before the part it was meant for."""
    for joint in hanging(site):
        with tried():
            drawing, pipe = short_of(site, joint)
            says = site.says(
                "The end of {pipe} lies just short of {part}.", drawing, pipe=pipe, part=joint.part
            )
            yield Planted(drawing, says, (joint.part,), (pipe,), BRINGS)
