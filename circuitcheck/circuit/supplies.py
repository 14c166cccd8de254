"""Where drinking water comes from and goes to: from mains and stores, through what heats and blends it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from functools import cached_property

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.circuit.waterways import ARROWS, CameBy, Passes, Step, Waterways
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role


@dataclass(frozen=True, slots=True)
class Giver:
    """What gives hot drinking water: a store, a heat source that heats drinking water, or a plate.

    `ports` are those the hot water leaves by; `inlet` is where its cold comes in.
    """

    part: str
    inlet: Joint
    ports: tuple[Joint, ...]
    stores: bool


class Supplies(Waterways):
    """The ways of drinking water in one circuit."""

    def __init__(self, circuit: Circuit, bodies: Bodies) -> None:
        super().__init__(circuit)
        self.bodies = bodies

    @cached_property
    def stores(self) -> Mapping[str, Placed]:
        """Every store by its id: its device stands at its cold inlet, `other` is its hot outlet."""
        roles = (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN)
        return {place.part: place for role in roles for place in self.circuit.devices(role)}

    @cached_property
    def _inside(self) -> Mapping[str, str]:
        """Where the ways of each store's water meet: its cold inlet, or the point behind a check valve
        that is built in there."""
        plans, stores = self.circuit.plans, self.stores
        return {
            part: next(
                (way.b for way in plans[part].passages if way.a == place.device.port and way.way in ARROWS),
                place.device.port,
            )
            for part, place in stores.items()
        }

    @cached_property
    def heaters(self) -> Mapping[tuple[str, str, str], Giver]:
        """What heats drinking water on its way, by part, inlet and outlet: the drinking water side
        of a combination heat source, and of a plate whose other side is heated."""
        found: dict[tuple[str, str, str], Giver] = {}
        circuit, bodies = self.circuit, self.bodies
        for place in circuit.devices(Role.HEATS):
            for passage in circuit.plans[place.part].passages:
                if (passage.a, passage.b) == ("cold", "hot"):
                    found |= _heater(place.part, passage.a, passage.b)
        plates = circuit.devices(Role.EXCHANGES)
        if plates:
            warm = {heated.body for heated in bodies.heated}
            for place in plates:
                sides = ((place.device.port, place.other), (place.device.other, place.node))
                for inlet, far in sides:
                    body = bodies.of(circuit.node(place.part, inlet))
                    if body in bodies.drinking and bodies.of(far) in warm and body != bodies.of(far):
                        for passage in circuit.plans[place.part].passages:
                            if passage.a == inlet:
                                found |= _heater(place.part, passage.a, passage.b)
        return found

    @cached_property
    def givers(self) -> tuple[Giver, ...]:
        """Everything that gives hot drinking water, stores first, in the order of the drawing."""
        found = []
        for part, place in self.stores.items():
            inlet, inside = place.device.port, self._inside[part]
            ports = [
                passage.b if passage.a == inside else passage.a
                for passage in self.circuit.plans[part].passages
                if inside in (passage.a, passage.b)
            ]
            outlets = tuple(Joint(part, port) for port in ports if port != inlet)
            found.append(Giver(part, Joint(part, inlet), outlets, stores=True))
        return (*found, *self.heaters.values())

    @cached_property
    def outlets(self) -> tuple[Placed, ...]:
        """Where water is drawn; the device's port is its hot, its other port its cold."""
        return self.circuit.devices(Role.DRAWS)

    @cached_property
    def mains(self) -> tuple[Joint, ...]:
        """Where mains water comes in."""
        return tuple(Joint(place.part, place.device.port) for place in self.circuit.devices(Role.MAIN))

    @cached_property
    def checks(self) -> frozenset[tuple[str, str, str]]:
        """The passages that stop backflow: part, inlet, outlet."""
        return self._passages(Role.STOPS_BACKFLOW)

    @cached_property
    def drinking_pumps(self) -> tuple[Placed, ...]:
        """The pumps in drinking water that are no part of a heat source."""
        drinking = self.bodies.drinking
        return tuple(
            place
            for place in self.circuit.devices(Role.PUMPS)
            if not place.device.built_in and self.bodies.of(place.node) in drinking
        )

    @cached_property
    def reducers(self) -> frozenset[tuple[str, str, str]]:
        """The passages that bring the pressure down: part, inlet, outlet."""
        return self._passages(Role.REDUCES)

    @cached_property
    def blends(self) -> frozenset[tuple[str, str, str]]:
        """The passages by which hot water enters a blending valve: part, hot, mixed."""
        return self._passages(Role.BLENDS)

    def _passages(self, role: Role) -> frozenset[tuple[str, str, str]]:
        return frozenset(
            (place.part, place.device.port, place.device.other) for place in self.circuit.devices(role)
        )

    def through(self, step: Step, passages: frozenset[tuple[str, str, str]]) -> bool:
        """Whether a step goes through one of these passages, either way."""
        if step.pipe:
            return False
        part, a, b = step.start.part, step.start.port, step.finish.port
        return (part, a, b) in passages or (part, b, a) in passages

    def in_store(self, step: Step) -> bool:
        """Whether a step goes through a store's water."""
        if step.pipe:
            return False
        part = step.start.part
        store = self.stores.get(part)
        if store is None:
            return False
        ends = (step.start.port, step.finish.port)
        return store.device.port in ends or self._inside[part] in ends

    def in_heater(self, step: Step) -> bool:
        """Whether a step goes through what heats drinking water on its way."""
        if step.pipe:
            return False
        part, a, b = step.start.part, step.start.port, step.finish.port
        return (part, a, b) in self.heaters or (part, b, a) in self.heaters

    def drawn(self, step: Step) -> bool:
        """Whether drawn water takes this step: never against an arrow, nor out of a store by its
        cold inlet, nor backwards through what heats it."""
        if step.against:
            return False
        if self.in_store(step):
            # A store's passages all begin at its cold inlet; water on its way in by a secondary
            # return meets the stored water there and goes on by another port.
            return True
        return not (
            self.in_heater(step) and (step.start.part, step.start.port, step.finish.port) not in self.heaters
        )

    def drawn_outside(self, step: Step) -> bool:
        """The same, through no store and no heater."""
        return not step.against and not self.in_store(step) and not self.in_heater(step)

    def hot(self, givers: Iterable[Giver], stopped: Callable[[str], bool]) -> CameBy:
        """Every port that hot water of these givers reaches when it is drawn, and by which step.

        It goes through a blending valve by its hot inlet only where `stopped` is False for it.
        It may go on through other stores and heaters, which add heat and take none away.
        """
        starts = [port for giver in givers for port in giver.ports]

        def passes(step: Step) -> bool:
            if self.through(step, self.blends):
                return not step.against and not stopped(step.start.part)
            return self.drawn(step)

        return self._through_stores(starts, passes)

    def mains_water(self, starts: Iterable[Joint], *, unreduced: bool = False) -> CameBy:
        """Every port that mains water reaches when it is drawn; `unreduced`: by no reducing valve."""

        def passes(step: Step) -> bool:
            if unreduced and self.through(step, self.reducers):
                return False
            return self.drawn(step)

        return self._through_stores(starts, passes)

    @cached_property
    def from_mains(self) -> CameBy:
        """Every port that the water of any main reaches when it is drawn."""
        return self.mains_water(self.mains)

    def _through_stores(self, starts: Iterable[Joint], passes: Passes) -> CameBy:
        """A walk that leaves no store by its cold inlet: entered by any port, it is left by another."""
        came: dict[Joint, Step | None] = dict.fromkeys(starts)
        todo = list(came)

        def go(step: Step) -> None:
            if step.finish not in came:
                came[step.finish] = step
                todo.append(step.finish)

        for here in todo:
            for step in self.steps(here):
                if not passes(step):
                    continue
                if not step.pipe and self.in_store(step) and step.finish.port == self._inside[here.part]:
                    # Into the stored water from a port: on by every port but the cold inlet.
                    for onward in self.steps(step.finish):
                        if self.in_store(onward) and not onward.against:
                            go(Step(here, onward.finish))
                    continue
                go(step)
        return came


def _heater(part: str, inlet: str, outlet: str) -> dict[tuple[str, str, str], Giver]:
    giver = Giver(part, Joint(part, inlet), (Joint(part, outlet),), stores=False)
    return {(part, inlet, outlet): giver}
