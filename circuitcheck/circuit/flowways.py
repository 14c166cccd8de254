"""The ways water can circulate, reduced to what a loop can choose between.

Vertices are ports; edges are pipes and passages, with the directions water can take. A *loop* is a
circuit that visits no port twice. What no loop can use (dead ends) is dropped and ways in series
become one edge, so that a house is left with a handful of edges between its tees.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Sequence
from functools import cached_property
from typing import NamedTuple

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.positions import leg_label
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Role, Way

DIRECTED = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})
CONTROLLED = frozenset({Way.MOTOR, Way.THERMOSTAT})

NOTHING: frozenset[str] = frozenset()


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
        return self._replace(a=self.b, b=self.a, forward=self.back, back=self.forward)

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


class Ways:
    """Stretches with what leaves each vertex, in the directions water can take."""

    def __init__(self, edges: Sequence[WayEdge]) -> None:
        self.edges = edges
        self.leaving: dict[int, list[WayEdge]] = defaultdict(list)
        # Stretches nothing can shut first: a loop of them alone settles a question at once.
        for edge in sorted(edges, key=lambda edge: len(edge.labels)):
            if edge.forward:
                self.leaving[edge.a].append(edge)
            if edge.back:
                self.leaving[edge.b].append(edge.turned())

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
    def _all(self) -> tuple[WayEdge, ...]:
        ways_at: dict[tuple[str, str], int] = defaultdict(int)
        for part, plan in self.circuit.plans.items():
            for passage in plan.passages:
                ways_at[part, passage.a] += 1
                ways_at[part, passage.b] += 1
        vertex: dict[tuple[str, str], int] = {}
        edges = []
        for pipe in self.circuit.drawing.pipes.values():
            start, finish = pipe.ends
            if isinstance(start, Joint) and isinstance(finish, Joint):
                # A port with one way on is in series with its pipe: both ends are then one vertex.
                # Where both ports have several, a loop may use either and leave the pipe alone.
                at_start = vertex[start] = len(vertex)
                if ways_at[start] > 1 and ways_at[finish] > 1:
                    at_finish = vertex[finish] = len(vertex)
                    edges.append(WayEdge(at_start, at_finish))
                else:
                    vertex[finish] = at_start
        free = len(vertex)
        for part, plan in self.circuit.plans.items():
            pumps = [(d.port, d.other) for d in plan.devices if d.role is Role.PUMPS]
            heats = [(d.port, d.other) for d in plan.devices if d.role is Role.HEATS]
            for passage in plan.passages:
                if passage.gap:
                    continue
                for point in (passage.a, passage.b):
                    if (part, point) not in vertex:
                        vertex[part, point] = free
                        free += 1
                key = (passage.a, passage.b)
                a, b = vertex[part, passage.a], vertex[part, passage.b]
                edges.append(_edge(a, b, part, passage, key in pumps, key in heats))
        return tuple(edges)

    @cached_property
    def never_shut(self) -> Ways:
        """The ways that no control shuts, nor anybody's hand but on an emitter or a pump itself."""
        return Ways(
            [
                edge
                for edge in self._all
                if not edge.labels and not edge.householder and (edge.emits or edge.pumps or not edge.hands)
            ]
        )

    @cached_property
    def _bodies(self) -> dict[str, tuple[WayEdge, ...]]:
        """The edges of the body of water that each pump and heat source stands in, by part."""
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
        found: dict[str, tuple[WayEdge, ...]] = {}
        for members in bodies.values():
            parts = frozenset[str]().union(*(edge.pumps | edge.heats for edge in members))
            if parts:
                body = tuple(members)
                found.update(dict.fromkeys(sorted(parts), body))
        return found

    @cached_property
    def _reduced(self) -> dict[int, tuple[WayEdge, ...]]:
        return {}

    @cached_property
    def pumps(self) -> tuple[str, ...]:
        """Every part that drives water, in the drawing's order."""
        return tuple(place.part for place in self.circuit.devices(Role.PUMPS))

    def pumps_with(self, part: str) -> tuple[str, ...]:
        """The parts that drive the body of water that `part` stands in, in the drawing's order."""
        body = self._bodies.get(part, ())
        pumps = frozenset[str]().union(*(edge.pumps for edge in body))
        return tuple(id for id in self.circuit.drawing.components if id in pumps)

    def heats_with(self, part: str) -> tuple[str, ...]:
        """The parts that heat the body of water that `part` stands in, in the drawing's order."""
        body = self._bodies.get(part, ())
        heats = frozenset[str]().union(*(edge.heats for edge in body))
        return tuple(id for id in self.circuit.drawing.components if id in heats)

    def around(self, part: str) -> tuple[WayEdge, ...]:
        """The reduced ways of the body of water that `part` (a pump or heat source) stands in."""
        body = self._bodies.get(part, ())
        if id(body) not in self._reduced:
            self._reduced[id(body)] = reduced(body)
        return self._reduced[id(body)]

    def as_drawn(self, part: str) -> tuple[WayEdge, ...]:
        """The ways of that body before they are reduced, one edge a pipe or passage."""
        return self._bodies.get(part, ())


def _edge(a: int, b: int, part: str, passage: Passage, pumps: bool, heats: bool) -> WayEdge:
    alone = frozenset({part})
    label = leg_label(part, passage.leg) if passage.leg else part
    return WayEdge(
        a,
        b,
        forward=True,
        back=not passage.driven and passage.way not in DIRECTED,
        labels=frozenset({label}) if passage.way in CONTROLLED else NOTHING,
        hands=alone if passage.way is Way.HAND and not passage.gives_heat else NOTHING,
        pumps=alone if pumps else NOTHING,
        heats=alone if heats else NOTHING,
        springs=alone if passage.way is Way.SPRING else NOTHING,
        householder=alone if passage.householder else NOTHING,
        emits=passage.gives_heat,
    )
