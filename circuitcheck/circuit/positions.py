"""Is there a reachable position of the valves in which no loop is left? The smallest such set.

Loops are found one at a time. A set of closings that hits every loop found so far is proposed, the
smallest there is; if another loop is left open it joins the list, if none is the set is proved, and
no smaller one can exist. Where no set can hit them all, every position leaves a way round.
"""

from __future__ import annotations

from collections.abc import Callable

from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import other_leg

LOOP_BOUND = 3_000
BRANCH_BOUND = 30_000
"""Steps of all the branching for one question; each is a fraction of a millisecond."""

OpenLoop = Callable[[frozenset[str]], frozenset[str] | None]
"""Given what is shut: the labels of a loop that is open, empty if nothing shuts it; None if none is."""


def smallest_without_loop(
    open_loop: OpenLoop, never_shut: frozenset[str] = frozenset()
) -> frozenset[str] | None:
    """A smallest set of closings that leaves no loop open; None if every position leaves one.

    The two legs of a three-port valve are never both in it, nor any of
    `never_shut`. Raises TooLargeError beyond the bounds.
    """
    loops: list[frozenset[str]] = []
    shut: frozenset[str] | None = frozenset()
    steps = 0
    while shut is not None:
        found = open_loop(shut)
        if found is None:
            return shut
        loops.append(found - never_shut)
        if not loops[-1]:
            return None
        if len(loops) > LOOP_BOUND:
            raise TooLargeError
        search = _Hitting(steps)
        search.branch(frozenset(), _smallest_sets(loops))
        shut, steps = search.best, search.steps
    return None


def smallest_hitting(sets: list[frozenset[str]]) -> frozenset[str] | None:
    """A smallest set with a member of every given set, never both legs of a valve; None if none."""
    search = _Hitting(0)
    search.branch(frozenset(), _smallest_sets(sets))
    return search.best


class _Hitting:
    """Branch and bound: sets that share nothing each need a member of their own."""

    def __init__(self, steps: int) -> None:
        self.best: frozenset[str] | None = None
        self.steps = steps

    def branch(self, chosen: frozenset[str], left: list[frozenset[str]]) -> None:
        """Try every way to hit what is left, by the smallest set first."""
        forced = self._decided(chosen, left)
        if forced is None:
            return
        chosen, left = forced
        if self.best is not None and len(chosen) + _at_least(left) >= len(self.best):
            return
        if not left:
            self.best = chosen
            return
        members = min(left, key=lambda each: (len(each), sorted(each)))
        tried: set[str] = set()
        for label in sorted(members, key=lambda label: (-sum(label in each for each in left), label)):
            narrowed = _after_choosing(left, label)
            if narrowed is not None:
                without = [each - tried for each in narrowed]
                if all(without):
                    self.branch(chosen | {label}, without)
            tried.add(label)

    def _decided(
        self, chosen: frozenset[str], left: list[frozenset[str]]
    ) -> tuple[frozenset[str], list[frozenset[str]]] | None:
        """Choose what sets with one member decide; None where that leaves a set that can't be hit."""
        while True:
            self.steps += 1
            if self.steps > BRANCH_BOUND:
                raise TooLargeError
            single = next((members for members in left if len(members) == 1), None)
            if single is None:
                return chosen, left
            (label,) = single
            narrowed = _after_choosing(left, label)
            if narrowed is None:
                return None
            chosen, left = chosen | {label}, narrowed


def _at_least(left: list[frozenset[str]]) -> int:
    used: set[str] = set()
    count = 0
    for members in left:
        if used.isdisjoint(members):
            used |= members
            count += 1
    return count


def _after_choosing(open_sets: list[frozenset[str]], label: str) -> list[frozenset[str]] | None:
    """The sets still to hit once `label` is shut and its other leg cannot be; None if one can't."""
    other = other_leg(label)
    left = []
    for members in open_sets:
        if label in members:
            continue
        narrowed = members - {other} if other else members
        if not narrowed:
            return None
        left.append(narrowed)
    return left


def _smallest_sets(sets: list[frozenset[str]]) -> list[frozenset[str]]:
    kept: list[frozenset[str]] = []
    for members in sorted(set(sets), key=lambda each: (len(each), sorted(each))):
        if not any(other <= members for other in kept):
            kept.append(members)
    return kept
