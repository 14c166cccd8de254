"""Whose connections are changed over, told anew from the drawing format's table by plain reachability.

Nothing of the program's passages, reaches, roles or walks is used.
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator

import networkx as nx

from circuitcheck.drawing.value import Drawing, Joint
from tests.circuit.brute import plant

Port = tuple[str, str]
TAKES = {
    "radiator": ("flow", "return"), "heating_zone": ("flow", "return"), "vented_store": ("coil_flow", "coil_return"),
    "unvented_store": ("coil_flow", "coil_return"),
}  # fmt: skip
ABOVE, BELOW = ("source_flow", "load_flow"), ("source_return", "load_return")


def heating(drawing: Drawing) -> nx.DiGraph[Port]:
    """Where heating water can go while nothing that takes heat, no separator, no bypass and no heat source
    is gone through."""
    graph: nx.DiGraph[Port] = nx.DiGraph()
    for part in drawing.components.values():
        graph.add_nodes_from((part.id, port.name) for port in part.kind.ports)
    told = plant(drawing)
    for a, b in told.pipes:
        graph.add_edge(a, b)
        graph.add_edge(b, a)
    for way in told.ways:
        kind = drawing.components[way.a[0]].kind.name
        if way.emits or kind in ("separator", "bypass_valve", "heat_source"):
            continue
        graph.add_edge(way.a, way.b)
        if way.back:
            graph.add_edge(way.b, way.a)
    return graph


class Heat:
    """What is expected of heating water: grades by the parts judged first."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        graph = heating(drawing)
        self.ahead = {port: {port, *nx.descendants(graph, port)} for port in graph}
        self.before = {port: {port, *nx.ancestors(graph, port)} for port in graph}
        self.takers = [
            ((part.id, flow), (part.id, back), part.kind.name)
            for part in drawing.components.values()
            for flow, back in self._sides(part.kind.name)
        ]

    @staticmethod
    def _sides(kind: str) -> list[tuple[str, str]]:
        if kind == "separator":
            return list(zip(ABOVE, BELOW, strict=True))
        return [TAKES[kind]] if kind in TAKES else []

    def right(self, flow: Port, back: Port, taker: tuple[Port, Port, str]) -> bool:
        one, two, _ = taker
        return not self._is_one_water(one, two) and (one in self.ahead[flow] or two in self.before[back])

    def wrong(self, flow: Port, back: Port, taker: tuple[Port, Port, str]) -> bool:
        one, two, _ = taker
        return (
            not self._is_one_water(one, two)
            and not self.right(flow, back, taker)
            and two in self.ahead[flow]
            and one in self.before[back]
        )

    def _is_one_water(self, one: Port, two: Port) -> bool:
        return two in self.ahead[one] and one in self.ahead[two]

    def _faces(self, flow: Port, back: Port, taker: tuple[Port, Port, str]) -> bool:
        """No arrow between them says which way the water goes."""
        return self._is_one_water(flow, taker[1]) and self._is_one_water(back, taker[0])

    def expected(self) -> set[tuple[str, str]]:
        """Grade and part of each finding; of heat sources side by side the first."""
        parts = self.drawing.components.values()
        sources = [
            ((part.id, "flow"), (part.id, "return")) for part in parts if part.kind.name == "heat_source"
        ]
        loads = [
            ((part.id, "load_flow"), (part.id, "load_return"))
            for part in parts
            if part.kind.name == "separator"
        ]
        agreed = {taker for giver in (*sources, *loads) for taker in self.takers if self.right(*giver, taker)}
        sound = [giver for giver in (*sources, *loads) if self._is_sound(*giver)]
        found = set()
        for giver in sound:
            for taker in self.takers:
                if (
                    self.wrong(*giver, taker)
                    and taker not in agreed
                    and (giver in sources or not self._faces(*giver, taker))
                ):
                    found |= self._of_taker(taker)
        for same in self._side_by_side([each for each in sources if each not in sound]):
            against = [taker for taker in self.takers if self.wrong(*same[0], taker)]
            emits = [taker[2] in ("radiator", "heating_zone") for taker in against]
            if not against:
                continue
            if set(against) & agreed:
                found |= {("fault", flow[0]) for flow, _ in same}
            elif len(same) > 1 and emits == [False]:
                found |= self._of_taker(against[0])
            else:
                found.add(("advice" if emits == [True] else "fault", same[0][0][0]))
        return found | set(self._across(sources))

    def _is_sound(self, flow: Port, back: Port) -> bool:
        return any(
            self.right(flow, back, taker)
            or (self.wrong(flow, back, taker) and not self._faces(flow, back, taker))
            for taker in self.takers
        )

    def _side_by_side(self, sources: list[tuple[Port, Port]]) -> Iterator[list[tuple[Port, Port]]]:
        left = list(sources)
        while left:
            flow, back = left[0]
            same = [
                each
                for each in left
                if self._is_one_water(flow, each[0]) and self._is_one_water(back, each[1])
            ]
            left = [each for each in left if each not in same]
            yield same

    @staticmethod
    def _of_taker(taker: tuple[Port, Port, str]) -> set[tuple[str, str]]:
        if taker[2] in ("radiator", "heating_zone"):
            return set()
        return {("fault" if taker[2] == "separator" else "advice", taker[0][0])}

    def _across(self, sources: list[tuple[Port, Port]]) -> Iterator[tuple[str, str]]:
        """Separators whose source enters and leaves both above or both below, on either side."""
        for part in self.drawing.components.values():
            if part.kind.name != "separator":
                continue
            for flow, back in sources:
                ends = [(part.id, name) for name in (*ABOVE, *BELOW)]
                enters = [end for end in ends if end in self.ahead[flow] - self.before[back]]
                leaves = [end for end in ends if end in self.before[back] - self.ahead[flow]]
                if len(enters) == len(leaves) == 1 and (enters[0][1] in ABOVE) == (leaves[0][1] in ABOVE):
                    yield "fault", part.id


