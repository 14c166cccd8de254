"""A part's passages sorted by what a circuit asks, shared by parts alike."""

from __future__ import annotations

from typing import Any

import networkx as nx
import pytest

from circuitcheck.circuit.plan import apart, changes_circulation, changes_pressure, other_values, plan_of
from circuitcheck.drawing.value import Component
from circuitcheck.parts.catalogue import component_kinds

KINDS = component_kinds()


def plan(kind: str, **data: Any) -> Any:
    return plan_of(Component("xx", KINDS[kind], data=data))


def test_open_ports_are_grouped() -> None:
    assert [set(group) for group in plan("tee").open_groups] == [{"a", "b", "branch"}]
    assert [set(group) for group in plan("heat_exchanger").open_groups] == [
        {"primary_in", "primary_out"},
        {"secondary_in", "secondary_out"},
    ]
    assert [set(group) for group in plan("separator").open_groups] == [
        {"source_flow", "source_return", "load_flow", "load_return"}
    ]


def test_what_can_be_shut_is_paired() -> None:
    assert plan("three_port_valve").shut_pairs == (("ab", "a", "a", False), ("ab", "b", "b", False))
    assert plan("isolating_valve", secured=True).shut_pairs == (("a", "b", "", True),)
    assert plan("pump").shut_pairs and not plan("pump", isolating_valves=False).shut_pairs
    assert plan("check_valve").shut_pairs == plan("check_valve").open_groups == ()


def test_a_tundish_joins_nothing() -> None:
    assert plan("tundish").open_groups == plan("tundish").shut_pairs == ()


def test_parts_alike_share_a_plan() -> None:
    assert plan("pump", isolating_valves=False, shut_off_head_m=5) is plan(
        "pump", isolating_valves=False, note="x"
    )
    assert plan("pump") is not plan("pump", isolating_valves=False)
    assert plan("heat_source", built_in=["pump", "vessel"]) is plan(
        "heat_source", built_in=("pump", "vessel")
    )


def test_null_and_left_out_have_the_same_ways() -> None:
    assert plan("pump", isolating_valves=None).shut_pairs == plan("pump").shut_pairs
    assert plan("heat_source", built_in=None).devices == plan("heat_source").devices


@pytest.mark.parametrize(
    ("kind", "field", "pressure", "circulation"),
    [
        ("pump", "isolating_valves", True, True),
        ("isolating_valve", "secured", True, True),
        ("dirt_separator", "isolating_valves", True, True),
        ("radiator", "thermostatic", False, True),
        ("radiator", "hand_wheel", False, True),
        ("heating_zone", "all_thermostatic", False, True),
        ("heat_source", "built_in", True, True),
    ],
)
def test_which_defaults_change_a_way(kind: str, field: str, pressure: bool, circulation: bool) -> None:
    assert changes_pressure(KINDS[kind], field) is pressure
    assert changes_circulation(KINDS[kind], field) is circulation


def test_values_a_field_could_have_instead() -> None:
    assert other_values(KINDS["pump"].field("isolating_valves")) == (False,)
    assert ("temperature_relief",) in other_values(KINDS["unvented_store"].field("built_in"))


@pytest.mark.parametrize("name", sorted(KINDS))
def test_ports_apart_are_those_that_no_passage_joins(name: str) -> None:
    shape = plan_of(Component("x", KINDS[name]))
    graph: nx.Graph[int] = nx.Graph()
    graph.add_nodes_from(range(shape.width))
    graph.add_edges_from(
        (shape.slots[each.a], shape.slots[each.b]) for each in shape.passages if not each.gap
    )
    ports = set(range(shape.port_count))
    groups = [group & ports for group in nx.connected_components(graph) if group & ports]
    found = apart(shape)
    assert len(found) == len(groups)
    assert all(len(group & set(found)) == 1 for group in groups)
