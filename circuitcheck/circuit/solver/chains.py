"""What of a network has to be solved: wide ways joined up, dead ends dropped, ways in series made one.

A *chain* is a run of links with nothing joined between them: all carry one flow. A house with sixty
pipes is left with a dozen chains between its tees.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from math import inf

from circuitcheck.circuit.solver.network import Link, Network, State

TINY_QUADRATIC = 1e6
"""Pa/(m³/s)², 1 Pa at a litre a second: what a wide way that can be shut is given while it is open."""


@dataclass(slots=True)
class Chain:
    """Links in series from node `a` to node `b`, each with +1 where taken from its a to its b, else -1."""

    a: int
    b: int
    steps: list[tuple[int, int]] = field(default_factory=list)

    def turned(self) -> Chain:
        """The same run, told from the other end."""
        return Chain(self.b, self.a, [(place, -sign) for place, sign in reversed(self.steps)])


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
    group = _joined(network, can_shut)
    kept = {group[node] for node in (*network.fixed_pa, *network.drawn_m3_s)}
    chains = _in_series(
        (
            Chain(group[link.a], group[link.b], [(place, 1)])
            for place, link in enumerate(network.links)
            if not (link.lossless and place not in can_shut)
        ),
        kept,
    )
    number: dict[int, int] = {node: place for place, node in enumerate(sorted(kept))}
    for chain in chains:
        for end in (chain.a, chain.b):
            number.setdefault(end, len(number))
    return Reduced(
        tuple(chains), tuple(number.get(group[old], -1) for old in range(network.nodes)), group, len(number)
    )


def _joined(network: Network, can_shut: frozenset[int]) -> tuple[int, ...]:
    parent = list(range(network.nodes))

    def find(node: int) -> int:
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    for place, link in enumerate(network.links):
        if link.lossless and place not in can_shut:
            a, b = find(link.a), find(link.b)
            if a != b:
                parent[max(a, b)] = min(a, b)
    return tuple(find(node) for node in range(network.nodes))


def _in_series(links: Iterable[Chain], kept: set[int]) -> list[Chain]:
    """Drop what hangs on by one end, and make one of two that meet where nothing else does."""
    alive: dict[int, Chain] = {}
    at: dict[int, set[int]] = {}
    for place, chain in enumerate(links):
        alive[place] = chain
        at.setdefault(chain.a, set()).add(place)
        at.setdefault(chain.b, set()).add(place)
    number = len(alive)
    todo = list(at)
    while todo:
        node = todo.pop()
        here = at.get(node, set())
        if node in kept or not 1 <= len(here) <= 2 or any(alive[each].a == alive[each].b for each in here):
            continue
        chains = [alive.pop(each) for each in tuple(here)]
        for each, chain in zip(tuple(here), chains, strict=True):
            for end in (chain.a, chain.b):
                at[end].discard(each)
                todo.append(end)
        if len(chains) == 2:
            first = chains[0] if chains[0].b == node else chains[0].turned()
            second = chains[1] if chains[1].a == node else chains[1].turned()
            alive[number] = Chain(first.a, second.b, first.steps + second.steps)
            at[first.a].add(number)
            at[second.b].add(number)
            todo.extend((first.a, second.b))
            number += 1
    return [alive[place] for place in sorted(alive)]


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


def summed(links: Sequence[Link], chain: Chain) -> Sums:
    """Add up a chain's links."""
    quadratic = opens_at = 0.0
    limit = inf
    forward = backward = True
    tubes: dict[tuple[float, float], float] = {}
    pumps = []
    for place, sign in chain.steps:
        link = links[place]
        quadratic += link.quadratic + link.pump_quadratic
        opens_at += sign * link.opens_at_pa
        limit = min(limit, link.limit_m3_s)
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
