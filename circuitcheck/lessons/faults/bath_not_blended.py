"""The blending valve is turned up because the bath takes so long to fill hot, in a house that is new."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.filling_in import set_design
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role


def plant(site: Site) -> Iterator[Planted]:
    """A blending valve before a bath set too high."""
    for valve in site.devices(Role.BLENDS):
        beyond = site.beyond(valve.part, valve.device.other)
        if beyond is None or site.drawing.components[beyond.part].data.get("fitting") != "bath":
            continue
        with tried():
            hot = site.one(52, 55, 58)
            drawing = set_design(site.with_value(valve.part, "set_temperature_c", hot), "dwelling", "new")
            says = site.says(
                "{valve} lets {hot} °C into {bath}.", valve=valve.part, hot=hot, bath=beyond.part
            )
            pipe = site.drawing.joined[Joint(valve.part, valve.device.other)]
            yield Planted(drawing, says, (valve.part, beyond.part), (pipe,))