BOTH = {
    "tee": (("a", "b"), ("a", "branch"), ("b", "branch")),
    "isolating_valve": (("a", "b"),),
    "radiator": (("flow", "return"),),
}
ONE = {
    "pump": (("in", "out"),), "check_valve": (("in", "out"),), "pressure_reducing_valve": (("in", "out"),),
    "blending_valve": (("hot", "mixed"), ("cold", "mixed")), "inlet_group": (("in", "balanced_cold"), ("balanced_cold", "out")),
}  # fmt: skip


def drinking(drawing: Drawing, *, blended: bool = True) -> nx.DiGraph[Port]:
    """Where drinking water can go outside stores and heat sources; `blended`: as the cold of a blend too."""
    graph: nx.DiGraph[Port] = nx.DiGraph()
    for part in drawing.components.values():
        graph.add_nodes_from((part.id, port.name) for port in part.kind.ports)
        for a, b in (*BOTH.get(part.kind.name, ()), *ONE.get(part.kind.name, ())):
            if a == "cold" and not blended:
                continue
            graph.add_edge((part.id, a), (part.id, b))
            if part.kind.name in BOTH:
                graph.add_edge((part.id, b), (part.id, a))
        if "store" in part.kind.name:
            graph.add_edge((part.id, "coil_flow"), (part.id, "coil_return"))
            graph.add_edge((part.id, "coil_return"), (part.id, "coil_flow"))
    for pipe in drawing.pipes.values():
        one, two = ((end.part, end.port) for end in pipe.ends if isinstance(end, Joint))
        graph.add_edge(one, two)
        graph.add_edge(two, one)
    return graph


