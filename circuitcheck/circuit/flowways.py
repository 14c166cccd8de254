"""The ways water can circulate, reduced to what a loop can choose between.

Vertices are ports; edges are pipes and passages, with the directions water can take. A *loop* is a
circuit that visits no port twice. What no loop can use (dead ends) is dropped and ways in series
become one edge, so that a house is left with a handful of edges between its tees.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Mapping, Sequence
from functools import cached_property
from typing import NamedTuple

from circuitcheck.circuit.contracting import BACK, BOTH, FORWARD, contract
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import leg_label
from circuitcheck.circuit.plan import CONTROLLED, DIRECTED, FlowPassage
from circuitcheck.circuit.spans import spans_of
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role, Way

Span = tuple[int, int, str, FlowPassage | None]
"""Two vertices and the passage between them, with its part; no passage for a pipe."""

NOTHING: frozenset[str] = frozenset()
SECOND = 1 << 40
"""Beyond every node: the vertex at the far end of a pipe that is not in series with anything."""


class WayEdge(NamedTuple):
    """A stretch between two vertices. `forward`: water can take it from `a` to `b`; `back`: b to a.

    `labels`: the motor and thermostat passages on it (`id`, or `leg_label`), any of which shuts it.
    `hands`: parts on it that a hand valve shuts, other than emitters. `pumps` and `heats`: the
    parts that drive and heat it (which fix its direction). `emits`: it takes in an emitter, a coil
    or an exchanger. `householder`: parts on it that anybody shuts by hand. `springs`: bypasses.
    """

    a: int
    b: int
    forward: bool = True
    back: bool = True
    labels: frozenset[str] = NOTHING
    hands: frozenset[str] = NOTHING
    pumps: frozenset[str] = NOTHING
    heats: frozenset[str] = NOTHING
    springs: frozenset[str] = NOTHING
    householder: frozenset[str] = NOTHING
    emits: bool = False

    def turned(self) -> WayEdge:
        """The same stretch, told from the other end."""
        return WayEdge(
            self.b,
            self.a,
            self.back,
            self.forward,
            self.labels,
            self.hands,
            self.pumps,
            self.heats,
            self.springs,
            self.householder,
            self.emits,
        )

    def then(self, other: WayEdge) -> WayEdge:
        """This stretch and one that begins where it ends, as one."""
        return WayEdge(
            self.a,
            other.b,
            self.forward and other.forward,
            self.back and other.back,
            _both(self.labels, other.labels),
            _both(self.hands, other.hands),
            _both(self.pumps, other.pumps),
            _both(self.heats, other.heats),
            _both(self.springs, other.springs),
            _both(self.householder, other.householder),
            self.emits or other.emits,
        )


def _and_on(whole: WayEdge, piece: WayEdge) -> WayEdge:
    """The same stretch with what is on a piece of it."""
    return (
        piece._replace(a=0, b=0)
        .then(whole)
        ._replace(a=whole.a, b=whole.b, forward=whole.forward, back=whole.back)
    )


def _both(one: frozenset[str], two: frozenset[str]) -> frozenset[str]:
    if not two:
        return one
    return one | two if one else two


def reduced(edges: Iterable[WayEdge]) -> tuple[WayEdge, ...]:
    """The edges with dead ends dropped and stretches in series joined; loops stay the same."""
    alive: dict[int, WayEdge] = {}
    at: dict[int, set[int]] = defaultdict(set)
    for place, edge in enumerate(edges):
        if edge.forward or edge.back:
            alive[place] = edge
            at[edge.a].add(place)
            at[edge.b].add(place)
    number = len(alive) and max(alive) + 1
    todo = list(at)
    while todo:
        vertex = todo.pop()
        here = at.get(vertex)
        if not here or len(here) > 2:
            continue
        members = [alive[place] for place in here]
        if any(edge.a == edge.b for edge in members):
            if len(here) == 1:
                continue  # a loop of its own
            # A loop hangs on this vertex by one more edge, which then is a dead end.
            place = next(place for place in here if alive[place].a != alive[place].b)
            members, here = [alive[place]], {place}
        for place in tuple(here):
            edge = alive.pop(place)
            for end in (edge.a, edge.b):
                at[end].discard(place)
                todo.append(end)
        if len(members) == 2:
            first, second = members
            first = first if first.b == vertex else first.turned()
            second = second if second.a == vertex else second.turned()
            joined = first.then(second)
            if joined.forward or joined.back:
                alive[number] = joined
                at[joined.a].add(number)
                at[joined.b].add(number)
                todo.extend((joined.a, joined.b))
                number += 1
    return tuple(alive[place] for place in sorted(alive))


def without_dead_ends(edges: Sequence[WayEdge]) -> tuple[WayEdge, ...]:
    """The edges that some ring takes in, or that lie between two rings, whichever way water could take each."""
    at: dict[int, set[int]] = defaultdict(set)
    for place, edge in enumerate(edges):
        at[edge.a].add(place)
        at[edge.b].add(place)
    gone: set[int] = set()
    todo = [vertex for vertex, here in at.items() if len(here) == 1]
    while todo:
        here = at[todo.pop()]
        if len(here) != 1:
            continue
        place = here.pop()
        edge = edges[place]
        if edge.a == edge.b:
            here.add(place)  # a ring of its own
            continue
        gone.add(place)
        for end in (edge.a, edge.b):
            at[end].discard(place)
            if len(at[end]) == 1:
                todo.append(end)
    return tuple([edge for place, edge in enumerate(edges) if place not in gone])


def _labels_on(edge: WayEdge) -> int:
    return len(edge.labels)


class Ways:
    """Stretches with what leaves each vertex, in the directions water can take."""

    def __init__(self, edges: Sequence[WayEdge]) -> None:
        self.edges = edges
        self.leaving: dict[int, list[WayEdge]] = defaultdict(list)
        leaving = self.leaving
        # Stretches nothing can shut first: a loop of them alone settles a question at once.
        for edge in sorted(edges, key=_labels_on):
            if edge.forward:
                leaving[edge.a].append(edge)
            if edge.back:
                leaving[edge.b].append(edge.turned())

    def without(self, shut: frozenset[str]) -> Ways:
        """What is left once these passages are shut."""
        return Ways([edge for edge in self.edges if not edge.labels & shut])

    def driven(self, part: str, *, heat: bool = False) -> tuple[WayEdge, ...]:
        """The stretches with that pump (or heat source) in them, told in its direction."""
        found = []
        for edge in self.edges:
            if part in (edge.heats if heat else edge.pumps):
                if edge.forward:
                    found.append(edge)
                if edge.back:
                    found.append(edge.turned())
        return tuple(found)


class FlowWays:
    """The circulation graph of a circuit: all ways, and the reduced ways of each body of water."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit

    @cached_property
    def _second(self) -> Mapping[Joint, int]:
        """The vertex at the far end of each pipe that is in series with nothing.

        A vertex is the node of a pipe. A port with one way on is in series with its pipe; where both
        ports have several, a loop may use either and leave the pipe alone: two vertices then.
        """
        plans = self.circuit.plans
        found = {}
        for place, pipe in enumerate(self.circuit.drawing.pipes.values()):
            start, finish = pipe.ends
            if not (isinstance(start, Joint) and isinstance(finish, Joint)):
                continue
            if start.port in plans[start.part].forks and finish.port in plans[finish.part].forks:
                found[finish] = SECOND + place
        return found

    def _spans(self) -> list[Span]:
        """Every passage between its vertices; first the pipes that are in series with nothing."""
        second, ports = self._second, self.circuit.ports
        split = {joint.part for joint in second}
        spans: list[Span] = [(vertex - SECOND, vertex, "", None) for vertex in second.values()]
        for part, plan in self.circuit.plans.items():
            ways = plan.flow_passages
            if not ways:
                continue
            first = ports.first[ports.place[part]]
            for left, right, way in plan.flow_slots:
                a, b = ports.at[first + left], ports.at[first + right]
                if part in split:
                    a = second.get(Joint(part, way.a), a)
                    b = second.get(Joint(part, way.b), b)
                spans.append((a, b, part, way))
        return spans

    @cached_property
    def _all(self) -> tuple[WayEdge, ...]:
        return tuple([_edge(span) for span in self._spans()])

    @cached_property
    def never_shut(self) -> Ways:
        """The ways that no control shuts, nor anybody's hand but on an emitter or a pump itself;
        those that lead nowhere left out, and those in series as one."""
        spans = spans_of(self.circuit)
        passages, parts = spans.passages, spans.parts
        members = [span for span, each in enumerate(passages) if each is None or each.never_shut]
        ways = [BOTH if each is None or each.both else FORWARD for each in passages]
        edges = []
        for a, b, both, numbers in contract(spans.starts, spans.ends, ways, spans.vertices, members):
            whole = WayEdge(a, b, bool(both & FORWARD), bool(both & BACK))
            for number in numbers:
                span = number if number >= 0 else ~number
                passage = passages[span]
                if passage is not None and not passage.plain:
                    whole = _and_on(whole, _edge((0, 0, parts[span], passage)))
            edges.append(whole)
        return Ways(edges)

    @cached_property
    def _bodies(self) -> dict[str, _OneBody]:
        """The body of water that each pump and heat source stands in, by part."""
        parent: dict[int, int] = {}

        def find(vertex: int) -> int:
            root = vertex
            while (up := parent.get(root, root)) != root:
                root = up
            while vertex != root:
                parent[vertex], vertex = root, parent.get(vertex, vertex)
            return root

        for edge in self._all:
            a, b = find(edge.a), find(edge.b)
            if a != b:
                parent[a] = b
        bodies: dict[int, list[WayEdge]] = defaultdict(list)
        for edge in self._all:
            bodies[find(edge.a)].append(edge)
        found: dict[str, _OneBody] = {}
        for members in bodies.values():
            body = _OneBody(tuple(members), self.circuit.ports.place)
            found.update(dict.fromkeys((*body.pumps, *body.heats), body))
        return found

    @cached_property
    def pumps(self) -> tuple[str, ...]:
        """Every part that drives water, in the drawing's order."""
        return tuple(place.part for place in self.circuit.devices(Role.PUMPS))

    def pumps_with(self, part: str) -> tuple[str, ...]:
        """The parts that drive the body of water that `part` stands in, in the drawing's order."""
        return self._body(part).pumps

    def heats_with(self, part: str) -> tuple[str, ...]:
        """The parts that heat the body of water that `part` stands in, in the drawing's order."""
        return self._body(part).heats

    def labels_with(self, part: str) -> frozenset[str]:
        """Every motor and thermostat passage on the water that `part` stands in, on a dead end too."""
        return self._body(part).labels

    def around(self, part: str) -> tuple[WayEdge, ...]:
        """The reduced ways of the body of water that `part` (a pump or heat source) stands in."""
        return self._body(part).reduced

    def as_drawn(self, part: str) -> tuple[WayEdge, ...]:
        """The ways of that body before they are reduced, one edge a pipe or passage."""
        return self._body(part).edges

    def _body(self, part: str) -> _OneBody:
        return self._bodies.get(part) or _OneBody((), {})


