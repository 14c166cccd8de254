"""Blocks of a circulation graph: stretches any two of which lie on one circuit, whatever its direction."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence

from circuitcheck.circuit.flowways import WayEdge, reduced


def two_ways(near: dict[int, list[WayEdge]], out: WayEdge) -> bool:
    """Whether two ways without a common vertex between join the ends of `out` without it; tried
    shortest first, so that it is seen within a few steps where plants are like ladders."""
    barred: set[int] = set()
    for _ in range(2):
        way = _short_way(near, out, barred)
        if way is None:
            return False
        if not way:  # an edge side by side with it stands in for it, unless that is all there is
            return len(near) > 2
        barred |= set(way)
    return True


def _short_way(near: dict[int, list[WayEdge]], out: WayEdge, barred: set[int]) -> list[int] | None:
    """The vertices between the ends on a shortest way that leaves out an edge and some vertices."""
    came = {out.a: out.a}
    todo = [out.a]
    for here in todo:
        for edge in near.get(here, ()):
            if edge.b in came or edge.b in barred or edge in (out, out.turned()):
                continue
            came[edge.b] = here
            if edge.b == out.b:
                way = []
                while here != out.a:
                    way.append(here)
                    here = came[here]
                return way
            todo.append(edge.b)
    return None


def proved_block(edges: tuple[WayEdge, ...], pump: str, heat: str) -> list[WayEdge]:
    """The stretches of the block of pump and heat source in which water can go both ways.

    Empty unless these two stand in series once all other one-way stretches are left out: any circuit
    in the block through their stretch can then be told in its direction.
    """
    both = [edge for edge in edges if (edge.forward and edge.back) or {pump, heat} & edge.pumps]
    small = reduced(both)
    driven = [edge for edge in small if {pump, heat} & edge.pumps]
    if len(driven) != 1 or not {pump, heat} <= driven[0].pumps:
        return []
    (start,) = driven
    return [edge for edge in two_connected(small, start) if edge is start or (edge.forward and edge.back)]


def two_connected(edges: tuple[WayEdge, ...], start: WayEdge) -> list[WayEdge]:
    """The edges that lie on a circuit with `start`, whatever their direction (Tarjan, no recursion)."""
    if start.a == start.b:
        return [start]
    near: dict[int, list[tuple[int, int]]] = defaultdict(list)
    first = edges.index(start)
    for place, edge in enumerate(edges):
        if edge.a != edge.b:
            near[edge.a].append((edge.b, place))
            near[edge.b].append((edge.a, place))
    # Begun along `start`, the block of `start` is the last to close.
    number = {start.a: 0, start.b: 1}
    low = {start.a: 0, start.b: 1}
    passed = [first]
    done = {first}
    stack: list[tuple[int, Iterator[tuple[int, int]]]] = [(start.b, iter(near[start.b]))]
    marks = [0]
    while stack:
        here, onward = stack[-1]
        step = next(onward, None)
        if step is None:
            stack.pop()
            mark = marks.pop()
            if stack:
                above = stack[-1][0]
                low[above] = min(low[above], low[here])
                if low[here] >= number[above]:
                    del passed[mark:]  # a block of its own, hung on `above`
            continue
        there, place = step
        if place in done:
            continue
        done.add(place)
        if there in number:
            passed.append(place)
            low[here] = min(low[here], number[there])
        else:
            number[there] = low[there] = len(number)
            marks.append(len(passed))
            passed.append(place)
            stack.append((there, iter(near[there])))
    return [edges[place] for place in passed] if len(passed) > 1 else []


def condensed(edges: Sequence[WayEdge], keys: frozenset[str]) -> tuple[WayEdge, ...]:
    """Fewer edges with the same answer whether one loop takes in several of these keys.

    All else on them is forgotten. Side by side, two stretches without a key are as one: a loop takes
    one of them at most, since both together close a loop of their own.
    """
    current: tuple[WayEdge, ...] = tuple(
        WayEdge(edge.a, edge.b, edge.forward, edge.back, pumps=edge.pumps & keys, heats=edge.pumps & keys)
        for edge in edges
    )
    while True:
        fewer = reduced(_side_by_side(current))
        if len(fewer) == len(current):
            return fewer
        current = fewer


def _side_by_side(edges: Sequence[WayEdge]) -> list[WayEdge]:
    kept = [edge for edge in edges if edge.pumps]
    plain: dict[tuple[int, int], WayEdge] = {}
    for edge in edges:
        if edge.pumps or edge.a == edge.b:
            continue
        told = edge if edge.a < edge.b else edge.turned()
        other = plain.get((told.a, told.b))
        if other is not None:
            told = WayEdge(told.a, told.b, told.forward or other.forward, told.back or other.back)
        plain[told.a, told.b] = told
    return [*kept, *plain.values()]
