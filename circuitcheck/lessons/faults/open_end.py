"""A tee is left for the radiator that is to come one day, and nobody caps it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A tee with nothing on its branch."""
    ends = [
        Joint(each.part, each.device.port) for role in (Role.EMITS, Role.DRAWS) for each in site.devices(role)
    ]
    for by in site.mixed(ends):
        with tried():
            work = site.fitting()
            tee = work.tee(by)
            says = site.says("A tee by {part} has nothing on its branch.", part=by.part)
            yield Planted(
                work.drawing, says, (tee, by.part), (work.pipe_at(by), work.pipe_at(Joint(tee, "b")))
            )
