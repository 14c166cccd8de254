"""What puts heat into the heating water and what takes it out: heat sources, emitters, coils, exchangers.

A heat source burns at its output until its outlet comes near the design's flow temperature and then as
much as holds it there; the heat goes by way of its own metal. An emitter gives its output by the
characteristic equation of EN 442-2, a coil by the difference between its water and the store's.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from typing import TypeVar

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.emitting import LIMITED, WATTS, rooms_c
from circuitcheck.figures.heat_nets import heats_coil
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.cells import Cell, Side, Sides
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.emitter import ROOM_C
from circuitcheck.sizing.water import density_kg_m3, heat_capacity_j_kgk

Made = TypeVar("Made")

BAND_K = 2.0
"""Over so many kelvin about its set temperature a heat source throttles from all to nothing (common
practice, no source)."""
METAL_J_K_A_W = 0.5
"""Heat that the metal of a heat source holds, in J/K for each watt of its output: some 9 kg of aluminium for
18 kW (common practice, no source)."""
METAL_ABOVE_K = 40.0
"""How much hotter that metal is than the water at full output (common practice, no source)."""
TRIPS_C = 95.0
"""Where the overheat cut-out of a heat source trips (common practice, no source; EN 14597 sets no number)."""
RESETS_BELOW_K = 15.0
"""So far below, a cut-out that resets itself does (common practice, no source)."""
EXCHANGER_K = 10.0
"""What an exchanger's two waters differ by at the heat source's output (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Source:
    """A heat source: its cell, output and what its control holds. `metal_j_k` is the heat its metal holds,
    `metal_w_k` what passes from it into the water. `high_limit`: `hand_reset`, `self_reset`, empty for none."""

    id: str
    cell: int
    watts: float
    set_c: float
    is_controlled: bool
    high_limit: str
    overrun_s: float
    most_bar: float
    metal_j_k: float
    metal_w_k: float


@dataclass(frozen=True, slots=True)
class Emitter:
    """An emitter: its nominal output at `excess_k` above its room; at most that where it `is_limited`."""

    id: str
    cell: int
    watts: float
    room_c: float
    excess_k: float
    is_limited: bool


@dataclass(frozen=True, slots=True)
class Coil:
    """A coil in a store: what passes for each kelvin between its water and the store's."""

    id: str
    cell: int
    w_k: float
    store_kg: float
    thermostat_c: float


@dataclass(frozen=True, slots=True)
class Exchanger:
    """A wall between two cells, and what passes through it for each kelvin."""

    id: str
    one: int
    other: int
    w_k: float


@dataclass(frozen=True, slots=True)
class Heat:
    """All of it, or the fields without which it cannot be told."""

    sources: tuple[Source, ...]
    emitters: tuple[Emitter, ...]
    coils: tuple[Coil, ...]
    exchangers: tuple[Exchanger, ...]
    cold_c: float
    flow_c: float
    return_c: float
    missing: tuple[str, ...] = ()


def heat(plant: Plant, sides: Sides, cells: tuple[Cell, ...]) -> Heat:
    """Everything in a drawing that heats its heating water or is heated by it."""
    return _Gathered(plant, sides, cells).heat


class _Gathered:
    def __init__(self, plant: Plant, sides: Sides, cells: tuple[Cell, ...]) -> None:
        self._plant, self._sides = plant, sides
        self._missing: dict[str, None] = {}
        self._place: dict[Side, int] = {
            each.side: number for number, each in enumerate(cells) if each.side is not None
        }
        self._pipe = {each.id: number for number, each in enumerate(cells) if each.side is None}
        cold, flow, back = (
            self._design(name)
            for name in ("fill_temperature_c", "flow_temperature_c", "return_temperature_c")
        )
        sources = tuple(self._each(Role.HEATS, lambda place: self._source(place, flow)))
        power = sum(each.watts for each in sources)
        self.heat = Heat(
            sources,
            tuple(self._each(Role.EMITS, self._emitter)),
            tuple(self._each(Role.HEATED_BY_COIL, lambda place: self._coil(place, cold, flow, back))),
            tuple(self._exchangers(power)),
            cold,
            flow,
            back,
            tuple(self._missing),
        )

    def _design(self, field: str) -> float:
        found = self._plant.design(field)
        if found is None:
            self._missing[f"design.{field}"] = None
        return 0.0 if found is None else float(found)

    def _number(self, part: str, field: str) -> float:
        found = self._plant.value(part, field)
        if found is None:
            self._missing[f"{part}.{field}"] = None
        return 0.0 if found is None else float(found)

    def _cell(self, part: str, port: str) -> int | None:
        return self._place.get(self._sides.of(part, port))

    def _each(self, role: Role, make: Callable[[Placed], Made | None]) -> Iterator[Made]:
        for place in self._plant.circuit.devices(role):
            found = make(place)
            if found is not None:
                yield found

    def _source(self, place: Placed, flow_c: float) -> Source | None:
        cell = self._cell(place.part, place.device.other)
        if cell is None:
            return None
        plant = self._plant
        watts = 1000 * self._number(place.part, "output_kw")
        high_limit = plant.value(place.part, "high_limit")
        overrun = plant.value(place.part, "pump_overrun_min")
        return Source(
            place.part,
            cell,
            watts,
            flow_c,
            plant.value(place.part, "heat") != "uncontrolled",
            str(high_limit or ""),
            60 * float(overrun or 0.0),
            float(plant.value(place.part, "maximum_pressure_bar") or 0.0),
            METAL_J_K_A_W * watts,
            watts / METAL_ABOVE_K,
        )

    def _emitter(self, place: Placed) -> Emitter | None:
        cell = self._cell(place.part, place.device.port)
        if cell is None:
            return None
        plant = self._plant
        fields = {field.name for field in plant.drawing.components[place.part].kind.own_fields}
        output = next(field for field in WATTS if field in fields)
        watts = self._number(place.part, output) * WATTS[output]
        room = rooms_c(plant).get(place.part, ROOM_C)
        limit = plant.value(place.part, LIMITED) if LIMITED in fields else None
        flow = plant.design("flow_temperature_c")
        is_limited = limit is not None and flow is not None and limit < flow
        excess = max(1.0, float(limit or 0.0) - room) if is_limited else 50.0
        return Emitter(place.part, cell, watts, room, excess, is_limited)

    def _coil(self, place: Placed, cold_c: float, flow_c: float, return_c: float) -> Coil | None:
        """What is stated passes at the design's temperatures into a store half-way between cold and its
        thermostat; where nothing is stated, what the heat sources give."""
        cell = self._cell(place.part, place.device.port)
        if cell is None:
            return None
        plant = self._plant
        fields = {field.name for field in plant.drawing.components[place.part].kind.own_fields}
        if "coil_power_kw" in fields:
            kw = self._number(place.part, "coil_power_kw")
        else:
            kw = sum(self._number(source, "output_kw") for source in heats_coil(plant, place.part))
        litres = self._number(place.part, "volume_l")
        thermostat = float(plant.value(place.part, "thermostat_c") or 60.0)
        difference = max(5.0, (flow_c + return_c) / 2 - (cold_c + thermostat) / 2)
        kilograms = litres * density_kg_m3(min(110.0, max(0.0, cold_c))) / 1000
        return Coil(place.part, cell, 1000 * kw / difference, kilograms, thermostat)

    def _exchangers(self, watts: float) -> Iterator[Exchanger]:
        """Those that part two heating waters."""
        for place in self._plant.circuit.devices(Role.EXCHANGES):
            one, other = (self._beside(place.part, port) for port in (place.device.port, place.device.other))
            if one is not None and other is not None:
                yield Exchanger(place.part, one, other, watts / EXCHANGER_K)

    def _beside(self, part: str, port: str) -> int | None:
        """The cell of the pipe that comes from an exchanger's side: it holds no water of its own."""
        side = self._sides.of(part, port)
        pipes = self._plant.drawing.joined
        for name in self._sides.ports(side):
            for joint, pipe in pipes.items():
                if joint.part == part and joint.port == name and pipe in self._pipe:
                    return self._pipe[pipe]
        return None


def water_j_k(kilograms: float, at_c: float) -> float:
    """The heat that so much water holds for each kelvin."""
    return kilograms * heat_capacity_j_kgk(at_c)
