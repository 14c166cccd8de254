"""Capacity of the safety valves.

Whether the safety valves of a sealed circuit can blow off all the heat that its heat sources give at full
output. When every control has failed, all of it leaves as steam through them; what they cannot pass
goes on raising the pressure.
"""

from __future__ import annotations

from circuitcheck.figures.figure import Figure, Result
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater, sealed_waters
from circuitcheck.figures.plant import Plant
from circuitcheck.figures.working import refusal
from circuitcheck.parts.kind import Role
from circuitcheck.told import a_word, worded

NAME, TITLE = "safety-valve", "Capacity of the safety valves"
FORMULA = "to spare = Σ capacity − Σ output"
SOURCE = (
    "BS EN 12828, 4.6.2.2 (from memory): the safety valve passes the whole output of its heat generator; "
    "capacities to BS EN ISO 4126-1, by the maker. That a valve built into a heat source serves that one and "
    "no other: common practice, no source."
)
LIMITS = "Capacities as stated for steam at the valve's setting; every heat source at full output at once."

CHECKS = ("safety-valve-too-small", "safety-valve-set-too-high")
"""What is found where this figure is not kept to."""


def work(plant: Plant) -> tuple[Figure, ...]:
    """One for each sealed heating water with a heat source that relies on valves of the circuit."""
    found = (_one(plant, water) for water in sealed_waters(plant) if water.reached(Role.RELIEVES_HEATING))
    return tuple(each for each in found if each is not None)


def _sources(plant: Plant, water: HeatedWater) -> tuple[str, ...]:
    """The heat sources whose heat comes into this water and that have no safety valve of their own.
    Behind a heat exchanger, all of them."""
    sources = plant.circuit.devices(Role.HEATS)
    if any(heated.by_exchanger for heated in water.heated):
        return tuple(place.part for place in sources)
    valves = plant.circuit.devices(Role.RELIEVES_HEATING)
    own = {valve.part for valve in valves if valve.device.built_in}
    return tuple(place.part for place in water.reached(Role.HEATS) if place.part not in own)


def _one(plant: Plant, water: HeatedWater) -> Figure | None:
    sources = _sources(plant, water)
    valves = [each.part for each in water.reached(Role.RELIEVES_HEATING) if not each.device.built_in]
    if not sources:
        return None
    gathering = Gathering(plant)
    subject = (*valves, *sources)
    name = plant.drawing.name
    outputs = [
        gathering.part(each, "output_kw", f"P {each}", worded("Output of {each}", each=name(each)))
        for each in sources
    ]
    passed = [
        gathering.part(each, "capacity_kw", f"Q {each}", worded("Capacity of {each}", each=name(each)))
        for each in valves
    ]
    if gathering.missing:
        return refusal(NAME, TITLE, subject, gathering, formula=FORMULA, source=SOURCE, limits=LIMITS)
    output, capacity = sum(float(each) for each in outputs), sum(float(each) for each in passed)
    results = (
        Result(a_word("Heat to blow off"), output, "kW"),
        Result(a_word("Capacity of the safety valves"), capacity, "kW"),
        Result(
            a_word("To spare") if capacity >= output else a_word("Short by"), abs(capacity - output), "kW"
        ),
    )
    return Figure(NAME, TITLE, subject, results, FORMULA, gathering.inputs, SOURCE, LIMITS)
