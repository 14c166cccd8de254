"""The main is never measured, or only by a tap that runs alone."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A main with little flow, or little pressure while it runs."""
    cisterns = {each.part for each in site.devices(Role.FEEDS)}
    for main in site.devices(Role.MAIN) if not cisterns else ():
        weak = (
            ("flow_lpm", site.one(7.0, 9.0), "{main} gives {low} l/min."),
            ("running_pressure_bar", site.one(0.6, 0.9), "{main} keeps {low} bar as it runs."),
        )
        for field, low, says in site.mixed(weak):
            told = site.says(says, main=main.part, low=low)
            yield Planted(site.with_value(main.part, field, low), told, (main.part,))
