"""Every way of a circuit as a span between numbered vertices, worked out once for all who look for loops.

A vertex is the node of a pipe. A port with one way on is in series with its pipe. A part with three
ports, all open to one another, is one vertex, as a loop can pass it only once; where such parts, or
ports with several ways on, are joined to one another, the pipe between them is a span of its own.
"""

from __future__ import annotations

from collections.abc import Mapping
from functools import cached_property

from circuitcheck.circuit.contracting import BOTH
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.plan import FlowPassage, Plan


class Spans:
    """The spans, by number: where each starts and ends, the part it leads through and the passage.
    A pipe's has no part and no passage."""

    def __init__(self, circuit: Circuit) -> None:
        # Keeps nothing of the circuit itself, so that one that is gone can be forgotten.
        self.starts: list[int] = []
        self.ends: list[int] = []
        self.parts: list[str] = []
        self.passages: list[FlowPassage | None] = []
        self._ports = circuit.ports
        self._count = len(circuit.waters)
        self._vertex = list(range(self._count))
        self._claimed = bytearray(self._count)
        self._further: list[int] = []
        self._may_come_back = any(each.inward for plan in circuit.by_plan for each in plan.flow_passages)
        self._own: dict[int, int] = {}  # by slot
        self.giving: list[int] = []
        """The spans by which heat is given off."""
        self._junctions()
        self._pass_through(circuit.by_plan)

    @cached_property
    def ways(self) -> list[int]:
        """The ways that water can take each span."""
        return [BOTH if each is None else each.ways for each in self.passages]

    @cached_property
    def inward(self) -> frozenset[int]:
        """The spans by which water that has gone round comes back into a store."""
        if not self._may_come_back:
            return frozenset()
        return frozenset(span for span, each in enumerate(self.passages) if each is not None and each.inward)

    @property
    def vertices(self) -> int:
        """How many vertices there are."""
        return self._count + len(self._further)

    def vertex(self, part: str, port: str) -> int | None:
        """The vertex of a port; None where nothing leads to it."""
        slot = self._ports.slot(part, port)
        own = self._own.get(slot)
        if own is not None:
            return own
        node = self._ports.at[slot] if slot >= 0 else -1
        return self._vertex[node] if 0 <= node < self._count else None

    def node(self, vertex: int) -> int:
        """A node of the circuit whose water is at a vertex."""
        return vertex if vertex < self._count else self._further[vertex - self._count]

    @property
    def nodes_at_start(self) -> list[int]:
        """The same for where each span starts, of thousands of them."""
        count, further = self._count, self._further
        return [start if start < count else further[start - count] for start in self.starts]

    def _junctions(self) -> None:
        """Give junctions and ports with several ways on their vertices."""
        vertex, claimed, at = self._vertex, self._claimed, self._ports.at
        base = 0
        for plan in self._ports.plans:
            first = base
            base += plan.width
            if not plan.is_junction:
                if plan.fork_slots:
                    self._fork(first, plan)
                continue
            mine = -1
            taken = []
            for node in at[first:base]:
                if claimed[node]:
                    taken.append(node)
                    continue
                claimed[node] = 1
                if mine < 0:
                    mine = node
                else:
                    vertex[node] = mine
            if taken:
                if mine < 0:
                    mine = self._another(taken[0])
                for node in taken:
                    self._pipe(vertex[node], mine)

    def _fork(self, first: int, plan: Plan) -> None:
        for _, offset in plan.fork_slots:
            slot = first + offset
            node = self._ports.at[slot]
            if node < 0:
                continue
            if self._claimed[node]:
                self._own[slot] = self._another(node)
                self._pipe(self._vertex[node], self._own[slot])
            self._claimed[node] = 1

    def _another(self, node: int) -> int:
        self._further.append(node)
        return self.vertices - 1

    def _pipe(self, start: int, end: int) -> None:
        self.starts.append(start)
        self.ends.append(end)
        self.parts.append("")
        self.passages.append(None)

    def _pass_through(self, by_plan: Mapping[Plan, list[int]]) -> None:
        """A span for each passage of each part that is no junction."""
        ports, vertex, own = self._ports, self._vertex, self._own
        ids, first, at = ports.ids, ports.first, ports.at
        for plan, alike in by_plan.items():
            for a, b, passage in plan.flow_slots if not plan.is_junction else ():
                for offset, ends in ((a, self.starts), (b, self.ends)):
                    if own:
                        slots = [first[place] + offset for place in alike]
                        ends += [own.get(slot, vertex[at[slot]]) for slot in slots]
                    else:
                        ends += [vertex[at[first[place] + offset]] for place in alike]
                if passage.passage.gives_heat:
                    self.giving += range(len(self.parts), len(self.parts) + len(alike))
                self.parts += [ids[place] for place in alike]
                self.passages += [passage] * len(alike)


def spans_of(circuit: Circuit) -> Spans:
    """The spans of a circuit."""
    return circuit.keep(__name__, lambda: Spans(circuit))
