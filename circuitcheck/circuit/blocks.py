"""Takes the ways of a pump apart at the vertices that every loop must pass.

Between two such vertices lies a block, and a loop is one way through each block. What shuts a loop
in one block has nothing to do with another, so a long row of valves is many small questions and not
one large one.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from circuitcheck.circuit.flowways import NOTHING, WayEdge, Ways

CLOSING = "~closing"
"""Stands for the pump in a block: the stretch that leads from its far end back to its near end."""


class Block(NamedTuple):
    """The ways between two vertices that every loop passes, and whether the heat source is among them."""

    ways: Ways
    holds_heat: bool


def blocks(edges: Sequence[WayEdge], pump: str, heat: str) -> tuple[Block, ...] | None:
    """The blocks of the loops of that pump, its own stretch first; None where it has no loop at all."""
    own = Ways(edges).driven(pump)
    if len(own) != 1:
        return None
    first = own[0]
    found = [_block([first._replace(a=0, b=1, pumps=NOTHING)], 0, 1, heat)]
    if first.a == first.b:
        return tuple(found)
    others = [edge for edge in edges if pump not in edge.pumps]
    way = _any_way(others, first.b, first.a)
    if way is None:
        return None
    passed = _separators(others, way)
    for near, far, members in _between(others, passed):
        found.append(_block(members, near, far, heat))
    return tuple(found)


def _block(members: list[WayEdge], near: int, far: int, heat: str) -> Block:
    closing = WayEdge(far, near, back=False, pumps=frozenset({CLOSING}))
    holds_heat = bool(heat) and any(heat in edge.heats for edge in members)
    return Block(Ways([*members, closing]), holds_heat)


def _neighbours(edges: Sequence[WayEdge]) -> dict[int, list[int]]:
    found: dict[int, list[int]] = {}
    for edge in edges:
        found.setdefault(edge.a, []).append(edge.b)
        found.setdefault(edge.b, []).append(edge.a)
    return found


def _any_way(edges: Sequence[WayEdge], start: int, goal: int) -> list[int] | None:
    """The vertices of some way from start to goal, whatever its direction."""
    neighbours = _neighbours(edges)
    came: dict[int, int] = {start: start}
    todo = [start]
    for here in todo:
        if here == goal:
            way = [goal]
            while way[-1] != start:
                way.append(came[way[-1]])
            return way[::-1]
        for there in neighbours.get(here, ()):
            if there not in came:
                came[there] = here
                todo.append(there)
    return None


def _separators(edges: Sequence[WayEdge], way: list[int]) -> list[int]:
    """Those vertices of the way that every other way passes too, its ends included, in order."""
    neighbours = _neighbours(edges)
    step_of = {vertex: step for step, vertex in enumerate(way)}
    found = [way[0]]
    seen: set[int] = set()
    furthest = 0
    for step, vertex in enumerate(way[:-1]):
        if step and furthest <= step:
            found.append(vertex)
        todo = [vertex]
        while todo:
            here = todo.pop()
            for there in neighbours.get(here, ()):
                if there in step_of:
                    furthest = max(furthest, step_of[there])
                elif there not in seen:
                    seen.add(there)
                    todo.append(there)
    return [*found, way[-1]]


def _between(edges: Sequence[WayEdge], passed: list[int]) -> list[tuple[int, int, list[WayEdge]]]:
    """The edges between each two neighbours of the separators; what hangs on one of them is dropped."""
    place = {vertex: number for number, vertex in enumerate(passed)}
    region: dict[int, int] = {}
    touches: list[set[int]] = []
    neighbours = _neighbours(edges)
    for start in neighbours:
        if start in place or start in region:
            continue
        touched: set[int] = set()
        region[start] = len(touches)
        todo = [start]
        while todo:
            for there in neighbours[todo.pop()]:
                if there in place:
                    touched.add(place[there])
                elif there not in region:
                    region[there] = len(touches)
                    todo.append(there)
        touches.append(touched)
    members: list[list[WayEdge]] = [[] for _ in passed[1:]]
    for edge in edges:
        inner = next((end for end in (edge.a, edge.b) if end not in place), None)
        ends = {place[edge.a], place[edge.b]} if inner is None else touches[region[inner]]
        if len(ends) == 2:
            members[min(ends)].append(edge)
    return [(near, far, block) for near, far, block in zip(passed, passed[1:], members, strict=False)]
