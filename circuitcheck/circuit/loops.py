"""Finds a loop through a pump, and a heat source where asked, that visits no vertex twice.

Reachability both ways gives a closed walk, not a loop; so a loop is searched for step by step, on
the reduced ways, and never guessed. Every search is bounded, and beyond the bound says so.
"""

from __future__ import annotations

from collections import defaultdict, deque
from collections.abc import Iterator, Sequence
from typing import NamedTuple

from circuitcheck.circuit.flowways import NOTHING, WayEdge, Ways, reduced
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import other_leg
from circuitcheck.wanted import go_on

STEP_BOUND = 100_000
AT_HOUSE_SIZE = 2_000
"""Steps that settle any house; only past them is it worth asking first whether a loop can be."""


class Loop(NamedTuple):
    """The stretches of a loop in the order water takes them, the pump's first."""

    edges: tuple[WayEdge, ...]

    @property
    def labels(self) -> frozenset[str]:
        """The motor and thermostat passages any of which shuts the loop."""
        return NOTHING.union(*(edge.labels for edge in self.edges))


def find_loop(ways: Ways, pump: str, heat: str = "", *, must_emit: bool = False) -> Loop | None:
    """A loop through the pump, the heat source if named, and an emitter if it must; or None.

    Raises TooLargeError beyond the step bound.
    """
    go_on()
    for first in ways.driven(pump):
        if first.a == first.b:
            if (not heat or heat in first.heats) and (first.emits or not must_emit):
                return Loop((first,))
            continue
        if heat and heat not in first.heats:
            seconds: tuple[WayEdge | None, ...] = ways.driven(heat, heat=True)
        else:
            seconds = (None,)
        for second in seconds:
            found = _through(ways, first, second, must_emit)
            if found is not None:
                return found
    return None


def _through(ways: Ways, first: WayEdge, second: WayEdge | None, must_emit: bool) -> Loop | None:
    quick = _quick(ways, first, second)
    if quick is not None and (not must_emit or any(edge.emits for edge in quick.edges)):
        return quick
    if quick is None and (second is None or second.a == second.b):
        return None  # one shortest way is proof enough either way
    try:
        return _search(ways, first, second, must_emit, AT_HOUSE_SIZE)
    except TooLargeError:
        if quick is None and second is not None and not _apart(ways, first, second):
            return None
        return _search(ways, first, second, must_emit, STEP_BOUND)


def _shortest(
    ways: Ways, start: int, goal: int, barred: frozenset[int], *, free: bool = False
) -> tuple[WayEdge, ...] | None:
    """A way with the fewest stretches from start to goal that enters none of the barred vertices."""
    if start == goal:
        return ()
    if start in barred:
        return None
    came: dict[int, WayEdge] = {}
    todo = deque([start])
    while todo:
        here = todo.popleft()
        for edge in ways.leaving.get(here, ()):
            if edge.b in came or edge.b in barred or edge.b == start or (free and edge.labels):
                continue
            came[edge.b] = edge
            if edge.b == goal:
                way = []
                vertex = goal
                while vertex != start:
                    way.append(came[vertex])
                    vertex = came[vertex].a
                return tuple(reversed(way))
            todo.append(edge.b)
    return None


def _vertices(way: tuple[WayEdge, ...], start: int) -> frozenset[int]:
    return frozenset([start, *(edge.b for edge in way)])


def _quick(ways: Ways, first: WayEdge, second: WayEdge | None) -> Loop | None:
    """A loop made of shortest ways, tried in both orders, with what nothing can shut preferred."""
    for free in (True, False):
        if second is None:
            way = _shortest(ways, first.b, first.a, frozenset(), free=free)
            if way is not None:
                return Loop((first, *way))
            continue
        out_ends, back_ends = (first.b, second.a), (second.b, first.a)
        for lead, follow in ((out_ends, back_ends), (back_ends, out_ends)):
            one = _shortest(ways, *lead, frozenset(follow) - set(lead), free=free)
            if one is None or set(follow) & _vertices(one, lead[0]):
                continue
            other = _shortest(ways, *follow, _vertices(one, lead[0]), free=free)
            if other is not None:
                out, back = (one, other) if lead is out_ends else (other, one)
                return Loop((first, *out, second, *back))
    return None


def _apart(ways: Ways, first: WayEdge, second: WayEdge) -> bool:
    """Whether two ways without a common vertex join the ends at all, paired as they may be.

    Needed for a loop, not enough for one: the search that follows is then worth its while. It is
    a largest flow with every vertex used once, by networkx.
    """
    import networkx as nx

    graph: nx.DiGraph[object] = nx.DiGraph()
    for vertex, leaving in list(ways.leaving.items()):
        for edge in leaving:
            graph.add_edge((vertex, "out"), (edge.b, "in"), capacity=1)
            graph.add_edge((vertex, "in"), (vertex, "out"), capacity=1)
            graph.add_edge((edge.b, "in"), (edge.b, "out"), capacity=1)
    for start in {first.b, second.b}:
        graph.add_edge("start", (start, "in"), capacity=1)
        graph.add_edge((start, "in"), (start, "out"), capacity=1)
    for goal in {first.a, second.a}:
        graph.add_edge((goal, "in"), (goal, "out"), capacity=1)
        graph.add_edge((goal, "out"), "goal", capacity=1)
    return bool(nx.maximum_flow_value(graph, "start", "goal") >= 2)


