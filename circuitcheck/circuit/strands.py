"""The strands of one body of water, with the keys and labels on each, and which lie in one block.

Two strands of a block lie on one circuit. Where pump and heat source stand on one strand, and water can
take all others both ways, each of these is on a loop with them: that settles most plants at once.
"""

from __future__ import annotations

import itertools
from collections import defaultdict
from collections.abc import Iterable
from functools import cached_property

from circuitcheck.circuit.contracting import BACK, BOTH, FORWARD, Strand, contract
from circuitcheck.circuit.flowways import NOTHING, WayEdge
from circuitcheck.circuit.labels import LEG, leg_label
from circuitcheck.circuit.plan import FlowPassage
from circuitcheck.circuit.spans import Spans

RETURNS = "\0returns"
"""The key of the ways by which water that has gone round comes back into a store."""
AIR_VERTEX = -1
"""The vertex of the air, into which taps let water out; no port has it."""

Near = dict[int, list[int]]
"""At each vertex the strands that begin or end there, by their places."""


class Strands:
    """All ways of one body of water: spans of its circuit, and `through_air` further ones by the air."""

    def __init__(self, spans: Spans, members: list[int], through_air: list[WayEdge]) -> None:
        self._spans, self._members, self._air = spans, members, through_air

    def as_drawn(self) -> tuple[WayEdge, ...]:
        """Each way as an edge of its own."""
        spans = self._spans
        return (
            *(self._edge(spans.starts[span], spans.ends[span], [span]) for span in self._members),
            *self._air,
        )

    def edges(self) -> tuple[WayEdge, ...]:
        """Each strand as an edge."""
        return tuple([self._edge(a, b, spans, ways) for a, b, ways, spans in self.all])

    @cached_property
    def comes_back(self) -> bool:
        """Whether water that has gone round comes back into a store here."""
        inward = self._spans.inward
        return not inward.isdisjoint(self._members) if inward else False

    @cached_property
    def all(self) -> list[Strand]:
        """The strands; what leads nowhere is left out."""
        spans = self._spans
        starts, ends, members, ways = spans.starts, spans.ends, self._members, spans.ways
        if self._air:
            count, air = len(starts), spans.vertices
            starts = [*starts, *(air if edge.a == AIR_VERTEX else edge.a for edge in self._air)]
            ends = [*ends, *(air if edge.b == AIR_VERTEX else edge.b for edge in self._air)]
            ways = [*ways, *(FORWARD * edge.forward + BACK * edge.back for edge in self._air)]
            members = [*members, *range(count, len(starts))]
        return contract(starts, ends, ways, spans.vertices + 1, members)

    @cached_property
    def on(self) -> dict[str, list[int]]:
        """The strands, by their place in `all`, that each key and each label is on."""
        found: dict[str, list[int]] = {}
        passages, parts = self._spans.passages, self._spans.parts
        count = len(parts)
        for place, (_, _, _, spans) in enumerate(self.all):
            for number in spans:
                span = number if number >= 0 else ~number
                if span >= count:
                    for name in self._air[span - count].pumps:
                        found.setdefault(name, []).append(place)
                    continue
                passage = passages[span]
                if passage is None:
                    continue
                for end in passage.called:
                    name = parts[span] + end
                    places = found.get(name)
                    if places is None:
                        found[name] = [place]
                    elif places[-1] != place:
                        places.append(place)
                if passage.inward:
                    found.setdefault(RETURNS, []).append(place)
        return found

    def _edge(self, a: int, b: int, spans: Iterable[int], ways: int | None = None) -> WayEdge:
        keys: set[str] = set()
        labels: set[str] = set()
        passages, parts = self._spans.passages, self._spans.parts
        for number in spans:
            span = number if number >= 0 else ~number
            if span >= len(parts):
                keys |= self._air[span - len(parts)].pumps
                continue
            passage = passages[span]
            if passage is None or not passage.is_named:
                continue
            keys.update(keys_of(parts[span], passage))
            if passage.label is not None:
                labels.add(label_of(parts[span], passage.label))
            if ways is None:
                ways = passage.ways
        ways = BOTH if ways is None else ways
        if not keys and not labels:
            return WayEdge(a, b, bool(ways & FORWARD), bool(ways & BACK))
        named = frozenset(keys)
        return WayEdge(
            a,
            b,
            bool(ways & FORWARD),
            bool(ways & BACK),
            labels=frozenset(labels) if labels else NOTHING,
            pumps=named,
            heats=named,
        )


