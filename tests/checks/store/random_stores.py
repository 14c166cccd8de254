"""Random drinking-water circuits around one or two mains-fed stores, and the same told anew for brute force.

Nothing of the program's passages, plans or graphs is used to tell them: the ways through each kind
are written here from the drawing format's table.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import networkx as nx
from hypothesis import strategies as st

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.catalogue import component_kinds
from tests.circuit.brute import positions

INLINE = {
    "pressure_reducing_valve": ("in", "out"),
    "check_valve": ("in", "out"),
    "inlet_group": ("in", "out"),
    "isolating_valve": ("a", "b"),
    "zone_valve": ("in", "out"),
    "strainer": ("in", "out"),
    "bypass_valve": ("in", "out"),
}
HUNG = {
    "expansion_vessel": "connection",
    "expansion_relief_valve": "inlet",
    "temperature_relief_valve": "inlet",
    "cold_main": "outlet",
    "cap": "connection",
}
WANTED = ("expansion_vessel", "expansion_relief_valve", "temperature_relief_valve", "cold_main")
STORE_PORTS = ("cold", "hot", "relief", "secondary_return")
PORTS: dict[str, tuple[str, ...]] = {
    "unvented_store": STORE_PORTS,
    "inlet_group": ("in", "out", "balanced_cold"),
    "tee": ("a", "b", "branch"),
    "three_port_valve": ("ab", "a", "b"),
}
PORTS |= {kind: ends for kind, ends in INLINE.items() if kind not in PORTS}
PORTS |= {kind: (port,) for kind, port in HUNG.items()}

Port = tuple[str, str]


@dataclass
class Told:
    """The ways of one drawing: (a, b, what shuts it, "both", "none" or "reducing")."""

    pipes: list[tuple[Port, Port]] = field(default_factory=list)
    ways: list[tuple[Port, Port, str, str]] = field(default_factory=list)

    def graph(self, shut: frozenset[str]) -> nx.Graph[Port]:
        """What pressure passes both ways with these shut."""
        graph: nx.Graph[Port] = nx.Graph(self.pipes)
        graph.add_edges_from((a, b) for a, b, entry, how in self.ways if how == "both" and entry not in shut)
        return graph

    def pushed(self) -> nx.DiGraph[Port]:
        """Where swelling water can go: a reducing valve lets it back."""
        graph: nx.DiGraph[Port] = nx.DiGraph([*self.pipes, *((b, a) for a, b in self.pipes)])
        graph.add_edges_from((a, b) for a, b, _, _ in self.ways)
        graph.add_edges_from((b, a) for a, b, _, how in self.ways if how != "none")
        return graph

    def entries(self) -> list[str]:
        """What can be shut."""
        return sorted({entry for _, _, entry, _ in self.ways if entry})


def tell(drawing: Drawing) -> Told:
    """Tell a drawing anew."""
    found = Told()
    for pipe in drawing.pipes.values():
        one, other = pipe.joints
        found.pipes.append(((one.part, one.port), (other.part, other.port)))
    for id, part in drawing.components.items():
        for a, b, entry, how in _ways(part.kind.name, id):
            found.ways.append(((id, a), (id, b), entry, how))
    return found


def _ways(kind: str, id: str) -> list[tuple[str, str, str, str]]:
    match kind:
        case "unvented_store":
            return [("cold", port, "", "both") for port in STORE_PORTS[1:]]
        case "tee":
            return [("a", "b", "", "both"), ("b", "branch", "", "both")]
        case "strainer":
            return [("in", "out", "", "both")]
        case "isolating_valve":
            return [("a", "b", id, "both")]
        case "zone_valve":
            return [("in", "out", id, "both")]
        case "three_port_valve":
            return [("ab", leg, f"{id}:{leg}", "both") for leg in ("a", "b")]
        case "check_valve" | "bypass_valve":
            return [("in", "out", "", "none")]
        case "pressure_reducing_valve":
            return [("in", "out", "", "reducing")]
        case "inlet_group":
            return [("in", "balanced_cold", "", "reducing"), ("balanced_cold", "out", "", "none")]
    return []


@dataclass(frozen=True)
class CutTold:
    """The size of a smallest set that does it, and each that does it alone."""

    size: int
    alone: frozenset[str]


def cut(told: Told, starts: set[Port], goals: set[Port]) -> CutTold | None:
    """What leaves the starts without any goal, by trying every position; None where none does, or
    where with all open none is reached."""

    def reached(shut: frozenset[str]) -> bool:
        graph = told.graph(shut)
        graph.add_nodes_from(starts | goals)
        return any(bool(nx.node_connected_component(graph, start) & goals) for start in starts)

    if not goals or not reached(frozenset()):
        return None
    entries = told.entries()
    proving = [shut for shut in positions(entries) if not reached(shut)]
    if not proving:
        return None
    return CutTold(
        min(map(len, proving)), frozenset(entry for entry in entries if frozenset({entry}) in proving)
    )


@st.composite
def stores(draw: st.DrawFn, *, most_stores: int = 2) -> Drawing:
    """One or two stores, mains, reducing and check valves, valves, vessels and relief valves, joined by
    chains as plants are, with pipes that change places; or quite at random."""
    maker = _Maker(draw)
    number = draw(st.integers(1, most_stores))
    ids = [maker.part("unvented_store", {"volume_l": 100 if number == 1 else 10}) for _ in range(number)]
    if draw(st.integers(0, 3)) == 0:
        _at_random(draw, maker)
    else:
        for id in ids:
            maker.chain(Joint(id, "cold"), last="cold_main")
            for port in STORE_PORTS[1:]:
                if draw(st.booleans()):
                    maker.chain(Joint(id, port), last=draw(st.sampled_from((*WANTED, "cap"))))
        for _ in range(draw(st.sampled_from((0, 1, 1, 2, 3)))):
            one, two = (draw(st.integers(0, len(maker.joins) - 1)) for _ in range(2))
            if one != two:
                first, second = maker.joins[one], maker.joins[two]
                maker.joins[one], maker.joins[two] = (first[0], second[1]), (second[0], first[1])
    pipes = {f"p{n}": Pipe(f"p{n}", ends) for n, ends in enumerate(maker.joins)}
    return Drawing(components=maker.components, pipes=pipes)


def _at_random(draw: st.DrawFn, maker: _Maker) -> None:
    kinds = draw(
        st.lists(st.sampled_from(sorted(set(PORTS) - {"unvented_store", "tee"})), min_size=3, max_size=8)
    )
    for kind in [*kinds, *["tee"] * draw(st.integers(1, 5))]:
        maker.part(kind, {})
    ports = [Joint(id, port) for id, part in maker.components.items() for port in PORTS[part.kind.name]]
    order = draw(st.permutations(ports))
    maker.joins += list(zip(order[::2], order[1::2], strict=False))


class _Maker:
    def __init__(self, draw: st.DrawFn) -> None:
        self.draw = draw
        self.components: dict[str, Component] = {}
        self.joins: list[tuple[Joint, Joint]] = []
        self.shuttable = 0

    def part(self, kind: str, data: dict[str, Any]) -> str:
        id = f"{kind[:2]}{len(self.components)}"
        if kind == "isolating_valve":
            data = {"secured": self.draw(st.booleans())}
        self.components[id] = Component(id, component_kinds()[kind], data=data)
        return id

    def chain(self, start: Joint, last: str) -> None:
        """Parts in a row from a port, tees with something hung on them, and at last a part of a kind."""
        for _ in range(self.draw(st.integers(0, 3))):
            if self.draw(st.booleans()):
                tee = self.part("tee", {})
                self.joins.append((start, Joint(tee, "a")))
                branch, start = Joint(tee, "branch"), Joint(tee, "b")
                if self.draw(st.booleans()):
                    branch = self.inline(branch, "isolating_valve" if self.draw(st.booleans()) else "")
                kind = self.draw(st.sampled_from(WANTED))
                self.joins.append((branch, Joint(self.part(kind, {}), HUNG[kind])))
            else:
                start = self.inline(start)
        self.joins.append((start, Joint(self.part(last, {}), HUNG[last])))

    def inline(self, start: Joint, wanted: str = "") -> Joint:
        kinds = [wanted] if wanted and self.shuttable < 7 else sorted(INLINE)
        if self.shuttable >= 7:
            kinds = [kind for kind in kinds if kind not in ("isolating_valve", "zone_valve")]
        kind = self.draw(st.sampled_from(kinds))
        self.shuttable += kind in ("isolating_valve", "zone_valve")
        first, second = INLINE[kind]
        if self.draw(st.booleans()):
            first, second = second, first
        id = self.part(kind, {})
        self.joins.append((start, Joint(id, first)))
        return Joint(id, second)
