"""What heat reaches a store, by its coil or straight into its water, and which store thermostat stops it."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cached_property

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit, Placed
from circuitcheck.circuit.supplies import Supplies
from circuitcheck.circuit.waterways import Passes, Step
from circuitcheck.drawing.value import Control, Joint
from circuitcheck.parts.kind import Role

STORE_THERMOSTAT = "store_thermostat"
NOTHING: frozenset[str] = frozenset()


class CoilHeat:
    """Heat sources and coils, by walks in the directions in which water circulates."""

    def __init__(self, circuit: Circuit, bodies: Bodies) -> None:
        self.circuit = circuit
        self.bodies = bodies
        self._ways = Supplies(circuit, bodies)
        self._stopped_by: dict[str, tuple[Control, ...]] = {}

    @cached_property
    def _coils(self) -> dict[str, Placed]:
        return {place.part: place for place in self.circuit.devices(Role.HEATED_BY_COIL)}

    @cached_property
    def _acted_on(self) -> frozenset[str]:
        """The parts that some store thermostat acts on."""
        return NOTHING.union(*(control.acts_on for control in self._thermostats))

    @cached_property
    def _thermostats(self) -> tuple[Control, ...]:
        return tuple(
            control
            for control in self.circuit.drawing.controls.values()
            if control.kind.name == STORE_THERMOSTAT
        )

    def thermostats_of(self, store: str) -> tuple[Control, ...]:
        """The store thermostats that stop a heat source's way to the store when they act."""
        if not self._thermostats:
            return ()
        known = self._stopped_by.get(store)
        if known is None:
            known = self._stopped_by[store] = self._found_thermostats(store)
        return known

    def _found_thermostats(self, store: str) -> tuple[Control, ...]:
        # What a thermostat of another house acts on is nowhere on the way, and need not be tried.
        reaching = [
            (each, self._on_the_way(*each)) for each in self._ways_in(store) if self._reaches(*each, NOTHING)
        ]
        return tuple(
            control
            for control in self._thermostats
            if any(
                not parts.isdisjoint(control.acts_on) and not self._reaches(*each, frozenset(control.acts_on))
                for each, parts in reaching
            )
        )

    def unstopped(self, store: str) -> tuple[str, ...]:
        """The heat sources whose heat reaches the store whatever the store thermostats do."""
        found = [
            source
            for heat, ends in self._ways_in(store)
            if self._reaches(heat, ends, self._acted_on)
            for source in self._behind(heat)
        ]
        return tuple(dict.fromkeys(found))

    def _ways_in(self, store: str) -> Iterator[tuple[str, tuple[Joint, ...]]]:
        """What may heat the store, with the ports that the heat comes in and goes out by: its coil's,
        or those of its water where a heat source stands on that."""
        if store in self._coils:
            coil = self._coils[store].device
            ends = (Joint(store, coil.port), Joint(store, coil.other))
            yield from ((heat, ends) for heat in self._heats(store))
        place = self._ways.stores[store]
        body = self.bodies.of(place.node)
        groups = self.circuit.plans[store].open_groups
        group = next((group for group in groups if place.device.other in group), ())
        for part in self._sources_in(body):
            yield part, tuple(Joint(store, port) for port in group)

    def _heats(self, store: str) -> Iterator[str]:
        """The heat sources and plates that heat the water of the store's coil."""
        body = self.bodies.of(self._coils[store].node)
        sources = self._sources_in(body)
        if sources:
            yield from sources
            return
        if self.circuit.devices(Role.EXCHANGES):
            for heated in self.bodies.heated:
                if heated.by_exchanger and heated.body == body:
                    yield heated.part

    @cached_property
    def _sources(self) -> dict[str, Placed]:
        return {place.part: place for place in self.circuit.devices(Role.HEATS)}

    def _sources_in(self, body: int) -> list[str]:
        return self._sources_by_body.get(body, [])

    @cached_property
    def _sources_by_body(self) -> dict[int, list[str]]:
        found: dict[int, list[str]] = {}
        for part, place in self._sources.items():
            found.setdefault(self.bodies.of(place.other), []).append(part)
        return found

    def _behind(self, heat: str) -> tuple[str, ...]:
        """The heat source itself, or those whose water warms a plate, through further plates."""
        if heat in self._sources:
            return (heat,)
        seen, todo = {heat}, [heat]
        found: list[str] = []
        plates = {place.part: place for place in self.circuit.devices(Role.EXCHANGES)}
        for plate in todo:
            sides = {self.bodies.of(plates[plate].node), self.bodies.of(plates[plate].other)}
            found += [part for side in sorted(sides) for part in self._sources_in(side)]
            for part, place in plates.items():
                touches = {self.bodies.of(place.node), self.bodies.of(place.other)} & sides
                if touches and part not in seen:
                    seen.add(part)
                    todo.append(part)
        return tuple(dict.fromkeys(found))

    def _reaches(self, heat: str, ends: tuple[Joint, ...], without: frozenset[str]) -> bool:
        """Whether water can go from the heat source to one of these ends and from another back, round
        no part of `without`. It goes through pumps and one-way passages in their direction only."""
        if heat in without:
            return False
        passes = self._passing(heat, ends, without)
        leaves, enters = self._ends_of_heat(heat)
        out = self._ways.walk(leaves, passes)
        for last in ends:
            if any(first in out for first in ends if first != last):
                back = self._ways.walk([last], passes)
                if any(port in back for port in enters):
                    return True
        return False

    def _on_the_way(self, heat: str, ends: tuple[Joint, ...]) -> frozenset[str]:
        """Every part that water could meet between the heat source and these ends, there and back: no other
        can stop it."""
        passes = self._passing(heat, ends, NOTHING)
        met = [self._ways.walk(starts, passes) for starts in (self._ends_of_heat(heat)[0], ends)]
        return frozenset((heat, *(joint.part for each in met for joint in each)))

    @staticmethod
    def _passing(heat: str, ends: tuple[Joint, ...], without: frozenset[str]) -> Passes:
        between = frozenset(ends)

        def passes(step: Step) -> bool:
            if step.against or step.upstream:
                return False
            if step.pipe:
                return True
            part = step.start.part
            return part not in without and part != heat and not {step.start, step.finish} <= between

        return passes

    def _ends_of_heat(self, heat: str) -> tuple[tuple[Joint, ...], tuple[Joint, ...]]:
        """The ports that warm water leaves by, and those it comes back to."""
        if heat in self._sources:
            return (Joint(heat, self._sources[heat].device.other),), (Joint(heat, "return"),)
        ports = tuple(Joint(heat, port.name) for port in self.circuit.drawing.components[heat].kind.ports)
        return ports, ports
