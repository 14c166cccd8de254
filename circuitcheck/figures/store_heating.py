"""What heats a store: gathered for the figures that ask how long it takes and how much it sustains."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from circuitcheck.figures.heat_nets import heats_coil, heats_water
from circuitcheck.sizing.heating_up import HeatingPower, heating_power

if TYPE_CHECKING:
    from circuitcheck.figures.gathering import Gathering

COIL_POWER = "coil_power_kw"


@dataclass(frozen=True, slots=True)
class StoreHeating:
    """The power that heats a store in the main, None where numbers are missing or nothing does; its
    immersion heater's power in kW, 0 where it has none; and whether any heat source heats it at all."""

    power: HeatingPower | None
    immersion_kw: float
    by_source: bool


def store_heating(gathering: Gathering, store: str, *, immersion: bool = True) -> StoreHeating:
    """What heats a store. What is missing is noted. `immersion` False: its heater is left out."""
    plant = gathering.plant
    direct, by_coil = heats_water(plant, store), heats_coil(plant, store)
    found = gathering.part(store, "immersion_kw", "Pi", needed=False) if immersion else None
    kw = 0.0 if found is None else float(found)
    sources = direct or by_coil
    if not sources:
        return StoreHeating(None, kw, by_source=False)
    outputs = [gathering.part(source, "output_kw", "Ps") for source in sources]
    kind = plant.drawing.components[store].kind
    coil_kw: float | None = None
    if direct:
        coil_kw = None
    elif any(field.name == COIL_POWER for field in kind.own_fields):
        coil_kw = gathering.part(store, COIL_POWER, "Pc")
        if coil_kw is None:
            return StoreHeating(None, kw, by_source=True)
    known = [float(output) for output in outputs if output is not None]
    if len(known) < len(outputs):
        return StoreHeating(None, kw, by_source=True)
    power = heating_power(sum(known), None if coil_kw is None else float(coil_kw))
    return StoreHeating(HeatingPower(power.kw, power.limited_by) if direct else power, kw, by_source=True)
