"""Which service each pipe carries, worked out from the circuit and never set by hand.

Water keeps its service until a part changes it: a heat source, an emitter, a coil, an exchanger, a
bypass, a store, a blending valve. Between those, each pipe takes the service of the nearest port
that has one; heat sources, stores, mains and relief outlets come before the ports of other parts.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Mapping
from enum import StrEnum

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit
from circuitcheck.drawing.value import Component, Drawing
from circuitcheck.parts.kind import Passage, Role, Way


class Service(StrEnum):
    """What a pipe carries."""

    FLOW = "flow"
    RETURN = "return"
    COLD = "cold"
    HOT = "hot"
    DISCHARGE = "discharge"
    VENT = "vent"
    UNKNOWN = "unknown"


_BY_PORT = {
    "flow": Service.FLOW,
    "coil_flow": Service.FLOW,
    "source_flow": Service.FLOW,
    "load_flow": Service.FLOW,
    "primary_in": Service.FLOW,
    "secondary_out": Service.FLOW,
    "return": Service.RETURN,
    "coil_return": Service.RETURN,
    "source_return": Service.RETURN,
    "load_return": Service.RETURN,
    "primary_out": Service.RETURN,
    "secondary_in": Service.RETURN,
    "cold": Service.COLD,
    "balanced_cold": Service.COLD,
    "hot": Service.HOT,
    "mixed": Service.HOT,
    "secondary_return": Service.HOT,
    "relief": Service.HOT,
    "warning": Service.DISCHARGE,
}
_IN_DRINKING_WATER = {
    "secondary_out": Service.HOT,
    "secondary_in": Service.COLD,
    "primary_out": Service.HOT,
    "primary_in": Service.COLD,
}
_GIVES = frozenset({Role.HEATS, Role.MAIN, Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN, Role.FEEDS})

Seed = tuple[int, Service]


def services(drawing: Drawing) -> Mapping[str, Service]:
    """The service of every pipe, by its id."""
    circuit = Circuit(drawing)
    bodies = Bodies(circuit)
    neighbours = _neighbours(circuit)
    found: dict[int, Service] = {}
    for seeds in (_givers(circuit), _takers(circuit, bodies)):
        _spread(seeds, neighbours, found)
    found.update(_vents(circuit, bodies))
    return {pipe: found.get(node, Service.UNKNOWN) for node, pipe in enumerate(drawing.pipes)}


def _changes(circuit: Circuit, part: str, passage: Passage) -> bool:
    """Whether water has another service once it is through this passage."""
    if passage.gives_heat or passage.way is Way.SPRING:
        return True
    roles = {device.role for device in circuit.plans[part].devices}
    if roles & _GIVES:
        return True
    return passage.b == "mixed"


def _neighbours(circuit: Circuit) -> Mapping[int, list[int]]:
    found: dict[int, list[int]] = defaultdict(list)
    for part, plan in circuit.plans.items():
        for passage in plan.passages:
            if not _changes(circuit, part, passage):
                a, b = circuit.node(part, passage.a), circuit.node(part, passage.b)
                found[a].append(b)
                found[b].append(a)
    return found


def _givers(circuit: Circuit) -> list[Seed]:
    """The ports that settle what a pipe carries: heat sources, stores, mains, cisterns, outlets of valves."""
    seeds = []
    for part in circuit.drawing.components.values():
        devices = circuit.plans[part.id].devices
        for port in part.kind.ports:
            node = circuit.node(part.id, port.name)
            if port.name in part.kind.outlets or port.name == "warning":
                seeds.append((node, Service.DISCHARGE))
            elif any(device.role in _GIVES for device in devices):
                service = _given(part, port.name)
                if service is not None:
                    seeds.append((node, service))
    return seeds


def _given(part: Component, port: str) -> Service | None:
    if port in ("supply", "outlet"):
        return Service.COLD
    if port == "feed":
        return Service.VENT if part.value("serves") == "heating" else Service.COLD
    return _BY_PORT.get(port)


def _takers(circuit: Circuit, bodies: Bodies) -> Iterator[Seed]:
    """The ports that tell what they are meant to be joined to: emitters, separators, outlets."""
    for part in circuit.drawing.components.values():
        for port in part.kind.ports:
            node = circuit.node(part.id, port.name)
            service = _BY_PORT.get(port.name)
            if bodies.of(node) in bodies.drinking:
                service = _IN_DRINKING_WATER.get(port.name, service)
            if service is not None:
                yield node, service
    for part_id, plan in circuit.plans.items():
        for passage in plan.passages:
            if passage.way is Way.SPRING:
                yield circuit.node(part_id, passage.a), Service.FLOW
                yield circuit.node(part_id, passage.b), Service.RETURN
        for device in plan.devices:
            if device.role is Role.ENDS_DISCHARGE:
                yield circuit.node(part_id, device.port), Service.DISCHARGE


def _spread(
    seeds: list[Seed] | Iterator[Seed], neighbours: Mapping[int, list[int]], found: dict[int, Service]
) -> None:
    """Each node not found yet takes the service of the nearest seed; of two as near, the earlier."""
    todo = []
    for node, service in seeds:
        if node not in found:
            found[node] = service
            todo.append(node)
    for here in todo:
        for there in neighbours.get(here, ()):
            if there not in found:
                found[there] = found[here]
                todo.append(there)


def _vents(circuit: Circuit, bodies: Bodies) -> Iterator[Seed]:
    """From each open vent, and each cistern's feed to heating water, the pipes up to the first tee."""
    drinking = bodies.drinking
    for role in (Role.VENTS, Role.FEEDS):
        for place in circuit.devices(role):
            if role is Role.FEEDS and bodies.of(place.node) in drinking:
                continue
            yield from ((node, Service.VENT) for node in _up_to_a_tee(circuit, place.part, place.device.port))


def _up_to_a_tee(circuit: Circuit, part: str, port: str) -> Iterator[int]:
    pipes = tuple(circuit.drawing.pipes.values())
    seen = set()
    while True:
        node = circuit.node(part, port)
        if node in seen or node >= len(pipes):
            return
        seen.add(node)
        yield node
        onward = [end for end in pipes[node].joints if end != (part, port)]
        if not onward:
            return
        part, came_by = onward[0]
        passages = circuit.plans[part].passages
        if len(passages) != 1 or _changes(circuit, part, passages[0]):
            return
        port = passages[0].b if passages[0].a == came_by else passages[0].a
