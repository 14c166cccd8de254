"""What takes heat in a circuit, and which service each serves: heating or hot water."""

from __future__ import annotations

import itertools
from functools import cached_property

from circuitcheck.circuit.bodies import Bodies
from circuitcheck.circuit.joining import Circuit
from circuitcheck.circuit.keyed import rounds_of
from circuitcheck.circuit.rounds import key_of, part_of_key
from circuitcheck.parts.kind import Role

HEATING = "heating"
HOT_WATER = "hot_water"
BOTH_SERVICES = frozenset({HEATING, HOT_WATER})
NONE: frozenset[str] = frozenset()


class Takers:
    """The emitters, coils and exchangers of a circuit by what they serve."""

    def __init__(self, circuit: Circuit) -> None:
        self.circuit = circuit
        self._rounds = rounds_of(circuit)

    @cached_property
    def heats(self) -> tuple[str, ...]:
        """The heat sources, in the order of the drawing."""
        return tuple(dict.fromkeys(place.part for place in self.circuit.devices(Role.HEATS)))

    @cached_property
    def fed(self) -> frozenset[str]:
        """Those on a loop with all valves open. Raises TooLargeError beyond the search bound."""
        keys = itertools.chain.from_iterable(body.fed for body in self._rounds.bodies)
        return frozenset(map(part_of_key, keys))

    @cached_property
    def services(self) -> frozenset[str]:
        """The services that there are: of what is on a loop."""
        return NONE.union(*(self.service(part) for part in self.fed))

    def serving(self, services: frozenset[str]) -> frozenset[str]:
        """Those on a loop that serve any of these."""
        return frozenset(part for part in self.fed if self.service(part) & services)

    def service(self, part: str) -> frozenset[str]:
        """What an emitter, a coil or an exchanger serves; empty for any other part."""
        return self._services.get(part, NONE)

    @cached_property
    def _services(self) -> dict[str, frozenset[str]]:
        circuit = self.circuit
        found = dict.fromkeys([place.part for place in circuit.devices(Role.EMITS)], frozenset({HEATING}))
        for place in circuit.devices(Role.HEATED_BY_COIL):
            found[place.part] = frozenset({HOT_WATER})
        exchangers = circuit.devices(Role.EXCHANGES)
        if exchangers:
            found |= self._of_exchangers(found)
        return found

    def _of_exchangers(self, known: dict[str, frozenset[str]]) -> dict[str, frozenset[str]]:
        """An exchanger serves what the water behind it serves, through further exchangers too."""
        bodies = Bodies(self.circuit)
        found: dict[str, frozenset[str]] = {}
        grew = True
        while grew:
            grew = False
            for place in self.circuit.devices(Role.EXCHANGES):
                serves = found.get(place.part, NONE)
                for node, port in ((place.node, place.device.port), (place.other, place.device.other)):
                    body = self._rounds.of(key_of(place.part, port))
                    if body is None or key_of(place.part, port) not in body.warms:
                        continue
                    if bodies.of(node) in bodies.drinking:
                        serves |= {HOT_WATER}
                    for key in body.takes:
                        serves |= known.get(part_of_key(key), NONE) | found.get(part_of_key(key), NONE)
                if serves != found.get(place.part, NONE):
                    found[place.part] = frozenset(serves)
                    grew = True
        return found
