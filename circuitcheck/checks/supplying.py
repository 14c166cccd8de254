"""What the checks of the water supply share: how hot a store can get, and which blending holds."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.circuit.coil_heat import CoilHeat
from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.circuit.waterways import CameBy
from circuitcheck.drawing.value import Control, Joint


@dataclass(frozen=True, slots=True)
class Maybe:
    """Yes, no, or not known for want of these fields."""

    answer: bool | None
    missing: tuple[str, ...] = ()


YES, NO = Maybe(True), Maybe(False)


def supplies(case: Case) -> Supplies:
    """The ways of drinking water in the case."""
    return case.kept("supplies", lambda: Supplies(case.circuit, case.bodies))


class StoredHeat:
    """How hot each store's water can get."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self._coils = case.kept("coil heat", lambda: CoilHeat(case.circuit, case.bodies))

    def thermostats_c(self, store: str) -> list[float | None]:
        """What the store's thermostat is set to, by its own data and by every store thermostat whose
        acting stops its coil; None where it is not known."""
        known = [self.case.value(store, "thermostat_c")]
        known += [control.set_c for control in self.controls(store) if control.set_c is not None]
        return [None if value is None else float(value) for value in known]

    def controls(self, store: str) -> tuple[Control, ...]:
        """The store thermostats whose acting stops the store's coil."""
        return self._coils.thermostats_of(store)

    def can_pass(self, store: str, limit_c: float, *, by_source: bool = True) -> Maybe:
        """Whether the store's water can get hotter than a limit: its thermostat is set above it, or
        heat reaches it that no store thermostat stops. `by_source`: so far as a switched heat source
        that no thermostat of the store stops can go above the limit, that counts too."""
        settings = self.thermostats_c(store)
        if any(value is not None and value > limit_c for value in settings):
            return YES
        missing = [f"{store}.thermostat_c"] if settings[0] is None else []
        for heat in self._coils.unstopped(store):
            answer = self._from_source(heat, limit_c, by_source)
            if answer.answer:
                return YES
            missing += answer.missing
        return Maybe(None, tuple(dict.fromkeys(missing))) if missing else NO

    def _from_source(self, heat: str, limit_c: float, by_source: bool) -> Maybe:
        kind = self.case.value(heat, "heat")
        if kind == "uncontrolled":
            return YES
        missing = () if kind else (f"{heat}.heat",)
        if by_source:
            highest = self.case.value(heat, "maximum_flow_temperature_c")
            if highest is None:
                missing = (*missing, f"{heat}.maximum_flow_temperature_c")
            elif highest > limit_c and not missing:
                return YES
        return Maybe(None, missing) if missing else NO


class Blending:
    """Whether hot water can reach a place without being blended down to a limit."""

    def __init__(self, case: Case, ways: Supplies, limit_c: float) -> None:
        self.case = case
        self.ways = ways
        self.limit_c = limit_c

    def holds(self, valve: str) -> bool | None:
        """Whether a blending valve is set at or under the limit; None where that is not known."""
        setting = self.case.value(valve, "set_temperature_c")
        return None if setting is None else setting <= self.limit_c

    def surely(self, valve: str) -> bool:
        """Whether it is known that the valve holds the limit."""
        return self.holds(valve) is True

    def perhaps(self, valve: str) -> bool:
        """Whether the valve may hold the limit."""
        return self.holds(valve) is not False

    def unknown_on(self, reached: Iterable[Joint]) -> tuple[str, ...]:
        """The settings that are not known of blending valves whose hot inlet was reached."""
        hot = {(part, port) for part, port, _ in self.ways.blends}
        valves = dict.fromkeys(joint.part for joint in reached if (joint.part, joint.port) in hot)
        return tuple(f"{valve}.set_temperature_c" for valve in valves if self.holds(valve) is None)


def above(heat: StoredHeat, limit_c: float, givers: Iterable[Giver]) -> dict[Giver, Maybe]:
    """For each giver whether its hot water can be above the limit. What heats water on its way has
    no limit of its own that a drawing could tell."""
    return {
        giver: heat.can_pass(giver.part, limit_c, by_source=False) if giver.stores else YES
        for giver in givers
    }


class HotReach:
    """How far hot water of some givers gets that no blending valve holds to a limit: `surely`, and
    `perhaps`, as far as what is not known allows."""

    def __init__(self, ways: Supplies, blending: Blending, can: Mapping[Giver, Maybe]) -> None:
        self._ways, self._blending, self._can = ways, blending, can
        self.surely = ways.hot((giver for giver in can if can[giver].answer), blending.perhaps)
        hot = [giver for giver in can if can[giver].answer is not False]
        if all(can[giver].answer for giver in hot) and not blending.unknown_on(self.surely):
            self.perhaps = self.surely
        else:
            self.perhaps = ways.hot(hot, blending.surely)

    def reaches(self, goals: Iterable[Joint]) -> Maybe:
        """Whether it reaches one of these ports, and if that is not known, every field it rests on."""
        wanted = frozenset(goals)
        if not self.surely.keys().isdisjoint(wanted):
            return YES
        if self.perhaps.keys().isdisjoint(wanted):
            return NO
        missing = [
            field for fields, came in self._unknown if not came.keys().isdisjoint(wanted) for field in fields
        ]
        return Maybe(None, tuple(dict.fromkeys(missing)))

    @cached_property
    def _unknown(self) -> list[tuple[tuple[str, ...], CameBy]]:
        """What is not known of a giver or of a valve on the way, and every port that rests on it."""
        found = [
            (answer.missing, self._ways.hot([giver], self._blending.surely))
            for giver, answer in self._can.items()
            if answer.missing
        ]
        mixed = {part: Joint(part, outlet) for part, _, outlet in self._ways.blends}
        for field in self._blending.unknown_on(self.perhaps):
            behind = Giver("", Joint("", ""), (mixed[field.rpartition(".")[0]],), stores=False)
            found.append(((field,), self._ways.hot([behind], self._blending.surely)))
        return found
