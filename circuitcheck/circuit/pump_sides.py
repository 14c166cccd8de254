"""What lies on a pump's delivery, and what on its suction: as far as the first emitter on either side.

An emitter, coil or exchanger takes up the pump's pressure, a separator parts one circuit from another,
and a bypass valve stands shut until its set difference; beyond any of them a place is on neither side.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.circuit.walking import MayPass, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Role, Way


@dataclass(frozen=True, slots=True)
class PumpSides:
    """The nodes that water comes to from a pump's outlet, and those it comes from to the inlet.

    `eased`: the delivery leads to a separator by a way that no control shuts. The pump is never
    driven against shut valves then, and all that is left at the separator is the loss of plain pipe.
    """

    pump: Placed
    delivery: frozenset[int]
    suction: frozenset[int]
    eased: bool = False

    def delivers_to(self, node: int) -> bool:
        """Whether a node is on the delivery and not, by another way round, on the suction as well."""
        return node in self.delivery and node not in self.suction


_CONTROLLED = frozenset({Way.MOTOR, Way.THERMOSTAT})


def pump_sides(circuit: Circuit, pump: Placed) -> PumpSides:
    """The two sides of a pump, walked from its outlet with the water and from its inlet against it."""
    outlet, inlet = Joint(pump.part, pump.device.other), Joint(pump.part, pump.device.port)
    ahead = walk(circuit, [outlet], _may_pass(circuit, pump, with_water=True)).came
    behind = walk(circuit, [inlet], _may_pass(circuit, pump, with_water=False)).came
    eased = False
    if any(_separates(circuit, joint.part) for joint in ahead):
        never_shut = walk(circuit, [outlet], _may_pass(circuit, pump, with_water=True, controls=False)).came
        eased = any(_separates(circuit, joint.part) for joint in never_shut)
    return PumpSides(pump, _nodes(circuit, ahead), _nodes(circuit, behind), eased)


def _nodes(circuit: Circuit, joints: Iterable[Joint]) -> frozenset[int]:
    return frozenset(circuit.node(joint.part, joint.port) for joint in joints)


def _separates(circuit: Circuit, part: str) -> bool:
    return any(device.role is Role.SEPARATES for device in circuit.plans[part].devices)


def _may_pass(circuit: Circuit, pump: Placed, with_water: bool, *, controls: bool = True) -> MayPass:
    own = {pump.device.port, pump.device.other}

    def may_pass(part: str, passage: Passage, forward: bool) -> bool:
        if passage.gives_heat or passage.way is Way.SPRING:
            return False
        if part == pump.part and {passage.a, passage.b} == own:
            return False
        if _separates(circuit, part) or (passage.way in _CONTROLLED and not controls):
            return False
        has_arrow = passage.driven or passage.way in (Way.ONE_WAY, Way.REDUCING)
        return forward == with_water or not has_arrow

    return may_pass
