"""The last run was done in what was left of the small pipe, the long way round."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"pump-too-weak"})


def plant(site: Site) -> Iterator[Planted]:
    """The pipe to one emitter or coil narrow and long."""
    ends = [(each.part, port) for each in of_the_heating(site, Role.EMITS) for port in ("flow", "return")]
    stores = site.parts("unvented_store", "vented_store")
    ends += [(each.id, port) for each in stores for port in ("coil_flow", "coil_return")]
    for part, port in site.mixed(ends):
        pipe = site.pipe_on(part, port)
        if pipe is None:
            continue
        size, long = site.one(10, 15), site.one(12, 20, 30)
        says = site.says(
            "{part} gets its water through {long} m of {size} mm.", part=part, long=long, size=size
        )
        drawing = site.with_values({(pipe, "size_mm"): size, (pipe, "length_m"): long, (pipe, "bends"): 8})
        yield Planted(drawing, says, (part,), (pipe,), BRINGS)
