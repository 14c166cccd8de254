"""Where a pump can drive water, and the valve positions that leave it nowhere to.

What counts as a way round for the heat source: a loop through an emitter, a coil or an exchanger
counts with its hand valves open. A loop without one (a bypass) counts only if every hand valve on
it is on every loop of that pump and heat source. Nothing counts that the householder can shut.
"""

from __future__ import annotations


from circuitcheck.circuit.flowways import FlowWays, WayEdge
from circuitcheck.circuit.loops import Loop, Ways, find_loop, simplified, worth
from circuitcheck.circuit.positions import OpenLoop, smallest_without_loop

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


class HeatRound:
    """The ways round of one heat source by any pump on its water."""

    def __init__(self, flow: FlowWays, heat: str) -> None:
        self.flow, self.heat = flow, heat
        self.pumps = flow.pumps_with(heat)
        self.ways = tuple(WayRound(flow.around(heat), pump, heat) for pump in self.pumps)

    def shut_in(self, never_shut: frozenset[str] = NONE) -> frozenset[str] | None:
        """A smallest set of motor and thermostat passages that leaves no way round; None if none."""
        return smallest_without_loop(_first_open(self.ways), never_shut)

    def is_open(self, shut: frozenset[str]) -> bool:
        """Whether a way round is left with these passages shut."""
        return _first_open(self.ways)(shut) is not None

    @property
    def labels(self) -> frozenset[str]:
        """Every motor and thermostat passage on this water that a loop could use."""
        return NONE.union(*(edge.labels for edge in self.flow.around(self.heat)))

    def spoilers(self, shut: frozenset[str]) -> Spoilers:
        """Why bypasses that are there do not help in that position."""
        return _spoilers(self.flow, self.heat, self.pumps, shut)


class PumpRound:
    """All the loops of one pump; its hand valves stand open."""

    def __init__(self, flow: FlowWays, pump: str) -> None:
        self.way = WayRound(flow.around(pump), pump)
        self.labels = NONE.union(*(edge.labels for edge in flow.around(pump)))

    def shut_in(self, never_shut: frozenset[str] = NONE) -> frozenset[str] | None:
        """A smallest set of motor and thermostat passages that leaves no loop; None if none does."""
        return smallest_without_loop(_first_open((self.way,)), never_shut)

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
        return found
    for spring in sorted(springs):
        turned = [
            edge._replace(forward=True, back=True) if spring in edge.springs else edge for edge in open_now
        ]
        if _any_loop(turned, pumps, heat) is not None:
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
