"""How much water a body of water holds: its pipes by bore and length, its parts by their data."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from functools import cached_property
from itertools import groupby
from operator import attrgetter
from typing import TYPE_CHECKING, NamedTuple

from circuitcheck.finding import NameTuple, Piece, joined, names
from circuitcheck.parts.kind import Kind, Role
from circuitcheck.sizing.tube import bore_mm, content_l_m

if TYPE_CHECKING:
    from circuitcheck.figures.plant import Plant

HOLDS_WATER: tuple[tuple[Role, str], ...] = (
    (Role.HEATS, "water_content_l"),
    (Role.EMITS, "water_content_l"),
    (Role.SEPARATES, "water_content_l"),
    (Role.HEATED_BY_COIL, "coil_content_l"),
    (Role.STORES_AT_MAINS_PRESSURE, "volume_l"),
    (Role.STORES_OPEN, "volume_l"),
)
"""What holds water that counts, and the field that says how much. Valves, pumps, tees and plate
exchangers hold too little to count, a vessel's water is what has swelled, and a cistern's stands outside
the circuit (common practice, no source)."""

_OF_THE_CIRCUIT = frozenset({"_by_body", "_pipes_by_body", "_water_of_pipe"})
"""What rests on the circuit alone."""

SYSTEM_CONTENT = "design.system_content_l"


@dataclass(frozen=True, slots=True)
class Share:
    """The water in one part or pipe, in litres."""

    id: str
    litres: float


@dataclass(frozen=True, slots=True)
class Content:
    """Litres of water: the sum of what is known, what each known part of it holds, and the fields, as
    `id.field`, that would have to be known for the rest. `given`: the design states the sum, and the parts
    are not told.

    `most_litres` is what it can be at most; None where nothing says so.
    """

    litres: float
    missing: NameTuple = ()
    parts: tuple[Share, ...] = ()
    given: bool = False
    most_litres: float | None = None

    @property
    def known(self) -> bool:
        """Whether nothing is missing."""
        return not self.missing


class _Holder(NamedTuple):
    """A part that holds water, the nodes it stands on, and the field that says how much."""

    id: str
    nodes: tuple[int, ...]
    field: str


class _Pipes(NamedTuple):
    """What pipes hold, and what is missing to say it of all of them."""

    shares: list[Share]
    missing: NameTuple


class Contents:
    """The water in each body of a drawing, and in any region of its circuit."""

    def __init__(self, plant: Plant) -> None:
        self.plant = plant
        self._bodies: dict[int, Content] = {}
        self._of_pipes: dict[int, _Pipes] = {}

    def of(self, body: int) -> Content:
        """The water in a body, as `plant.bodies.of(node)` names it.

        What the design states wins for heating water, where there is one body of it.
        """
        found = self._bodies.get(body)
        if found is None:
            found = self._bodies[body] = self._of_body(body)
        return found

    def in_waters(self, waters: frozenset[int]) -> Content:
        """The water that stays joined to these waters of the circuit, as `circuit.water(node)` names them.

        An emitter that is shut at one end hangs on by its other: it counts if either end is there. Where
        the design states the content of the whole body, all of it is here but what stands elsewhere.
        """
        water, bodies = self.plant.circuit.water, self.plant.bodies
        touched = sorted({bodies.of(each) for each in waters})
        held = [holder for body in touched for holder in self._by_body.get(body, ())]
        here = [holder for holder in held if any(water(node) in waters for node in holder.nodes)]
        pipes = [pipe for body in touched for pipe in self._pipes_by_body.get(body, ())]
        water_of = self._water_of_pipe
        pipes_here = [pipe for pipe in pipes if water_of[pipe] in waters]
        stated = self.of(touched[0]) if len(touched) == 1 else None
        if stated is None or not stated.given:
            return self._sum(pipes_here, here)
        if len(here) == len(held) and len(pipes_here) == len(pipes):
            return stated
        inside = set(here)
        others = self._sum(
            [pipe for pipe in pipes if water_of[pipe] not in waters],
            [each for each in held if each not in inside],
        )
        summed = self._sum(pipes_here, here)
        left = max(stated.litres - others.litres, min(summed.litres, stated.litres))
        low = left if others.known else min(summed.litres, left)
        return Content(low, others.missing, summed.parts, given=True, most_litres=left)

    def _of_body(self, body: int) -> Content:
        if body in self._heating and len(self._heating) == 1:
            stated = self.plant.design("system_content_l")
            if stated is not None:
                return Content(float(stated), given=True, most_litres=float(stated))
        pipes = self._of_pipes.get(body)
        if pipes is None:
            pipes = self._of_pipes[body] = self._in_pipes(self._pipes_by_body.get(body, ()))
        return self._with_parts(pipes, self._by_body.get(body, ()))

    def carried(self, plant: Plant, changed: Iterable[str]) -> Contents:
        """The same for a drawing whose pipes and ways are as these are; `changed` are the data that may
        differ, as `id.field`."""
        other = Contents(plant)
        other._of_pipes = self._of_pipes
        other.__dict__ |= {name: each for name, each in self.__dict__.items() if name in _OF_THE_CIRCUIT}
        told = {SYSTEM_CONTENT, *(f"{part}.{field}" for part, field in self._told_by(changed))}
        if told.isdisjoint(changed):
            other._bodies = self._bodies
        return other

    def _told_by(self, fields: Iterable[str]) -> Iterator[tuple[str, str]]:
        """Those of these fields that say what a part holds."""
        for name in fields:
            part, _, field = name.rpartition(".")
            if any(field == says for _, says in HOLDS_WATER):
                component = self.plant.drawing.components.get(part)
                roles = (
                    {device.role for device in self.plant.circuit.plans[part].devices} if component else ()
                )
                if any(role in roles and field == says for role, says in HOLDS_WATER):
                    yield part, field

    @cached_property
    def _heating(self) -> frozenset[int]:
        """The bodies of heating water."""
        return frozenset(heated.body for heated in self.plant.bodies.heated)

    @cached_property
    def _by_body(self) -> dict[int, list[_Holder]]:
        found: dict[int, list[_Holder]] = defaultdict(list)
        holders = list(self._parts())  # to ask for them may number further nodes
        body_of = self.plant.bodies.by_node
        for holder in holders:
            found[body_of[holder.nodes[0]]].append(holder)
        return found

    @cached_property
    def _pipes_by_body(self) -> dict[int, list[str]]:
        pipes = list(self.plant.drawing.pipes)
        body_of = self.plant.bodies.by_node[: len(pipes)]
        bodies = list(dict.fromkeys(body_of))
        if len(bodies) == 1:
            return {bodies[0]: pipes}
        found: dict[int, list[str]] = {body: [] for body in bodies}
        for pipe, body in zip(pipes, body_of, strict=True):
            found[body].append(pipe)
        return found

    @cached_property
    def _water_of_pipe(self) -> dict[str, int]:
        return dict(zip(self.plant.drawing.pipes, self.plant.circuit.waters, strict=False))

    def _parts(self) -> Iterator[_Holder]:
        for role, field in HOLDS_WATER:
            for place in self.plant.circuit.devices(role):
                yield _Holder(place.part, (place.node, place.other), field)

    def _sum(self, pipes: Iterable[str], holders: Iterable[_Holder]) -> Content:
        return self._with_parts(self._in_pipes(pipes), holders)

    def _in_pipes(self, pipes: Iterable[str]) -> _Pipes:
        told = self.plant.told_pipes
        if not told:
            all_bare = tuple(pipes)
            self.plant.take_usual(all_bare, "material")
            return _Pipes([], names((all_bare, (".size_mm", ".length_m"))))
        shares: list[Share] = []
        missing: list[str] = []
        bare: list[str] = []
        for id in pipes:
            if id not in told:
                # Nothing is said of it.
                bare.append(id)
                missing += (f"{id}.size_mm", f"{id}.length_m")
                continue
            litres, lacks = self.pipe_litres(id)
            missing += lacks
            if litres is not None:
                shares.append(Share(id, litres))
        self.plant.take_usual(bare, "material")
        return _Pipes(shares, tuple(missing))

    def _with_parts(self, pipes: _Pipes, holders: Iterable[_Holder]) -> Content:
        shares = list(pipes.shares)
        missing: list[Piece] = []
        met: dict[str, set[str]] = {}  # by field: a part may hold the same water by two devices
        for field, alike in groupby(holders, key=attrgetter("field")):
            seen = met.setdefault(field, set())
            lacking = [part for part in self._holding_unknown(alike, shares) if part not in seen]
            once = tuple(dict.fromkeys(lacking))
            seen.update(once)
            missing.append((once, (f".{field}",)))
        total = sum(share.litres for share in shares)
        lacks = joined(pipes.missing, names(*missing))
        return Content(total, lacks, tuple(shares), most_litres=None if lacks else total)

    def _holding_unknown(self, holders: Iterable[_Holder], shares: list[Share]) -> Iterator[str]:
        """The parts of which it is not known what they hold; what the others hold is put to the shares."""
        parts = self.plant.drawing.components
        # Of parts of one kind of which nothing is told nothing is known either: asked once for them all.
        unknown: set[Kind] = set()
        for part, _, field in holders:
            component = parts[part]
            if component.data or component.kind not in unknown:
                held = self.plant.value(part, field)
                if held is not None:
                    shares.append(Share(part, float(held)))
                    continue
                if not component.data:
                    unknown.add(component.kind)
            yield part

    def pipe_litres(self, pipe: str) -> tuple[float | None, tuple[str, ...]]:
        """The water in a pipe, or None and the fields that would have to be known."""
        bore, missing = pipe_bore_mm(self.plant, pipe)
        length = self.plant.length_m(pipe)
        if length is None:
            missing = (*missing, f"{pipe}.length_m")
        if bore is None or length is None:
            return None, missing
        return content_l_m(bore) * length.value, ()


def pipe_bore_mm(plant: Plant, pipe: str) -> tuple[float | None, tuple[str, ...]]:
    """A pipe's bore in mm, stated or that of standard tube; None and the field that is missing."""
    stated = plant.pipe_value(pipe, "bore_mm")
    if stated is not None:
        return float(stated), ()
    size, material = plant.pipe_value(pipe, "size_mm"), plant.pipe_value(pipe, "material")
    if material is None:
        return None, (f"{pipe}.material",) if size is not None else (f"{pipe}.size_mm", f"{pipe}.material")
    if size is None and material != "plastic":
        return None, (f"{pipe}.size_mm",)
    bore = None if size is None else bore_mm(str(material), float(size))
    return bore, () if bore is not None else (f"{pipe}.bore_mm",)
