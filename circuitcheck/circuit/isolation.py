"""Can any positions of the valves cut one water off from others? Exactly, with the smallest set.

Valves are edges between waters. A smallest set that separates two waters is a smallest cut, found
by augmenting paths (Ford and Fulkerson 1956). A three-port valve never shuts both legs: the cut
found without that rule is a lower bound, right where it keeps the rule, and where it does not one
leg after the other of an offending valve is held open, with what has been seen remembered.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import chain

from circuitcheck.circuit.joining import Circuit, lowest_joined

ENDLESS = 1 << 60
SEARCH_BOUND = 20_000
NOTHING_SHUT: frozenset[str] = frozenset()


class TooLargeError(Exception):
    """The question went beyond the stated search bound; the answer is not known."""


@dataclass(frozen=True, slots=True)
class Cut:
    """Valve positions that separate a water from all of the targets.

    `shut` is a smallest set, `alone` every single passage that does it; `by_secured_only` says
    that no set without a secured valve does it; `beyond` is the water left with the targets.
    """

    shut: tuple[str, ...]
    alone: tuple[str, ...]
    by_secured_only: bool
    beyond: frozenset[int]


def reaches(circuit: Circuit, start: int, shut: frozenset[str] = NOTHING_SHUT) -> frozenset[int]:
    """Every water joined to `start`, with these labels shut and all other valves open, by ways that pressure
    passes both ways."""
    if shut:
        return _reaches(circuit, start, shut)
    with_all_open: dict[int, frozenset[int]] = circuit.keep(__name__, lambda: _with_all_open(circuit))
    return with_all_open.get(start) or frozenset({start})


def _with_all_open(circuit: Circuit) -> dict[int, frozenset[int]]:
    """For each water that a valve joins to others all that are joined then, one set for all of them."""
    pairs = list(circuit.shut_apart())
    stands_for = lowest_joined(len(circuit.waters), pairs)
    groups: dict[int, list[int]] = {}
    for water in dict.fromkeys(chain.from_iterable(pairs)):
        groups.setdefault(stands_for[water], []).append(water)
    found: dict[int, frozenset[int]] = {}
    for members in groups.values():
        found.update(dict.fromkeys(members, frozenset(members)))
    return found


def _reaches(circuit: Circuit, start: int, shut: frozenset[str]) -> frozenset[int]:
    edges, edges_at = circuit.edges, circuit.edges_at
    seen = {start}
    todo = [start]
    while todo:
        here = todo.pop()
        for place in edges_at.get(here, ()):
            edge = edges[place]
            there = edge.b if edge.a == here else edge.a
            if there not in seen and edge.label not in shut:
                seen.add(there)
                todo.append(there)
    return frozenset(seen)


def cut_off(circuit: Circuit, start: int, targets: Iterable[int]) -> Cut | None:
    """The smallest set of closings that leaves `start` without any target; None if none does.

    `start` and `targets` are waters, all targets joined to `start` with everything open or not.
    Sets without a secured valve are preferred. Raises TooLargeError beyond the search bound.
    """
    goals = frozenset(targets)
    if start in goals:
        return None
    search = _Search(circuit, start, goals)
    unsecured = {place: ENDLESS if edge.secured else 1 for place, edge in search.edges.items()}
    shut = search.smallest(unsecured)
    by_secured_only = False
    if shut is None:
        # Fewest closings first, then fewest secured ones among them.
        weight = len(search.edges) + 1
        shut = search.smallest(
            {place: weight + 1 if edge.secured else weight for place, edge in search.edges.items()}
        )
        by_secured_only = True
    if shut is None:
        return None
    edges = circuit.edges
    # Where the smallest set of all has several members, no passage does it alone.
    some_secured = any(edge.secured for edge in search.edges.values())
    alone = search.alone() if len(shut) == 1 or some_secured else set()
    return Cut(
        shut=tuple(edges[place].label for place in sorted(shut)),
        alone=tuple(edges[place].label for place in sorted(alone)),
        by_secured_only=by_secured_only,
        beyond=search.beyond(shut),
    )


class _Joined:
    """Waters that count as one."""

    def __init__(self) -> None:
        self.parent: dict[int, int] = {}

    def find(self, water: int) -> int:
        """The water that stands for it and all joined to it."""
        while (up := self.parent.get(water, water)) != water:
            water = up
        return water

    def join(self, one: int, two: int) -> None:
        """Count these two as one from now on."""
        a, b = self.find(one), self.find(two)
        if a != b:
            self.parent[max(a, b)] = min(a, b)


class _Search:
    """One question: the part of the contracted graph that `start` reaches, and the goals in it."""

    def __init__(self, circuit: Circuit, start: int, goals: frozenset[int]) -> None:
        self.circuit = circuit
        self.start = start
        region = reaches(circuit, start)
        self.goals = goals & region
        # Only water this side of the goals matters: a way on through a goal has already arrived.
        edges, edges_at = circuit.edges, circuit.edges_at
        self.edges = {place: edges[place] for water in region for place in edges_at.get(water, ())}
        legs: dict[str, list[int]] = {}
        for place, edge in self.edges.items():
            if edge.leg:
                legs.setdefault(edge.part, []).append(place)
        self.pairs = [(pair[0], pair[1]) for pair in legs.values() if len(pair) == 2]

    def smallest(self, weights: dict[int, int]) -> set[int] | None:
        """A lightest set of edges that separates start and goals and keeps the rule of the legs."""
        best: set[int] | None = None
        best_weight = ENDLESS
        seen: set[tuple[object, ...]] = set()
        todo: list[frozenset[int]] = [frozenset()]
        while todo:
            held_open = todo.pop()
            if len(seen) > SEARCH_BOUND:
                raise TooLargeError
            if self.pairs:  # without three-port valves there is no other state, and nothing to remember
                state = self._state(weights, held_open)
                if state is None or state in seen:
                    continue
                seen.add(state)
            held = weights if not held_open else {**weights, **dict.fromkeys(held_open, ENDLESS)}
            weight, flow, near = self._lightest_cut(held)
            if weight >= best_weight:
                continue
            offending = self._offending(near)
            if offending is not None:
                # As light a cut nearest the goals may keep the rule where this one does not.
                near = self._boundary(self._reaching_goal(held, flow))
                offending = self._offending(near)
            if offending is None:
                best, best_weight = near, weight
            if offending is not None:
                todo.extend(held_open | {leg} for leg in offending)
        return best

    def _offending(self, cut: set[int]) -> tuple[int, int] | None:
        """A three-port valve both of whose legs are in the cut."""
        return next((pair for pair in self.pairs if cut.issuperset(pair)), None)

    def _state(self, weights: dict[int, int], held_open: frozenset[int]) -> tuple[object, ...] | None:
        """What is left once held-open ways are joined: equal states have equal answers.

        None where start and a goal are joined already. A valve both of whose legs join the same
        two waters is joined too, since one of them is always open.
        """
        joined = _Joined()
        for place, weight in weights.items():
            if weight >= ENDLESS or place in held_open:
                joined.join(self.edges[place].a, self.edges[place].b)
        self._join_legs_side_by_side(joined)
        start = joined.find(self.start)
        goals = frozenset(map(joined.find, self.goals))
        if start in goals:
            return None
        ends = {place: (joined.find(edge.a), joined.find(edge.b)) for place, edge in self.edges.items()}
        left = tuple((min(a, b), max(a, b), place) for place, (a, b) in ends.items() if a != b)
        return (start, goals, left)

    def _join_legs_side_by_side(self, joined: _Joined) -> None:
        changed = True
        while changed:
            changed = False
            for first, second in self.pairs:
                one, two = self.edges[first], self.edges[second]
                ends = {joined.find(one.a), joined.find(one.b)}
                if len(ends) == 2 and ends == {joined.find(two.a), joined.find(two.b)}:
                    joined.join(one.a, one.b)
                    changed = True

    def _lightest_cut(self, weights: dict[int, int]) -> tuple[int, dict[int, int], set[int]]:
        """The lightest cut's weight, the flow that proves it, and the cut nearest the start.

        The weight is ENDLESS or more where no cut is light enough to exist.
        """
        flow = dict.fromkeys(weights, 0)  # along the edge from a to b; negative the other way
        total = 0
        while total < ENDLESS:
            came = self._reachable(weights, flow)
            goal = next((goal for goal in self.goals if goal in came), None)
            if goal is None:
                return total, flow, self._boundary(frozenset(came))
            path = []
            water = goal
            while water != self.start:
                place, water = came[water]
                path.append((place, water))
            push = min(self._spare(place, water, weights, flow) for place, water in path)
            for place, water in path:
                flow[place] += push if self.edges[place].a == water else -push
            total += push
        return total, flow, set()

    def _spare(self, place: int, start: int, weights: dict[int, int], flow: dict[int, int]) -> int:
        along = flow[place] if self.edges[place].a == start else -flow[place]
        return weights[place] - along

    def _reachable(self, weights: dict[int, int], flow: dict[int, int]) -> dict[int, tuple[int, int]]:
        """Waters that more flow can reach from the start, with the edge and water each came by."""
        edges, edges_at = self.edges, self.circuit.edges_at
        came: dict[int, tuple[int, int]] = {self.start: (-1, -1)}
        todo = deque([self.start])
        while todo:
            here = todo.popleft()
            if here in self.goals:
                break
            for place in edges_at.get(here, ()):
                edge = edges[place]
                forward = edge.a == here
                there = edge.b if forward else edge.a
                if there in came:
                    continue
                if weights[place] - (flow[place] if forward else -flow[place]) > 0:
                    came[there] = (place, here)
                    todo.append(there)
        return came

    def _reaching_goal(self, weights: dict[int, int], flow: dict[int, int]) -> frozenset[int]:
        """Waters from which more flow could still reach a goal."""
        seen = set(self.goals)
        todo = list(self.goals)
        while todo:
            here = todo.pop()
            for place in self.circuit.edges_at.get(here, ()):
                edge = self.edges.get(place)
                if edge is None:
                    continue
                there = edge.b if edge.a == here else edge.a
                if there not in seen and self._spare(place, there, weights, flow) > 0:
                    seen.add(there)
                    todo.append(there)
        return frozenset(seen)

    def _boundary(self, side: frozenset[int]) -> set[int]:
        return {place for place, edge in self.edges.items() if (edge.a in side) != (edge.b in side)}

    def alone(self) -> set[int]:
        """Every edge that separates start and goals by itself.

        Walk one way to a goal; an edge of it is needed when nothing before it leads past it.
        """
        came = self._reachable(dict.fromkeys(self.edges, 1), dict.fromkeys(self.edges, 0))
        goal = next((goal for goal in self.goals if goal in came), None)
        if goal is None:
            return set()
        way: list[tuple[int, int]] = []
        water = goal
        while water != self.start:
            place, water = came[water]
            way.append((place, water))
        way.reverse()
        step_of = {water: step for step, (_, water) in enumerate(way)}
        step_of.update(dict.fromkeys(self.goals, len(way)))
        on_way = {place for place, _ in way}
        needed: set[int] = set()
        seen: set[int] = set()
        furthest = 0
        for step, (place, water) in enumerate(way):
            todo = [water]
            while todo:
                here = todo.pop()
                if here in seen:
                    continue
                seen.add(here)
                furthest = max(furthest, step_of.get(here, 0))
                if here in self.goals:
                    continue
                for other in self.circuit.edges_at.get(here, ()):
                    edge = self.edges[other]
                    if other not in on_way:
                        todo.append(edge.b if edge.a == here else edge.a)
            if furthest <= step:
                needed.add(place)
        return needed

    def beyond(self, shut: set[int]) -> frozenset[int]:
        """The water that stays with the goals once these edges are shut."""
        seen = set(self.goals)
        todo = list(self.goals)
        while todo:
            here = todo.pop()
            for place in self.circuit.edges_at.get(here, ()):
                if place in shut:
                    continue
                edge = self.circuit.edges[place]
                there = edge.b if edge.a == here else edge.a
                if there not in seen:
                    seen.add(there)
                    todo.append(there)
        return frozenset(seen)
