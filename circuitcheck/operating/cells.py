"""What holds the heating water of a drawing, cell by cell: each pipe, and each part that holds water."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from circuitcheck.circuit.joining import Placed
from circuitcheck.drawing.value import Joint
from circuitcheck.figures.content import HOLDS_WATER
from circuitcheck.figures.heated_water import heating_bodies
from circuitcheck.figures.plant import Plant
from circuitcheck.parts.kind import Role

LEAST_L = 0.01
"""A pipe of no length holds so much, so that water can be led through it."""

Side = tuple[str, int]
"""A part's water on one side: the part, and which of its waters, counted from its first port."""


@dataclass(frozen=True, slots=True)
class Cell:
    """Water that has one temperature: in a pipe (`side` None) or in a part. `litres` when filled; `body` as
    `plant.bodies` numbers it; `water` the water of the circuit that it belongs to."""

    id: str
    litres: float
    body: int
    water: int
    side: Side | None = None


@dataclass(frozen=True, slots=True)
class Cells:
    """All cells of all heating water, or the fields without which they cannot be told. `spread` says that
    the design states more water than the parts and pipes drawn hold, and where the rest was put."""

    cells: tuple[Cell, ...]
    missing: tuple[str, ...] = ()
    spread: str = ""


class Sides:
    """Which of a part's ports share a water in it: by the ways through it, whatever shuts them."""

    def __init__(self, plant: Plant) -> None:
        self._plant = plant
        self._known: dict[str, dict[str, int]] = {}

    def of(self, part: str, port: str) -> Side:
        """The side of a part that a port is on."""
        if part not in self._known:
            self._known[part] = self._grouped(part)
        return part, self._known[part].get(port, 0)

    def ports(self, side: Side) -> tuple[str, ...]:
        """The ports on one side of a part."""
        kind = self._plant.drawing.components[side[0]].kind
        return tuple(port.name for port in kind.ports if self.of(side[0], port.name) == side)

    def _grouped(self, part: str) -> dict[str, int]:
        plan = self._plant.circuit.plans[part]
        kind = self._plant.drawing.components[part].kind
        group: dict[str, str] = {}

        def head(name: str) -> str:
            while (up := group.get(name, name)) != name:
                name = up
            return name

        for passage in plan.passages:
            if not passage.gap:
                group[head(passage.b)] = head(passage.a)
        numbers: dict[str, int] = {}
        found: dict[str, int] = {}
        for port in (*(each.name for each in kind.ports), *plan.slots):
            found.setdefault(port, numbers.setdefault(head(port), len(numbers)))
        return found


def cells(plant: Plant, sides: Sides) -> Cells:
    """Every cell of heating water, pipes first, in the order of the drawing."""
    found: list[Cell] = []
    missing: list[str] = []
    said = []
    for water in heating_bodies(plant):
        known = list(_of_body(plant, sides, water.body))
        content = plant.contents.of(water.body)
        # What stands where is told all the same, so that all else that is missing can be named with it.
        missing += content.missing
        if content.given:
            known, spread = _as_stated(plant, known, content.litres)
            said += [spread] if spread else []
        found += [
            Cell(each.id, max(LEAST_L, each.litres), each.body, each.water, each.side) for each in known
        ]
    return Cells(tuple(found), tuple(dict.fromkeys(missing)), " ".join(said))


def _of_body(plant: Plant, sides: Sides, body: int) -> Iterator[Cell]:
    """The cells of one body, with what the drawing tells of their content; 0 where it does not."""
    waters = plant.circuit.waters
    for number, pipe in enumerate(plant.drawing.pipes):
        if plant.bodies.of(number) == body:
            litres, _ = plant.contents.pipe_litres(pipe)
            yield Cell(pipe, litres or 0.0, body, waters[number])
    seen: set[Side] = set()
    for place, field in _holders(plant):
        side = sides.of(place.part, place.device.port)
        if plant.bodies.of(place.node) == body and side not in seen:
            seen.add(side)
            held = plant.value(place.part, field)
            node = place.other if place.other >= 0 else place.node
            yield Cell(place.part, float(held or 0.0), body, plant.circuit.water(node), side)


def _holders(plant: Plant) -> Iterator[tuple[Placed, str]]:
    for role, field in HOLDS_WATER:
        if role not in (Role.STORES_AT_MAINS_PRESSURE, Role.STORES_OPEN):
            for place in plant.circuit.devices(role):
                yield place, field


def _as_stated(plant: Plant, known: list[Cell], litres: float) -> tuple[list[Cell], str]:
    """The cells with so many litres in all. What is stated beyond what is drawn stands in the emitters' own
    pipework, which is not drawn out: in proportion to what they hold, or evenly where nothing is told."""
    told = sum(each.litres for each in known)
    emitters = plant.circuit.parts_with(Role.EMITS)
    there = [each for each in known if each.side is not None and each.id in emitters]
    if litres < told or not there:
        if told <= 0:
            share = litres / max(1, len(known))
            return [_holding(each, share) for each in known], ""
        return [_holding(each, each.litres * litres / told) for each in known], ""
    more, held = litres - told, sum(each.litres for each in there)
    if more <= 1e-9:
        return known, ""
    share_of = {each.id: more * (each.litres / held if held > 0 else 1 / len(there)) for each in there}
    spread = [_holding(each, each.litres + share_of[each.id]) if each in there else each for each in known]
    return spread, f"{more:.3g}"


def _holding(cell: Cell, litres: float) -> Cell:
    return Cell(cell.id, litres, cell.body, cell.water, cell.side)


def joint_of(plant: Plant, pipe: str, end: int) -> Joint | None:
    """The port that one end of a pipe is on; None for a free end."""
    found = plant.drawing.pipes[pipe].ends[end]
    return found if isinstance(found, Joint) else None
