"""The heating water that figures are worked for: each body of it, and each part of one that pressure joins."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from circuitcheck.circuit.bodies import Heated
from circuitcheck.circuit.isolation import reaches
from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.expansion import Expansion, expansion_of
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role


@dataclass(frozen=True)
class HeatedWater:
    """Heating water that is one, all valves open, and what heats it: one source or several."""

    plant: Plant
    heated: tuple[Heated, ...]
    reach: frozenset[int]

    @property
    def body(self) -> int:
        """The body it belongs to."""
        return self.heated[0].body

    @property
    def parts(self) -> tuple[str, ...]:
        """What heats it, in the order of the drawing."""
        return tuple(dict.fromkeys(each.part for each in self.heated))

    @cached_property
    def expansion(self) -> Expansion:
        """What it asks of its vessels."""
        return expansion_of(self.plant, self.heated[0])

    def reached(self, role: Role) -> tuple[Placed, ...]:
        """The devices of that role within reach."""
        circuit = self.plant.circuit
        return tuple(place for place in circuit.devices(role) if circuit.water(place.node) in self.reach)

    @property
    def is_open_vented(self) -> bool:
        """Whether, all valves open, it reaches an open vent or a cistern's feed."""
        return bool(self.reached(Role.VENTS) or self.reached(Role.FEEDS))


def heated_waters(plant: Plant) -> tuple[HeatedWater, ...]:
    """All heating water, in the order of the drawing. Water that a store holds for drawing is none,
    though a heat source stands in it."""
    return plant.kept("heating water", lambda: _heated_waters(plant))


def heating_bodies(plant: Plant) -> tuple[HeatedWater, ...]:
    """The same by bodies of water: what a valve that pressure passes one way only parts is one."""
    found: dict[int, list[HeatedWater]] = {}
    for each in heated_waters(plant):
        found.setdefault(each.body, []).append(each)
    return tuple(
        HeatedWater(
            plant,
            tuple(heated for each in waters for heated in each.heated),
            frozenset().union(*(each.reach for each in waters)),
        )
        for waters in found.values()
    )


def sealed_waters(plant: Plant) -> tuple[HeatedWater, ...]:
    """The heating water that no open vent or cistern stands on."""
    return tuple(each for each in heated_waters(plant) if not each.is_open_vented)


def _heated_waters(plant: Plant) -> tuple[HeatedWater, ...]:
    circuit = plant.circuit
    stored = {
        plant.bodies.of(place.node)
        for role in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN)
        for place in circuit.devices(role)
    }
    groups: dict[frozenset[int], list[Heated]] = {}
    for heated in plant.bodies.heated:
        if heated.body not in stored:
            groups.setdefault(reaches(circuit, heated.water), []).append(heated)
    return tuple(HeatedWater(plant, tuple(heated), reach) for reach, heated in groups.items())
