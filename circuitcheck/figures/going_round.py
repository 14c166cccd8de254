"""How much water goes round through a heat source in one situation."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.circuit.circulating import Round, circulating
from circuitcheck.circuit.joining import Placed
from circuitcheck.circuit.situations import Situation
from circuitcheck.figures.content import HOLDS_WATER
from circuitcheck.parts.kind import Role

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant


@dataclass(frozen=True, slots=True)
class GoingRound:
    """What is known of the litres that go round in a situation, by which ways, and what is missing to
    know the rest."""

    litres: float
    situation: Situation
    round: Round
    missing: tuple[str, ...]


def going_round(plant: Plant, heat: Placed, situation: Situation) -> GoingRound:
    """What goes round through a heat source while a situation's motor valves stand as they do."""
    turn = circulating(plant.circuit, heat, situation.shut)
    litres, missing = _litres(plant, turn)
    return GoingRound(litres, situation, turn, (*situation.missing, *missing))


def heated_rounds(plant: Plant, heat: Placed) -> tuple[GoingRound, ...]:
    """What goes round in each situation with heat on and a pump running, each stand of the motor valves
    once. One with a coil or an exchanger on the way is left out: what is behind it takes up the heat."""
    roles = (Role.HEATED_BY_COIL, Role.EXCHANGES)
    takes = plant.circuit.parts_with(*roles)
    stands: dict[frozenset[str], Situation] = {}
    for situation in plant.situations.all:
        if situation.heat_on and situation.running:
            stands.setdefault(situation.shut, situation)
    found = (going_round(plant, heat, situation) for situation in stands.values())
    return tuple(each for each in found if takes.isdisjoint(each.round.parts))


def _litres(plant: Plant, turn: Round) -> tuple[float, tuple[str, ...]]:
    total, missing = 0.0, list[str]()
    for pipe in turn.pipes:
        litres, lacks = plant.contents.pipe_litres(pipe)
        total += litres or 0.0
        missing += lacks
    on_it = frozenset(turn.parts)
    fields = {
        (place.part, field)
        for role, field in HOLDS_WATER
        for place in plant.circuit.devices(role)
        if place.part in on_it
    }
    for part, field in sorted(fields):
        value = plant.value(part, field)
        total += float(value or 0.0)
        missing += [] if value is not None else [f"{part}.{field}"]
    return total, tuple(missing)
