"""Water that must not come into drinking water, and what keeps the two apart."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum
from functools import cached_property

from circuitcheck.checks.case import Case
from circuitcheck.checks.supplying import supplies
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import Cheapest, Step
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word

ENOUGH_CHECKS = 2
"""Check valves in a row that protect drinking water from a house's heating water: a double check valve."""


class Sort(Enum):
    """What sort of water it is."""

    HEATING = a_word("heating water")
    CISTERN = a_word("a cistern's water")
    WASTE = a_word("foul water")


@dataclass(frozen=True, slots=True)
class Foul:
    """Water that must not come into drinking water: whose it is, where it starts, what it must not
    reach, and how many check valves against it are enough (None: no number is)."""

    part: str
    body: int
    starts: tuple[Joint, ...]
    goals: frozenset[Joint]
    enough: int | None
    sort: Sort


class Waters:
    """The case's drinking water, its heating waters and the links between them."""

    def __init__(self, case: Case) -> None:
        self.case = case
        self.ways: Supplies = supplies(case)
        self.circuit, self.bodies = case.circuit, case.bodies

    @cached_property
    def drinking(self) -> frozenset[Joint]:
        """Where drinking water is known to be: mains, outlets, stores' water, cisterns for hot water."""
        found = set(self.ways.mains)
        for place in (*self.ways.outlets, *self.ways.stores.values()):
            found |= {Joint(place.part, place.device.port), Joint(place.part, place.device.other)}
        for place in self.circuit.devices(Role.FEEDS):
            if self.case.value(place.part, "serves") == "hot_water":
                found.add(Joint(place.part, place.device.port))
        return frozenset(found)

    def _bodies_of(self, *roles: Role) -> frozenset[int]:
        return frozenset(
            self.bodies.of(node)
            for role in roles
            for place in self.circuit.devices(role)
            for node in (place.node, place.other)
            if node >= 0
        )

    @cached_property
    def _used_for_heating(self) -> frozenset[int]:
        """The bodies of water with an emitter, a coil, a separator, a filling link or a heating cistern."""
        found = set(self._bodies_of(Role.EMITS, Role.HEATED_BY_COIL, Role.SEPARATES))
        found |= {self.bodies.of(place.node) for place in self.circuit.devices(Role.FILLS)}
        for place in self.circuit.devices(Role.FEEDS):
            if self.case.value(place.part, "serves") == "heating":
                found.add(self.bodies.of(place.node))
        return frozenset(found)

    @cached_property
    def _emitting(self) -> frozenset[int]:
        return self._bodies_of(Role.EMITS, Role.HEATED_BY_COIL)

    @cached_property
    def _stored(self) -> frozenset[int]:
        return self._bodies_of(Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN)

    def heating(self) -> Iterator[Foul]:
        """Each heating water, by its heat sources; by its plate or coil where it has none."""
        told: set[int] = set()
        for place in self.circuit.devices(Role.HEATS):
            body = self.bodies.of(place.other)
            told.add(body)
            # A heat source on stored drinking water and nothing else heats that directly.
            if body in self._used_for_heating or body not in self._stored:
                yield self._heating(place.part, body, (Joint(place.part, place.device.other),))
        for place in self.circuit.devices(Role.EXCHANGES):
            for node, port in ((place.node, place.device.port), (place.other, place.device.other)):
                body = self.bodies.of(node)
                if body not in told and body in self._emitting:
                    told.add(body)
                    yield self._heating(place.part, body, (Joint(place.part, port),))
        for place in self.circuit.devices(Role.HEATED_BY_COIL):
            body = self.bodies.of(place.node)
            if body not in told:
                told.add(body)
                yield self._heating(place.part, body, (Joint(place.part, place.device.port),))

    def _heating(self, part: str, body: int, starts: tuple[Joint, ...]) -> Foul:
        return Foul(part, body, starts, self.drinking, ENOUGH_CHECKS, Sort.HEATING)

    def open_to_air(self) -> Iterator[Foul]:
        """Cisterns that feed no heat source's water, and discharge ends: what the main can draw back."""
        mains = frozenset(self.ways.mains)
        heated = self._bodies_of(Role.HEATS)
        for place in self.circuit.devices(Role.FEEDS):
            body = self.bodies.of(place.node)
            if body not in heated:
                yield Foul(place.part, body, (Joint(place.part, place.device.port),), mains, 1, Sort.CISTERN)
        for place in self.circuit.devices(Role.ENDS_DISCHARGE):
            body = self.bodies.of(place.node)
            yield Foul(place.part, body, (Joint(place.part, place.device.port),), mains, None, Sort.WASTE)

    def links(self, *, perhaps: bool) -> dict[Joint, Joint]:
        """The ports that filling links left connected without a double check valve join."""
        found: dict[Joint, Joint] = {}
        for place in self.circuit.devices(Role.FILLS):
            if not place.device.other:
                continue
            connected = self.case.value(place.part, "left_connected")
            double = self.case.value(place.part, "double_check")
            joins = (
                (connected is not False and double is not True)
                if perhaps
                else (connected and double is False)
            )
            if joins:
                one, two = Joint(place.part, place.device.port), Joint(place.part, place.device.other)
                found |= {one: two, two: one}
        return found

    def is_link(self, part: str) -> bool:
        """Whether a part is a filling link."""
        return any(device.role is Role.FILLS and device.other for device in self.circuit.plans[part].devices)

    def reach(self, foul: Foul, links: dict[Joint, Joint]) -> Cheapest:
        """Every port that the water can come to, with the fewest check valves against it."""

        # Blending valves have check valves in both inlets: enough between cold and cistern-fed hot
        # (from memory), never against heating water.
        counted = self.ways.checks
        if foul.enough == 1:
            counted |= frozenset(self._blend_inlets)

        def cost(step: Step) -> float:
            return 1.0 if step.against and self.ways.through(step, counted) else 0.0

        return self.ways.cheapest(foul.starts, cost, links=links)

    def may_meet(self, foul: Foul) -> bool:
        """Whether the water shares its body with what it must not reach, or links may join them."""
        wanted = self._goal_bodies[foul.enough == ENOUGH_CHECKS]
        seen, todo = {foul.body}, [foul.body]
        for here in todo:
            if here in wanted:
                return True
            fresh = self._linked.get(here, set()) - seen
            seen |= fresh
            todo += sorted(fresh)
        return False

    @cached_property
    def _goal_bodies(self) -> tuple[frozenset[int], frozenset[int]]:
        """The bodies of the mains, and of all drinking water."""
        mains, drinking = (
            frozenset(self.bodies.of(self.circuit.node(*goal)) for goal in goals)
            for goals in (self.ways.mains, self.drinking)
        )
        return mains, drinking

    @cached_property
    def _linked(self) -> dict[int, set[int]]:
        """The bodies that links which may stand open join."""
        found: dict[int, set[int]] = {}
        for one, two in self.links(perhaps=True).items():
            a, b = (self.bodies.of(self.circuit.node(*joint)) for joint in (one, two))
            found.setdefault(a, set()).add(b)
        return found

    @cached_property
    def _blend_inlets(self) -> tuple[tuple[str, str, str], ...]:
        return tuple(
            (place.part, passage.a, passage.b)
            for place in self.circuit.devices(Role.BLENDS)
            for passage in self.circuit.plans[place.part].passages
            if passage.b == place.device.other
        )