class Drinking:
    """What is expected of drinking water: pairs of connections by part."""

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.graph, self.unblended = drinking(drawing), drinking(drawing, blended=False)
        kinds = {part.id: part.kind.name for part in drawing.components.values()}
        self.stores = [id for id, kind in kinds.items() if "store" in kind]
        self.givers = [*self.stores, *(id for id, kind in kinds.items() if kind == "combination_heat_source")]
        self.taps = [(id, "hot") for id, kind in kinds.items() if kind == "outlet"]
        self.blends = [id for id, kind in kinds.items() if kind == "blending_valve"]
        mains = [(id, "outlet") for id, kind in kinds.items() if kind == "cold_main"]
        self.fed = self._from(iter(mains))
        self.cold = {port for main in mains for port in (main, *nx.descendants(self.unblended, main))}
        self.unvented = {id for id, kind in kinds.items() if kind == "unvented_store"}

    def _from(self, starts: Iterator[Port]) -> set[Port]:
        return {port for start in starts for port in (start, *nx.descendants(self.graph, start))}

    def leads(self, port: Port, *, on: bool = False) -> bool:
        goals = {*self.taps, *((id, "cold") for id in self.givers)} if on else set(self.taps)
        return not goals.isdisjoint({port, *nx.descendants(self.unblended, port)})

    def joined(self, id: str, *ports: str) -> bool:
        return all(Joint(id, port) in self.drawing.joined for port in ports)

    def of_giver(self, id: str) -> frozenset[str] | None:
        """The two connections of a store or a combination that are changed over."""
        cold, hot = (id, "cold"), (id, "hot")
        others = [
            port for port in ("relief", "secondary_return") if id in self.unvented and self.joined(id, port)
        ]
        lacks = self.joined(id, "cold") and cold not in self.fed
        hot_water = self._from((giver, "hot") for giver in self.givers)
        past = self.leads(hot) and (cold in hot_water or not self.leads(cold))
        if lacks and self.joined(id, "hot") and hot in self.fed and not past:
            return frozenset({"cold", "hot"})
        for port in others:
            if lacks and (id, port) in self.fed:
                return frozenset({"cold", port})
        if not self.joined(id, "hot") or hot in self.fed:
            return None
        if not self.leads(hot, on=True):
            for port in (*others, *(("cold",) if lacks else ())):
                if self.leads((id, port)):
                    return frozenset({"hot", port})
        back = (id, "secondary_return")
        if id in self.unvented and back not in hot_water:
            for port in ("relief", "relief_outlet"):
                if self.joined(id, port) and (id, port) in hot_water and not self.leads((id, port), on=True):
                    return frozenset({"secondary_return", port})
        return None

    def _is_hot_on_cold(self, id: str, hot_water: set[Port]) -> bool:
        hot, cold = (id, "hot"), (id, "cold")
        return cold in hot_water and hot not in hot_water and (cold not in self.cold or hot in self.cold)

    def expected(self) -> set[tuple[str, frozenset[str]]]:
        """Each part with the two connections that are changed over."""
        found = {(id, pair) for id in self.givers if (pair := self.of_giver(id)) is not None}
        changed = dict(found)
        drawn = [
            (id, next(iter(pair - {"hot"})))
            if "hot" in (pair := changed.get(id, frozenset()))
            else (id, "hot")
            for id in self.givers
        ]
        hot_water = self._from(iter(drawn))
        for id, _ in self.taps:
            if self.joined(id, "cold") and self._is_hot_on_cold(id, hot_water):
                found.add((id, frozenset({"hot", "cold"})))
        for id in self.blends:
            if not self.joined(id, "hot", "cold", "mixed"):
                continue
            if self._is_hot_on_cold(id, hot_water):
                found.add((id, frozenset({"hot", "cold"})))
            elif self.leads((id, "cold")) and not self.leads((id, "mixed")):
                found.add((id, frozenset({"mixed", "cold"})))
        return found


def all_pairs(drawing: Drawing) -> Iterator[tuple[str, str, str]]:
    """Each part with two of its ports of which one at least has a pipe."""
    for part in drawing.components.values():
        for one, other in itertools.combinations([port.name for port in part.kind.ports], 2):
            if {Joint(part.id, one), Joint(part.id, other)} & drawing.joined.keys():
                yield part.id, one, other