class _OneBody:
    """The ways of one body of water, and what stands on them: many pumps may ask for the same."""

    def __init__(self, edges: tuple[WayEdge, ...], order: Mapping[str, int]) -> None:
        self.edges = edges
        self._order = order

    @cached_property
    def pumps(self) -> tuple[str, ...]:
        """What drives it, in the drawing's order."""
        return self._in_order(NOTHING.union(*(edge.pumps for edge in self.edges)))

    @cached_property
    def heats(self) -> tuple[str, ...]:
        """What heats it, in the drawing's order."""
        return self._in_order(NOTHING.union(*(edge.heats for edge in self.edges)))

    @cached_property
    def labels(self) -> frozenset[str]:
        """Its motor and thermostat passages."""
        return NOTHING.union(*(edge.labels for edge in self.edges))

    @cached_property
    def reduced(self) -> tuple[WayEdge, ...]:
        """Its ways without dead ends, those in series as one."""
        return reduced(self.edges)

    def _in_order(self, parts: frozenset[str]) -> tuple[str, ...]:
        return tuple(sorted(parts, key=self._order.__getitem__))


def _edge(span: Span) -> WayEdge:
    a, b, part, way = span
    if way is None or way.plain:
        return WayEdge(a, b)
    passage = way.passage
    alone = frozenset({part})
    label = leg_label(part, passage.leg) if passage.leg else part
    return WayEdge(
        a,
        b,
        forward=True,
        back=not passage.driven and passage.way not in DIRECTED,
        labels=frozenset({label}) if passage.way in CONTROLLED else NOTHING,
        hands=alone if passage.way is Way.HAND and not passage.gives_heat else NOTHING,
        pumps=alone if way.pumps else NOTHING,
        heats=alone if way.heats else NOTHING,
        springs=alone if passage.way is Way.SPRING else NOTHING,
        householder=alone if passage.householder else NOTHING,
        emits=passage.gives_heat,
    )
