"""Can heat leave a heat source by gravity alone, whatever is shut? Loops through it and an emitter or coil.

A loop visits no port twice. It is two ways without a common port, from the heat source's two ends to
an emitter's two ends: a largest flow of two with every vertex used once (Menger 1927; Ford and
Fulkerson 1956). Reachability both ways would be a closed walk, not a loop. Water goes through a
heat source in one direction only; where the one way leads through another heat source, the loop is
searched for step by step, and beyond the bound says so.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Iterator, Sequence
from functools import cached_property
from itertools import pairwise

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.flowways import NOTHING, WayEdge, Ways, reduced
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import leg_label, other_leg
from circuitcheck.circuit.loops import find_loop
from circuitcheck.circuit.plan import DIRECTED, SHUTTABLE
from circuitcheck.circuit.positions import smallest_without_loop
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Role

COOLS = (Role.EMITS, Role.HEATED_BY_COIL)

LABELS_BOUND = 60
"""Up to so many passages that can be shut, the smallest set that shuts every loop is looked for."""

Loop = tuple[WayEdge, ...]


class GravityRound:
    """The loops by which water can go round a heat source with every pump at rest.

    No way leads through a pump, which holds water back when it rests, nor through a check valve or
    any other part that lets water through one way only: gravity does not lift it.
    """

    def __init__(self, circuit: Circuit, bodies: Bodies, heat: str) -> None:
        self.circuit, self.bodies, self.heat = circuit, bodies, heat

    @cached_property
    def edges(self) -> tuple[WayEdge, ...]:
        """The ways of the heat source's water, each with what can shut it as its labels."""
        vertex: dict[tuple[str, str], int] = {}

        def at(part: str, port: str) -> int:
            return vertex.setdefault((part, port), len(vertex))

        body = next(
            self.bodies.of(place.node)
            for place in self.circuit.devices(Role.HEATS)
            if place.part == self.heat
        )
        edges = []
        for node, pipe in enumerate(self.circuit.drawing.pipes.values()):
            start, finish = pipe.ends
            if isinstance(start, Joint) and isinstance(finish, Joint) and self.bodies.of(node) == body:
                edges.append(WayEdge(at(*start), at(*finish)))
        for part, plan in self.circuit.plans.items():
            for passage in plan.passages:
                if passage.gap or self.bodies.of(self.circuit.node(part, passage.a)) != body:
                    continue
                edge = self._edge(part, passage, at(part, passage.a), at(part, passage.b))
                if edge is not None:
                    edges.append(edge)
        return reduced(edges)

    def _edge(self, part: str, passage: Passage, a: int, b: int) -> WayEdge | None:
        devices = self.circuit.plans[part].devices
        ends = (passage.a, passage.b)
        if passage.way in DIRECTED:
            return None
        if any(device.role is Role.PUMPS and (device.port, device.other) == ends for device in devices):
            return None
        heats = any(device.role is Role.HEATS and (device.port, device.other) == ends for device in devices)
        cools = any(device.role in COOLS and (device.port, device.other) == ends for device in devices)
        shuttable = passage.way in SHUTTABLE or passage.pressure_way in SHUTTABLE or passage.householder
        label = leg_label(part, passage.leg) if passage.leg else part
        return WayEdge(
            a,
            b,
            back=not passage.driven,
            labels=frozenset({label}) if shuttable else NOTHING,
            heats=frozenset({part}) if heats else NOTHING,
            emits=cools,
        )

    @cached_property
    def never_shut(self) -> bool:
        """Whether some loop is open however all that can be shut stands. Raises TooLargeError."""
        hard = frozenset(label for edge in self.edges for label in edge.labels if not other_leg(label))
        left = _legs_joined([edge for edge in self.edges if not edge.labels & hard])
        if _loop([edge for edge in left if not edge.labels], self.heat, NOTHING) is not None:
            return True
        if not any(edge.labels for edge in left):
            return False
        return smallest_without_loop(lambda shut: _labels(_loop(left, self.heat, shut))) is None

    @cached_property
    def shut_in(self) -> frozenset[str] | None:
        """A smallest set of closings that leaves no loop; empty where there is none with all open.

        None where it was not looked for: nothing shuts every loop, or too much can be shut.
        """
        labels = NOTHING.union(*(edge.labels for edge in self.edges))
        if self.never_shut or (len(labels) > LABELS_BOUND and self._labels_of_a_loop(NOTHING) is not None):
            return None
        try:
            return smallest_without_loop(self._labels_of_a_loop)
        except TooLargeError:
            return None

    def _labels_of_a_loop(self, shut: frozenset[str]) -> frozenset[str] | None:
        return _labels(_loop(self.edges, self.heat, shut))

    def alone(self, shut: frozenset[str]) -> frozenset[str]:
        """Every single passage that leaves no loop, where `shut` is a smallest set."""
        if len(shut) != 1:
            return NOTHING
        loop = self._labels_of_a_loop(NOTHING) or NOTHING
        return frozenset(label for label in loop if self._labels_of_a_loop(frozenset({label})) is None)


def _labels(loop: Loop | None) -> frozenset[str] | None:
    return None if loop is None else NOTHING.union(*(edge.labels for edge in loop))


