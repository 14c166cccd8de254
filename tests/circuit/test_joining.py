"""The graph of water behind a drawing: what is one water, and what joins two."""

from __future__ import annotations

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.isolation import cut_off, reaches
from circuitcheck.circuit.joining import Circuit, lowest_joined
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Role
from tests.checks.asking import way
from tests.circuit.random_circuits import circuits, plants
from tests.made import Part, made


def circuit(*ways: str, **parts: Part) -> Circuit:
    return Circuit(made(parts, way(*ways)))


def same(of: Circuit, one: str, two: str) -> bool:
    """Whether two ports, `part.port`, hold one and the same water."""
    a, b = (of.water(of.node(*port.split("."))) for port in (one, two))
    return a == b


def test_a_pipe_joins_its_two_ports() -> None:
    of = circuit("iv.b ev.connection", iv="isolating_valve", ev="expansion_vessel")
    assert of.node("iv", "b") == of.node("ev", "connection")
    assert not same(of, "iv.a", "iv.b")


def test_open_ways_are_one_water_and_what_can_be_shut_is_an_edge() -> None:
    of = circuit("t1.a st.in:out iv.a", t1="tee", st="strainer", iv="isolating_valve")
    assert same(of, "t1.branch", "iv.a") and same(of, "t1.b", "st.out")
    (edge,) = of.edges
    assert (edge.label, edge.part, edge.leg, edge.secured) == ("iv", "iv", "", False)
    assert {edge.a, edge.b} == {of.water(of.node("iv", port)) for port in ("a", "b")}


def test_one_way_ways_join_nothing() -> None:
    for kind, a, b in (
        ("check_valve", "in", "out"),
        ("bypass_valve", "in", "out"),
        ("pressure_reducing_valve", "in", "out"),
        ("blending_valve", "hot", "mixed"),
        ("tundish", "inlet", "outlet"),
        ("filling_link", "supply", "system"),
        ("safety_valve", "inlet", "outlet"),
    ):
        of = circuit(xx=kind)
        assert not same(of, f"xx.{a}", f"xx.{b}") and of.edges == ()


def test_the_legs_of_a_three_port_valve_are_two_edges() -> None:
    of = circuit(tp="three_port_valve")
    assert [(edge.label, edge.leg) for edge in of.edges] == [("tp:a", "a"), ("tp:b", "b")]


def test_a_valve_with_an_open_way_round_it_is_no_edge() -> None:
    of = circuit("t1.a iv.a:b t2.a", "t1.b t2.b", t1="tee", t2="tee", iv="isolating_valve")
    assert of.edges == () and same(of, "iv.a", "iv.b")


def test_free_ends_join_nothing() -> None:
    of = Circuit(made({"k1": "cap", "k2": "cap"}, "k1.connection - 1,1\nk2.connection - 1,1\n3,3 - 4,4"))
    assert not same(of, "k1.connection", "k2.connection")


def test_a_port_without_a_pipe_has_water_of_its_own() -> None:
    of = circuit(t1="tee", t2="tee")
    assert same(of, "t1.a", "t1.branch") and not same(of, "t1.a", "t2.a")


def test_an_empty_drawing() -> None:
    of = Circuit(Drawing())
    assert of.edges == () and of.devices(Role.HEATS) == ()


def test_devices_stand_where_their_ports_are() -> None:
    of = circuit("hs.flow ev.connection", hs=("heat_source", {"built_in": ["vessel"]}), ev="expansion_vessel")
    built_in, drawn = of.devices(Role.HOLDS_EXPANSION)
    assert (built_in.part, drawn.part) == ("hs", "ev")
    assert of.water(built_in.node) == of.water(drawn.node)
    assert of.devices(Role.PUMPS) == ()


def test_pipes_and_parts_in_a_water() -> None:
    of = circuit(
        "hs.flow iv.a:b t1.a",
        "t1.b ev.connection",
        hs="heat_source",
        iv="isolating_valve",
        t1="tee",
        ev="expansion_vessel",
    )
    far = frozenset({of.water(of.node("ev", "connection"))})
    assert of.pipes_in(far) == ("p2", "p3")
    assert of.parts_in(far) == ("iv", "t1", "ev")


def test_joining_leaves_the_drawing_as_it_was() -> None:
    drawing = made({"t1": "tee", "t2": "tee"}, way("t1.a t2.a"))
    before = dict(drawing.components), dict(drawing.pipes)
    Circuit(drawing)
    assert (dict(drawing.components), dict(drawing.pipes)) == before


def test_reaching_and_cutting_off_by_hand() -> None:
    of = circuit(
        "t1.a v1.a:b v2.a:b ev.connection",
        t1="tee",
        v1="isolating_valve",
        v2="isolating_valve",
        ev="expansion_vessel",
        t2="tee",
    )
    start, goal = of.water(of.node("t1", "a")), of.water(of.node("ev", "connection"))
    assert goal in reaches(of, start)
    assert of.water(of.node("t2", "a")) not in reaches(of, start)
    cut = cut_off(of, start, [goal])
    assert cut is not None and len(cut.shut) == 1 and cut.alone == ("v1", "v2") and not cut.by_secured_only
    assert cut_off(of, start, [start]) is None


@given(st.lists(st.tuples(st.integers(0, 8), st.integers(0, 8)), max_size=12))
def test_the_lowest_stands_for_all_that_are_joined(pairs: list[tuple[int, int]]) -> None:
    graph: nx.Graph[int] = nx.Graph(pairs)
    graph.add_nodes_from(range(9))
    stands_for = {each: min(group) for group in nx.connected_components(graph) for each in group}
    assert lowest_joined(9, pairs) == [stands_for[each] for each in range(9)]


@given(st.one_of(circuits(), plants()))
def test_parts_with_a_role_are_those_of_its_devices(drawing: Drawing) -> None:
    of = Circuit(drawing)
    for role in Role:
        assert of.parts_with(role) == {place.part for place in of.devices(role)}
    assert of.parts_with() == frozenset()
    some = (Role.EMITS, Role.HEATS)
    assert of.parts_with(*some) == of.parts_with(some[0]) | of.parts_with(some[1])


@given(st.one_of(circuits(), plants()))
def test_a_port_that_no_pipe_is_on_has_a_node_where_a_passage_leads_to_it(drawing: Drawing) -> None:
    of = Circuit(drawing)
    ports = of.ports
    for place, plan in enumerate(ports.plans):
        for offset in plan.joined_slots:
            assert ports.at[ports.first[place] + offset] >= 0
    on_pipes = {joint for pipe in drawing.pipes.values() for joint in pipe.joints}
    assert set(of.partly_joined) == {
        id
        for id, part in drawing.components.items()
        if any((id, port.name) not in on_pipes for port in part.kind.ports)
    }
