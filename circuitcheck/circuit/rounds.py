"""Loops through named things: a heat source, a pump, an emitter, a check valve.

The same circulation graph as in `flowways.py`, with each thing under its own key, reduced once for
each body of water. A bulk proof settles most emitters at once: where pump and heat source stand in
series, every stretch in one block with them that water can take both ways is on a loop. What it
leaves open is searched for one by one, so that the answer is exact.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterable, Iterator, Sequence
from functools import cached_property
from typing import NamedTuple

from circuitcheck.circuit.flowways import NOTHING, WayEdge, Ways, without_dead_ends
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import LEG
from circuitcheck.circuit.loops import find_loop
from circuitcheck.circuit.ring_blocks import condensed, proved_block, two_connected, two_ways
from circuitcheck.circuit.strands import AIR_VERTEX as AIR_VERTEX
from circuitcheck.circuit.strands import RETURNS as RETURNS
from circuitcheck.circuit.strands import Block, Strands
from circuitcheck.circuit.strands import key_of as key_of

AIR = "\0air"
"""The key of the ways by which water comes in from a main or a cistern."""


def part_of_key(key: str) -> str:
    """The part that a key stands for."""
    return key.partition(LEG)[0] if LEG in key else key


def port_of_key(key: str) -> str:
    """The port in a key; empty where the part alone is the key."""
    return key.partition(LEG)[2]


class Proof(NamedTuple):
    """Proves that `keys` are fed, by a loop or a block with all these `names` (keys and labels) on it."""

    keys: frozenset[str]
    names: frozenset[str]
    block: tuple[WayEdge, ...] = ()


class Body:
    """The circulation graph of one body of water. `edges` hold keys in `pumps` and in `heats` alike.

    `drives`: pumps' keys. `warms`: keys of heat sources, and of exchangers' sides that heat this
    water. `takes`: keys of emitters, coils and exchangers' sides that take heat. `by_gravity`: those
    of `takes` that a loop without a pump can serve, for each heat source. `open_to_air`: water comes
    in from a main or a cistern.
    """

    def __init__(self, strands: Strands) -> None:
        self.strands = strands
        self.drives: tuple[str, ...] = ()
        self.warms: tuple[str, ...] = ()
        self.takes: tuple[str, ...] = ()
        self.by_gravity: dict[str, frozenset[str]] = {}
        self.open_to_air = False

    @cached_property
    def edges(self) -> tuple[WayEdge, ...]:
        """The reduced edges."""
        return self.strands.edges()

    @cached_property
    def as_drawn(self) -> tuple[WayEdge, ...]:
        """The edges before they are reduced, one a pipe or passage."""
        return self.strands.as_drawn()

    @cached_property
    def in_rings(self) -> tuple[WayEdge, ...]:
        """Those of the edges as drawn that are no dead ends, whichever way water could take each: what is
        left out is on no loop, however any of them is turned or freed."""
        return without_dead_ends(self.as_drawn)

    @cached_property
    def ways(self) -> Ways:
        """What leaves each vertex, on the reduced edges."""
        return Ways(self.edges)

    @cached_property
    def fed(self) -> frozenset[str]:
        """Those of `takes` that are on a loop through a heat source and a pump, or one by gravity."""
        return NOTHING.union(*(proof.keys for proof in self._proofs))

    @cached_property
    def _proofs(self) -> tuple[Proof, ...]:
        on = self.strands.on
        left = frozenset(key for key in self.takes if key in on)
        found = []
        if left and self._block is not None:
            members, driven = self._block.members, self._block.driven
            inside = members | {driven}
            names = frozenset([name for name, places in on.items() if not inside.isdisjoint(places)])
            found.append(Proof(left & names, names))
            left -= names
        return (*found, *(self._prove(self.edges, left) if left else ()))

    @cached_property
    def _block(self) -> Block | None:
        """The block of the one strand that pump and heat source share; None where there is none such."""
        on = self.strands.on
        heated = {place for key in self.warms for place in on.get(key, ())}
        driven = heated & {place for key in self.drives for place in on.get(key, ())}
        if len(driven) != 1:
            return None
        block = Block(self.strands, driven.pop())
        return block if block.is_loop else None

    def fed_in(self, edges: tuple[WayEdge, ...], wanted: frozenset[str] | None = None) -> frozenset[str]:
        """The same on other edges of this body (some shut, say), of all or of those wanted.

        Raises TooLargeError beyond the search bound.
        """
        proofs = self._prove(edges, frozenset(self.takes) if wanted is None else wanted)
        return NOTHING.union(*(proof.keys for proof in proofs))

    def _prove(self, edges: tuple[WayEdge, ...], wanted: frozenset[str]) -> Iterator[Proof]:
        """What proves each of those that are fed: first what one loop or one block proves of many,
        then a search for each that is left and that could be on a loop at all."""
        here = _names(edges)
        left = wanted & here
        heats = [key for key in self.warms if key in here]
        ways = Ways(edges)
        live = []
        for pump, heat in ((pump, heat) for heat in heats for pump in self.drives if pump in here):
            loop = find_loop(ways, pump, heat) if left else None
            if loop is not None:
                live.append((pump, heat))
                proof = Proof(left & _names(loop.edges), _names(loop.edges))
                left -= proof.keys
                yield proof
        left &= _possible(edges, heats) if left else NOTHING
        for pump, heat in live:
            block = proved_block(edges, pump, heat) if left else []
            names = _names(block)
            if left & names:
                yield Proof(left & names, names, tuple(block))
                left -= names
        for key in sorted(left):
            own = self._proof_of(ways, key, live, heats)
            if own is not None:
                yield own

    def _proof_of(self, ways: Ways, key: str, live: list[tuple[str, str]], heats: list[str]) -> Proof | None:
        with_heat = {heat: find_loop(ways, key, heat) for heat in heats}
        for heat, loop in with_heat.items():
            if loop is not None and key in self.by_gravity.get(heat, NOTHING):
                return Proof(frozenset({key}), _names(loop.edges))
        for pump, heat in live:
            loop = with_heat[heat]
            if loop is not None and any(pump in edge.pumps for edge in loop.edges):
                return Proof(frozenset({key}), _names(loop.edges))
        for pump, heat in live:
            if with_heat[heat] is not None and self.loop_through(ways, key, pump, heat):
                return Proof(frozenset({key}), _names(ways.edges))
        return None

    @staticmethod
    def loop_through(ways: Ways, *keys: str) -> bool:
        """Whether one loop takes in these keys, at most three. Raises TooLargeError beyond the bound."""
        distinct = _apart_from_each_other(ways.edges, keys)
        if len(distinct) == 1:
            return find_loop(ways, distinct[0]) is not None
        if len(distinct) == 2:
            try:
                return find_loop(ways, distinct[0], distinct[1]) is not None
            except TooLargeError:
                return _loop_in(Ways(condensed(ways.edges, frozenset(distinct))), distinct)
        return _loop_in(Ways(condensed(ways.edges, frozenset(distinct))), distinct)

    def surely_together(self, key: str, others: Callable[[], Iterable[str]]) -> bool:
        """Seen at once: one loop takes in the key and one of the others. False proves nothing."""
        block, on = self._block, self.strands.on
        if block is None:
            return False  # of thousands of pumps in a row, none asks for the others
        for other in others():
            places = on.get(key, ()), on.get(other, ())
            for one, two in (places, places[::-1]):
                if block.driven in one and any(block.takes_in(place) for place in two):
                    return True
        return False

    @cached_property
    def _behind(self) -> dict[str, frozenset[str]]:
        return {}

    def behind(self, label_or_key: str) -> frozenset[str]:
        """Those of `takes` that have no loop once that passage is shut (or pump taken out).

        Raises TooLargeError beyond the search bound.
        """
        if label_or_key not in self._behind:
            self._behind[label_or_key] = self._fallen_without(label_or_key)
        return self._behind[label_or_key]

    @cached_property
    def _taking(self) -> dict[int, list[str]]:
        """Those of `takes` on each strand."""
        found: dict[int, list[str]] = defaultdict(list)
        on = self.strands.on
        for key in self.takes:
            for place in on.get(key, ()):
                found[place].append(key)
        return found

    @cached_property
    def _edges_with(self) -> dict[str, list[WayEdge]]:
        """The edges that each label and each key is on."""
        found: dict[str, list[WayEdge]] = defaultdict(list)
        for edge in self.edges:
            for name in edge.labels | edge.pumps:
                found[name].append(edge)
        return found

    def _fallen_without(self, gone: str) -> frozenset[str]:
        places = self.strands.on.get(gone)
        if not places:
            return NOTHING  # on a dead end, which nothing is fed by
        if self._block is not None and len(places) == 1 and len(self._proofs) == 1:
            (place,) = places
            if self._block.stands_without(place):
                return self.fed.intersection(self._taking.get(place, ()))
        out = self._edges_with.get(gone, [])
        fallen = NOTHING.union(*(edge.pumps for edge in out)) & self.fed
        # Only what is proved by a loop or block with that passage in it can fall.
        unsure = [proof for proof in self._proofs if gone in proof.names]
        if len(out) == 1:
            unsure = [proof for proof in unsure if not self._stands_without(proof, out[0])]
        doubtful = NOTHING.union(*(proof.keys for proof in unsure)) - fallen
        if doubtful:
            left = tuple(edge for edge in self.edges if edge not in out)
            fallen |= doubtful - self.fed_in(left, doubtful)
        return fallen

    def _stands_without(self, proof: Proof, out: WayEdge) -> bool:
        """Seen at once: a block stays one where two ways that meet nowhere between still join the ends
        of what is taken out. False proves nothing."""
        if not proof.block or self._driving & out.pumps:
            return False
        near = self._near[proof.names]
        return any(edge in (out, out.turned()) for edge in near.get(out.a, ())) and two_ways(near, out)

    @cached_property
    def _driving(self) -> frozenset[str]:
        return frozenset(self.drives) | frozenset(self.warms)

    @cached_property
    def _near(self) -> dict[frozenset[str], dict[int, list[WayEdge]]]:
        """For each block that proves something, by its names, the stretches at each vertex, told from there."""
        found: dict[frozenset[str], dict[int, list[WayEdge]]] = {}
        for proof in self._proofs:
            near = found[proof.names] = defaultdict(list)
            for edge in proof.block:
                near[edge.a].append(edge)
                near[edge.b].append(edge.turned())
        return found


def _apart_from_each_other(edges: Sequence[WayEdge], keys: tuple[str, ...]) -> list[str]:
    """The keys once each, without those that are only where another of them is too."""
    kept = list(dict.fromkeys(keys))
    if len(kept) < 3:
        return kept
    for key in tuple(kept):
        homes = [edge.pumps for edge in edges if key in edge.pumps]
        if homes and any(all(other in home for home in homes) for other in kept if other != key):
            # Any loop through this one passes the other as well.
            other = next(each for each in kept if each != key and all(each in home for home in homes))
            kept.remove(other)
            return kept
    return kept


def _loop_in(ways: Ways, keys: list[str]) -> bool:
    *first, last = keys
    marked = Ways([edge._replace(emits=last in edge.pumps) for edge in ways.edges])
    return find_loop(marked, *first, must_emit=True) is not None


def _names(edges: Iterable[WayEdge]) -> frozenset[str]:
    """The keys and labels on these edges."""
    return NOTHING.union(*(edge.pumps for edge in edges), *(edge.labels for edge in edges))


def _possible(edges: tuple[WayEdge, ...], heats: list[str]) -> frozenset[str]:
    """What is on one circuit with some heat source if water could take every way both ways."""
    homes = [edge for edge in edges if edge.pumps & frozenset(heats)]
    return NOTHING.union(*(_names([home, *two_connected(edges, home)]) for home in homes))
