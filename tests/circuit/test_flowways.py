"""Ways reduced to what a loop can choose between: the loops stay the same."""

from __future__ import annotations

from collections import Counter

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.flowways import FlowWays, WayEdge, reduced, without_dead_ends
from circuitcheck.circuit.joining import Circuit
from tests.checks.asking import way
from tests.made import Part, made


def edge(a: int, b: int, label: str = "", *, back: bool = True) -> WayEdge:
    return WayEdge(a, b, back=back, labels=frozenset({label} if label else ()))


def test_a_dead_end_is_dropped() -> None:
    assert reduced([edge(0, 1), edge(1, 2)]) == ()
    ring = [edge(0, 1, "x"), edge(1, 2), edge(2, 0), edge(2, 3), edge(3, 4)]
    (left,) = reduced(ring)
    assert left.a == left.b and left.labels == {"x"}


def test_a_series_is_one_stretch_with_all_that_is_on_it() -> None:
    one = WayEdge(0, 1, labels=frozenset({"zv"}), hands=frozenset({"iv"}))
    two = WayEdge(1, 2, back=False, pumps=frozenset({"pu"}), emits=True)
    ends = [edge(2, 0, "a"), edge(2, 0, "b")]
    found = [each for each in reduced([one, two, *ends]) if each.emits]
    (joined,) = found
    assert {joined.a, joined.b} == {0, 2}
    assert joined.labels == {"zv"} and joined.hands == {"iv"} and joined.pumps == {"pu"}
    assert joined.forward != joined.back


def test_two_one_ways_against_each_other_are_a_dead_end() -> None:
    assert reduced([edge(0, 1, back=False), edge(2, 1, back=False), edge(2, 0)]) == ()


def test_nothing() -> None:
    assert reduced([]) == ()


def test_a_way_told_from_its_other_end() -> None:
    turned = WayEdge(0, 1, forward=True, back=False).turned()
    assert (turned.a, turned.b, turned.forward, turned.back) == (1, 0, False, True)


EDGES = st.lists(
    st.tuples(st.integers(0, 5), st.integers(0, 5), st.sampled_from(["", "x", "y", "z"]), st.booleans()),
    max_size=9,
)


def loops(edges: list[WayEdge]) -> list[tuple[str, ...]]:
    """Every directed loop by the labels of its edges, back and forth along one edge left out."""
    graph: nx.DiGraph[object] = nx.DiGraph()
    for number, each in enumerate(edges):
        for one, two, may in ((each.a, each.b, each.forward), (each.b, each.a, each.back)):
            if may:
                graph.add_edge(("v", one), ("e", number, one))
                graph.add_edge(("e", number, one), ("v", two))
    found = []
    for cycle in nx.simple_cycles(graph):
        used = [node[1] for node in cycle if isinstance(node, tuple) and node[0] == "e"]
        if len(used) == len(set(used)):
            found.append(tuple(sorted(label for number in used for label in edges[number].labels)))
    return sorted(found)


@given(EDGES)
def test_every_loop_stays_and_none_is_added(told: list[tuple[int, int, str, bool]]) -> None:
    edges = [
        edge(a, b, f"{label}{number}" if label else "", back=back)
        for number, (a, b, label, back) in enumerate(told)
        if a != b
    ]
    kept = list(reduced(edges))
    # A ring that becomes one stretch can be gone round both ways: once in a self-loop, told once.
    assert set(loops(kept)) == set(loops(edges))


@given(EDGES)
def test_dead_ends_left_out_beforehand_leave_every_loop(told: list[tuple[int, int, str, bool]]) -> None:
    edges = [
        edge(a, b, f"{label}{number}", back=back) for number, (a, b, label, back) in enumerate(told) if a != b
    ]
    kept = without_dead_ends(edges)
    assert set(loops(list(kept))) == set(loops(edges))
    degree = Counter(vertex for each in kept for vertex in (each.a, each.b))
    assert 1 not in degree.values()


def test_a_ring_of_one_edge_stays() -> None:
    assert without_dead_ends([edge(0, 0), edge(0, 1), edge(1, 2)]) == (edge(0, 0),)


def around(heat: str, *ways: str, **parts: Part) -> tuple[WayEdge, ...]:
    return FlowWays(Circuit(made(parts, way(*ways)))).around(heat)


def test_a_house_is_left_with_a_handful_of_stretches() -> None:
    found = around(
        "hs",
        "hs.flow pu.in:out st.in:out t1.a:b zv.in:out rad.flow:return t2.a:b iv.a:b hs.return",
        "t1.branch bv.in:out t2.branch",
        hs="heat_source", pu="pump", st="strainer", t1="tee", t2="tee", zv="zone_valve", rad="radiator",
        iv="isolating_valve", bv="bypass_valve",
    )  # fmt: skip
    assert len(found) == 3
    (driven,) = [each for each in found if each.pumps]
    assert driven.heats == {"hs"} and driven.hands == {"pu", "iv"}
    (zone,) = [each for each in found if each.emits]
    assert zone.labels == {"zv", "rad"}
    (bypass,) = [each for each in found if each.springs]
    assert bypass.springs == {"bv"} and bypass.forward != bypass.back


def test_pumps_and_heat_sources_of_one_water() -> None:
    flow = FlowWays(
        Circuit(
            made(
                {"hs": "heat_source", "pu": "pump", "h2": "heat_source", "p2": "pump"},
                way("hs.flow pu.in:out hs.return", "h2.flow p2.in:out h2.return"),
            )
        )
    )
    assert (flow.pumps_with("hs"), flow.heats_with("p2")) == (("pu",), ("h2",))
    assert flow.pumps_with("nobody") == ()
