"""Where a pump can drive water, and the valve positions that leave it nowhere to.

What counts as a way round for the heat source: a loop through an emitter, a coil or an exchanger
counts with its hand valves open. A loop without one (a bypass) counts only if every hand valve on
it is on every loop of that pump and heat source. Nothing counts that the householder can shut.
"""

from __future__ import annotations

from enum import Enum
from functools import cached_property

from circuitcheck.circuit.blocks import CLOSING, Block, blocks
from circuitcheck.circuit.flowways import FlowWays, WayEdge, Ways
from circuitcheck.circuit.isolation import TooLargeError
from circuitcheck.circuit.labels import other_leg
from circuitcheck.circuit.loops import Loop, find_loop, simplified, worth
from circuitcheck.circuit.positions import OpenLoop, smallest_without_loop
from circuitcheck.circuit.round_about import seen_near

NONE: frozenset[str] = frozenset()


class WayRound:
    """Loops of one pump, through one heat source where named, that count as a way round."""

    def __init__(self, edges: tuple[WayEdge, ...], pump: str, heat: str = "") -> None:
        self.pump, self.heat = pump, heat
        self.spoiled = _hands_not_on_every_loop(edges, pump, heat) if heat else NONE
        counted = [edge for edge in edges if not (heat and edge.householder)]
        self.edges = simplified(counted, self.spoiled)
        self._clean = Ways([edge for edge in self.edges if worth(edge, self.spoiled) > 0])
        self._all = Ways(self.edges)

    def open_loop(self, shut: frozenset[str]) -> Loop | None:
        """A loop that is open with these passages shut, or None."""
        found = find_loop(self._clean.without(shut), self.pump, self.heat)
        if found is None and len(self._clean.edges) < len(self._all.edges):
            found = find_loop(self._all.without(shut), self.pump, self.heat, must_emit=True)
        return found

    def shut_in(self, never_shut: frozenset[str]) -> frozenset[str] | None:
        """A smallest set of passages that leaves no loop; None where every position leaves one."""
        found = blocks(self.edges, self.pump, self.heat)
        if found is None:
            return NONE if self.open_loop(NONE) is None else self._as_a_whole(never_shut)
        if self.heat and not any(block.holds_heat for block in found):
            return NONE
        shut_off = [self._smallest(block, Through.ANY, never_shut) for block in found]
        candidates = [each for each in shut_off if each is not None]
        if len(self._clean.edges) < len(self._all.edges):
            # No emitter on any way left, and in one block not even a plain way that counts.
            plain = [self._smallest(block, Through.EMITTER, never_shut) for block in found]
            spoiled = [self._smallest(block, Through.COUNTED, never_shut) for block in found]
            for place, instead in enumerate(spoiled):
                others = [each for number, each in enumerate(plain) if number != place]
                if instead is not None and all(each is not None for each in others):
                    candidates.append(NONE.union(instead, *(each for each in others if each is not None)))
        if any(other_leg(label) in each for each in candidates for label in each):
            return self._as_a_whole(never_shut)
        return min(candidates, key=lambda each: (len(each), sorted(each)), default=None)

    def _as_a_whole(self, never_shut: frozenset[str]) -> frozenset[str] | None:
        return smallest_without_loop(_first_open((self,)), never_shut)

    def _smallest(self, block: Block, through: Through, never_shut: frozenset[str]) -> frozenset[str] | None:
        """A smallest set that leaves no such way through a block; None where each position leaves one."""
        heat = self.heat if block.holds_heat else ""
        clean = Ways([edge for edge in block.ways.edges if edge.pumps or worth(edge, self.spoiled) > 0])

        def open_way(shut: frozenset[str]) -> frozenset[str] | None:
            found = None
            if through is Through.COUNTED:
                found = find_loop(clean.without(shut), CLOSING, heat)
            if found is None:
                must_emit = through is not Through.ANY
                found = find_loop(block.ways.without(shut), CLOSING, heat, must_emit=must_emit)
            return None if found is None else found.labels

        return smallest_without_loop(open_way, never_shut)


class Through(Enum):
    """What a way through a block must be: any, one with an emitter, or one that counts by itself."""

    ANY = "any"
    EMITTER = "emitter"
    COUNTED = "counted"


def _hands_not_on_every_loop(edges: tuple[WayEdge, ...], pump: str, heat: str) -> frozenset[str]:
    found = set[str]()
    for place, edge in enumerate(edges):
        if edge.hands and not edge.emits:
            others = Ways(edges[:place] + edges[place + 1 :])
            if find_loop(others, pump, heat) is not None:
                found |= edge.hands
    return frozenset(found)


def _first_open(ways: tuple[WayRound, ...]) -> OpenLoop:
    def open_loop(shut: frozenset[str]) -> frozenset[str] | None:
        for way in ways:
            loop = way.open_loop(shut)
            if loop is not None:
                return loop.labels
        return None

    return open_loop


class Spoilers:
    """Parts that look like a way round and are none, by reason."""

    def __init__(self) -> None:
        self.backwards: tuple[str, ...] = ()
        self.shut_by_hand: tuple[str, ...] = ()
        self.householder: tuple[str, ...] = ()
        self.beyond_valves: tuple[str, ...] = ()
        self.round_pump_only: tuple[str, ...] = ()


