"""Two pipes come down side by side, and nobody reads the marks on the connections."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.plan import SECONDARY
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.drawing.value import Joint
from circuitcheck.lessons.fault import Planted
from circuitcheck.lessons.site import Site, tried
from circuitcheck.parts.kind import Role

VENTED = frozenset({"bath-not-blended", "store-vent-absent"})
BLENDED = frozenset({"bath-not-blended"})
SOURCE = frozenset({"vessel-on-pump-delivery"})

Place = tuple[str, str, str, frozenset[str]]


def plant(site: Site) -> Iterator[Planted]:
    """Two connections of a store, a heat source, a separator, a blending valve or a tap changed over."""
    for part, one, other, brings in site.mixed(_places(site)):
        with tried():
            work = site.fitting()
            work.change_over(part, one, other)
            says = site.says("Two connections of {thing} are changed over.", thing=part)
            yield Planted(work.drawing, says, (part,), brings=brings)


def _places(site: Site) -> Iterator[Place]:
    """Each part with two of its connections, both with a pipe."""
    joined = site.drawing.joined
    for part, one, other, brings in (*_of_water(site), *_of_heat(site)):
        if Joint(part, one) in joined and Joint(part, other) in joined:
            yield part, one, other, brings


def _of_water(site: Site) -> Iterator[Place]:
    circuit = site.case.circuit
    for giver in Supplies(circuit, site.case.bodies).givers:
        vented = giver.part in circuit.parts_with(Role.STORES_OPEN)
        brings = VENTED if vented else frozenset[str]()
        yield giver.part, giver.inlet.port, "hot", brings
        yield giver.part, giver.inlet.port, SECONDARY, brings
        yield giver.part, "hot", SECONDARY, brings
    for place in circuit.devices(Role.DRAWS):
        yield place.part, place.device.port, place.device.other, frozenset()
    for place in circuit.devices(Role.BLENDS):
        yield place.part, place.device.port, "cold", BLENDED


def _of_heat(site: Site) -> Iterator[Place]:
    """The heat sources whose pump is inside: where one stands beside them, it shows that water is to go the
    other way."""
    circuit = site.case.circuit
    for part in sorted(circuit.parts_with(Role.HEATS) & circuit.parts_with(Role.PUMPS)):
        yield part, "flow", "return", SOURCE
    for place in circuit.devices(Role.SEPARATES):
        yield place.part, "source_flow", "source_return", frozenset()
