"""Which stores a relief valve relieves: those it reaches before any other store is passed."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role, Way

_STOPS = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})


def stores_beside(circuit: Circuit, valve: Placed) -> tuple[str, ...]:
    """The mains-fed stores whose water reaches the valve through no other store, in their order.

    By ways that pressure passes both ways, valves open. A valve built into a store relieves that
    store. None where a check valve or the like stands on every way between.
    """
    places = circuit.devices(Role.STORES_AT_MAINS_PRESSURE)
    stores = {store.part for store in places}
    if valve.part in stores:
        return (valve.part,)
    if not stores:
        return ()
    # The inlets that a check valve built into the store keeps from its water.
    kept = {
        Joint(place.part, place.device.port)
        for place in places
        if circuit.water(place.node) != circuit.water(place.other)
    }
    found: set[str] = set()
    start = Joint(valve.part, valve.device.port)
    seen = {start}
    todo = [start]
    while todo:
        here = todo.pop()
        if here.part in stores and here not in kept:
            found.add(here.part)
            continue
        for there in _beside(circuit, here):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return tuple(id for id in circuit.drawing.components if id in found) if found else ()


def _beside(circuit: Circuit, here: Joint) -> Iterator[Joint]:
    """The far end of the pipe on a port, and what pressure reaches from that port through the part."""
    drawing = circuit.drawing
    pipe = drawing.joined.get(here)
    if pipe is not None:
        yield from drawing.pipes[pipe].joints
    for passage in circuit.plans[here.part].passages:
        if passage.gap or passage.pressure_way in _STOPS:
            continue
        if passage.a == here.port:
            yield Joint(here.part, passage.b)
        elif passage.b == here.port:
            yield Joint(here.part, passage.a)
