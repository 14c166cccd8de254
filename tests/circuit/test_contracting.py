"""Strands are what a general graph library leaves of a graph: no dead ends, and nothing in series."""

from __future__ import annotations

from collections import Counter
from itertools import product

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.contracting import BACK, BOTH, FORWARD, contract

VERTICES = 7
SPANS = st.lists(
    st.tuples(
        st.integers(0, VERTICES - 1), st.integers(0, VERTICES - 1), st.sampled_from([0, FORWARD, BACK, BOTH])
    ),
    max_size=14,
)
Span = tuple[int, int, int]


def loops(spans: list[Span]) -> set[frozenset[int]]:
    """Every loop of these spans that visits no vertex twice and that water can take one way at least."""
    between: dict[tuple[int, int], list[int]] = {}
    for number, (a, b, both) in enumerate(spans):
        if both & FORWARD:
            between.setdefault((a, b), []).append(number)
        if both & BACK:
            between.setdefault((b, a), []).append(number)
    found: set[frozenset[int]] = set()
    for cycle in nx.simple_cycles(nx.DiGraph(list(between))):
        steps = zip(cycle, [*cycle[1:], cycle[0]], strict=True)
        for way in product(*(between[step] for step in steps)):
            if len(set(way)) == len(way):
                found.add(frozenset(way))
    return found


@given(SPANS)
def test_no_loop_is_lost_or_won(spans: list[Span]) -> None:
    starts, ends, ways = [s[0] for s in spans], [s[1] for s in spans], [s[2] for s in spans]
    strands = contract(starts, ends, ways, VERTICES, range(len(spans)))
    whole = {
        frozenset(each if each >= 0 else ~each for place in loop for each in strands[place][3])
        for loop in loops([(a, b, both) for a, b, both, _ in strands])
    }
    assert whole == loops(spans)


@given(SPANS)
def test_each_strand_is_one_way_between_forks(spans: list[Span]) -> None:
    starts, ends, ways = [s[0] for s in spans], [s[1] for s in spans], [s[2] for s in spans]
    strands = contract(starts, ends, ways, VERTICES, range(len(spans)))
    used: Counter[int] = Counter()
    for a, b, both, members in strands:
        assert both
        here = a
        for each in members:
            span = each if each >= 0 else ~each
            used[span] += 1
            start, end = (starts[span], ends[span]) if each >= 0 else (ends[span], starts[span])
            assert start == here
            here = end
        assert here == b
    assert all(count == 1 for count in used.values())
    met = Counter(vertex for a, b, _, _ in strands if a != b for vertex in (a, b))
    closed = {a for a, b, _, _ in strands if a == b}
    assert all(count > 1 or vertex in closed for vertex, count in met.items())
    closed_first = [a == b for a, b, _, _ in strands]
    assert closed_first == sorted(closed_first, reverse=True)
