"""There was no room at the heat source, so the safety valve went to where the pipe came out of the
cupboard; or the strainer was put before it to keep its seat clean."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating, sources
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A strainer before the safety valve, or metres of pipe between it and the heat source."""
    for safety in of_the_heating(site, Role.RELIEVES_HEATING):
        with tried():
            drawing, strainer = site.valve_cut_in(
                Joint(safety.part, safety.device.port), "Strainer", kind="strainer", port="out"
            )
            says = site.says(
                "{safety} stands behind {strainer}, which can block.",
                drawing,
                safety=safety.part,
                strainer=strainer,
            )
            yield Planted(drawing, says, (strainer, safety.part), drawing.pipes_of(safety.part))
    for source in sources(site):
        pipe = site.pipe_on(source.part, "flow")
        if pipe is None or not of_the_heating(site, Role.RELIEVES_HEATING):
            continue
        long = site.one(2.4, 3.2, 4.5)
        drawing = site.with_values({(pipe, "length_m"): long, (pipe, "bends"): 3})
        says = site.says(
            "The safety valve is {long} m of pipe away from {source}.", long=long, source=source.part
        )
        valves = tuple(each.part for each in of_the_heating(site, Role.RELIEVES_HEATING))
        yield Planted(drawing, says, (source.part, *valves), (pipe,))