def _search(
    ways: Ways, first: WayEdge, second: WayEdge | None, must_emit: bool, most_steps: int
) -> Loop | None:
    """Every way from the pump's outlet back to its inlet, until one is a loop as asked."""
    steps = 0
    taken: list[WayEdge] = [first]
    seen = {first.b}
    goal = first.a

    def onward(vertex: int) -> Iterator[WayEdge]:
        return iter([edge for edge in ways.leaving.get(vertex, ()) if edge.b not in seen])

    stack = [onward(first.b)]
    while stack:
        edge = next(stack[-1], None)
        if edge is None:
            stack.pop()
            seen.discard(taken.pop().b)
            continue
        steps += 1
        if steps > most_steps:
            raise TooLargeError
        passed = second is None or any(_same(edge, second) for edge in (*taken, edge))
        if edge.b == goal:
            emits = not must_emit or any(edge.emits for edge in (*taken, edge))
            if passed and emits:
                return Loop((*taken, edge))
            continue
        if edge.b in seen:
            continue
        seen.add(edge.b)
        if _still_open(ways, edge.b, goal, None if passed else second, seen):
            taken.append(edge)
            stack.append(onward(edge.b))
        else:
            seen.discard(edge.b)
    return None


def _same(edge: WayEdge, other: WayEdge) -> bool:
    return edge is other or edge == other


def _still_open(ways: Ways, start: int, goal: int, second: WayEdge | None, seen: set[int]) -> bool:
    """Whether the goal, and the second stretch where it is still to come, can be reached at all."""
    reached = {start}
    todo = [start]
    while todo:
        here = todo.pop()
        for edge in ways.leaving.get(here, ()):
            if edge.b not in reached and edge.b not in seen:
                reached.add(edge.b)
                todo.append(edge.b)
    if goal not in reached:
        return False
    return second is None or (second.a in reached and (second.b in reached or second.b == goal))


def simplified(edges: Sequence[WayEdge], spoiled: frozenset[str]) -> tuple[WayEdge, ...]:
    """Fewer stretches with the same answer for every position of the valves.

    Side by side, a stretch that is shut whenever another is shut, and is no better a way round,
    adds nothing. The two legs of one three-port valve side by side are one stretch that nothing
    can shut. `spoiled` names the hand valves that make a way without an emitter no way round.
    """
    current = tuple(edges)
    while True:
        fewer = reduced(_side_by_side(current, spoiled))
        if len(fewer) == len(current):
            return fewer
        current = fewer


def worth(edge: WayEdge, spoiled: frozenset[str]) -> int:
    """2 for a stretch with an emitter, 1 for a plain one, 0 for a plain one that a hand valve spoils."""
    if edge.emits:
        return 2
    return 0 if edge.hands & spoiled else 1


def _side_by_side(edges: Sequence[WayEdge], spoiled: frozenset[str]) -> list[WayEdge]:
    groups: dict[tuple[int, int], list[WayEdge]] = defaultdict(list)
    for edge in edges:
        told = edge if edge.a <= edge.b else edge.turned()
        groups[(told.a, told.b)].append(told)
    matters = any(worth(edge, spoiled) == 0 for edge in edges)
    kept: list[WayEdge] = []
    for members in groups.values():
        plain = [edge for edge in members if not (edge.pumps or edge.heats)]
        kept.extend(edge for edge in members if edge.pumps or edge.heats)
        if plain and plain[0].a == plain[0].b:
            continue  # a loop of its own without a pump in it
        kept.extend(_undominated(_legs_joined(plain, spoiled, matters), spoiled, matters))
    return kept


def _legs_joined(edges: list[WayEdge], spoiled: frozenset[str], matters: bool) -> list[WayEdge]:
    left = list(edges)
    by_label = {next(iter(edge.labels)): edge for edge in edges if len(edge.labels) == 1}
    for label, edge in by_label.items():
        other = by_label.get(other_leg(label))
        if other is None or edge not in left or other not in left:
            continue
        if (edge.forward, edge.back) != (other.forward, other.back):
            continue
        if matters and worth(edge, spoiled) != worth(other, spoiled):
            continue
        left.remove(edge)
        left.remove(other)
        left.append(
            edge._replace(
                labels=NOTHING,
                hands=edge.hands | other.hands,
                springs=edge.springs | other.springs,
                emits=edge.emits and other.emits,
            )
        )
    return left


def _undominated(edges: list[WayEdge], spoiled: frozenset[str], matters: bool) -> list[WayEdge]:
    def rank(edge: WayEdge) -> int:
        return worth(edge, spoiled) if matters else 1

    def serves_instead(other: WayEdge, edge: WayEdge) -> bool:
        return (
            other.labels <= edge.labels
            and other.forward >= edge.forward
            and other.back >= edge.back
            and rank(other) >= rank(edge)
        )

    kept: list[WayEdge] = []
    for edge in sorted(edges, key=lambda edge: (len(edge.labels), -rank(edge))):
        if not any(serves_instead(other, edge) for other in kept):
            kept.append(edge)
    return kept
