"""The expansion vessels of a sealed water as they stand: their gas at the fill pressure, and the pressure hot."""

from __future__ import annotations

from dataclasses import dataclass

from circuitcheck.figures.content import SYSTEM_CONTENT
from circuitcheck.figures.expansion import vessel_fields
from circuitcheck.figures.gathering import Gathering
from circuitcheck.figures.heated_water import HeatedWater
from circuitcheck.figures.working import take_temperatures
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.pressure_in_time import Heated, gas_left_l
from circuitcheck.told import a_word, worded


@dataclass(frozen=True, slots=True)
class Charged:
    """All that the pressure of a sealed water follows from. Pressures at the vessel, in bar."""

    content_l: float
    vessels: tuple[tuple[float, float], ...]
    fill_bar: float
    cold_c: float
    hot_c: float

    @property
    def start_bar(self) -> float:
        """The pressure that the gas starts from: the fill's, or the charge where that is higher, since a
        vessel that is empty of water gives way only from its charge on."""
        return max(self.fill_bar, min((charge for _, charge in self.vessels), default=self.fill_bar))

    @property
    def gas_l(self) -> float:
        """The litres of gas then."""
        return gas_left_l(self.vessels, self.start_bar)

    @property
    def flooded_l(self) -> float:
        """The water in the circuit with its vessels full of it."""
        return self.content_l + sum(volume for volume, _ in self.vessels)

    def hot_bar(self) -> float:
        """The pressure at the vessel at the highest temperature, if nothing is let out."""
        if self.hot_c <= self.cold_c or self.content_l <= 0:
            return self.fill_bar
        # What swells in the tube grows with it; a vessel is sized without that, and so is this.
        whole = Heated(self.content_l, self.cold_c, self.start_bar, 1.0, self.gas_l, growth_per_k=0.0)
        return whole.pressure_bar(self.hot_c)


def take_charged(told: Gathering, water: HeatedWater) -> Charged | None:
    """All of it, each number an input; None where one is missing."""
    plant = told.plant
    content = plant.contents.of(water.body)
    if content.known:
        origin = f"given {SYSTEM_CONTENT}" if content.given else "figure water-content"
        told.add("V", a_word("Water content"), content.litres, "l", origin)
    else:
        told.lacks(*content.missing)
    vessels = []
    for place in water.reached(Role.HOLDS_EXPANSION):
        name = plant.drawing.name(place.part)
        volume_field, charge_field = vessel_fields(place)
        volume = told.part(
            place.part, volume_field, f"Vn {place.part}", worded("Volume of {name}", name=name)
        )
        charge = told.part(
            place.part, charge_field, f"p0 {place.part}", worded("Charge of {name}", name=name)
        )
        vessels.append((volume, charge))
    fill = told.design("fill_pressure_bar", "pfill", a_word("Fill pressure"))
    cold, hot = take_temperatures(told, water.expansion)
    if fill is None or cold is None or hot is None or not content.known:
        return None
    known = tuple((float(a), float(b)) for a, b in vessels if a is not None and b is not None)
    return Charged(content.litres, known, fill, cold, hot) if len(known) == len(vessels) else None
