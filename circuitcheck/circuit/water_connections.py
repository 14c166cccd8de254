"""Which two connections are changed over of a store, of what heats drinking water on its way, of a tap.

What tells it is where water comes from and where it goes: cold water from a main or a cistern, hot water
to a tap. Walked are all of these ways once, for every store at once, and through no store and no heat
source: what stands on a connection is what its own pipe leads to.
"""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator
from enum import Enum, auto
from functools import cached_property
from typing import NamedTuple

from circuitcheck.circuit.plan import SECONDARY
from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.circuit.waterways import Step
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role


class Tells(Enum):
    """What tells that two connections are changed over."""

    FED = auto()
    """Cold water comes to the other one, and none to the cold."""
    DRAWN = auto()
    """Hot water is drawn from the other one, and from the right one it cannot be."""
    COMES_BACK = auto()
    """A secondary circuit comes back by the other one, and not by the secondary return."""
    HOT_ON_COLD = auto()
    """Hot water comes to the cold of a tap or of a blending valve, and none to its hot."""


class Changed(NamedTuple):
    """Two connections of a part that are changed over: `right` has what belongs on `other`."""

    right: Joint
    other: Joint
    tells: Tells


SpokenFor = Callable[[], Collection[frozenset[Joint]]]
"""Pairs of connections of which another has told already; asked only where there is something to tell."""


