"""Heat leaks are proved equal to trying every position of every valve on random circuits."""

from __future__ import annotations

from dataclasses import replace

import networkx as nx
from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.gravity import GravityRound
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.labels import shown
from circuitcheck.drawing.value import Drawing
from tests.circuit import brute
from tests.circuit.random_circuits import circuits, plants

Entries = frozenset[str]


def entry(way: brute.Way) -> str:
    """What a position calls the way if anything at all can shut it."""
    return way.entry if way.shut_by or way.pressure_shut_by or way.householder else ""


def leaks(drawing: Drawing, heat: str) -> list[Entries]:
    """Every loop through the heat source and an emitter or coil without a pump, by what shuts it."""
    plant = brute.plant(drawing)
    graph: nx.DiGraph[object] = nx.DiGraph()
    told: dict[object, brute.Way] = {}
    for number, (a, b) in enumerate(plant.pipes):
        middle = ("pipe", number)
        graph.add_edges_from([(a, middle), (middle, b), (b, middle), (middle, a)])
    for number, way in enumerate(plant.ways):
        if way.pump or not (way.back or way.heat):
            continue
        middle = ("way", number)
        told[middle] = way
        graph.add_edges_from([(way.a, middle), (middle, way.b)])
        if way.back:
            graph.add_edges_from([(way.b, middle), (middle, way.a)])
    found = []
    for cycle in nx.simple_cycles(graph):
        on = [told[node] for node in cycle if node in told]
        if len(cycle) > 2 and any(way.heat == heat for way in on) and any(way.emits for way in on):
            found.append(frozenset(filter(None, map(entry, on))))
    return found


def smallest(drawing: Drawing, heat: str) -> int | None:
    """The size of a smallest position that shuts every leak; None where each leaves one open."""
    entries = sorted({entry(way) for way in brute.plant(drawing).ways if entry(way)})
    return brute.smallest_without(leaks(drawing, heat), entries)


@given(st.one_of(circuits(), plants()))
def test_every_position_is_tried(drawing: Drawing) -> None:
    circuit = Circuit(drawing)
    bodies = Bodies(circuit)
    for id, part in drawing.components.items():
        if part.kind.name != "heat_source":
            continue
        turn = GravityRound(circuit, bodies, id)
        expected = smallest(drawing, id)
        assert turn.never_shut == (expected is None)
        found = turn.shut_in
        if expected is None:
            assert found is None
        else:
            assert found is not None and len(found) == expected
            ways = leaks(drawing, id)
            shut = frozenset(map(shown, found))
            assert all(way & shut for way in ways)
            alone = {each for each in frozenset().union(*ways) if all(each in way for way in ways)}
            assert set(map(shown, turn.alone(found))) == (alone if len(found) == 1 else set())


OPEN = {"thermostatic": False, "valves": False, "hand_wheel": False}


@given(st.one_of(circuits(), plants()))
def test_with_open_radiators(drawing: Drawing) -> None:
    """Random valves leave few leaks open: here each radiator has none, so that more stay."""
    parts = {
        id: replace(part, data=OPEN if part.kind.name == "radiator" else {**part.data, "built_in": []})
        if part.kind.name in ("radiator", "heat_source")
        else part
        for id, part in drawing.components.items()
    }
    opened = replace(drawing, components=parts)
    circuit = Circuit(opened)
    for id, part in parts.items():
        if part.kind.name == "heat_source":
            assert GravityRound(circuit, Bodies(circuit), id).never_shut == (smallest(opened, id) is None)
