"""What the controls command in each situation: which motor valves are shut, which pumps run, what is called."""

from __future__ import annotations

import itertools
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.circuit.serving import Serving
from circuitcheck.circuit.takers import BOTH_SERVICES, HEATING, HOT_WATER
from circuitcheck.told import a_word

HEATING_ONLY = a_word("heating only")
HOT_WATER_ONLY = a_word("hot water only")
BOTH = a_word("both")
RUN_ON = a_word("pump run-on")
AT_REST = a_word("at rest")
POWER_OFF = a_word("power off")

CALLS = {
    HEATING_ONLY: frozenset({HEATING}),
    HOT_WATER_ONLY: frozenset({HOT_WATER}),
    BOTH: BOTH_SERVICES,
}
MOST_STANDS = 16
"""Positions told for one situation where valves may stand either way; beyond, see `Situations.told_in_full`."""

NONE: frozenset[str] = frozenset()
Stands = list[tuple[frozenset[str], ...]]
"""For each valve that may stand either way, what is shut in each of its positions."""


@dataclass(frozen=True, slots=True)
class Situation:
    """One position of all motor valves and pumps. Thermostatic heads stand open in every one.

    `shut`: motor passages commanded shut (`zv1`, `tv1:a`). `running`: the parts that drive water.
    `called`: the emitters, coils and exchangers meant to have flow. `missing`: fields that would
    have to be known to say so; where there are any, nothing may be proved from this situation.
    Several situations share one name where a valve rests where it happens to stand.
    """

    name: str
    shut: frozenset[str]
    running: frozenset[str]
    called: frozenset[str]
    heat_on: bool
    missing: tuple[str, ...] = ()


