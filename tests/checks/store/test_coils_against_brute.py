"""What stops a coil, proved equal to listing every loop of the circuit."""

from __future__ import annotations

import itertools
from collections.abc import Iterator
from dataclasses import replace

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing.value import Control, Drawing
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from tests.checks.asking import asked, found
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants


def with_stores(drawing: Drawing) -> Drawing:
    """The same circuit with a mains-fed store for every vented one."""
    parts = dict(drawing.components)
    for id, part in parts.items():
        if part.kind.name == "vented_store":
            parts[id] = replace(part, kind=component_kinds()["unvented_store"], data={"volume_l": 100})
    return replace(drawing, components=parts)


def of_kind(drawing: Drawing, *kinds: str) -> list[str]:
    return [id for id, part in drawing.components.items() if part.kind.name in kinds]


def loops_through(plant: brute.Plant, store: str) -> Iterator[list[brute.Way]]:
    """Every loop through a store's coil that takes in a pump or a heat source, as its ways."""
    graph: nx.DiGraph[object] = nx.DiGraph()
    ways: dict[object, brute.Way] = {}
    for number, (a, b) in enumerate(plant.pipes):
        for u, v in ((a, ("pipe", number)), (("pipe", number), b)):
            graph.add_edge(u, v)
            graph.add_edge(v, u)
    for number, way in enumerate(plant.ways):
        middle = ("way", number)
        ways[middle] = way
        graph.add_edge(way.a, middle)
        graph.add_edge(middle, way.b)
        if way.back:
            graph.add_edge(way.b, middle)
            graph.add_edge(middle, way.a)
    for cycle in nx.simple_cycles(graph):
        on = [ways[node] for node in cycle if node in ways]
        through = any(way.a[0] == store and way.emits for way in on)
        if len(cycle) > 2 and through and any(way.pump or way.heat for way in on):
            yield on


def is_heated(plant: brute.Plant, store: str) -> bool:
    graph: nx.Graph[object] = nx.Graph(plant.pipes)
    graph.add_edges_from((way.a, way.b) for way in plant.ways)
    return any(nx.has_path(graph, (store, "coil_flow"), port) for port in plant.heats.values())


@given(st.one_of(circuits(), plants()), st.data())
def test_cut_out(drawing: Drawing, data: st.DataObject) -> None:
    stores = of_kind(drawing, "vented_store")
    valves = of_kind(drawing, "zone_valve", "three_port_valve")
    if not stores or not valves:
        return
    plant = brute.plant(drawing)
    fed = with_stores(drawing)
    valve = data.draw(st.sampled_from(valves))
    for store in stores:
        part = fed.components[store]
        named = replace(part, data={**part.data, "energy_cut_out": valve})
        told = found("cut-out-drives-no-valve", replace(fed, components={**fed.components, store: named}))
        fires = any(finding.components == (store, valve) for finding in told)
        if not is_heated(plant, store):
            assert not fires
        elif valve in of_kind(drawing, "three_port_valve"):
            assert fires
        else:
            left = any(all(way.entry != valve for way in loop) for loop in loops_through(plant, store))
            assert fires == left


@given(st.one_of(circuits(), plants()), st.data())
def test_thermostat(drawing: Drawing, data: st.DataObject) -> None:
    stores = of_kind(drawing, "vented_store")
    parts = of_kind(drawing, "zone_valve", "three_port_valve", "pump")
    if not stores or not parts:
        return
    plant = brute.plant(drawing)
    acts_on = tuple(data.draw(st.lists(st.sampled_from(parts), unique=True, min_size=1, max_size=3)))
    control = Control("st", control_kinds()["store_thermostat"], acts_on=acts_on)
    told = found("store-thermostat-absent", replace(with_stores(drawing), controls={"st": control}))
    firing = {finding.components[0] for finding in told}
    three_port = [id for id in acts_on if id in of_kind(drawing, "three_port_valve")]
    for store in stores:
        if not is_heated(plant, store):
            assert store not in firing
            continue
        loops = list(loops_through(plant, store))
        stopped = False
        for legs in itertools.product("ab", repeat=len(three_port)):
            off = {*acts_on, *(f"{id}:{leg}" for id, leg in zip(three_port, legs, strict=True))}
            left = [loop for loop in loops if not any(way.entry in off or way.pump in off for way in loop)]
            stopped |= not left
        assert (store in firing) == (not stopped)


def test_the_random_circuits_have_coils_that_are_and_are_not_stopped() -> None:
    seen = {"judged": 0, "found": 0}

    @given(st.one_of(circuits(), plants()))
    def count(drawing: Drawing) -> None:
        fed = with_stores(drawing)
        valves = of_kind(fed, "zone_valve")
        for store in of_kind(fed, "unvented_store"):
            if valves:
                part = fed.components[store]
                named = replace(part, data={**part.data, "energy_cut_out": valves[0]})
                answer = asked(
                    "cut-out-drives-no-valve", replace(fed, components={**fed.components, store: named})
                )
                seen["judged"] += answer.status == "judged"
                seen["found"] += any(finding.components[0] == store for finding in answer.findings)

    count()
    assert seen["found"] >= 5 and seen["judged"] - seen["found"] >= 1
