"""The water that stands between what is hot and each outlet, and must run out before hot water comes."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cached_property
from math import inf
from typing import TYPE_CHECKING

from circuitcheck.circuit.waterways import Cheapest, Step, cheapest_way
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.figure import Input
from circuitcheck.figures.hot_water import hot_starts, supplies
from circuitcheck.told import worded

if TYPE_CHECKING:
    from circuitcheck.circuit.supplies import Giver
    from circuitcheck.figures.plant import Plant


@dataclass(frozen=True, slots=True)
class Held:
    """The water in one pipe, told once for all outlets behind it; `told` None: it is not known."""

    length_m: float
    litres: float
    told: Input | None
    missing: tuple[str, ...]


class HotLegs:
    """The way of least water to each outlet from what gives hot water, or from where a secondary return
    keeps it hot."""

    def __init__(self, plant: Plant) -> None:
        self.plant = plant
        self.ways = supplies(plant)
        self._held: dict[str, Held] = {}

    @cached_property
    def outlets(self) -> tuple[Joint, ...]:
        """The hot ports of outlets that hot water comes to, in the order of the drawing."""
        joined = [
            joint
            for place in self.ways.outlets
            if (joint := Joint(place.part, place.device.port)) in self.plant.drawing.joined
        ]
        if not joined or not self.ways.givers:
            return ()
        return tuple(joint for joint in joined if joint in self.least)

    @cached_property
    def starts(self) -> Mapping[Joint, Giver]:
        """Where water is hot at once, and what keeps it so."""
        return {port: giver for giver in self.ways.givers for port in hot_starts(self.plant, giver)}

    @cached_property
    def least(self) -> Cheapest:
        """The least litres to every port; a pipe whose content is not known counts as empty."""
        return self._ways(0.0)

    @cached_property
    def most(self) -> Cheapest:
        """The least litres to every port; a pipe whose content is not known holds without end."""
        return self._ways(inf)

    def steps(self, outlet: Joint) -> tuple[Step, ...]:
        """The steps of the way of least water to an outlet; none where its port is hot at once."""
        return cheapest_way(self.least, outlet)

    def pipes(self, outlet: Joint) -> tuple[tuple[str, Held], ...]:
        """The pipes on that way, with what is in them."""
        return tuple((step.pipe, self.held(step.pipe)) for step in self.steps(outlet) if step.pipe)

    def giver(self, outlet: Joint) -> Giver:
        """What the hot water at an outlet comes from."""
        steps = self.steps(outlet)
        return self.starts[steps[0].start if steps else outlet]

    def held(self, pipe: str) -> Held:
        """The water in a pipe."""
        if pipe not in self._held:
            self._held[pipe] = _held(self.plant, pipe)
        return self._held[pipe]

    def _ways(self, unknown: float) -> Cheapest:
        def litres(step: Step) -> float | None:
            if not self.ways.drawn_outside(step):
                return None
            if not step.pipe:
                return 0.0
            held = self.held(step.pipe)
            return unknown if held.told is None else held.litres

        return self.ways.cheapest(self.starts, litres)


def hot_legs(plant: Plant) -> HotLegs:
    """The hot legs of a plant, worked once for all that asks."""
    return plant.kept("hot legs", lambda: HotLegs(plant))


def _held(plant: Plant, pipe: str) -> Held:
    litres, missing = plant.contents.pipe_litres(pipe)
    metres = plant.length_m(pipe)
    if litres is None or metres is None:
        return Held(0.0, 0.0, None, missing)
    name = worded("Content of {pipe}, {value:.4g} m", pipe=pipe, value=metres.value)
    told = Input("V", name, litres, "l", f"{metres.how} {pipe}.length_m")
    return Held(metres.value, litres, told, ())
