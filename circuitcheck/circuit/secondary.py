"""Secondary returns: the pipes by which hot water goes round and comes back to its store."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import partial

from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.circuit.waterways import Step
from circuitcheck.drawing.value import Joint


@dataclass(frozen=True, slots=True)
class Return:
    """A way back into a store from its hot outlet: `enters` is the store's port that it ends on;
    `pump` drives it where that is the store's cold inlet."""

    hot: Joint
    enters: Joint
    pump: str = ""


def hot_port(ways: Supplies, giver: Giver) -> Joint:
    """The hot outlet of a store."""
    return Joint(giver.part, ways.stores[giver.part].device.other)


def returns(ways: Supplies, giver: Giver) -> tuple[Return, ...]:
    """Every secondary return of a store.

    A port but its hot outlet and its cold inlet, where water drawn from the hot outlet comes back
    to it; the cold inlet, where a pump drives hot water to it.
    """
    hot = hot_port(ways, giver)
    joined = ways.circuit.drawing.joined
    back = [port for port in giver.ports if port != hot and port in joined]
    pumps = ways.drinking_pumps
    if not back and not pumps:
        return ()
    out = ways.walk([hot], ways.drawn_outside)
    found = [Return(hot, port) for port in back if port in out]
    for place in pumps:
        inlet, outlet = Joint(place.part, place.device.port), Joint(place.part, place.device.other)
        if inlet not in out:
            continue
        onward = ways.walk([outlet], partial(past, ways, place.part))
        if giver.inlet in onward and hot not in onward:
            found.append(Return(hot, giver.inlet, place.part))
    return tuple(found)


def past(ways: Supplies, pump: str, step: Step) -> bool:
    """Whether drawn water takes a step outside stores and heaters, and not through that pump."""
    return ways.drawn_outside(step) and (bool(step.pipe) or step.start.part != pump)


def kept_hot(ways: Supplies, giver: Giver) -> frozenset[Joint]:
    """The ports that a store's secondary returns keep hot: those on some way from its hot outlet to
    where the return enters, which passes no port twice. Which way arrows point is left out."""
    found: set[Joint] = set()
    for each in returns(ways, giver):
        graph = _region(ways, each)
        if each.hot in graph and each.enters in graph:
            graph[each.hot].add(each.enters)
            graph[each.enters].add(each.hot)
            found |= _block_of(graph, each.hot, each.enters)
    return frozenset(found)


def _region(ways: Supplies, each: Return) -> dict[Joint, set[Joint]]:
    """The ports that hot water reaches outside stores, and what joins them."""
    reached = ways.walk([each.hot], ways.drawn_outside)
    graph: dict[Joint, set[Joint]] = {joint: set() for joint in reached}
    for joint in reached:
        for step in ways.steps(joint):
            if ways.drawn_outside(step):
                graph[joint].add(step.finish)
                graph[step.finish].add(joint)
    return graph


def _block_of(graph: dict[Joint, set[Joint]], start: Joint, finish: Joint) -> set[Joint]:
    """The vertices on a cycle with the edge from start to finish: its biconnected block."""
    number = {start: 0}
    low = {start: 0}
    inside: list[tuple[Joint, Joint]] = []
    walk: list[tuple[Joint, Joint, Iterator[Joint]]] = []

    def enter(vertex: Joint, parent: Joint, after: list[Joint]) -> None:
        walk.append((vertex, parent, iter(after)))

    enter(start, start, [finish])  # by that edge first: its block is complete when it is left again
    while walk:
        vertex, parent, rest = walk[-1]
        there = next(rest, None)
        if there is None:
            walk.pop()
            if not walk:
                break
            low[parent] = min(low[parent], low[vertex])
            if low[vertex] >= number[parent]:
                members = _members(inside, parent, vertex)
                if parent == start and finish in members:
                    return members
            continue
        if there == parent:
            continue
        if there in number:
            if number[there] < number[vertex]:
                inside.append((vertex, there))
                low[vertex] = min(low[vertex], number[there])
            continue
        number[there] = low[there] = len(number)
        inside.append((vertex, there))
        enter(there, vertex, sorted(graph[there]))
    return {start, finish}


def _members(inside: list[tuple[Joint, Joint]], parent: Joint, vertex: Joint) -> set[Joint]:
    members: set[Joint] = set()
    while inside:
        edge = inside.pop()
        members |= set(edge)
        if edge == (parent, vertex):
            break
    return members