class Situations(Serving):
    """The situations of a circuit, in the order of `drawing-format`; those it does not have are left out.

    A valve is commanded shut when every control that acts on it is satisfied. One that no control
    acts on serves what its field says, else what the circuit shows. `reads`: the fields these
    answers rest on, as (part, field), for whoever must record a default taken.
    """

    @cached_property
    def reads(self) -> tuple[tuple[str, str], ...]:
        """The fields these answers rest on, as (part, field)."""
        found = [(valve, field) for valve in self.two_port for field in ("serves", "rest")]
        found += [(valve, field) for valve in self.three_port for field in ("action", "rest")]
        return (*found, *((heat, "pump_overrun_min") for heat in self.takers.heats))

    @cached_property
    def missing(self) -> tuple[str, ...]:
        """The fields that would have to be known to say what every motor valve serves."""
        return tuple(f"{valve}.serves" for valve in self.two_port if self.serves(valve) is None)

    @cached_property
    def told_in_full(self) -> bool:
        """Whether every position in which valves may stand is among the situations. Where there are
        too many, only those are that differ from standing all alike by one valve at most."""
        return 1 << max(len(self.three_port), len(self._staying)) <= MOST_STANDS

    @cached_property
    def _staying(self) -> tuple[str, ...]:
        parts = self.circuit.drawing.components
        return tuple(id for id in (*self.two_port, *self.three_port) if parts[id].value("rest") == "stays")

    @cached_property
    def all(self) -> tuple[Situation, ...]:
        """Every situation, in order. Raises TooLargeError where what is on a loop can't be proved."""
        services = self.takers.services
        found: list[Situation] = []
        for name, calling in CALLS.items():
            if calling <= services:
                found += self._calling(name, calling)
        heats = self.takers.heats
        overrun = [self.circuit.drawing.components[heat].value("pump_overrun_min") for heat in heats]
        if self.pumps and any(minutes != 0 for minutes in overrun):
            found += self._stand(RUN_ON, frozenset(self.two_port), self._either_leg, self._running_on)
        if heats:
            found += self._stand(AT_REST, frozenset(self.two_port), self._either_leg, NONE)
            found += self._power_off()
        return tuple(found)

    def named(self, name: str) -> tuple[Situation, ...]:
        """The situations of that name; several where valves may stand either way, none left out."""
        return tuple(each for each in self.all if each.name == name)

    def _calling(self, name: str, calling: frozenset[str]) -> Iterator[Situation]:
        shut = {valve for valve in self.two_port if not (self.serves(valve) or BOTH_SERVICES) & calling}
        either: Stands = []
        for valve in self.three_port:
            stands = self._legs_shut(valve, calling)
            if len(stands) == 1:
                shut |= stands[0]
            else:
                either.append(stands)
        called = self.takers.serving(calling) | self.uncontrolled
        for stand in _stands(either):
            closed = frozenset(shut) | stand
            idle = self._turned_away(closed, calling)
            yield Situation(
                name, closed, self._running(calling), called - idle, heat_on=True, missing=self.missing
            )

    def _legs_shut(self, valve: str, calling: frozenset[str]) -> tuple[frozenset[str], ...]:
        """What may be shut of a three-port valve: by what its legs serve, hot water first where it diverts.

        A leg that serves nothing (a bypass round a mixing valve, say) gives way to one that does.
        """
        a, b = (frozenset({f"{valve}:{leg}"}) for leg in ("a", "b"))
        serves = [self.serves(f"{valve}:{leg}") for leg in ("a", "b")]
        wanted = [bool(each and each & calling) for each in serves]
        if wanted[0] != wanted[1]:
            return (b,) if wanted[0] else (a,)
        if not wanted[0]:
            return (a, b)
        if self.circuit.drawing.components[valve].value("action") == "share":
            return (NONE,)
        first = [HOT_WATER in (each or NONE) for each in serves]
        if HOT_WATER in calling and first[0] != first[1]:
            return (b,) if first[0] else (a,)
        return (a, b)

    def _turned_away(self, shut: frozenset[str], calling: frozenset[str]) -> frozenset[str]:
        """What a diverting valve leaves without flow though it is called: it gives to one leg at a time."""
        legs = (label for label in shut if label not in self.circuit.drawing.components)
        return NONE.union(*(self.behind(leg) for leg in legs if (self.serves(leg) or NONE) & calling))

    def _running(self, calling: frozenset[str]) -> frozenset[str]:
        return frozenset(pump for pump in self.pumps if self._runs(pump, calling))

    def _runs(self, pump: str, calling: frozenset[str]) -> bool:
        """A pump runs when what it serves is called; one that serves nothing of its own, always."""
        serves = BOTH_SERVICES if pump in self.built_in_pumps else self.serves(pump)
        return bool((serves or BOTH_SERVICES) & calling)

    @cached_property
    def _running_on(self) -> frozenset[str]:
        """The pumps that no control stops; every pump on a heat source's water that has none such."""
        running = {pump for pump in self.pumps if pump in self.built_in_pumps or not self.acting_on(pump)}
        for body in self.rounds.bodies:
            if body.warms and not running & set(body.drives):
                running |= set(body.drives)
        return frozenset(running)

    @property
    def _either_leg(self) -> Stands:
        return [self._both_ways(valve) for valve in self.three_port]

    @staticmethod
    def _both_ways(valve: str) -> tuple[frozenset[str], ...]:
        return (frozenset({f"{valve}:b"}), frozenset({f"{valve}:a"}))

    def _stand(
        self,
        name: str,
        shut: frozenset[str],
        either: Stands,
        running: frozenset[str],
        missing: Iterable[str] = (),
    ) -> Iterator[Situation]:
        for stand in _stands(either):
            yield Situation(name, shut | stand, running, NONE, heat_on=False, missing=tuple(missing))

    def _power_off(self) -> Iterator[Situation]:
        """Every motor valve at its rest; one that stays may stand either way."""
        parts = self.circuit.drawing.components
        shut, missing = set[str](), list[str]()
        either: Stands = []
        for valve in self.two_port:
            rest = parts[valve].value("rest")
            if rest == "shut":
                shut.add(valve)
            elif rest == "stays":
                either.append((frozenset({valve}), NONE))
            elif rest is None:
                missing.append(f"{valve}.rest")
        for valve in self.three_port:
            rest = parts[valve].value("rest")
            if rest in ("a", "b"):
                shut.add(f"{valve}:{'b' if rest == 'a' else 'a'}")
            elif rest == "stays":
                either.append(self._both_ways(valve))
            else:
                missing.append(f"{valve}.rest")
        return self._stand(POWER_OFF, frozenset(shut), either, NONE, missing)


def _stands(either: Stands) -> Iterator[frozenset[str]]:
    """Every position of valves that may stand either way; where that is too many, all alike, and each
    valve by itself the other way."""
    if 1 << len(either) <= MOST_STANDS:
        for each in itertools.product(*either):
            yield NONE.union(*each)
        return
    for side in (0, 1):
        yield NONE.union(*(stands[side] for stands in either))
        for odd in range(len(either)):
            yield NONE.union(*(stands[side != (place == odd)] for place, stands in enumerate(either)))
