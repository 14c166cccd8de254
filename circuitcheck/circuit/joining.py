"""Joins a Drawing's ports by its pipes into one graph of water, built once and asked many times."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from functools import cached_property
from typing import Any, NamedTuple, TypeVar

from circuitcheck.circuit.plan import Plan, plan_of
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Device, Role

Kept = TypeVar("Kept")

INSIDE = "~"
"""The name of a point inside a part begins so; no pipe is on it."""


@dataclass(frozen=True, slots=True)
class Placed:
    """A device of a part, with the water at its port and at its other port (-1 for none)."""

    part: str
    device: Device
    node: int
    other: int


class ShutEdge(NamedTuple):
    """A passage that can be shut, between two waters of the contracted graph."""

    a: int
    b: int
    label: str
    part: str
    leg: str
    secured: bool


class Circuit:
    """The graph behind one Drawing.

    A *node* is the water in one pipe (its place in `drawing.pipes`), or at a port without a pipe.
    A *water* is a node of the contracted graph: all nodes joined by ways that pressure always
    passes, which nothing can shut. `edges` are the passages between waters that can be shut.
    """

    def __init__(self, drawing: Drawing) -> None:
        self.drawing = drawing
        self.kept: dict[str, Any] = {}
        """What modules worked out of this circuit alone, by the module's name and what more tells it."""
        self.plans: dict[str, Plan] = {}
        # By part, then by port: two look-ups by text are cheaper than one by a pair. A free end is
        # a key too; no part's id equals a number, so nobody finds it.
        node_of: defaultdict[object, dict[object, int]] = defaultdict(dict)
        number = 0
        for pipe in drawing.pipes.values():
            (part_a, port_a), (part_b, port_b) = pipe.ends
            node_of[part_a][port_a] = number
            node_of[part_b][port_b] = number
            number += 1
        parent = list(range(number))
        shut: list[tuple[int, int, str, str, bool]] = []
        one_way: list[tuple[int, int]] = []
        partly: list[str] = []
        plans = self.plans
        # The hot path of every check: plain loops over ints, nothing called that can be avoided.
        for id, part in drawing.components.items():
            plan = plans[id] = plan_of(part)
            nodes = node_of[id]
            if len(nodes) < plan.port_count:
                partly.append(id)
            for group in plan.open_groups:
                first = -1
                for port in group:
                    u = nodes.get(port, -1)
                    if u < 0:
                        u = nodes[port] = len(parent)
                        parent.append(u)
                    while parent[u] != u:
                        parent[u] = u = parent[parent[u]]
                    if first < 0:
                        first = u
                    elif u < first:
                        parent[first] = u
                        first = u
                    elif first < u:
                        parent[u] = first
            if plan.has_pairs:
                shut += self._shut_ways(id, plan, nodes, parent)
                one_way += self._one_ways(plan, nodes, parent)
        self._node_of = node_of
        self._parent = parent
        self._shut = shut
        self._one_way = one_way
        self.partly_joined = tuple(partly)
        """The parts with a port that no pipe is on, in the order of the drawing."""

    @staticmethod
    def _one_ways(plan: Plan, nodes: dict[object, int], parent: list[int]) -> list[tuple[int, int]]:
        found = []
        for pair in plan.other_pairs:
            ends = []
            for port in pair:
                node = nodes.get(port, -1)
                if node < 0:
                    node = nodes[port] = len(parent)
                    parent.append(node)
                ends.append(node)
            found.append((ends[0], ends[1]))
        return found

    def keep(self, what: str, make: Callable[[], Kept]) -> Kept:
        """What a module works out of a circuit: made when first asked for, then kept with it. `what` is
        the module's name, or begins with it: it rests on no data that the module does not name."""
        if what not in self.kept:
            self.kept[what] = make()
        found: Kept = self.kept[what]
        return found

    def ways_across(self) -> Iterator[tuple[int, int]]:
        """The waters that meet by a way that can be shut or that goes one way only, as pairs."""
        for u, v, *_ in self._shut:
            yield self.water(u), self.water(v)
        for u, v in self._one_way:
            yield self.water(u), self.water(v)

    @cached_property
    def loose_pipes(self) -> tuple[str, ...]:
        """The pipes with a free end, in the order of the drawing."""
        components = self.drawing.components
        if all(part in components for part in self._node_of):
            return ()
        return tuple(pipe.id for pipe in self.drawing.pipes.values() if len(pipe.joints) < 2)

    @staticmethod
    def _shut_ways(
        id: str, plan: Plan, nodes: dict[object, int], parent: list[int]
    ) -> list[tuple[int, int, str, str, bool]]:
        found = []
        for a, b, leg, secured in plan.shut_pairs:
            u, v = nodes.get(a, -1), nodes.get(b, -1)
            if u < 0:
                u = nodes[a] = len(parent)
                parent.append(u)
            if v < 0:
                v = nodes[b] = len(parent)
                parent.append(v)
            found.append((u, v, id, leg, secured))
        return found

    def node(self, part: str, port: str) -> int:
        """The node at a port; one of its own where no pipe joins it."""
        nodes = self._node_of[part]
        found = nodes.get(port, -1)
        if found < 0:
            found = nodes[port] = len(self._parent)
            self._parent.append(found)
        return found

    def nodes_of(self, part: str) -> Mapping[object, int]:
        """The nodes at a part's ports and at the points inside it, by name; those that anything is on."""
        return self._node_of[part]

    @property
    def nodes(self) -> Mapping[object, dict[object, int]]:
        """The same of every part, by its id."""
        return self._node_of

    def water(self, node: int) -> int:
        """The water that a node belongs to."""
        parent = self._parent
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    @cached_property
    def edges(self) -> tuple[ShutEdge, ...]:
        """The passages that can be shut, in the order of the drawing, those that join two waters."""
        found = []
        for u, v, part, leg, secured in self._shut:
            a, b = self.water(u), self.water(v)
            if a != b:
                found.append(ShutEdge(a, b, f"{part}:{leg}" if leg else part, part, leg, secured))
        return tuple(found)

    @cached_property
    def edges_at(self) -> Mapping[int, list[int]]:
        """The edges on each water, as places in `edges`."""
        found: dict[int, list[int]] = {}
        for place, edge in enumerate(self.edges):
            found.setdefault(edge.a, []).append(place)
            found.setdefault(edge.b, []).append(place)
        return found

    @cached_property
    def _devices(self) -> Mapping[Role, tuple[Placed, ...]]:
        found: dict[Role, list[Placed]] = {}
        for part, plan in self.plans.items():
            for device in plan.devices:
                other = self.node(part, device.other) if device.other else -1
                found.setdefault(device.role, []).append(
                    Placed(part, device, self.node(part, device.port), other)
                )
        return {role: tuple(placed) for role, placed in found.items()}

    def devices(self, role: Role) -> tuple[Placed, ...]:
        """Every device with that role, in the order of the drawing."""
        return self._devices.get(role, ())

    @property
    def waters(self) -> list[int]:
        """The water of each node, for loops over many nodes."""
        found: list[int] = self.keep(f"{__name__} waters", list)
        if len(found) < len(self._parent):
            # A node stands for no other unless it is lower: those before are told already.
            parent = self._parent
            for node in range(len(found), len(parent)):
                up = parent[node]
                found.append(node if up == node else found[up])
        return found

    def waters_by_node(self) -> Iterator[tuple[int, int]]:
        """Every node with its water."""
        for node in range(len(self._parent)):
            yield node, self.water(node)

    def pipes_in(self, waters: frozenset[int]) -> tuple[str, ...]:
        """The pipes whose water is one of these, in the order of the drawing."""
        return tuple(
            id for id, water in zip(self.drawing.pipes, self.waters, strict=False) if water in waters
        )

    def parts_in(self, waters: frozenset[int]) -> tuple[str, ...]:
        """The parts with a joined port in one of these waters, in the order of the drawing."""
        found = []
        water_of, node_of = self.waters, self._node_of
        for id in self.plans:
            for port, node in node_of[id].items():
                if water_of[node] in waters and not str(port).startswith(INSIDE):
                    found.append(id)
                    break
        return tuple(found)
