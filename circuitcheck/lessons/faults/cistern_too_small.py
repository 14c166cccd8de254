"""Radiators were added over the years, and the cistern is still the one of the first two rooms."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.filling_in import set_design
from circuitcheck.lessons.cisterns import cisterns, fed_by
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A small cistern over much more water than it was meant for."""
    for cistern in cisterns(site):
        emitters = list(fed_by(site, cistern, Role.EMITS))
        if len(emitters) != 1:
            continue
        rooms = site.one(480, 560, 640)
        drawing = site.with_values(
            {(cistern.part, "content_l"): 18, (emitters[0].part, "water_content_l"): rooms}
        )
        old = site.drawing.components[emitters[0].part].data.get("water_content_l", 0)
        before = site.drawing.design.get("system_content_l")
        if before is not None:
            drawing = set_design(drawing, "system_content_l", before + rooms - old)
        says = site.says(
            "{cistern} holds 18 l over a circuit of more than {rooms} l.", cistern=cistern.part, rooms=rooms
        )
        yield Planted(drawing, says, (cistern.part,))