class Block:
    """The strands on a circuit with the driven strand, of those that water can take both ways."""

    def __init__(self, strands: Strands, driven: int) -> None:
        self._strands = strands.all
        self._ends = [a + b for a, b, _, _ in self._strands]
        """Both ends of each strand added up: take one away, and the other is left."""
        self.driven = driven
        self.near: Near = defaultdict(list)
        start, finish, _, _ = self._strands[driven]
        named = set(itertools.chain.from_iterable(strands.on.values()))
        plain = (place for place in range(len(self._strands)) if place not in named)
        in_it = 0
        for place in (*plain, *sorted(named)):  # the plain ones first: see `_ring`
            a, b, ways, _ = self._strands[place]
            if a != b and (ways == BOTH or place == driven):
                self.near[a].append(place)
                self.near[b].append(place)
                in_it += 1
        self.members = frozenset({driven} if start == finish else self._around(start, finish))
        self._is_all = len(self.members) == in_it

    @cached_property
    def _near_in_it(self) -> Near:
        if self._is_all:
            return self.near
        members = self.members
        found: Near = defaultdict(list)
        for vertex, strands in self.near.items():
            inside = [place for place in strands if place in members]
            if inside:
                found[vertex] = inside
        return found

    @property
    def is_loop(self) -> bool:
        """Whether water can go round by the driven strand at all."""
        start, finish, _, _ = self._strands[self.driven]
        return start == finish or len(self.members) > 1

    def stands_without(self, place: int) -> bool:
        """Seen at once: it stays one block without that strand, as two ways that meet nowhere between
        still join its ends; tried shortest first, so that it is seen within a few steps where plants are
        like ladders. False proves nothing."""
        if place == self.driven:
            return False
        if place not in self.members:
            return True
        start, finish, _, _ = self._strands[place]
        vertices, strands = self._ring
        if place not in strands and start in vertices and finish in vertices:
            return True  # it is a chord: the ring itself joins its ends two ways
        barred: set[int] = set()
        for _ in range(2):
            way = self._short_way(start, finish, place, barred)
            if way is None:
                return False
            if not way:  # a strand side by side with it stands in for it, unless that is all there is
                return len(self._near_in_it) > 2
            barred.update(way)
        return True

    @cached_property
    def _ring(self) -> tuple[frozenset[int], frozenset[int]]:
        """The vertices and strands of one long ring through the driven strand, led by strands that bear no
        name as far as there are such: the mains of a plant, so that what hangs between them is a chord."""
        start, finish, _, _ = self._strands[self.driven]
        if start == finish:
            return frozenset(), frozenset()
        near, ends = self._near_in_it, self._ends
        seen = {finish}
        way = [(finish, self.driven, iter(near[finish]))]
        while way and way[-1][0] != start:
            here, _, onward = way[-1]
            for place in onward:
                there = ends[place] - here
                if there not in seen and place != self.driven:
                    seen.add(there)
                    way.append((there, place, iter(near[there])))
                    break
            else:
                way.pop()
        return frozenset(step[0] for step in way), frozenset(step[1] for step in way)

    def takes_in(self, place: int) -> bool:
        """Seen at once: a loop through the driven strand takes in that one too. False proves nothing."""
        if place in self.members:
            return True
        a, b, driven, _ = self._strands[self.driven]
        start, finish = (a, b) if driven & FORWARD else (b, a)
        one, two, ways, _ = self._strands[place]
        for way, near, far in ((FORWARD, one, two), (BACK, two, one)):
            if not ways & way or near == start or far == finish:
                continue
            out = self._way_to(finish, near, {far, start})
            if out is not None and self._way_to(far, start, {*out, near, finish}) is not None:
                return True
        return False

    def _way_to(self, start: int, goal: int, barred: set[int]) -> list[int] | None:
        return [] if start == goal else self._short_way(start, goal, self.driven, barred - {start, goal})

    def _short_way(self, start: int, goal: int, out: int, barred: set[int]) -> list[int] | None:
        """The vertices between the ends on a shortest way that leaves out a strand and some vertices."""
        near, ends = self._near_in_it, self._ends
        came = {start: start}
        todo = [start]
        for here in todo:
            for place in near[here]:
                there = ends[place] - here
                if there in came or there in barred or place == out:
                    continue
                came[there] = here
                if there == goal:
                    way = []
                    while here != start:
                        way.append(here)
                        here = came[here]
                    return way
                todo.append(there)
        return None

    def _around(self, start: int, finish: int) -> list[int]:
        """The strands on a circuit with the driven one, from `start` to `finish` (Tarjan, no recursion)."""
        near, ends = self.near, self._ends
        # Begun along the driven strand, its block is the last to close.
        number = {start: 0, finish: 1}
        low = [0, 1]
        order = [start, finish]
        passed = [self.driven]
        done = bytearray(len(self._strands))
        done[self.driven] = 1
        stack = [(1, iter(near[finish]), 0)]
        while stack:
            here, onward, mark = stack[-1]
            lowest, vertex = low[here], order[here]
            for place in onward:
                if done[place]:
                    continue
                done[place] = 1
                there = ends[place] - vertex
                seen = number.get(there, -1)
                if seen >= 0:
                    passed.append(place)
                    if seen < lowest:
                        lowest = seen
                    continue
                low[here] = lowest
                seen = number[there] = len(order)
                order.append(there)
                low.append(seen)
                stack.append((seen, iter(near[there]), len(passed)))
                passed.append(place)
                break
            else:
                stack.pop()
                low[here] = lowest
                if stack:
                    above = stack[-1][0]
                    if lowest < low[above]:
                        low[above] = lowest
                    if lowest >= above:
                        del passed[mark:]  # a block of its own, hung on the vertex above
        return passed


def label_of(part: str, leg: str) -> str:
    """The label of a passage that a control shuts."""
    return leg_label(part, leg) if leg else part


def key_of(part: str, port: str = "") -> str:
    """The key of a thing: the part's id, with the port its passage begins at where it has several."""
    return f"{part}{LEG}{port}" if port else part


def keys_of(part: str, passage: FlowPassage) -> list[str]:
    """What a passage is asked for by."""
    found = [part] if passage.pumps or passage.heats else []
    if passage.key is not None:
        found.append(key_of(part, passage.key))
    if passage.inward:
        found.append(RETURNS)
    return found


def names_of(part: str, passage: FlowPassage) -> list[str]:
    """Its keys, and its label where it has one."""
    names = [part + end for end in passage.called]
    return [*names, RETURNS] if passage.inward else names