def always_open(flow: FlowWays, pump: str, heat: str = "") -> bool:
    """Whether a loop that nothing can shut is seen at once; False proves nothing.

    Most sound circuits have one, by their bypass, and then need no closer look.
    """
    if seen_near(flow.circuit, pump, heat):
        return True
    try:
        loop = find_loop(flow.never_shut, pump, heat)
    except TooLargeError:
        return False
    return loop is not None and all(edge.hands <= {pump} for edge in loop.edges)


class HeatRound:
    """The ways round of one heat source by any pump on its water."""

    def __init__(self, flow: FlowWays, heat: str) -> None:
        self.flow, self.heat = flow, heat

    @cached_property
    def always_open(self) -> bool:
        """Whether some pump has a loop through it that nothing can shut, seen at once."""
        return any(always_open(self.flow, pump, self.heat) for pump in self.flow.pumps)

    @cached_property
    def pumps(self) -> tuple[str, ...]:
        """The pumps on its water."""
        return self.flow.pumps_with(self.heat)

    @cached_property
    def ways(self) -> tuple[WayRound, ...]:
        """Its ways round, by pump."""
        return tuple(WayRound(self.flow.around(self.heat), pump, self.heat) for pump in self.pumps)

    def shut_in(self, never_shut: frozenset[str] = NONE) -> frozenset[str] | None:
        """A smallest set of motor and thermostat passages that leaves no way round; None if none."""
        if self.always_open:
            return None
        if len(self.ways) == 1:
            return self.ways[0].shut_in(never_shut)
        return smallest_without_loop(_first_open(self.ways), never_shut)

    def is_open(self, shut: frozenset[str]) -> bool:
        """Whether a way round is left with these passages shut."""
        return _first_open(self.ways)(shut) is not None

    @property
    def labels(self) -> frozenset[str]:
        """Every motor and thermostat passage on this water, on a dead end too."""
        return self.flow.labels_with(self.heat)

    def spoilers(self, shut: frozenset[str]) -> Spoilers:
        """Why bypasses that are there do not help in that position."""
        return _spoilers(self.flow, self.heat, self.pumps, shut)


class PumpRound:
    """All the loops of one pump; its hand valves stand open."""

    def __init__(self, flow: FlowWays, pump: str) -> None:
        self.flow, self.pump = flow, pump

    @cached_property
    def always_open(self) -> bool:
        """Whether it has a loop that nothing can shut, seen at once."""
        return always_open(self.flow, self.pump)

    @cached_property
    def stands_in_a_ring(self) -> bool:
        """Whether pipes lead round from its outlet to its inlet at all, whichever way water can go."""
        edges = [
            edge if self.pump in edge.pumps else edge._replace(forward=True, back=True)
            for edge in self.flow.as_drawn(self.pump)
        ]
        return find_loop(Ways(edges), self.pump) is not None

    @cached_property
    def way(self) -> WayRound:
        """Its loops."""
        return WayRound(self.flow.around(self.pump), self.pump)

    @cached_property
    def labels(self) -> frozenset[str]:
        """Every motor and thermostat passage on this water, on a dead end too."""
        return self.flow.labels_with(self.pump)

    def shut_in(self, never_shut: frozenset[str] = NONE) -> frozenset[str] | None:
        """A smallest set of motor and thermostat passages that leaves no loop; None if none does."""
        return None if self.always_open else self.way.shut_in(never_shut)

    def is_open(self, shut: frozenset[str]) -> bool:
        """Whether a loop is left with these passages shut."""
        return self.way.open_loop(shut) is not None


def _spoilers(flow: FlowWays, heat: str, pumps: tuple[str, ...], shut: frozenset[str]) -> Spoilers:
    """Ask of the same circuit, changed in one respect each time, whether a loop is then open."""
    found = Spoilers()
    edges = flow.around(heat)
    springs = NONE.union(*(edge.springs for edge in edges))
    open_now = [edge for edge in edges if not edge.labels & shut]
    loop = _any_loop(open_now, pumps, heat)
    if loop is not None:
        hands = NONE.union(*(edge.hands for edge in loop.edges if not edge.emits))
        found.shut_by_hand = tuple(sorted(hands - set(pumps)))
        found.householder = tuple(sorted(NONE.union(*(edge.householder for edge in loop.edges))))
    for spring in sorted(springs):
        if _loop_with_spring(open_now, pumps, heat, spring):
            continue  # a loop of its own, that a hand spoils
        turned = [
            edge._replace(forward=True, back=True) if spring in edge.springs else edge for edge in open_now
        ]
        if _loop_with_spring(turned, pumps, heat, spring):
            found.backwards += (spring,)
        elif _loop_with_spring(edges, pumps, heat, spring):
            found.beyond_valves += (spring,)
        elif _loop_with_spring(open_now, pumps, "", spring):
            found.round_pump_only += (spring,)
    return found


def _any_loop(edges: list[WayEdge], pumps: tuple[str, ...], heat: str) -> Loop | None:
    ways = Ways(edges)
    for pump in pumps:
        loop = find_loop(ways, pump, heat)
        if loop is not None:
            return loop
    return None


def _loop_with_spring(
    edges: list[WayEdge] | tuple[WayEdge, ...], pumps: tuple[str, ...], heat: str, spring: str
) -> bool:
    """Whether some loop of a pump (and the heat source) takes in that bypass."""
    ways = Ways([edge._replace(emits=spring in edge.springs) for edge in edges])
    return any(find_loop(ways, pump, heat, must_emit=True) is not None for pump in pumps)
