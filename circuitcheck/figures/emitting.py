"""What each emitter gives at the design's temperatures: gathered for the figures that ask it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.sizing.emitter import EXPONENT, ROOM_C, excess_k, output_share
from circuitcheck.told import a_word, worded

if TYPE_CHECKING:
    from circuitcheck.figures.gathering import Gathering
    from circuitcheck.figures.plant import Plant

LIMITED = "maximum_flow_temperature_c"
WATTS = {"output_w": 1.0, "output_kw": 1000.0}


@dataclass(frozen=True, slots=True)
class Emitted:
    """One emitter: what it gives at 50 K and at the design's temperatures, in W.

    `limited_c`: it takes cooler water than the design's flow, and its stated output stands as it is;
    None where it does not. `room_c` is the room it is told for.
    """

    nominal_w: float
    given_w: float
    room_c: float
    limited_c: float | None = None


def rooms_c(plant: Plant) -> Mapping[str, float]:
    """The temperature that an emitter's room thermostat is set to, by the emitter's id."""

    def found() -> Mapping[str, float]:
        return {
            part: control.set_c
            for control in plant.drawing.controls.values()
            if control.set_c is not None
            for part in control.in_same_room_as
        }

    return plant.kept("rooms by emitter", found)


def share_at(plant: Plant, part: str, flow_c: float, return_c: float) -> float:
    """The share of its stated output that an emitter gives at these temperatures of the plant's water.

    What is stated is the nominal output, at 50 K (EN 442): the one reading that figures, flows and checks
    share. An emitter that takes cooler water than this by its own limit gives what it states.
    """
    fields = {field.name for field in plant.drawing.components[part].kind.own_fields}
    limit = plant.value(part, "maximum_flow_temperature_c") if LIMITED in fields else None
    if limit is not None and limit < flow_c:
        return 1.0
    return output_share(excess_k(flow_c, return_c, rooms_c(plant).get(part, ROOM_C)))


def emitted(gathering: Gathering, part: str) -> Emitted | None:
    """What an emitter gives; None where numbers are missing, which are then noted."""
    plant = gathering.plant
    fields = {field.name for field in plant.drawing.components[part].kind.own_fields}
    output_field = next(field for field in WATTS if field in fields)
    flow = gathering.design("flow_temperature_c", "Tf")
    back = gathering.design("return_temperature_c", "Tr")
    output = gathering.part(
        part, output_field, "Φn", worded("Output of {part} at 50 K", part=plant.drawing.name(part))
    )
    room = _room(gathering, part)
    if flow is None or back is None or output is None:
        return None
    nominal = float(output) * WATTS[output_field]
    limit = gathering.part(part, LIMITED, "Tm", needed=False) if LIMITED in fields else None
    if limit is not None and limit < flow:
        return Emitted(nominal, nominal, room, limited_c=float(limit))
    gathering.add("n", "Exponent", EXPONENT, "", a_word("EN 442-2: usual for radiators"))
    return Emitted(nominal, nominal * share_at(plant, part, float(flow), float(back)), room)


def _room(gathering: Gathering, part: str) -> float:
    set_c = rooms_c(gathering.plant).get(part)
    room, origin = ROOM_C, a_word("the room that EN 442 tells outputs for")
    if set_c is not None:
        name = gathering.plant.drawing.name(part)
        room, origin = set_c, worded("the room thermostat beside {name}", name=name)
    gathering.add("Ti", "Room", room, "°C", origin)
    return room
