"""What feeds a mains-fed store, and what pressure the reducing valves on the way leave it."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.checks.store_water import StoreWater, store_waters
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.walking import Walk, against_the_flow, walk
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Passage, Role, Way
from circuitcheck.sizing.discharge import within

SETTING = "set_pressure_bar"


@dataclass(frozen=True, slots=True)
class Reduced:
    """The pressure that reducing valves hold a store's feed to: the highest that any way lets in.

    `bar` None: not known, for want of `missing`. `part`: the valve it is set at.
    """

    bar: float | None
    part: str = ""
    missing: tuple[str, ...] = ()


@dataclass(frozen=True)
class Feed:
    """The ways by which water comes to one store."""

    case: Case
    water: StoreWater

    @cached_property
    def mains(self) -> tuple[str, ...]:
        """The mains whose water comes to the store."""
        reached = self._back(frozenset()).steps
        return tuple(
            place.part
            for place in self.case.circuit.devices(Role.MAIN)
            if Joint(place.part, place.device.port) in reached
        )

    @cached_property
    def reducers(self) -> tuple[Placed, ...]:
        """The reducing valves whose water comes to the store, in the order of the drawing."""
        return self._ending_in(self._back(frozenset()))

    @cached_property
    def unreduced(self) -> bool:
        """Whether a main's water comes to the store by a way without any reducing valve."""
        return bool(self.mains) and self.lets_in(self._all)

    @cached_property
    def settings(self) -> dict[str, float | None]:
        """What each reducing valve on the way is set at, in bar; None: not known."""
        return {place.part: self.case.value(place.part, SETTING) for place in self.reducers}

    def holds(self, limit_bar: float) -> bool | None:
        """Whether on every way a reducing valve is set at or below a limit; None: not known."""
        surely = {part for part, bar in self.settings.items() if bar is not None and within(bar, limit_bar)}
        if not self.lets_in(frozenset(surely)):
            return True
        perhaps = {part for part, bar in self.settings.items() if bar is None}
        return False if self.lets_in(frozenset(surely | perhaps)) else None

    @cached_property
    def reduced(self) -> Reduced | None:
        """What the feed is reduced to; None where there is a way without a reducing valve, or no feed."""
        if self.unreduced or not self.reducers:
            return None
        if self.unknown:
            return Reduced(None, missing=self.unknown)
        known = sorted((bar, part) for part, bar in self.settings.items() if bar is not None)
        bar, part = next(each for each in known if self.holds(each[0]))
        return Reduced(float(bar), part)

    @property
    def unknown(self) -> tuple[str, ...]:
        """The settings that are not known, as `id.field`."""
        return tuple(f"{part}.{SETTING}" for part, bar in self.settings.items() if bar is None)

    def above(self, limit_bar: float) -> tuple[str, ...]:
        """The reducing valves set above a limit, in the order of the drawing."""
        return tuple(
            part for part, bar in self.settings.items() if bar is not None and not within(bar, limit_bar)
        )

    def lets_in(self, removed: frozenset[str]) -> bool:
        """Whether water comes in by a way that passes none of these reducing valves.

        It comes from a main; where none is drawn, from whatever lies before the reducing valves.
        """
        reached = self._back(removed)
        if self.mains:
            return any(
                Joint(place.part, place.device.port) in reached.steps
                for place in self.case.circuit.devices(Role.MAIN)
            )
        return any(
            not self._ending_in(self._back(removed, Joint(place.part, place.device.port)), removed)
            for place in self._ending_in(reached)
            if place.part not in removed
        )

    @cached_property
    def _all(self) -> frozenset[str]:
        return frozenset(place.part for place in self.reducers)

    def _back(self, removed: frozenset[str], start: Joint | None = None) -> Walk:
        """Where the store's water comes from, or that at `start`, not through these reducing valves."""

        def may_pass(part: str, passage: Passage, forward: bool) -> bool:
            barred = part in removed and passage.pressure_way is Way.REDUCING
            return not barred and against_the_flow(part, passage, forward)

        return walk(self.case.circuit, self.water.ports if start is None else (start,), may_pass)

    def _ending_in(self, reached: Walk, of: frozenset[str] | None = None) -> tuple[Placed, ...]:
        """The reducing valves whose outlet was reached; of these only, where named."""
        return tuple(
            place
            for place in self.case.circuit.devices(Role.REDUCES)
            if Joint(place.part, place.device.other) in reached.steps and (of is None or place.part in of)
        )


def feeds(case: Case) -> tuple[Feed, ...]:
    """The feed of every mains-fed store, in the order of the drawing."""
    return case.kept("store feeds", lambda: tuple(Feed(case, water) for water in store_waters(case)))
