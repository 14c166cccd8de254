"""What of a network has to be solved: wide ways joined up, dead ends dropped, ways in series made one.

A *chain* is a run of links with nothing joined between them: all carry one flow. A house with sixty
pipes is left with a dozen chains between its tees.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import inf

from circuitcheck.circuit.solver.network import Link, Network, State

TINY_QUADRATIC = 1e6
"""Pa/(m³/s)², 1 Pa at a litre a second: what a wide way that can be shut is given while it is open."""


@dataclass(frozen=True, slots=True)
class Chain:
    """Links in series from node `a` to node `b`, each with +1 where taken from its a to its b, else -1."""

    a: int
    b: int
    steps: tuple[tuple[int, int], ...]

    def turned(self) -> Chain:
        """The same run, told from the other end."""
        return Chain(self.b, self.a, tuple((place, -sign) for place, sign in reversed(self.steps)))


@dataclass(frozen=True, slots=True)
class Reduced:
    """The chains, between nodes numbered anew: `node[old]` is the new number, or -1 if it lies within
    a chain or a dead end. `group[old]` is the node that stands for all that wide ways join."""

    chains: tuple[Chain, ...]
    node: tuple[int, ...]
    group: tuple[int, ...]
    count: int


def reduce(network: Network, states: Sequence[State]) -> Reduced:
    """Reduce a network for these states."""
    can_shut = frozenset[int]().union(*(state.shut for state in states)) if states else frozenset()
    return _reduced(
        network.nodes,
        tuple(
            (link.a, link.b, link.lossless and place not in can_shut)
            for place, link in enumerate(network.links)
        ),
        frozenset((*network.fixed_pa, *(node for node, flow in network.drawn_m3_s.items() if flow))),
    )


@lru_cache(maxsize=16)
def _reduced(nodes: int, links: tuple[tuple[int, int, bool], ...], asked: frozenset[int]) -> Reduced:
    """Reduce links (between a and b, a wide way or not) that join nodes, leaving those asked of. What is
    solved again with other numbers is joined as it was."""
    group = _joined(nodes, links)
    kept = {group[node] for node in asked}
    ends = {place: (group[a], group[b]) for place, (a, b, is_wide) in enumerate(links) if not is_wide}
    chains = _Series(nodes, ends, kept).chains()
    number: dict[int, int] = {node: place for place, node in enumerate(sorted(kept))}
    for chain in chains:
        for end in (chain.a, chain.b):
            number.setdefault(end, len(number))
    return Reduced(
        tuple(chains), tuple(number.get(group[old], -1) for old in range(nodes)), group, len(number)
    )


def _joined(nodes: int, links: Iterable[tuple[int, int, bool]]) -> tuple[int, ...]:
    parent = list(range(nodes))

    def find(node: int) -> int:
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    for a, b, is_wide in links:
        if is_wide:
            one, other = find(a), find(b)
            if one != other:
                parent[max(one, other)] = min(one, other)
    return tuple(find(node) for node in range(nodes))


class _Series:
    """Links by place between nodes: what hangs on by one end dropped, the rest put together in series."""

    def __init__(self, nodes: int, ends: dict[int, tuple[int, int]], kept: set[int]) -> None:
        self._ends, self._kept = ends, kept
        self._at: list[list[int]] = [[] for _ in range(nodes)]
        for place, (a, b) in ends.items():
            self._at[a].append(place)
            self._at[b].append(place)
        self._left = dict.fromkeys(ends)
        self._degree = [len(each) for each in self._at]

    def chains(self) -> list[Chain]:
        """The chains; a ring that nothing else joins begins and ends at one of its nodes."""
        self._drop()
        within = [count == 2 and node not in self._kept for node, count in enumerate(self._degree)]
        found = []
        for place in tuple(self._left):
            a, b = self._ends[place]
            if place in self._left and not (within[a] and within[b]):
                found.append(self._walk(b if within[a] else a, place, within))
        while self._left:
            place = next(iter(self._left))
            found.append(self._walk(self._ends[place][0], place, within))
        return found

    def _drop(self) -> None:
        todo = [node for node, count in enumerate(self._degree) if count == 1 and node not in self._kept]
        while todo:
            node = todo.pop()
            if self._degree[node] != 1:
                continue
            place = next(each for each in self._at[node] if each in self._left)
            del self._left[place]
            for end in self._ends[place]:
                self._degree[end] -= 1
                if self._degree[end] == 1 and end not in self._kept:
                    todo.append(end)

    def _walk(self, start: int, place: int, within: list[bool]) -> Chain:
        node, steps = start, []
        while True:
            del self._left[place]
            a, b = self._ends[place]
            steps.append((place, 1 if a == node else -1))
            node = b if a == node else a
            if node == start or not within[node]:
                return Chain(start, node, tuple(steps))
            place = next(each for each in self._at[node] if each in self._left)


@dataclass(frozen=True, slots=True)
class Sums:
    """What a chain's links come to for a flow along it. `friction` holds (length, diameter, roughness),
    one for each kind of tube. `forward` and `backward`: whether nothing stops water that way."""

    quadratic: float
    opens_at_pa: float
    limit_m3_s: float
    forward: bool
    backward: bool
    friction: tuple[tuple[float, float, float], ...]
    pumps: tuple[tuple[int, float], ...]

    @property
    def never(self) -> bool:
        """Whether one-way passages against each other let nothing through at all."""
        return not (self.forward or self.backward)


def summed(links: Sequence[Link], chain: Chain) -> Sums:
    """Add up a chain's links."""
    if len(chain.steps) == 1:
        return _alone(links, *chain.steps[0])
    quadratic = opens_at = 0.0
    limit = inf
    forward = backward = True
    tubes: dict[tuple[float, float], float] = {}
    pumps = []
    for place, sign in chain.steps:
        link = links[place]
        quadratic += link.quadratic + link.pump_quadratic
        opens_at += sign * link.opens_at_pa
        if link.limit_m3_s < limit:
            limit = link.limit_m3_s
        if link.one_way:
            forward, backward = forward and sign > 0, backward and sign < 0
        if link.length_m:
            tube = (link.diameter_m, link.roughness_m)
            tubes[tube] = tubes.get(tube, 0.0) + link.length_m
        if link.head_pa:
            pumps.append((place, sign * link.head_pa))
    friction = tuple((length, *tube) for tube, length in tubes.items())
    if not friction:
        quadratic = max(quadratic, TINY_QUADRATIC)
    return Sums(quadratic, opens_at, limit, forward, backward, friction, tuple(pumps))


def _alone(links: Sequence[Link], place: int, sign: int) -> Sums:
    """The sums of a chain of one link."""
    link = links[place]
    quadratic = link.quadratic + link.pump_quadratic
    return Sums(
        quadratic if link.length_m else max(quadratic, TINY_QUADRATIC),
        sign * link.opens_at_pa,
        link.limit_m3_s,
        sign > 0 or not link.one_way,
        sign < 0 or not link.one_way,
        ((link.length_m, link.diameter_m, link.roughness_m),) if link.length_m else (),
        ((place, sign * link.head_pa),) if link.head_pa else (),
    )
