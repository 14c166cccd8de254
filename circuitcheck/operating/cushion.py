"""The pressure of each water that the valves, as they stand, leave joined: gas cushions, open ends, safety valves.

Water that is heated swells into what gives way: the gas of vessels (Boyle's law, isothermal), an open vent
or cistern, and where there is neither only its own compressibility and the stretch of the tube. A safety
valve lets out what swells further at its set pressure.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from dataclasses import dataclass

from circuitcheck.circuit.joining import Placed
from circuitcheck.figures.expansion import safety_valve_field, safety_valve_set_bar, vessel_fields
from circuitcheck.figures.plant import Plant
from circuitcheck.operating.cells import Cell
from circuitcheck.parts.kind import Role
from circuitcheck.sizing.pressure_in_time import MOST_BAR, STRETCH_PER_BAR
from circuitcheck.sizing.vessel import ATMOSPHERE_BAR, room_share, static_bar

LEAST_BAR = -0.99
TOLERANCE_L = 1e-10


@dataclass(frozen=True, slots=True)
class Cushion:
    """What takes up swell: a vessel by its litres and charge, or (no litres) an end open to air, which holds
    its water's pressure at `open_bar`. `water`: the circuit's water that it is on."""

    part: str
    water: int
    litres: float
    charge_bar: float
    open_bar: float = 0.0

    @property
    def is_open(self) -> bool:
        """Whether it is open to air."""
        return self.litres <= 0

    def holds_l(self, bar: float) -> float:
        """The water in a vessel at a pressure."""
        return self.litres * room_share(self.charge_bar, bar)

    def yields_l_bar(self, bar: float) -> float:
        """How much more for each bar."""
        if bar <= self.charge_bar:
            return 0.0
        return self.litres * (self.charge_bar + ATMOSPHERE_BAR) / (bar + ATMOSPHERE_BAR) ** 2


@dataclass(frozen=True, slots=True)
class Relief:
    """A safety valve: what it is set at, the water it is on, and whether its outlet is plugged."""

    part: str
    water: int
    set_bar: float
    is_plugged: bool


@dataclass(frozen=True, slots=True)
class Joined:
    """One water that the valves leave joined, by the places of what is in it."""

    cells: tuple[int, ...]
    cushions: tuple[int, ...]
    reliefs: tuple[int, ...]


@dataclass(frozen=True, slots=True)
class Holding:
    """What holds the pressure of a drawing's heating water, or the fields without which it is not known."""

    cushions: tuple[Cushion, ...]
    reliefs: tuple[Relief, ...]
    fill_bar: float
    missing: tuple[str, ...]


def holding(plant: Plant, bodies: frozenset[int]) -> Holding:
    """The cushions and safety valves of these bodies of water."""
    missing: dict[str, None] = {}
    fill = plant.design("fill_pressure_bar")
    static = plant.design("static_height_m")
    open_ends = [
        place
        for role in (Role.VENTS, Role.FEEDS)
        for place in plant.circuit.devices(role)
        if plant.bodies.of(place.node) in bodies
    ]
    if fill is None and open_ends and static is not None:
        fill = static_bar(float(static))
    if fill is None:
        missing["design.static_height_m" if open_ends else "design.fill_pressure_bar"] = None
    cushions = [*_vessels(plant, bodies, missing)]
    cushions += [
        Cushion(place.part, plant.circuit.water(place.node), 0.0, 0.0, float(fill or 0.0))
        for place in open_ends
    ]
    reliefs = tuple(_reliefs(plant, bodies, missing))
    return Holding(tuple(cushions), reliefs, float(fill or 0.0), tuple(missing))


def _vessels(plant: Plant, bodies: frozenset[int], missing: dict[str, None]) -> Iterator[Cushion]:
    for place in plant.circuit.devices(Role.HOLDS_EXPANSION):
        if plant.bodies.of(place.node) not in bodies:
            continue
        volume_field, charge_field = vessel_fields(place)
        volume, charge = plant.value(place.part, volume_field), plant.value(place.part, charge_field)
        for value, field in ((volume, volume_field), (charge, charge_field)):
            if value is None:
                missing[f"{place.part}.{field}"] = None
        yield Cushion(place.part, plant.circuit.water(place.node), float(volume or 1.0), float(charge or 0.0))