def _loop(edges: Sequence[WayEdge], heat: str, shut: frozenset[str]) -> Loop | None:
    """A loop through the heat source and an emitter or coil with these passages shut, or None."""
    left = [edge for edge in edges if not edge.labels & shut]
    own = [edge for edge in left if heat in edge.heats]
    if len(own) != 1:
        return None
    (first,) = own
    plain = [edge for edge in left if edge is not first and not edge.heats]
    found = _undirected(plain, first)
    if found is not None or len(plain) == len(left) - 1:
        return found
    others = [edge for edge in left if edge is not first]
    if _undirected(others, first) is None:
        return None
    # Another heat source lies on every way, and water goes through it in one direction only.
    marked = [first._replace(pumps=frozenset({heat})), *others]
    loop = find_loop(Ways(marked), heat, must_emit=True)
    return None if loop is None else loop.edges


def _undirected(edges: Sequence[WayEdge], first: WayEdge) -> Loop | None:
    """A loop of `first` and these edges, whose directions do not count, that takes in an emitter."""
    if first.a == first.b:
        return (first,) if first.emits else None
    at: dict[int, list[WayEdge]] = defaultdict(list)
    for edge in edges:
        if edge.a != edge.b:
            at[edge.a].append(edge)
            at[edge.b].append(edge)
    if first.emits:
        ways = _apart(at, (first.b,), (first.a,), None)
        return None if ways is None else (first, *ways)
    emitters = sorted((edge for edge in edges if edge.emits and edge.a != edge.b), key=_fewest_labels)
    for emitter in emitters:
        ways = _apart(at, (first.a, first.b), (emitter.a, emitter.b), emitter)
        if ways is not None:
            return (first, emitter, *ways)
    return None


def _fewest_labels(edge: WayEdge) -> int:
    return len(edge.labels)


State = tuple[int, bool]
"""A vertex and whether it is being left (True) or entered (False): each is passed once at most."""


def _apart(
    at: dict[int, list[WayEdge]], starts: tuple[int, ...], goals: tuple[int, ...], barred: WayEdge | None
) -> Loop | None:
    """Ways from each start to a goal of its own that have no vertex in common; None where there are none."""
    flow = _Flow(at, starts, goals, barred)
    for _ in starts:
        if not flow.augment():
            return None
    return flow.ways()


class _Flow:
    """A flow in which each vertex is passed once at most."""

    def __init__(
        self,
        at: dict[int, list[WayEdge]],
        starts: tuple[int, ...],
        goals: tuple[int, ...],
        barred: WayEdge | None,
    ) -> None:
        self.at, self.starts, self.goals, self.barred = at, starts, goals, barred
        self.onward: dict[int, int] = {}
        self.before: dict[int, int] = {}
        self.used_starts: set[int] = set()
        self.used_goals: set[int] = set()

    def augment(self) -> bool:
        """One more unit along a shortest way; whether there is one."""
        came: dict[State, State | None] = {
            (start, False): None for start in self.starts if start not in self.used_starts
        }
        todo = deque(came)
        while todo:
            here = todo.popleft()
            vertex, leaving = here
            if leaving and vertex in self.goals and vertex not in self.used_goals:
                self._push(came, here)
                return True
            for there in self._steps(vertex, leaving):
                if there not in came:
                    came[there] = here
                    todo.append(there)
        return False

    def _steps(self, vertex: int, leaving: bool) -> Iterator[State]:
        passed = vertex in self.onward or vertex in self.before or vertex in self.used_starts
        if leaving:
            for edge in self.at.get(vertex, ()):
                there = edge.b if edge.a == vertex else edge.a
                if edge is not self.barred and self.onward.get(vertex) != there:
                    yield there, False
            if passed:
                yield vertex, False  # give back the unit that goes through the vertex
            return
        if not passed:
            yield vertex, True
        if vertex in self.before:
            yield self.before[vertex], True  # give back the unit that comes this way

    def _push(self, came: dict[State, State | None], last: State) -> None:
        path = [last]
        while (up := came[path[-1]]) is not None:
            path.append(up)
        path.reverse()
        self.used_starts.add(path[0][0])
        self.used_goals.add(path[-1][0])
        steps = [(one, two) for one, two in pairwise(path) if one[0] != two[0]]
        for (one, leaves), (two, _) in steps:
            if not leaves:
                del self.onward[two], self.before[one]
        for (one, leaves), (two, _) in steps:
            if leaves:
                self.onward[one] = two
                self.before[two] = one

    def ways(self) -> Loop:
        """The stretches of the ways, those with least to shut them where several lie side by side."""
        found = []
        for vertex in self.starts:
            while vertex in self.onward:
                there = self.onward[vertex]
                edges = [
                    edge for edge in self.at[vertex] if edge is not self.barred and there in (edge.a, edge.b)
                ]
                found.append(min(edges, key=_fewest_labels))
                vertex = there
        return tuple(found)


def _legs_joined(edges: Sequence[WayEdge]) -> list[WayEdge]:
    """The edges with both legs of a valve that lie side by side told as one that nothing can shut."""
    current = list(edges)
    while True:
        by_ends: dict[tuple[frozenset[int], frozenset[str]], WayEdge] = {
            (frozenset((edge.a, edge.b)), edge.labels): edge
            for edge in current
            if len(edge.labels) == 1 and not edge.heats
        }
        pair = None
        for (ends, labels), edge in by_ends.items():
            (label,) = labels
            other = by_ends.get((ends, frozenset({other_leg(label)})))
            if other is not None:
                pair = edge, other
                break
        if pair is None:
            return current
        one, two = pair
        current = [edge for edge in current if edge is not one and edge is not two]
        if one.emits != two.emits:
            # The leg with the emitter still is a way of its own; beside it stands a plain one.
            current.append(one if one.emits else two)
        current.append(one._replace(labels=NOTHING, emits=one.emits and two.emits))
        current = list(reduced(current))
