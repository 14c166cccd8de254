"""Answers about a store's water are proved equal to trying every position of every valve."""

from __future__ import annotations

import itertools

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.value import Drawing
from circuitcheck.finding import Finding
from tests.checks.asking import found
from tests.checks.store.random_stores import STORE_PORTS, CutTold, Port, Told, cut, stores, tell


def by_subject(check: str, drawing: Drawing) -> dict[str, Finding]:
    """The findings of a check by the thing judged: there is one for each."""
    findings = {finding.components[0]: finding for finding in found(check, drawing)}
    assert len(findings) == len(found(check, drawing))
    return findings


def of_kind(drawing: Drawing, *kinds: str) -> list[str]:
    return [id for id, part in drawing.components.items() if part.kind.name in kinds]


def water(store: str) -> set[Port]:
    return {(store, port) for port in STORE_PORTS}


def vessels(drawing: Drawing) -> set[Port]:
    return {(id, "connection") for id in of_kind(drawing, "expansion_vessel")}


def pressure_reliefs(drawing: Drawing) -> set[Port]:
    valves = {(id, "inlet") for id in of_kind(drawing, "expansion_relief_valve")}
    return valves | {(id, "out") for id in of_kind(drawing, "inlet_group")}


def reaches(told: Told, store: str, goals: set[Port]) -> bool:
    graph = told.graph(frozenset())
    graph.add_nodes_from(water(store) | goals)
    return bool(nx.node_connected_component(graph, (store, "cold")) & goals)


def agrees(finding: Finding | None, expected: CutTold | None) -> None:
    assert (finding is None) == (expected is None)
    if finding is not None and expected is not None:
        assert finding.grade.value == "danger"
        assert finding.witness is not None
        assert len(finding.witness.shut) == expected.size
        assert frozenset(finding.witness.alone) == expected.alone


@given(stores())
def test_vessels(drawing: Drawing) -> None:
    told, goals = tell(drawing), vessels(drawing)
    absent = by_subject("store-vessel-absent", drawing)
    cut_off = by_subject("store-vessel-can-be-cut-off", drawing)
    for store in of_kind(drawing, "unvented_store"):
        assert (store in absent) == (not reaches(told, store, goals))
        agrees(cut_off.get(store), cut(told, water(store), goals))


@given(stores())
def test_relief_valves(drawing: Drawing) -> None:
    told = tell(drawing)
    absent = by_subject("expansion-relief-absent", drawing)
    no_temperature = by_subject("temperature-relief-absent", drawing)
    cut_off = by_subject("relief-can-be-cut-off", drawing)
    ids = of_kind(drawing, "unvented_store")
    by_temperature: set[Port] = set()
    if len(ids) == 1:  # two stores are small ones here, which need none
        by_temperature = {(id, "inlet") for id in of_kind(drawing, "temperature_relief_valve")}
    for store in ids:
        assert (store in absent) == (not reaches(told, store, pressure_reliefs(drawing)))
        assert (store in no_temperature) == (len(ids) == 1 and not reaches(told, store, by_temperature))
        both = [cut(told, water(store), goals) for goals in (by_temperature, pressure_reliefs(drawing))]
        cuts = [each for each in both if each is not None]
        expected = None
        if cuts:
            alone = frozenset[str]().union(*(each.alone for each in cuts))
            expected = CutTold(min(each.size for each in cuts), alone)
        agrees(cut_off.get(store), expected)


@given(stores())
def test_cold_check(drawing: Drawing) -> None:
    graph = tell(drawing).pushed()
    findings = by_subject("cold-check-absent", drawing)
    mains = {(id, "outlet") for id in of_kind(drawing, "cold_main")}
    for store in of_kind(drawing, "unvented_store"):
        graph.add_nodes_from(water(store))
        pushed = any(main in graph and nx.has_path(graph, (store, "cold"), main) for main in mains)
        assert (store in findings) == pushed


@given(stores(), st.data())
def test_pressure_let_in(drawing: Drawing, data: st.DataObject) -> None:
    """With settings known: by trying every set of reducing valves that a way from the main could pass."""
    from dataclasses import replace

    parts = dict(drawing.components)
    settings: dict[str, float] = {}
    for id in of_kind(drawing, "pressure_reducing_valve", "inlet_group"):
        settings[id] = data.draw(st.sampled_from((3.0, 5.0, 9.0)))
        parts[id] = replace(parts[id], data={"set_pressure_bar": settings[id], "relief_pressure_bar": 6})
    for id in of_kind(drawing, "unvented_store"):
        parts[id] = replace(parts[id], data={**parts[id].data, "maximum_pressure_bar": 6})
    for id in of_kind(drawing, "cold_main"):
        parts[id] = replace(parts[id], data={"standing_pressure_bar": 4})
    drawing = replace(drawing, components=parts)
    told = tell(drawing)
    findings = by_subject("store-pressure-not-limited", drawing)
    mains = {(id, "outlet") for id in of_kind(drawing, "cold_main")}

    def comes(store: str, barred: set[str]) -> bool:
        graph: nx.DiGraph[Port] = nx.DiGraph([*told.pipes, *((b, a) for a, b in told.pipes)])
        for a, b, _, how in told.ways:
            if not (how == "reducing" and a[0] in barred):
                graph.add_edge(a, b)
            if how == "both":
                graph.add_edge(b, a)
        graph.add_nodes_from(water(store) | mains)
        return any(nx.has_path(graph, main, (store, "cold")) for main in mains)

    for store in of_kind(drawing, "unvented_store"):
        if not comes(store, set()):
            continue
        if comes(store, set(settings)):
            expected = "fault"
        else:
            low = {id for id, bar in settings.items() if bar <= 6}
            expected = "danger" if comes(store, low) else ""
        finding = findings.get(store)
        assert (finding.grade.value if finding else "") == expected


def test_the_random_stores_are_worth_their_while() -> None:
    """Both answers of each question come up often."""
    counts = dict.fromkeys(itertools.product(("vessel", "relief", "check"), (False, True)), 0)

    @given(stores())
    def count(drawing: Drawing) -> None:
        for name, check in (("vessel", "store-vessel-can-be-cut-off"), ("relief", "relief-can-be-cut-off"),
                            ("check", "cold-check-absent")):  # fmt: skip
            counts[name, bool(found(check, drawing))] += 1

    count()
    assert min(counts.values()) >= 10
