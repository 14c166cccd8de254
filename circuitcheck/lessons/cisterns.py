"""Vents, feeds and cisterns in a drawing into which faults are put."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.checks.venting import VentAndFeed, VentPipe, vent_pipes, vents_and_feeds
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.pipework import tapping
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.lessons.site import Site
from circuitcheck.parts.kind import Role


def pairs(site: Site) -> list[VentAndFeed]:
    """Every vent of pumped, open-vented heating with its feed, in random order."""
    return site.mixed(vents_and_feeds(site.case))


def vents(site: Site) -> list[VentPipe]:
    """Every vent that hot water reaches, with what it vents, in random order."""
    return site.mixed(vent_pipes(site.case))


def own_pipes(site: Site, vent: Placed) -> tuple[str, ...]:
    """The pipes from a vent's end to where it leaves the circuit."""
    tap = tapping(site.case.circuit, Joint(vent.part, vent.device.port))
    return () if tap is None else tap.pipes


def cisterns(site: Site) -> list[Placed]:
    """Every cistern at its feed, in random order."""
    return site.devices(Role.FEEDS)


def fed_by(site: Site, cistern: Placed, *roles: Role) -> Iterator[Placed]:
    """What plays one of these roles on the water that a cistern feeds."""
    bodies = site.case.bodies
    for role in roles:
        for each in site.case.circuit.devices(role):
            nodes = (node for node in (each.node, each.other) if node >= 0)
            if bodies.of(cistern.node) in map(bodies.of, nodes):
                yield each


def lifted(site: Site, part: str, by_m: float) -> Drawing:
    """The drawing with a part that much higher, its pipes rising and reaching so much farther."""
    values: dict[tuple[str, str], float] = {}
    height = site.case.heights.of(part)
    if height is not None and "height_m" in site.drawing.components[part].data:
        values[part, "height_m"] = round(height + by_m, 3)
    for id in site.drawing.pipes_of(part):
        pipe = site.drawing.pipes[id]
        rise, length = pipe.data.get("rise_m"), pipe.data.get("length_m")
        if rise is None or length is None:
            continue
        first = pipe.ends[0]
        leaves = isinstance(first, Joint) and first.part == part
        values[id, "rise_m"] = round(rise - by_m if leaves else rise + by_m, 3)
        values[id, "length_m"] = round(length + by_m, 3)
    return site.with_values(values)
