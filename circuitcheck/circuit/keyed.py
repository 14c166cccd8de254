"""Builds the bodies of water of a circuit, with everything on them under its key (`rounds.py`)."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator
from functools import cache
from weakref import WeakKeyDictionary

from circuitcheck.circuit.flowways import DIRECTED, NOTHING, WayEdge
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import CONTROLLED, FlowPassage, Plan
from circuitcheck.circuit.positions import LEG, leg_label
from circuitcheck.circuit.rounds import AIR, AIR_VERTEX, RETURNS, Body, key_of
from circuitcheck.drawing.value import End, Joint
from circuitcheck.parts.kind import Passage, Role, Way

Port = tuple[str, str]
BodyAt = Callable[[str, str], Body | None]

SECONDARY = "secondary_return"
"""The port of a store by which water comes back to it, and is not meant to leave it."""


class Rounds:
    """The bodies of water of a circuit with everything on them under its key."""

    def __init__(self, circuit: Circuit) -> None:
        # Keeps nothing of the circuit itself, so that one that is gone can be forgotten.
        self._of: dict[str, Body] = {}
        self.bodies = _bodies(circuit)
        for body in self.bodies:
            for edge in body.as_drawn:
                for key in (*edge.pumps, *edge.labels):
                    self._of[key] = body

    def of(self, key: str) -> Body | None:
        """The body in which that key or label stands; None for a part that stands on no way."""
        return self._of.get(key)


_KEPT: WeakKeyDictionary[Circuit, Rounds] = WeakKeyDictionary()


def rounds_of(circuit: Circuit) -> Rounds:
    """The loops of a circuit, worked out once for each."""
    found = _KEPT.get(circuit)
    if found is None:
        found = _KEPT[circuit] = Rounds(circuit)
    return found


def _bodies(circuit: Circuit) -> tuple[Body, ...]:
    edges, vertex = _edges(circuit)
    root = _joined(edges)
    members: dict[int, list[WayEdge]] = defaultdict(list)
    for edge in edges:
        members[root(edge.a)].append(edge)
    for at, edge in _open_to_air(circuit, vertex):
        members[root(at)].append(edge)
    bodies = {at: Body(tuple(members[at])) for at in sorted(members)}

    def body_at(part: str, port: str) -> Body | None:
        at = vertex.get((part, port))
        return None if at is None else bodies.get(root(at))

    for place in circuit.devices(Role.PUMPS):
        body = body_at(place.part, place.device.port)
        if body is not None:
            body.drives += (place.part,)
    for place in circuit.devices(Role.HEATS):
        body = body_at(place.part, place.device.port)
        if body is not None:
            body.warms += (place.part,)
    for part, plan in circuit.plans.items():
        for passage in plan.passages:
            body = body_at(part, passage.a) if passage.gives_heat else None
            if body is not None:
                body.takes += (_passage_key(plan.passages, part, passage),)
    for body in bodies.values():
        body.open_to_air = any(AIR in edge.pumps for edge in body.as_drawn)
    found = tuple(bodies.values())
    _behind_exchangers(circuit, found, body_at)
    _by_gravity(circuit, body_at)
    return found


class _Vertices:
    """The vertex of each port, and an edge for each pipe that is not in series with a part."""

    def __init__(self, circuit: Circuit) -> None:
        self.of: dict[Port, int] = {}
        self.edges: list[WayEdge] = []
        self._count = 0
        # Ports with several ways on. A part with three ports, all open to one another, is one
        # vertex instead: a loop can pass it only once.
        self._several: set[Port] = set()
        for part, plan in circuit.plans.items():
            self._tell(part, plan)
        for pipe in circuit.drawing.pipes.values():
            self._pipe(*pipe.ends)

    def at(self, port: Port) -> int:
        """The vertex of a port; a new one where it has none."""
        if port not in self.of:
            self.of[port] = self._count
            self._count += 1
        return self.of[port]

    def _tell(self, part: str, plan: Plan) -> None:
        if _is_junction(plan):
            for port in plan.forks:
                self.of[part, port] = self._count
            self._count += 1
        else:
            for port in plan.forks:
                self._several.add((part, port))

    def _pipe(self, start: End, finish: End) -> None:
        if not (isinstance(start, Joint) and isinstance(finish, Joint)):
            return
        for end, other in ((start, finish), (finish, start)):
            if end not in self._several and end not in self.of:
                # A port with one way on is in series with its pipe: both ends are then one vertex.
                self.of[end] = self.at(other)
                return
        self.edges.append(WayEdge(self.at(start), self.at(finish)))


def _edges(circuit: Circuit) -> tuple[list[WayEdge], dict[Port, int]]:
    """Every way as an edge, and the vertex of each port."""
    vertices = _Vertices(circuit)
    edges = vertices.edges
    for part, plan in circuit.plans.items():
        if _is_junction(plan):
            continue
        for each in plan.flow_passages:
            a, b = vertices.at((part, each.a)), vertices.at((part, each.b))
            plain = each.plain and each.b != SECONDARY
            edges.append(WayEdge(a, b) if plain else _edge(a, b, part, plan, each))
    return edges, vertices.of


@cache
def _is_junction(plan: Plan) -> bool:
    """Whether it is three ports, all open to one another."""
    return (
        len(plan.passages) == 3
        and all(each.way is Way.OPEN and not each.driven and not each.gap for each in plan.passages)
        and len(plan.forks) == 3
    )


def _edge(a: int, b: int, part: str, plan: Plan, told: FlowPassage) -> WayEdge:
    passage = told.passage
    keys = {part} if told.pumps or told.heats else set[str]()
    if passage.gives_heat or (passage.way in DIRECTED and not _is_driven(plan)):
        keys.add(_passage_key(plan.passages, part, passage))
    inward = passage.b == SECONDARY
    if inward:
        keys.add(RETURNS)
    named = frozenset(keys)
    label = leg_label(part, passage.leg) if passage.leg else part
    return WayEdge(
        a,
        b,
        forward=not inward,
        back=not passage.driven and passage.way not in DIRECTED,
        labels=frozenset({label}) if passage.way in CONTROLLED else NOTHING,
        pumps=named,
        heats=named,
    )


@cache
def _is_driven(plan: Plan) -> bool:
    return any(each.pumps or each.heats for each in plan.flow_passages)


def _passage_key(passages: tuple[Passage, ...], part: str, passage: Passage) -> str:
    alike = [each for each in passages if (each.gives_heat, each.way) == (passage.gives_heat, passage.way)]
    return key_of(part, passage.a if len(alike) > 1 else "")


def _joined(edges: Iterable[WayEdge]) -> Callable[[int], int]:
    parent: dict[int, int] = {}

    def find(vertex: int) -> int:
        root = vertex
        while (up := parent.get(root, root)) != root:
            root = up
        while vertex != root:
            parent[vertex], vertex = root, parent.get(vertex, vertex)
        return root

    for edge in edges:
        a, b = find(edge.a), find(edge.b)
        if a != b:
            parent[a] = b
    return find


def _open_to_air(circuit: Circuit, vertex: dict[Port, int]) -> Iterator[tuple[int, WayEdge]]:
    """Where water comes in from the main or a cistern and where it is let out, as ways through the
    air: so drinking water on its way to a tap is on a loop too. One vertex of air serves every body,
    since their edges are kept apart."""
    air = AIR_VERTEX
    named = frozenset({AIR})
    for role in (Role.MAIN, Role.FEEDS):
        for place in circuit.devices(role):
            at = vertex.get((place.part, place.device.port))
            if at is not None:
                yield at, WayEdge(air, at, back=False, pumps=named, heats=named)
    for place in circuit.devices(Role.DRAWS):
        for port in circuit.drawing.components[place.part].kind.ports:
            at = vertex.get((place.part, port.name))
            if at is not None:
                yield at, WayEdge(at, air, back=False)
    for place in circuit.devices(Role.FEEDS):
        at = vertex.get((place.part, "supply"))
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
    coils = {place.part for place in circuit.devices(Role.HEATED_BY_COIL)}
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
