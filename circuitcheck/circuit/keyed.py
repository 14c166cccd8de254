"""Builds the bodies of water of a circuit, with everything on them under its key (`rounds.py`)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator
from functools import cached_property

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.flowways import WayEdge
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import LEG
from circuitcheck.circuit.rounds import AIR, AIR_VERTEX, RETURNS, Body, key_of, part_of_key
from circuitcheck.circuit.spans import Spans, spans_of
from circuitcheck.circuit.strands import Strands, names_of
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role

BodyAt = Callable[[str, str], Body | None]


class Rounds:
    """The bodies of water of a circuit with everything on them under its key."""

    def __init__(self, circuit: Circuit) -> None:
        # Keeps nothing of the circuit itself, so that one that is gone can be forgotten.
        self._plans = circuit.plans
        self.bodies, self._body_at = _bodies(circuit)

    def of(self, key: str) -> Body | None:
        """The body in which that key or label stands; None for a part that stands on no way."""
        found = self._by_name.get(key)
        if found is not None:
            return found
        part = part_of_key(key)
        plan = self._plans.get(part)
        for passage in plan.flow_passages if plan is not None and not plan.is_junction else ():
            if key in names_of(part, passage):
                return self._body_at(part, passage.a)
        return None

    @cached_property
    def _by_name(self) -> dict[str, Body]:
        """The body of each key and label that is on a way which leads on."""
        found: dict[str, Body] = {}
        for body in self.bodies:
            found.update(dict.fromkeys(body.strands.on, body))
        for shared in (AIR, RETURNS):
            found.pop(shared, None)
        return found


def rounds_of(circuit: Circuit) -> Rounds:
    """The loops of a circuit, worked out once for each."""
    return circuit.keep(__name__, lambda: Rounds(circuit))


def _bodies(circuit: Circuit) -> tuple[tuple[Body, ...], BodyAt]:
    spans = spans_of(circuit)
    body_of = Bodies(circuit).by_node
    members: dict[int, list[int]] = defaultdict(list)
    takes: dict[int, list[str]] = defaultdict(list)
    bodies_at = [body_of[node] for node in spans.nodes_at_start]
    for span, at in enumerate(bodies_at):
        members[at].append(span)
    for span in spans.giving:
        passage = spans.passages[span]
        takes[bodies_at[span]].append(key_of(spans.parts[span], (passage and passage.key) or ""))
    through_air: dict[int, list[WayEdge]] = defaultdict(list)
    for vertex, edge in _open_to_air(circuit, spans):
        through_air[body_of[spans.node(vertex)]].append(edge)
    bodies = {
        at: Body(Strands(spans, members.get(at, []), through_air[at]))
        for at in dict.fromkeys((*members, *through_air))
    }
    for at, body in bodies.items():
        body.takes = tuple(takes[at])
        body.open_to_air = any(AIR in edge.pumps for edge in through_air[at])

    def body_at(part: str, port: str) -> Body | None:
        vertex = spans.vertex(part, port)
        return None if vertex is None else bodies.get(body_of[spans.node(vertex)])

    for place in circuit.devices(Role.PUMPS):
        driven = body_at(place.part, place.device.port)
        if driven is not None:
            driven.drives += (place.part,)
    for place in circuit.devices(Role.HEATS):
        warmed = body_at(place.part, place.device.port)
        if warmed is not None:
            warmed.warms += (place.part,)
    found = tuple(bodies.values())
    _behind_exchangers(circuit, found, body_at)
    _by_gravity(circuit, body_at)
    return found, body_at


def _open_to_air(circuit: Circuit, spans: Spans) -> Iterator[tuple[int, WayEdge]]:
    """Where water comes in from the main or a cistern and where it is let out, as ways through the
    air: so drinking water on its way to a tap is on a loop too. One vertex of air serves every body,
    since their edges are kept apart."""
    air = AIR_VERTEX
    named = frozenset({AIR})
    for role in (Role.MAIN, Role.FEEDS):
        for place in circuit.devices(role):
            at = spans.vertex(place.part, place.device.port)
            if at is not None:
                yield at, WayEdge(air, at, back=False, pumps=named, heats=named)
    for place in circuit.devices(Role.DRAWS):
        for port in circuit.drawing.components[place.part].kind.ports:
            at = spans.vertex(place.part, port.name)
            if at is not None:
                yield at, WayEdge(at, air, back=False)
    for place in circuit.devices(Role.FEEDS):
        at = spans.vertex(place.part, "supply")
        if at is not None:
            yield at, WayEdge(at, air, back=False)


def _behind_exchangers(circuit: Circuit, bodies: tuple[Body, ...], body_at: BodyAt) -> None:
    """Say of each side of an exchanger whether it gives heat to its water or takes it.

    It gives to water without a heat source of its own, from water that is warmed nearer to one.
    """
    steps = {id(body): 0 for body in bodies if body.warms}
    sides = []
    for place in circuit.devices(Role.EXCHANGES):
        ports = (place.device.port, place.device.other)
        one, two = (body_at(place.part, port) for port in ports)
        if one is not None and two is not None and one is not two:
            sides.append((place.part, ports[0], one, ports[1], two))
            sides.append((place.part, ports[1], two, ports[0], one))
    grew = True
    while grew:
        grew = False
        for _, _, warm, _, cool in sides:
            after = steps.get(id(warm), len(bodies)) + 1
            if after < steps.get(id(cool), len(bodies)):
                steps[id(cool)] = after
                grew = True
    giving = {}
    for part, _, warm, port, cool in sides:
        if steps.get(id(warm), len(bodies)) < steps.get(id(cool), len(bodies)):
            giving[key_of(part, port)] = cool
    for key, body in giving.items():
        body.warms += (key,)
    taking = {
        key_of(part, port)
        for part, port, warm, other, cool in sides
        if key_of(part, other) in giving and warm is not cool
    }
    for body in bodies:
        sides_here = {key for key in body.takes if LEG in key}
        body.takes = tuple(key for key in body.takes if key not in sides_here or key in taking)


def _by_gravity(circuit: Circuit, body_at: BodyAt) -> None:
    """Uncontrolled heat drives water by gravity; so does any heat source to a store on vented water,
    as older houses have it."""
    drawing = circuit.drawing
    coils = circuit.parts_with(Role.HEATED_BY_COIL)
    open_bodies = set()
    for place in (*circuit.devices(Role.VENTS), *circuit.devices(Role.FEEDS)):
        pipe = drawing.joined.get(Joint(place.part, place.device.port))
        for end in drawing.pipes[pipe].joints if pipe else ():
            body = body_at(end.part, end.port)
            if body is not None:
                open_bodies.add(id(body))
    for place in circuit.devices(Role.HEATS):
        body = body_at(place.part, place.device.port)
        if body is None:
            continue
        if drawing.components[place.part].value("heat") == "uncontrolled":
            body.by_gravity[place.part] = frozenset(body.takes)
        elif id(body) in open_bodies:
            body.by_gravity[place.part] = frozenset(coils & set(body.takes))
