"""What lies on a pump's delivery, and what on its suction: as far as the first emitter on either side.

An emitter, coil or exchanger takes up the pump's pressure, a separator parts one circuit from another,
and a bypass valve stands shut until its set difference; beyond any of them a place is on neither side.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable
from dataclasses import dataclass
from functools import cache
from typing import NamedTuple

from circuitcheck.circuit.joining import Circuit, Placed, join_slots
from circuitcheck.circuit.plan import CONTROLLED, Plan
from circuitcheck.parts.kind import Role, Way


@dataclass(frozen=True, slots=True)
class PumpSides:
    """The reaches that water comes to from a pump's outlet, and those it comes from to the inlet.

    `eased`: the delivery leads to a separator by a way that no control shuts. The pump is never
    driven against shut valves then, and all that is left at the separator is the loss of plain pipe.
    """

    pump: Placed
    reaches: Reaches
    delivery: frozenset[int]
    suction: frozenset[int]
    eased: bool = False

    def delivers_to(self, node: int) -> bool:
        """Whether a node is on the delivery and not, by another way round, on the suction as well."""
        reach = self.reaches.of(node)
        return reach in self.delivery and reach not in self.suction


def pump_sides(circuit: Circuit, pump: Placed) -> PumpSides:
    """The two sides of a pump, walked from its outlet with the water and from its inlet against it."""
    reaches = reaches_of(circuit)
    delivery, suction = reaches.ahead(pump), reaches.behind(pump)
    separators = {
        circuit.node(part, port.name)
        for part in circuit.parts_with(Role.SEPARATES)
        for port in circuit.drawing.components[part].kind.ports
    }
    eased = False
    if any(reaches.of(node) in delivery for node in separators):
        uncontrolled = circuit.keep(f"{__name__} uncontrolled", lambda: Reaches(circuit, controls=False))
        never_shut = uncontrolled.ahead(pump)
        eased = any(uncontrolled.of(node) in never_shut for node in separators)
    return PumpSides(pump, reaches, delivery, suction, eased)


def reaches_of(circuit: Circuit) -> Reaches:
    """The reaches of a circuit whatever its controls shut, worked out once."""
    return circuit.keep(__name__, lambda: Reaches(circuit, controls=True))


class _Arrow(NamedTuple):
    """A passage that water takes only from reach `a` to reach `b`, by the part and ports it is in."""

    a: int
    b: int
    part: str
    ends: frozenset[str]


class Reaches:
    """Reaches of water: nodes between which a pump's pressure passes both ways. Arrows lead from one
    to another. `controls`: whether it passes what a control shuts.
    """

    def __init__(self, circuit: Circuit, *, controls: bool) -> None:
        self.circuit = circuit
        parent = self._parent = list(range(len(circuit.waters)))
        one_way: list[tuple[int, int, str, frozenset[str]]] = []
        ports = circuit.ports
        at, first = ports.at, ports.first
        for plan, alike in circuit.by_plan.items():
            groups, arrows = _links(plan, controls)
            for group in groups:
                join_slots(parent, at, [first[place] for place in alike], group)
            for a, b in arrows:
                ends = frozenset({a, b})
                for place in alike:
                    one, two = at[first[place] + plan.slots[a]], at[first[place] + plan.slots[b]]
                    one_way.append((one, two, ports.ids[place], ends))
        self.leaving: dict[int, list[_Arrow]] = defaultdict(list)
        self.coming: dict[int, list[_Arrow]] = defaultdict(list)
        for start, finish, part, ends in one_way:
            arrow = _Arrow(self.of(start), self.of(finish), part, ends)
            self.leaving[arrow.a].append(arrow)
            self.coming[arrow.b].append(arrow)

    def of(self, node: int) -> int:
        """The reach that a node is in."""
        parent = self._parent
        if node >= len(parent):  # a port that nothing is on, asked about later
            return node
        while parent[node] != node:
            parent[node] = node = parent[parent[node]]
        return node

    def ahead(self, pump: Placed) -> frozenset[int]:
        """What water comes to from a pump's outlet, not through the pump itself."""
        seen = {self.of(pump.other)}
        todo = list(seen)
        while todo:
            for arrow in self._others(self.leaving.get(todo.pop(), ()), pump):
                if arrow.b not in seen:
                    seen.add(arrow.b)
                    todo.append(arrow.b)
        return frozenset(seen)

    def behind(self, pump: Placed) -> frozenset[int]:
        """Where water comes from to a pump's inlet, not through the pump itself."""
        seen = {self.of(pump.node)}
        todo = list(seen)
        while todo:
            for arrow in self._others(self.coming.get(todo.pop(), ()), pump):
                if arrow.a not in seen:
                    seen.add(arrow.a)
                    todo.append(arrow.a)
        return frozenset(seen)

    @staticmethod
    def _others(arrows: Iterable[_Arrow], pump: Placed) -> Iterable[_Arrow]:
        own = frozenset({pump.device.port, pump.device.other})
        return (arrow for arrow in arrows if arrow.part != pump.part or arrow.ends != own)


_Links = tuple[tuple[tuple[int, ...], ...], tuple[tuple[str, str], ...]]


@cache
def _links(plan: Plan, controls: bool) -> _Links:
    """The slots of a part between which a pump's pressure passes both ways, and its arrows by port."""
    if any(device.role is Role.SEPARATES for device in plan.devices):
        return (), ()
    groups: list[tuple[str, ...]] = []
    arrows: list[tuple[str, str]] = []
    for each in plan.flow_passages:
        passage = each.passage
        if passage.gives_heat or passage.way is Way.SPRING:
            continue
        if passage.way in CONTROLLED and not controls:
            continue
        if passage.driven or each.pumps or passage.way in (Way.ONE_WAY, Way.REDUCING):
            arrows.append((passage.a, passage.b))
            if not (passage.driven or passage.way in (Way.ONE_WAY, Way.REDUCING)):
                arrows.append((passage.b, passage.a))
            continue
        joined = [group for group in groups if passage.a in group or passage.b in group]
        whole = dict.fromkeys([*(port for group in joined for port in group), passage.a, passage.b])
        groups = [group for group in groups if group not in joined] + [tuple(whole)]
    by_slot = tuple(tuple(plan.slots[port] for port in group) for group in groups)
    return by_slot, tuple(arrows)
