"""What each motor valve and pump serves: by its field, its controls, or what has no loop without it."""

from __future__ import annotations

from collections import defaultdict
from functools import cached_property

from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.labels import LEG, leg_label
from circuitcheck.circuit.rounds import part_of_key
from circuitcheck.circuit.takers import BOTH_SERVICES, HEATING, HOT_WATER, NONE, Takers
from circuitcheck.parts.kind import Role


class Serving:
    """The motor valves and pumps of a circuit, the controls on them, and what each serves."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        self.rounds = rounds_of(circuit)
        self.takers = Takers(circuit)
        self._acting: dict[str, list[str]] = defaultdict(list)
        for control in circuit.drawing.controls.values():
            for part in control.acts_on:
                self._acting[part].append(control.id)

    def acting_on(self, part: str) -> tuple[str, ...]:
        """The controls that act on a valve or pump, in the order of the drawing."""
        return tuple(self._acting.get(part, ()))

    def thermostats_on(self, part: str) -> tuple[str, ...]:
        """Those of them that are thermostats."""
        kinds = ("room_thermostat", "store_thermostat")
        controls = self.circuit.drawing.controls
        return tuple(id for id in self.acting_on(part) if controls[id].kind.name in kinds)

    def serves(self, part_or_leg: str) -> frozenset[str] | None:
        """What a motor valve, a leg of one (`tv1:a`), a pump or an emitter serves; None: not to be told.

        By the field `serves`, else by the thermostats that act on it, else by what has no loop
        without it; a valve that only programmers act on serves both where the circuit does not tell.
        """
        if part_or_leg not in self.circuit.drawing.components:
            return self._leg_serves(*part_or_leg.rpartition(":")[::2])
        if part_or_leg in self._legs:
            both = [self._leg_serves(part_or_leg, leg) for leg in ("a", "b")]
            known = NONE.union(*(each for each in both if each))
            return known or None
        own = self.takers.service(part_or_leg)
        if own:
            return own
        part = self.circuit.drawing.components[part_or_leg]
        if any(field.name == "serves" for field in part.kind.own_fields):
            stated = part.value("serves")
            if stated is not None:
                return frozenset({stated})
        by_thermostats = self._by_thermostats(part_or_leg)
        if by_thermostats:
            return by_thermostats
        by_circuit = self.services_behind(part_or_leg)
        if not by_circuit and self.acting_on(part_or_leg):
            return BOTH_SERVICES
        return by_circuit or None

    def services_behind(self, label: str) -> frozenset[str]:
        """The services of what has no loop without that passage or pump, by the circuit alone."""
        return NONE.union(*(self.takers.service(part) for part in self.behind(label)))

    def behind(self, part_or_leg: str) -> frozenset[str]:
        """The emitters, coils and exchangers that have no loop without that valve, leg or pump."""
        label = part_or_leg
        if self.three_port and label not in self.circuit.drawing.components:
            label = leg_label(*part_or_leg.rpartition(":")[::2])
        body = self.rounds.of(label)
        fallen = NONE if body is None else body.behind(label)
        if not any(LEG in key for key in fallen):
            return self._with_beyond(fallen)
        return self._with_beyond(frozenset(map(part_of_key, fallen)))

    def _with_beyond(self, fallen: frozenset[str]) -> frozenset[str]:
        """These, and what has no heat without the exchangers among them."""
        if self._exchangers.isdisjoint(fallen):
            return fallen
        found = set(fallen)
        warmed = [body for body in self.rounds.bodies if body.warms and found & self._exchangers]
        grew = True
        while grew:
            grew = False
            for body in warmed:
                fed = set(map(part_of_key, body.fed))
                if not fed <= found and found.issuperset(map(part_of_key, body.warms)):
                    found |= fed
                    grew = True
        return frozenset(found)

    @cached_property
    def _exchangers(self) -> frozenset[str]:
        return self.circuit.parts_with(Role.EXCHANGES)

    @cached_property
    def valves(self) -> tuple[str, ...]:
        """The motor valves with two ports, and the legs of those with three (`tv1:a`)."""
        return (*self.two_port, *(f"{valve}:{leg}" for valve in self.three_port for leg in ("a", "b")))

    @cached_property
    def valve_names(self) -> frozenset[str]:
        """The same as a set."""
        return frozenset(self.valves)

    @cached_property
    def holders(self) -> dict[str, tuple[str, ...]]:
        """For each thing on a loop, what it has no loop without: motor valves and legs, and those pumps
        and heat sources that a control acts on. Raises TooLargeError beyond the search bound."""
        driving = dict.fromkeys((*self.pumps, *self.takers.heats))
        found: dict[str, list[str]] = {part: [] for part in self.takers.fed}
        for holder in (*self.valves, *(each for each in driving if each in self._acting)):
            for part in self.behind(holder):
                found[part].append(holder)
        return {part: tuple(holders) for part, holders in found.items()}

    def _by_thermostats(self, part: str) -> frozenset[str]:
        controls = self.circuit.drawing.controls
        kinds = {controls[id].kind.name for id in self.acting_on(part)}
        found = {HEATING} if "room_thermostat" in kinds else set[str]()
        return frozenset(found | ({HOT_WATER} if "store_thermostat" in kinds else set()))

    def _leg_serves(self, part: str, leg: str) -> frozenset[str] | None:
        """By the circuit; a leg that does not tell serves what the thermostats call beside the other."""
        own = self.services_behind(f"{part}:{leg}")
        if own:
            return own
        other = self.services_behind(f"{part}:{'b' if leg == 'a' else 'a'}")
        left = self._by_thermostats(part) - other
        return left if other and left else None

    @cached_property
    def two_port(self) -> tuple[str, ...]:
        """The motor valves with two ports."""
        return self._driven("whole")

    @cached_property
    def _legs(self) -> frozenset[str]:
        return frozenset(self.three_port)

    @cached_property
    def three_port(self) -> tuple[str, ...]:
        """The motor valves with three ports."""
        return self._driven("leg")

    def _driven(self, motor: str) -> tuple[str, ...]:
        circuit = self.circuit
        driven = [plan for plan in circuit.by_plan if plan.motor == motor]
        return tuple(circuit.ids[place] for place in circuit.in_order(driven))

    @cached_property
    def pumps(self) -> tuple[str, ...]:
        """Every part that drives water, in the drawing's order."""
        return tuple(dict.fromkeys(place.part for place in self.circuit.devices(Role.PUMPS)))

    @cached_property
    def built_in_pumps(self) -> frozenset[str]:
        """Those of them that are a heat source's own."""
        return frozenset(place.part for place in self.circuit.devices(Role.PUMPS) if place.device.built_in)

    @cached_property
    def uncontrolled(self) -> frozenset[str]:
        """The emitters, coils and exchangers on a loop that no motor valve and no pump with a control
        of its own can stop: they are called whenever there is heat."""
        holding = frozenset(self.valves) | frozenset(self.pumps)
        held = frozenset(part for part, holders in self.holders.items() if holding & frozenset(holders))
        return self.takers.fed - held
