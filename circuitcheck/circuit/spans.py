"""Every way of a circuit as a span between numbered vertices, worked out once for all who look for loops.

A vertex is the node of a pipe. A port with one way on is in series with its pipe. A part with three
ports, all open to one another, is one vertex, as a loop can pass it only once; where such parts, or
ports with several ways on, are joined to one another, the pipe between them is a span of its own.
"""

from __future__ import annotations

from circuitcheck.circuit.joining import INSIDE, Circuit
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
        self._nodes = circuit.nodes
        self._count = len(circuit.waters)
        self._vertex = list(range(self._count))
        self._claimed = bytearray(self._count)
        self._further: list[int] = []
        self._own: dict[tuple[str, str], int] = {}
        self._pass_through(self._junctions(circuit))

    @property
    def vertices(self) -> int:
        """How many vertices there are."""
        return self._count + len(self._further)

    def vertex(self, part: str, port: str) -> int | None:
        """The vertex of a port; None where nothing leads to it."""
        own = self._own.get((part, port))
        if own is not None:
            return own
        node = self._nodes[part].get(port, -1) if part in self._nodes else -1
        return self._vertex[node] if 0 <= node < self._count else None

    def node(self, vertex: int) -> int:
        """A node of the circuit whose water is at a vertex."""
        return vertex if vertex < self._count else self._further[vertex - self._count]

    def _junctions(self, circuit: Circuit) -> list[tuple[str, Plan]]:
        """Give junctions and ports with several ways on their vertices; the parts that are no junction."""
        others = []
        vertex, claimed = self._vertex, self._claimed
        for part, plan in circuit.plans.items():
            if not plan.is_junction:
                others.append((part, plan))
                if plan.forks:
                    self._fork(part, plan)
                continue
            nodes = self._nodes[part]
            mine = -1
            taken = []
            for port in plan.forks:
                node = nodes[port]
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
        return others

    def _fork(self, part: str, plan: Plan) -> None:
        nodes = self._nodes[part]
        for port in plan.forks:
            node = nodes.get(port, -1)
            if node < 0 or port.startswith(INSIDE):
                continue
            if self._claimed[node]:
                self._own[part, port] = self._another(node)
                self._pipe(self._vertex[node], self._own[part, port])
            self._claimed[node] = 1

    def _another(self, node: int) -> int:
        self._further.append(node)
        return self.vertices - 1

    def _pipe(self, start: int, end: int) -> None:
        self.starts.append(start)
        self.ends.append(end)
        self.parts.append("")
        self.passages.append(None)

    def _pass_through(self, parts: list[tuple[str, Plan]]) -> None:
        """A span for each passage of these parts."""
        vertex, own, nodes_of = self._vertex, self._own, self._nodes
        starts, ends, names, passages = self.starts, self.ends, self.parts, self.passages
        for part, plan in parts:
            nodes = nodes_of[part]
            for each in plan.flow_passages:
                a, b = vertex[nodes[each.a]], vertex[nodes[each.b]]
                if own:
                    a, b = own.get((part, each.a), a), own.get((part, each.b), b)
                starts.append(a)
                ends.append(b)
                names.append(part)
                passages.append(each)


def spans_of(circuit: Circuit) -> Spans:
    """The spans of a circuit."""
    return circuit.keep(__name__, lambda: Spans(circuit))
