"""What the figures of hot water share: what gives it, which outlets it comes to, how cold and how hot it is."""

from __future__ import annotations

from typing import TYPE_CHECKING

from circuitcheck.circuit.secondary import kept_hot
from circuitcheck.circuit.supplies import Giver, Supplies
from circuitcheck.drawing.value import Joint
from circuitcheck.rules.book import NoRuleError
from circuitcheck.sizing.demand import UNIT_L_S, l_min
from circuitcheck.told import a_word, spoken, worded

if TYPE_CHECKING:
    from circuitcheck.figures.gathering import Gathering
    from circuitcheck.figures.plant import Plant

COLD = "fill_temperature_c"
COLD_NAME = a_word("Cold water, as the circuit is filled with")
UNITS = "supply.loading_units"
UNITS_SOURCE = "EN 806-3:2006, Table 2 (draw-off flows)"


def supplies(plant: Plant) -> Supplies:
    """The ways of drinking water, worked once for all that asks."""
    return plant.kept("supplies", lambda: Supplies(plant.circuit, plant.bodies))


def stores(plant: Plant) -> tuple[Giver, ...]:
    """The stores that give hot drinking water, in the order of the drawing."""
    return tuple(giver for giver in supplies(plant).givers if giver.stores)


def heaters(plant: Plant) -> tuple[Giver, ...]:
    """What heats drinking water on its way, and stores none."""
    return tuple(giver for giver in supplies(plant).givers if not giver.stores)


def hot_starts(plant: Plant, giver: Giver) -> list[Joint]:
    """Where a giver's water is hot at once: its hot outlets, and all that a secondary return keeps hot."""
    found = list(giver.ports)
    if giver.stores:
        found += sorted(kept_hot(supplies(plant), giver))
    return found


def secondary_pipes(plant: Plant, store: str) -> tuple[str, ...]:
    """The pipes between a store's hot port and its secondary return, without dead legs; none where
    nothing comes back to it. In the order of the drawing."""
    ways = supplies(plant)
    joints = next((kept_hot(ways, giver) for giver in ways.givers if giver.part == store), frozenset())
    if not joints:
        return ()
    pipes = plant.drawing.pipes.items()
    return tuple(id for id, pipe in pipes if len(pipe.joints) == 2 and joints.issuperset(pipe.joints))


def fed_by(plant: Plant, giver: Giver) -> tuple[str, ...]:
    """The outlets whose hot water comes straight from this giver, in the order of the drawing."""
    ways = supplies(plant)
    reached = ways.walk(giver.ports, ways.drawn_outside)
    return tuple(place.part for place in ways.outlets if Joint(place.part, place.device.port) in reached)


def cold_c(gathering: Gathering) -> float | None:
    """How cold the water comes in: the design's fill temperature, since the same main fills both."""
    found = gathering.design(COLD, "Tc", COLD_NAME)
    return None if found is None else float(found)


def units_of(gathering: Gathering, outlet: str, symbol: str = "LU") -> float | None:
    """An outlet's loading units; None where its fitting is not known or has none. Raises NoRuleError."""
    plant = gathering.plant
    table = plant.limit(UNITS).value
    fitting = plant.value(outlet, "fitting")
    found = table.get(fitting)
    if found is None:
        gathering.lacks(f"{outlet}.fitting")
        return None
    name = plant.drawing.name(outlet)
    if fitting != "other":
        name = worded("{name}, a {fitting}", name=name, fitting=spoken(fitting))
    gathering.add(
        symbol,
        worded("Loading units of {name}", name=name),
        float(found),
        "",
        f"rule {plant.rules.name}: {UNITS}",
    )
    return float(found)


def draw_off_lpm(gathering: Gathering, outlet: str) -> float | None:
    """What an outlet draws when it is open, in l/min; None where its fitting is not known."""
    units = units_of(gathering, outlet)
    return None if units is None else l_min(units * UNIT_L_S)


def limit_or_none(plant: Plant, name: str) -> float | None:
    """A limit of the rule book; None where it sets none."""
    try:
        return float(plant.limit(name).value)
    except NoRuleError:
        return None
