"""In a bundle of pipes that look alike the return is joined to the flow."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.heating import of_the_heating
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

BRINGS = frozenset({"no-way-round-when-zones-shut", "pump-against-shut-valves", "source-flow-below-minimum"})


def plant(site: Site) -> Iterator[Planted]:
    """The return of an emitter joined to the pipe of a flow: its own, or another's."""
    emitters = of_the_heating(site, Role.EMITS)
    for emitter in emitters:
        pipe = site.pipe_on(emitter.part, "return")
        tee = site.beyond(emitter.part, "return")
        if pipe is None or tee is None:
            continue
        for other in site.mixed(emitters):
            with tried():
                drawing, _ = site.rejoined(pipe, tee.part, Joint(other.part, "flow"))
                says = site.says("The return of {emitter} is joined to a flow.", emitter=emitter.part)
                yield Planted(drawing, says, (emitter.part,), (pipe,), BRINGS)
