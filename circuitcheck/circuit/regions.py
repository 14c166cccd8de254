"""What stays joined to a water when valves are shut: the largest regions that leave out some of the others.

To leave out a water everything that can be shut around it is shut: no region without it is larger. A
three-port valve never shuts both legs; where a region would need that, it must also do without the water
at one leg or the other, and both are tried.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from itertools import combinations

from circuitcheck.circuit.isolation import TooLargeError, reaches
from circuitcheck.circuit.joining import Circuit, ShutEdge

REGION_BOUND = 2_000
"""Regions tried before the answer is that they are too many: ten vessels that can be shut off, or more
where three-port valves leave few choices."""


@dataclass(frozen=True, slots=True)
class Region:
    """Waters that stay joined, the marks among them, and what is shut around them."""

    waters: frozenset[int]
    marks: frozenset[int]
    shut: tuple[str, ...]


def largest_regions(
    circuit: Circuit, start: int, marks: Iterable[int], *, secured_stay_open: bool = False
) -> Iterator[Region]:
    """For every choice of marks to leave out, the largest regions around `start` without them.

    Any region that reachable positions leave lies within one of these with the same marks. A region
    that has no mark at all is not told. Raises TooLargeError beyond the search bound.
    """
    wanted = frozenset(marks)
    if wanted <= {start}:
        return  # nothing that could be left out
    search = _Search(circuit, start, wanted, secured_stay_open)
    seen: set[frozenset[int]] = set()
    for out in search.choices():
        for region in search.without(out):
            if region.marks and region.waters not in seen:
                seen.add(region.waters)
                yield region


def region_with_shut(circuit: Circuit, start: int, shut: Iterable[str]) -> frozenset[int]:
    """The waters that stay joined to `start` with the passages of these labels shut."""
    labels = frozenset(shut)
    seen, todo = {start}, [start]
    while todo:
        here = todo.pop()
        for place in circuit.edges_at.get(here, ()):
            edge = circuit.edges[place]
            there = edge.b if edge.a == here else edge.a
            if edge.label not in labels and there not in seen:
                seen.add(there)
                todo.append(there)
    return frozenset(seen)


class _Search:
    """One question: the groups of waters around `start` and the passages between them."""

    def __init__(self, circuit: Circuit, start: int, marks: frozenset[int], secured_stay_open: bool) -> None:
        self.circuit = circuit
        self.reach = reaches(circuit, start)
        places = {place for water in self.reach for place in circuit.edges_at.get(water, ())}
        self.group = {water: water for water in self.reach}
        if secured_stay_open:
            self._join(circuit.edges[place] for place in places if circuit.edges[place].secured)
        self.start = self.group[start]
        self.marks = {water: self.group[water] for water in marks & self.reach}
        self.ends: dict[int, tuple[int, int]] = {}
        for place in sorted(places):
            a, b = self.group[circuit.edges[place].a], self.group[circuit.edges[place].b]
            if a != b:
                self.ends[place] = (a, b)
        self.at: dict[int, list[int]] = {}
        legs: dict[str, list[int]] = {}
        for place, ends in self.ends.items():
            for end in ends:
                self.at.setdefault(end, []).append(place)
            if circuit.edges[place].leg:
                legs.setdefault(circuit.edges[place].part, []).append(place)
        self.pairs = [(pair[0], pair[1]) for pair in legs.values() if len(pair) == 2]
        self.states = 0

    def _join(self, edges: Iterable[ShutEdge]) -> None:
        """Count the waters on both sides of these passages as one."""
        for edge in edges:
            one, two = self.group[edge.a], self.group[edge.b]
            if one != two:
                for water, group in self.group.items():
                    if group == two:
                        self.group[water] = one

    def choices(self) -> Iterator[frozenset[int]]:
        """Every set of marked groups that could be left out."""
        groups = sorted(set(self.marks.values()) - {self.start})
        most = len(groups)
        # Those that leave least first: they show most, should there be too many to try them all.
        for count in dict.fromkeys((most, most - 1, *range(1, most))):
            if count > 0:
                for chosen in combinations(groups, count):
                    yield frozenset(chosen)

    def without(self, out: frozenset[int]) -> Iterator[Region]:
        """The largest regions that leave out these groups."""
        todo, seen = [out], {out}
        while todo:
            left_out = todo.pop()
            self.states += 1
            if self.states > REGION_BOUND:
                raise TooLargeError
            inside = self._around(left_out)
            offending = self._offending(inside)
            if offending is None:
                yield self._region(inside)
                continue
            for end in offending - {self.start}:
                more = left_out | {end}
                if more not in seen:
                    seen.add(more)
                    todo.append(more)

    def _around(self, left_out: frozenset[int]) -> set[int]:
        seen, todo = {self.start}, [self.start]
        while todo:
            here = todo.pop()
            for place in self.at.get(here, ()):
                a, b = self.ends[place]
                there = b if a == here else a
                if there not in seen and there not in left_out:
                    seen.add(there)
                    todo.append(there)
        return seen

    def _crosses(self, place: int, inside: set[int]) -> bool:
        a, b = self.ends[place]
        return (a in inside) != (b in inside)

    def _offending(self, inside: set[int]) -> set[int] | None:
        """The inner ends of a three-port valve both of whose legs would be shut."""
        for pair in self.pairs:
            if all(self._crosses(place, inside) for place in pair):
                return {end for place in pair for end in self.ends[place] if end in inside}
        return None

    def _region(self, inside: set[int]) -> Region:
        edges = self.circuit.edges
        return Region(
            frozenset(water for water in self.reach if self.group[water] in inside),
            frozenset(water for water, group in self.marks.items() if group in inside),
            tuple(edges[place].label for place in self.ends if self._crosses(place, inside)),
        )