def _reliefs(plant: Plant, bodies: frozenset[int], missing: dict[str, None]) -> Iterator[Relief]:
    plugged = {
        each.valve.part
        for each in plant.discharges
        if not each.runs and any(_is_cap(plant, id) for id in each.stops_at)
    }
    for place in plant.circuit.devices(Role.RELIEVES_HEATING):
        if plant.bodies.of(place.node) in bodies:
            set_bar = safety_valve_set_bar(plant, place)
            if set_bar is None:
                missing[safety_valve_field(place)] = None
            yield _relief(plant, place, float(set_bar or 0.0), place.part in plugged)


def _relief(plant: Plant, place: Placed, set_bar: float, is_plugged: bool) -> Relief:
    return Relief(place.part, plant.circuit.water(place.node), set_bar, is_plugged)


def _is_cap(plant: Plant, id: str) -> bool:
    part = plant.drawing.components.get(id)
    return part is not None and part.kind.name == "cap"


def joined(
    plant: Plant,
    cells: tuple[Cell, ...],
    held: Holding,
    shut: frozenset[str],
    flowing: Iterable[tuple[int, ...]],
) -> tuple[Joined, ...]:
    """The waters that stay joined with these passages shut. `flowing`: cells that one stream goes through,
    whatever stands between them."""
    waters = _Waters(plant, shut)
    for together in flowing:
        for place in together[1:]:
            waters.join(cells[together[0]].water, cells[place].water)
    groups: dict[int, tuple[list[int], list[int], list[int]]] = {}
    for number, cell in enumerate(cells):
        groups.setdefault(waters.of(cell.water), ([], [], []))[0].append(number)
    for which, on in (
        (1, [each.water for each in held.cushions]),
        (2, [each.water for each in held.reliefs]),
    ):
        for number, water in enumerate(on):
            found = groups.get(waters.of(water))
            if found is not None:
                found[which].append(number)
    return tuple(Joined(tuple(a), tuple(b), tuple(c)) for a, b, c in groups.values())


class _Waters:
    """Waters of the circuit, joined where nothing stands shut between them."""

    def __init__(self, plant: Plant, shut: frozenset[str]) -> None:
        self._head: dict[int, int] = {}
        for edge in plant.circuit.edges:
            if edge.label not in shut:
                self.join(edge.a, edge.b)

    def of(self, water: int) -> int:
        """The water that stands for it and all joined to it."""
        while (up := self._head.get(water, water)) != water:
            water = up
        return water

    def join(self, one: int, other: int) -> None:
        """These two are one."""
        a, b = self.of(one), self.of(other)
        if a != b:
            self._head[max(a, b)] = min(a, b)


@dataclass(frozen=True, slots=True)
class Balance:
    """The volumes of one joined water: litres of water at the fill pressure's density, litres of room at that
    pressure, how much both give for each bar, and the vessels with gas."""

    water_l: float
    room_l: float
    give_l_bar: float
    vessels: tuple[Cushion, ...]
    fill_bar: float

    def over_l(self, bar: float) -> float:
        """How much more water than room there is at a pressure; it falls as the pressure rises."""
        held = sum(each.holds_l(bar) for each in self.vessels)
        return self.water_l - self.room_l - held - self.give_l_bar * (bar - self.fill_bar)

    def bar(self, near_bar: float) -> float:
        """The pressure at which it all fits: by Newton's method, held between bounds."""
        low, high = LEAST_BAR, 2 * MOST_BAR
        if self.over_l(low) <= 0:
            return low
        at = min(max(near_bar, low), high)
        for _ in range(80):
            over = self.over_l(at)
            if abs(over) < TOLERANCE_L:
                break
            low, high = (at, high) if over > 0 else (low, at)
            slope = self.give_l_bar + sum(each.yields_l_bar(at) for each in self.vessels)
            step = at + over / slope
            at = step if low < step < high else (low + high) / 2
        return at


def give_per_bar(compressibility: float) -> float:
    """What a litre of water and the tube around it give for each bar."""
    return compressibility + STRETCH_PER_BAR
