"""The narrowest cut between two sets of nodes, held against every way to part small graphs."""

from __future__ import annotations

from itertools import product

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.dividing import MOST_WIDTH, divided

NODES = 7
EDGES = st.lists(
    st.tuples(st.integers(0, NODES - 1), st.integers(0, NODES - 1), st.integers(1, 3)).filter(
        lambda edge: edge[0] != edge[1]
    ),
    max_size=14,
    unique_by=lambda edge: frozenset(edge[:2]),
)
SIDES = st.sets(st.integers(0, NODES - 1), min_size=1, max_size=3)

Edge = tuple[int, int, int]


def linked(edges: list[Edge]) -> dict[int, list[tuple[int, int]]]:
    links: dict[int, list[tuple[int, int]]] = {}
    for a, b, width in edges:
        links.setdefault(a, []).append((b, width))
        links.setdefault(b, []).append((a, width))
    return links


def cut_width(edges: list[Edge], side: set[int]) -> int:
    return sum(width for a, b, width in edges if (a in side) != (b in side))


@given(EDGES, SIDES, SIDES)
def test_no_way_to_part_them_is_narrower(edges: list[Edge], first: set[int], second: set[int]) -> None:
    side = divided(linked(edges), first, second)
    assert side is not None
    assert first <= side
    assert not side & (second - first)
    widths = []
    for choice in product((False, True), repeat=NODES):
        other = {node for node, chosen in enumerate(choice) if chosen}
        if first <= other and not other & (second - first):
            widths.append((cut_width(edges, other), len(other)))
    # Of cuts as narrow, the one nearest the first side: it holds the fewest nodes.
    assert (cut_width(edges, side), len(side)) == min(widths)


def test_too_wide_a_cut_is_left_alone() -> None:
    assert divided(linked([(0, 1, MOST_WIDTH)]), {0}, {1}) == {0}
    assert divided(linked([(0, 1, MOST_WIDTH + 1)]), {0}, {1}) is None
