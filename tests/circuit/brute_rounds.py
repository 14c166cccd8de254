"""Every loop of a drawing listed one by one, told by the parts on it and the way it takes them."""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, replace

import networkx as nx

from circuitcheck.drawing.value import Drawing
from tests.circuit import brute


@dataclass(frozen=True)
class Ring:
    """A circuit that visits no port twice: the ways on it, and those of them taken backwards."""

    ways: tuple[brute.Way, ...]
    backwards: frozenset[str]

    @property
    def parts(self) -> frozenset[str]:
        """Every part it passes through."""
        return frozenset(way.a[0] for way in self.ways)

    @property
    def emitters(self) -> frozenset[str]:
        """The emitters and coils on it."""
        return frozenset(way.a[0] for way in self.ways if way.emits)

    @property
    def pumps(self) -> frozenset[str]:
        """The pumps on it."""
        return frozenset(way.pump for way in self.ways if way.pump)

    @property
    def heats(self) -> frozenset[str]:
        """The heat sources on it."""
        return frozenset(way.heat for way in self.ways if way.heat)

    @property
    def entries(self) -> frozenset[str]:
        """What a position calls the shuttable ways on it."""
        return frozenset(way.entry for way in self.ways if way.entry)


def rings(drawing: Drawing, *, turned: Collection[str] = (), freed: Collection[str] = ()) -> list[Ring]:
    """Every ring, with the one-way parts in `turned` told the other way round, and those in `freed`
    open both ways."""
    plant = brute.plant(drawing)
    ways = [
        replace(way, a=way.b, b=way.a) if way.a[0] in turned and not way.back else way for way in plant.ways
    ]
    ways = [replace(way, back=True) if way.a[0] in freed else way for way in ways]
    graph: nx.DiGraph[object] = nx.DiGraph()
    way_of: dict[object, brute.Way] = {}
    for number, (a, b) in enumerate(plant.pipes):
        middle: object = ("pipe", number)
        graph.add_edges_from([(a, middle), (middle, b), (b, middle), (middle, a)])
    for number, way in enumerate(ways):
        middle = ("way", number)
        way_of[middle] = way
        graph.add_edges_from([(way.a, middle), (middle, way.b)])
        if way.back:
            graph.add_edges_from([(way.b, middle), (middle, way.a)])
    found = []
    for cycle in nx.simple_cycles(graph):
        if len(cycle) > 2:
            on = [way_of[node] for node in cycle if node in way_of]
            after = dict(zip(cycle, [*cycle[1:], cycle[0]], strict=True))
            back = [way_of[node].a[0] for node in cycle if node in way_of and after[node] != way_of[node].b]
            found.append(Ring(tuple(on), frozenset(back)))
    return found


def with_part(drawing: Drawing, part: str) -> frozenset[str]:
    """Every part on water that can meet a part's water, whichever way."""
    plant = brute.plant(drawing)
    graph: nx.Graph[brute.Port] = nx.Graph()
    graph.add_edges_from(plant.pipes)
    graph.add_edges_from((way.a, way.b) for way in plant.ways)
    start = next(way.a for way in plant.ways if way.a[0] == part)
    return frozenset(port[0] for port in nx.node_connected_component(graph, start))
