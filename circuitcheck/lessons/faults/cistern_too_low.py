"""A radiator is put into the loft, or a shower there, and nobody asks how high the cistern's water stands."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.cisterns import cisterns, fed_by, lifted
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """An emitter or an outlet that stands above the water of its cistern."""
    for cistern in cisterns(site):
        level = site.drawing.components[cistern.part].data.get("water_level_m")
        for each in site.mixed(fed_by(site, cistern, Role.EMITS, Role.DRAWS)):
            height = site.case.heights.of(each.part)
            if level is None or height is None:
                continue
            above = site.one(0.3, 0.6, 0.9)
            drawing = lifted(site, each.part, level + above - height)
            says = site.says(
                "{part} stands {above} m above the water in {cistern}.",
                part=each.part,
                above=above,
                cistern=cistern.part,
            )
            yield Planted(drawing, says, (each.part, cistern.part))
