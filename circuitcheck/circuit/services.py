"""Which service each pipe carries, worked out from the circuit and never set by hand.

Water keeps its service until a part changes it: a heat source, an emitter, a coil, an exchanger, a
bypass, a separator between its flow and its return, a store, a blending valve between cold and
mixed. A stretch between those takes the service of what gives it water: a heat source, a store, a
main, a cistern, a relief outlet; where nothing does, of what it is meant for. Where two services
meet in one stretch, as by a plain pipe from flow to return, it is divided at the fewest and
narrowest places: in the pipe between them, not in the two they lead to.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from enum import StrEnum

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.dividing import divided
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
    "supply": Service.COLD,
    "hot": Service.HOT,
    "mixed": Service.HOT,
    "secondary_return": Service.HOT,
    "relief": Service.HOT,
    "warning": Service.DISCHARGE,
}
# A plate between two waters, either of which may be drinking water.
_IN_DRINKING_WATER = {
    "secondary_out": Service.HOT,
    "secondary_in": Service.COLD,
    "primary_out": Service.HOT,
    "primary_in": Service.COLD,
}
# A blending valve in heating water, as before a heated floor.
_IN_HEATING_WATER = {
    "hot": Service.FLOW,
    "mixed": Service.FLOW,
    "cold": Service.RETURN,
}
_GIVES = frozenset({Role.HEATS, Role.MAIN, Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN})

# How wide a joint is where a stretch is divided. All are nearly the same, so that it is divided in
# as few places as can be: in a plain pipe between flow and return, not before and behind it. In
# that pipe, a valve is the place to do it.
_VALVE, _OTHER = 9, 10

Seed = tuple[int, Service]
Stretches = dict[int, list[tuple[int, int]]]


def services(drawing: Drawing) -> Mapping[str, Service]:
    """The service of every pipe, by its id."""
    circuit = Circuit(drawing)
    bodies = Bodies(circuit)
    givers, takers = _seeds(circuit, bodies)
    links = _links(circuit)
    found: dict[int, Service] = {}
    for node in range(len(drawing.pipes)):
        if node not in found:
            _settle(_stretch(links, node), links, givers, takers, found)
    found.update(_vents(circuit, bodies))
    return {pipe: found.get(node, Service.UNKNOWN) for node, pipe in enumerate(drawing.pipes)}


def _changes(circuit: Circuit, part: str, passage: Passage) -> bool:
    """Whether water has another service once it is through this passage."""
    if passage.gives_heat or passage.way is Way.SPRING:
        return True
    if any(device.role in _GIVES for device in circuit.plans[part].devices):
        return True
    one, two = _BY_PORT.get(passage.a), _BY_PORT.get(passage.b)
    return one is not None and two is not None and one is not two


def _links(circuit: Circuit) -> Stretches:
    """The waters that are one stretch; ways that part from one port meet in a point of their own."""
    links: Stretches = {}
    hub = 0
    for part, plan in circuit.plans.items():
        keeping = [passage for passage in plan.passages if not _changes(circuit, part, passage)]
        if len(keeping) > 1 and all(keeping[0].a == passage.a for passage in keeping):
            hub -= 1
            for port in (keeping[0].a, *(passage.b for passage in keeping)):
                _link(links, hub, circuit.node(part, port), _OTHER)
            continue
        for passage in keeping:
            width = _VALVE if passage.way is Way.HAND else _OTHER
            _link(links, circuit.node(part, passage.a), circuit.node(part, passage.b), width)
    return links


def _link(links: Stretches, a: int, b: int, width: int) -> None:
    links.setdefault(a, []).append((b, width))
    links.setdefault(b, []).append((a, width))


def _stretch(links: Stretches, start: int) -> list[int]:
    """All the water that reaches a node without changing its service, the nearest first."""
    seen = {start}
    todo = [start]
    for here in todo:
        for there, _ in links.get(here, ()):
            if there not in seen:
                seen.add(there)
                todo.append(there)
    return todo


def _seeds(circuit: Circuit, bodies: Bodies) -> tuple[dict[int, Service], dict[int, Service]]:
    """By node, the service that a port gives its water, and the one that a port is meant for."""
    givers: dict[int, Service] = {}
    takers: dict[int, Service] = {}
    for part in circuit.drawing.components.values():
        devices = circuit.plans[part.id].devices
        gives = any(device.role in _GIVES for device in devices)
        for port in part.kind.ports:
            node = circuit.node(part.id, port.name)
            if port.name in part.kind.outlets or port.name == "warning":
                givers.setdefault(node, Service.DISCHARGE)
                continue
            service = _meant(part, port.name, drinking=bodies.of(node) in bodies.drinking)
            if service is not None:
                (givers if gives else takers).setdefault(node, service)
        for device in devices:
            node = circuit.node(part.id, device.port)
            if device.role is Role.ENDS_DISCHARGE:
                takers.setdefault(node, Service.DISCHARGE)
            elif device.role is Role.MAIN or (
                device.role is Role.FEEDS and bodies.of(node) in bodies.drinking
            ):
                givers.setdefault(node, Service.COLD)
        for passage in circuit.plans[part.id].passages:
            if passage.way is Way.SPRING:
                takers.setdefault(circuit.node(part.id, passage.a), Service.FLOW)
                takers.setdefault(circuit.node(part.id, passage.b), Service.RETURN)
    return givers, takers


def _meant(part: Component, port: str, *, drinking: bool) -> Service | None:
    """The service a port's name stands for, in drinking water or in heating water."""
    usual = _BY_PORT.get(port)
    if drinking:
        return _IN_DRINKING_WATER.get(port, usual)
    blends = any(known.name == "mixed" for known in part.kind.ports)
    return _IN_HEATING_WATER.get(port, usual) if blends else usual


def _settle(
    stretch: list[int],
    links: Stretches,
    givers: Mapping[int, Service],
    takers: Mapping[int, Service],
    found: dict[int, Service],
) -> None:
    """Give every node of a stretch its service."""
    given = [(node, givers[node]) for node in stretch if node in givers]
    meant = [(node, takers[node]) for node in stretch if node in takers]
    known = {service for _, service in given} or {service for _, service in meant}
    if not known:
        found.update(dict.fromkeys(stretch, Service.UNKNOWN))
    elif len(known) == 1:
        found.update(dict.fromkeys(stretch, known.pop()))
    else:
        seeds = given + [(node, service) for node, service in meant if service in known]
        _divide(stretch, links, seeds, found)


def _divide(stretch: list[int], links: Stretches, seeds: list[Seed], found: dict[int, Service]) -> None:
    """Two services by the narrowest cut; more, or too wide a cut, by the nearest port."""
    known = [service for service in Service if any(service is seed[1] for seed in seeds)]
    if len(known) == 2:
        sides = [[node for node, service in seeds if service is side] for side in known]
        first = divided(links, *sides)
        if first is not None:
            found.update((node, known[0] if node in first else known[1]) for node in stretch)
            return
    _spread(seeds, links, found)


def _spread(seeds: Iterable[Seed], links: Stretches, found: dict[int, Service]) -> None:
    """Each node takes the service of the nearest seed; of two as near, the earlier."""
    todo = []
    for node, service in seeds:
        if node not in found:
            found[node] = service
            todo.append(node)
    for here in todo:
        for there, _ in links.get(here, ()):
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
