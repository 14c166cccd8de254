"""A loop that nothing can shut, seen near a pump: a short way back to it, walked from part to part.

It is the bypass of most sound circuits. A short walk finds it at the cost of the few parts beside the pump, where
to contract the circuit takes a pass over all of it.
"""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.circuit.plan import FlowPassage
from circuitcheck.parts.kind import Role, Way
from circuitcheck.wanted import go_on

MOST_WATERS = 400
"""The walk gives up beyond so many pipes; a bypass stands within a few of its pump."""


def seen_near(circuit: Circuit, pump: str, heat: str = "") -> bool:
    """Whether a shortest way leads from the pump's outlet to its inlet (through the heat source, where one is
    named) by what no control shuts, nor anybody's hand but the pump's own valves and an emitter's.

    False proves nothing. A shortest way enters no pipe twice, and so passes no port twice.
    """
    go_on()
    pumps: dict[str, list[Placed]] = circuit.keep(__name__, lambda: _by_part(circuit))
    return any(_leads_round(circuit, place, heat) for place in pumps.get(pump, ()))


def _by_part(circuit: Circuit) -> dict[str, list[Placed]]:
    found: dict[str, list[Placed]] = {}
    for place in circuit.devices(Role.PUMPS):
        if place.other >= 0:
            found.setdefault(place.part, []).append(place)
    return found


def _leads_round(circuit: Circuit, pump: Placed, heat: str) -> bool:
    goal, start = pump.node, pump.other
    heated = pump.part == heat and _gives_heat(circuit, pump)
    # By node: whether the heat source is on the way there.
    passed = {start: heated or not heat}
    todo = [start]
    for here in todo:
        if len(todo) > MOST_WATERS:
            return False
        for there, part, passage in _onward(circuit, here):
            if there < 0 or there in passed or part == pump.part:
                continue
            passed[there] = passed[here] or (passage.heats and part == heat)
            if there == goal:
                return passed[there]
            todo.append(there)
    return False


def _gives_heat(circuit: Circuit, pump: Placed) -> bool:
    ends = (pump.device.port, pump.device.other)
    return any(each.heats and (each.a, each.b) == ends for each in circuit.plans[pump.part].flow_passages)


def _onward(circuit: Circuit, node: int) -> Iterator[tuple[int, str, FlowPassage]]:
    """The nodes that water can come to from a node of a pipe, with the part and the passage between."""
    ports = circuit.ports
    if node >= len(circuit.drawing.pipes):
        return  # a point inside a part, or a port that nothing is on: left to a closer look
    for place in dict.fromkeys(ports.sides[2 * node : 2 * node + 2]):
        if place < 0:
            continue
        first = ports.first[place]
        for a, b, passage in ports.plans[place].flow_slots:
            if not passage.never_shut or (passage.passage.way is Way.HAND and not passage.passage.gives_heat):
                continue
            one, two = ports.at[first + a], ports.at[first + b]
            if one == node and not passage.inward:
                yield two, ports.ids[place], passage
            if two == node and passage.both:
                yield one, ports.ids[place], passage
