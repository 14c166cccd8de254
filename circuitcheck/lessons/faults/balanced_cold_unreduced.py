"""The kitchen mixer gets its cold straight from the main, for drinking, and its hot from the store."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

STANDING_BAR = 6.5
"""Above what most expansion relief valves open at: a main that stands so high is no rarity on low ground."""


def plant(site: Site) -> Iterator[Planted]:
    """A strong main, and its water unreduced at a mixer beside hot water from a reduced store."""
    mains = site.devices(Role.MAIN)
    blending = {each.part for each in site.devices(Role.BLENDS)}
    if not site.devices(Role.STORES_AT_MAINS_PRESSURE):
        return
    for outlet in site.devices(Role.DRAWS):
        cold = Joint(outlet.part, outlet.device.other)
        hot = site.beyond(outlet.part, outlet.device.port)
        if not mains or cold in site.drawing.joined or hot is None or hot.part in blending:
            continue
        for valve in site.devices(Role.REDUCES):
            with tried():
                work = site.fitting()
                tee = work.tee(Joint(valve.part, valve.device.port))
                pipe = work.pipe(Joint(tee, "branch"), cold)
                for field, value in _course(site, valve.part, outlet.part).items():
                    work.set(pipe, field, value)
                for main in mains:
                    work.set(main.part, "standing_pressure_bar", STANDING_BAR)
                says = site.says(
                    "{outlet} takes its cold from the main unreduced, at {bar} bar.",
                    outlet=outlet.part,
                    bar=STANDING_BAR,
                )
                yield Planted(work.drawing, says, (outlet.part, *(each.part for each in mains)), (pipe,))


def _course(site: Site, start: str, finish: str) -> dict[str, float]:
    """How a new pipe between two parts runs, as far as their heights tell."""
    low, high = site.case.heights.of(start), site.case.heights.of(finish)
    if low is None or high is None:
        return {}
    return {"rise_m": round(high - low, 3), "length_m": round(abs(high - low) + 3.0, 3), "bends": 3}
