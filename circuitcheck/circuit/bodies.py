"""Bodies of water: what can meet, what is heated, and what is drinking water."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from circuitcheck.circuit.joining import Circuit, Placed, lowest_joined
from circuitcheck.drawing.value import Joint
from circuitcheck.parts.kind import Role


@dataclass(frozen=True, slots=True)
class Heated:
    """Water that must have its own vessel and safety valve: what heats it, and where.

    `part` is the heat source, or the exchanger whose far side heats it; `water` is the water at
    its outlet (a water of the circuit), `body` the body that water belongs to.
    """

    part: str
    water: int
    body: int
    by_exchanger: bool


class Bodies:
    """All water that can meet by any passage, whichever way and whatever shuts it, is one body."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        self._stands_for = circuit.keep(
            __name__, lambda: lowest_joined(len(circuit.waters), circuit.ways_across())
        )
        self._by_node: list[int] = circuit.keep(f"{__name__} by node", list)

    def of(self, node: int) -> int:
        """The body of the water at a node."""
        water = self.circuit.water(node)
        return self._stands_for[water] if water < len(self._stands_for) else water

    @property
    def by_node(self) -> list[int]:
        """The body of each node of the circuit, for loops over many nodes."""
        waters = self.circuit.waters
        if len(self._by_node) < len(waters):
            stands_for = self._stands_for
            # What was numbered since is joined to nothing.
            further = range(len(stands_for), len(waters))
            body_of = [*stands_for, *further] if further else stands_for
            self._by_node[:] = [body_of[water] for water in waters]
        return self._by_node

    @cached_property
    def with_heat_source(self) -> frozenset[int]:
        """The bodies in which a heat source stands."""
        return frozenset(self.of(heat.other) for heat in self.circuit.devices(Role.HEATS))

    @cached_property
    def drinking(self) -> frozenset[int]:
        """The bodies that reach a main, an outlet, a store's water or a hot water cistern's feed."""
        circuit = self.circuit
        found = {self.of(place.node) for place in circuit.devices(Role.MAIN)}
        for role in (Role.DRAWS, Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
            for place in circuit.devices(role):
                found |= {self.of(place.node), self.of(place.other)}
        for place in circuit.devices(Role.FEEDS):
            if circuit.drawing.components[place.part].value("serves") == "hot_water":
                found.add(self.of(place.node))
        return frozenset(found)

    @cached_property
    def heated(self) -> tuple[Heated, ...]:
        """Every heat source's water, then every water that only an exchanger heats."""
        circuit = self.circuit
        found = [
            Heated(heat.part, circuit.water(heat.other), self.of(heat.other), by_exchanger=False)
            for heat in circuit.devices(Role.HEATS)
        ]
        steps_from_heat = dict.fromkeys(self.with_heat_source, 0)
        exchangers = circuit.devices(Role.EXCHANGES)
        grew = True
        while grew:
            grew = False
            for place in exchangers:
                for warm, cool in ((place.node, place.other), (place.other, place.node)):
                    steps = steps_from_heat.get(self.of(warm))
                    if steps is not None and self._takes_heat(place, cool):
                        better = steps_from_heat.get(self.of(cool), steps + 2) > steps + 1
                        if better:
                            steps_from_heat[self.of(cool)] = steps + 1
                            grew = True
        for place in exchangers:
            for warm, cool in ((place.node, place.other), (place.other, place.node)):
                behind = steps_from_heat.get(self.of(cool))
                before = steps_from_heat.get(self.of(warm))
                if behind is not None and before is not None and behind > before:
                    found.append(Heated(place.part, circuit.water(cool), self.of(cool), by_exchanger=True))
        return tuple(found)

    def _takes_heat(self, place: Placed, node: int) -> bool:
        """Whether the water on that side of an exchanger is heating water of its own."""
        body = self.of(node)
        if body in self.drinking or body in self.with_heat_source:
            return False
        drawing = self.circuit.drawing
        ports = ("primary_in", "primary_out") if node == place.node else ("secondary_in", "secondary_out")
        for port in ports:
            pipe = drawing.joined.get(Joint(place.part, port))
            if pipe is None:
                continue
            others = [end for end in drawing.pipes[pipe].joints if end != (place.part, port)]
            if any(drawing.components[end.part].kind.name != "cap" for end in others):
                return True
        return False
