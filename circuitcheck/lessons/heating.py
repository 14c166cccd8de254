"""Where the heating's own devices stand in a drawing into which faults are put."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Drawing
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def of_the_heating(site: Site, role: Role) -> list[Placed]:
    """What plays a role on the water that a heat source heats, standing by itself, in random order."""
    bodies = site.case.bodies
    return [each for each in site.devices(role) if bodies.of(each.node) in bodies.with_heat_source]


def sources(site: Site) -> list[Placed]:
    """What heats the heating water, in random order."""
    return site.devices(Role.HEATS, built_in=True)


def built_in(site: Site, device: str) -> list[str]:
    """The heat sources with a device built in, in random order."""
    return [
        source.part
        for source in sources(site)
        if device in site.drawing.components[source.part].data.get("built_in", ())
    ]


def without_built_in(site: Site, source: str, device: str) -> Drawing:
    """The drawing with a heat source that lacks a device it has built in."""
    left = [each for each in site.drawing.components[source].data["built_in"] if each != device]
    return site.with_value(source, "built_in", left)


def vessel_fields(site: Site) -> list[tuple[str, str, str]]:
    """The heating's vessels in random order: the part, and its fields for volume and charge."""
    found = [(each.part, "volume_l", "precharge_bar") for each in of_the_heating(site, Role.HOLDS_EXPANSION)]
    inside = ("built_in_vessel_l", "built_in_vessel_precharge_bar")
    return site.mixed([*found, *((source, *inside) for source in built_in(site, "vessel"))])


def left_out(site: Site, role: Role, device: str, gone: str, lacking: str) -> Iterator[Planted]:
    """The heating's one device of a role left out, or not built into its source after all. `gone` says the
    first; `lacking` the second, of a `{source}`."""
    there = of_the_heating(site, role)
    if len(there) == 1:
        heat = tuple(source.part for source in sources(site))
        yield Planted(site.without(there[0].part), site.says(gone), heat)
    for source in built_in(site, device):
        says = site.says(lacking, source=source)
        yield Planted(without_built_in(site, source, device), says, (source,))