class WaterConnections:
    """What comes to the connections of stores and heaters, and where water drawn from them goes."""

    def __init__(self, ways: Supplies, spoken_for: SpokenFor) -> None:
        self.ways = ways
        self._spoken_for = spoken_for
        self._heats = ways.circuit.parts_with(Role.HEATS)
        self._into_blended = _cold_into_blends(ways)

    @cached_property
    def givers(self) -> tuple[Giver, ...]:
        """The stores and the heat sources that heat drinking water on its way; a plate is none: it heats
        by either way."""
        return tuple(each for each in self.ways.givers if each.stores or each.part in self._heats)

    def changed(self, giver: Giver) -> Changed | None:
        """The two connections of a giver that are changed over; None where it is not so, or not told."""
        for found in self._found(giver):
            if frozenset({found.right, found.other}) not in self._spoken_for():
                return found
        return None

    def _found(self, giver: Giver) -> Iterator[Changed]:
        joined = self.ways.circuit.drawing.joined
        cold, hot = giver.inlet, self.hot_of(giver)
        others = [port for port in giver.ports if port in joined and port != hot]
        if cold in joined and cold not in self._fed:
            for port in (hot, *others):
                if port in self._fed and not (port == hot and self._may_be_right(cold, hot)):
                    yield Changed(cold, port, Tells.FED)
        if hot not in joined or hot in self._fed:
            return
        if cold in joined and cold not in self._fed:
            others.append(cold)
        for port in others:
            if self._is_drawn(port) and hot not in self._leads_on:
                yield Changed(hot, port, Tells.DRAWN)
        back = Joint(giver.part, SECONDARY)
        if back not in giver.ports:
            return
        for port in (*others, *self._of_no_use(giver)):
            if (
                port not in (cold, back)
                and port in self._hot
                and port not in self._leads_on
                and back not in self._hot
            ):
                yield Changed(back, port, Tells.COMES_BACK)

    def _may_be_right(self, cold: Joint, hot: Joint) -> bool:
        """Whether a giver may be right though cold water comes to its hot: a way past it leads there, its hot
        goes on to taps, and what comes to its cold another one has heated before."""
        return self._is_drawn(hot) and (cold in self._hot or not self._is_drawn(cold))

    def _of_no_use(self, giver: Giver) -> Iterator[Joint]:
        """The ports of a giver that have a pipe, though nothing inside is joined to them as it is fitted."""
        circuit = self.ways.circuit
        plan, drawing = circuit.plans[giver.part], circuit.drawing
        used = {port for passage in plan.passages for port in (passage.a, passage.b)}
        used |= {port for device in plan.devices for port in (device.port, device.other)}
        for port in drawing.components[giver.part].kind.ports:
            if port.name not in used and Joint(giver.part, port.name) in drawing.joined:
                yield Joint(giver.part, port.name)

    def changed_at_taps(self) -> Iterator[Changed]:
        """The hot and the cold of taps that are changed over, and the connections of blending valves."""
        joined = self.ways.circuit.drawing.joined
        for place in self.ways.outlets:
            hot, cold = Joint(place.part, place.device.port), Joint(place.part, place.device.other)
            # A tap may have but one pipe, and on its cold no check of hot water looks for it.
            if cold in joined and self._is_hot_on_cold(hot, cold):
                yield Changed(hot, cold, Tells.HOT_ON_COLD)
        hots = {(part, mixed): hot for part, hot, mixed in self.ways.blends}
        for part, cold_port, mixed_port in sorted(self._into_blended):
            hot = Joint(part, hots[part, mixed_port])
            cold, mixed = Joint(part, cold_port), Joint(part, mixed_port)
            if hot not in joined or cold not in joined or mixed not in joined:
                continue
            if self._is_hot_on_cold(hot, cold):
                yield Changed(hot, cold, Tells.HOT_ON_COLD)
            elif self._is_drawn(cold) and not self._is_drawn(mixed):
                yield Changed(mixed, cold, Tells.DRAWN)

    def _is_hot_on_cold(self, hot: Joint, cold: Joint) -> bool:
        """Whether hot water comes to the cold and not to the hot, and it is not that some of it strays: then cold
        comes to the cold too, and none to the hot."""
        strays = cold in self._cold and hot not in self._cold
        return cold in self._heated and hot not in self._heated and not strays

    def hot_of(self, giver: Giver) -> Joint:
        """The connection that hot water is drawn from."""
        return (
            Joint(giver.part, self.ways.stores[giver.part].device.other) if giver.stores else giver.ports[0]
        )

    def _is_drawn(self, port: Joint) -> bool:
        return port in self._leads_to_taps

    @cached_property
    def _feeds(self) -> tuple[Joint, ...]:
        """Where cold water comes from: mains and cisterns."""
        cisterns = self.ways.circuit.devices(Role.FEEDS)
        return (*self.ways.mains, *(Joint(place.part, place.device.port) for place in cisterns))

    @cached_property
    def _fed(self) -> Collection[Joint]:
        """Every port that cold water comes to from a main or a cistern."""
        return self.ways.walk(self._feeds, self._goes)

    @cached_property
    def _cold(self) -> Collection[Joint]:
        """Those of them that it comes to otherwise than as the cold that is blended in."""
        return self.ways.walk(self._feeds, self._goes_unblended)

    @cached_property
    def _hot(self) -> Collection[Joint]:
        """Every port that water comes to from a giver's hot connection."""
        return self.ways.walk(map(self.hot_of, self.givers), self._goes)

    @cached_property
    def _heated(self) -> Collection[Joint]:
        """Every port that hot water comes to from where each giver is drawn from as it is joined."""
        changed = {giver: self.changed(giver) for giver in self.givers}
        if not any(changed.values()):
            return self._hot
        return self.ways.walk((self._drawn_from(giver, each) for giver, each in changed.items()), self._goes)

    def _drawn_from(self, giver: Giver, changed: Changed | None) -> Joint:
        hot = self.hot_of(giver)
        if changed is None or hot not in changed:
            return hot
        return changed.right if changed.other == hot else changed.other

    @cached_property
    def _leads_to_taps(self) -> Collection[Joint]:
        """Every port that water goes from to the hot of a tap."""
        return self._before(Joint(place.part, place.device.port) for place in self.ways.outlets)

    @cached_property
    def _leads_on(self) -> Collection[Joint]:
        """Those, and every port that water goes from into another giver, to be heated further."""
        taps = [Joint(place.part, place.device.port) for place in self.ways.outlets]
        return self._before([*taps, *(giver.inlet for giver in self.ways.givers)])

    def _goes(self, step: Step) -> bool:
        """Whether water goes on by this step: against no arrow and no pump."""
        if step.upstream or (not step.pipe and step.start.part in self._heats):
            return False
        return self.ways.drawn_outside(step)

    def _before(self, goals: Iterable[Joint]) -> Collection[Joint]:
        """Every port from which water goes to one of these, not as the cold that is blended with it."""
        came = dict.fromkeys(goals)
        todo = list(came)
        for here in todo:
            for step in self.ways.steps(here):
                there = step.finish
                if there not in came and any(
                    back.finish == here and back.pipe == step.pipe and self._goes_unblended(back)
                    for back in self.ways.steps(there)
                ):
                    came[there] = None
                    todo.append(there)
        return came

    def _goes_unblended(self, step: Step) -> bool:
        return self._goes(step) and not self.ways.through(step, self._into_blended)


def _cold_into_blends(ways: Supplies) -> frozenset[tuple[str, str, str]]:
    """The passages by which cold water enters a blending valve: part, cold, mixed."""
    return frozenset(
        (part, passage.a, mixed)
        for part, hot, mixed in ways.blends
        for passage in ways.circuit.plans[part].passages
        if passage.b == mixed and passage.a != hot
    )
