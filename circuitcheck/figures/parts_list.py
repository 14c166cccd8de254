"""The parts list: what a drawing is made of, counted as it is ordered.

Parts count by kind with what decides the order: the size of the pipes they sit in, their settings,
what is built in. Pipe counts by material and size with its length and bends; a length or a number of
bends that is not known is counted and named, and never guessed.

Source: the grouping is common practice of quantities in the trade, no source. A tee is called by its
run, then its branch: 22 × 22 × 15.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Callable, Collection, Iterable, Iterator
from dataclasses import dataclass
from math import fsum
from typing import Any

from circuitcheck.drawing.fields import PIPE_FIELDS
from circuitcheck.drawing.measuring import Measure, bends, length_m
from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.parts.kind import Field, FieldType, Group, Kind, Role

OF_THE_PLACE = frozenset({"serves", "place", "standing_pressure_bar", "flow_lpm", "left_connected"})
"""What stands under a part's name and tells where it is, or what it serves: no order rests on it."""
ALSO_DECIDING = (
    "action",
    "kv_m3h",
    "maximum_flow_lpm",
    "outlet_size_mm",
    "capacity_kw",
    "coil_power_kw",
    "immersion_kw",
    "hot_flow_lpm",
    "double_check",
)
"""What an order names besides the figure under the part's name, where it is given."""
SIZED_GROUPS = frozenset({Group.MOVING, Group.SHUTTING, Group.FILLING, Group.SAFETY})
NOT_SIZED = frozenset({Role.HOLDS_EXPANSION, Role.FEEDS, Role.VENTS, Role.ENDS_DISCHARGE})
"""What is not called by the pipe it sits on: vessels, cisterns, and ends that are no part to order."""
TEE = "tee"
_MATERIAL = next(field for field in PIPE_FIELDS if field.name == "material")

Sizes = tuple[float | None, ...]
Ids = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Datum:
    """One thing that decides an order. `usual`: the drawing leaves it out, and its usual value is taken."""

    field: Field
    value: Any
    usual: bool = False


@dataclass(frozen=True, slots=True)
class PartLine:
    """Parts of one kind that are ordered alike. `sizes_mm` are those of the pipes they sit in, None for
    one that is not known; one size where all agree; none for a part that is not called by it."""

    kind: Kind
    sizes_mm: Sizes
    data: tuple[Datum, ...]
    ids: Ids

    @property
    def count(self) -> int:
        """How many."""
        return len(self.ids)


@dataclass(frozen=True, slots=True)
class PipeLine:
    """Pipe of one material and size. `length_m` and `bends` are sums of what is known.

    `measured`: pipes whose length comes from their line; `no_length` and `no_bends`: those where it is
    not known; `usual_material`: those where the drawing leaves the material out.
    """

    material: str | None
    size_mm: float | None
    bore_mm: float | None
    heatproof: bool
    ids: Ids
    length_m: float
    measured: Ids
    no_length: Ids
    bends: int
    no_bends: Ids
    insulated_m: float
    usual_material: Ids


@dataclass(frozen=True, slots=True)
class TeeLine:
    """Tees of one size, the run first, then the branch; `materials` are those of their pipes."""

    materials: tuple[str, ...]
    sizes_mm: Sizes
    ids: Ids

    @property
    def count(self) -> int:
        """How many."""
        return len(self.ids)


@dataclass(frozen=True, slots=True)
class PartsList:
    """Everything a drawing is made of, in the order of the shelf and of the sizes."""

    drawing: Drawing
    parts: tuple[PartLine, ...]
    tees: tuple[TeeLine, ...]
    pipes: tuple[PipeLine, ...]

    @property
    def no_length(self) -> Ids:
        """The pipes whose length is not known."""
        return tuple(id for line in self.pipes for id in line.no_length)

    @property
    def no_bends(self) -> Ids:
        """The pipes whose number of bends is not known."""
        return tuple(id for line in self.pipes for id in line.no_bends)

    @property
    def usual_material(self) -> Ids:
        """The pipes whose material is taken as usual, because the drawing leaves it out."""
        return tuple(id for line in self.pipes for id in line.usual_material)


def parts_list(drawing: Drawing, only: Collection[str] | None = None) -> PartsList:
    """Count what a drawing is made of; `only` these ids of it, if given."""
    return PartsList(
        drawing,
        (*_parts(drawing, only), *_controls(drawing, only)),
        tuple(_tees(drawing, only)),
        tuple(_pipes(drawing, only)),
    )


def _parts(drawing: Drawing, only: Collection[str] | None) -> list[PartLine]:
    groups: dict[tuple[str, Sizes, tuple[Any, ...]], list[Component]] = defaultdict(list)
    data: dict[str, tuple[Datum, ...]] = {}
    for part in drawing.components.values():
        if part.kind.name == TEE or (only is not None and part.id not in only):
            continue
        data[part.id] = tuple(deciding(part))
        told = tuple((each.field.name, _hashable(each.value)) for each in data[part.id])
        groups[part.kind.name, _sizes(drawing, part), told].append(part)
    lines = []
    for (_, sizes, _), alike in groups.items():
        usual = {each.field.name for part in alike for each in data[part.id] if each.usual}
        first = data[alike[0].id]
        merged = tuple(Datum(each.field, each.value, each.field.name in usual) for each in first)
        lines.append(PartLine(alike[0].kind, sizes, merged, tuple(part.id for part in alike)))
    order = {group: place for place, group in enumerate(Group)}
    lines.sort(key=lambda line: (order[line.kind.group], line.kind.title, _largest_first(line.sizes_mm)))
    return lines


def _controls(drawing: Drawing, only: Collection[str] | None) -> list[PartLine]:
    found: dict[str, list[str]] = defaultdict(list)
    kinds = {}
    for control in drawing.controls.values():
        if only is not None and control.id not in only:
            continue
        found[control.kind.title].append(control.id)
        kinds[control.kind.title] = control.kind
    return [PartLine(kinds[title], (), (), tuple(found[title])) for title in sorted(found)]


def deciding(part: Component) -> Iterator[Datum]:
    """What decides the order: the figure under the name, what is built in, and what else is given."""
    kind = part.kind
    first = [name for name in (*kind.figure, *kind.rests_on) if name not in OF_THE_PLACE]
    known = {field.name: field for field in kind.own_fields}
    for name in dict.fromkeys((*first, *(each for each in ALSO_DECIDING if each in known))):
        field, value = known[name], part.value(name)
        is_usual = name not in part.data and field.has_default
        if name not in first and (value is None or (is_usual and name != "outlet_size_mm")):
            continue
        if name == "outlet_size_mm" and is_usual and "built_in" in known:
            # The outlet of a valve that may not even be built in.
            continue
        if field.type is FieldType.CHOICES and not value and value is not None:
            continue
        yield Datum(field, value, is_usual)


def _hashable(value: Any) -> Any:
    return tuple(value) if isinstance(value, list) else value


def _sizes(drawing: Drawing, part: Component) -> Sizes:
    """The sizes of the pipes a part sits in, in the order of its ports; one where all agree."""
    kind = part.kind
    roles = {device.role for device in kind.devices(part.data)}
    if not (kind.group in SIZED_GROUPS or Role.SEPARATES in roles) or roles & NOT_SIZED:
        return ()
    found = _port_sizes(drawing, part)
    if len(set(found)) == 1:
        return found[:1]
    two_alike = tuple(port.name for port in kind.ports) == ("a", "b")
    return tuple(sorted(found, key=_size_order)) if two_alike else found


def _port_sizes(drawing: Drawing, part: Component) -> Sizes:
    pipes = (drawing.joined.get(Joint(part.id, port.name)) for port in part.kind.ports)
    return tuple(drawing.pipes[pipe].data.get("size_mm") for pipe in pipes if pipe is not None)


def _tees(drawing: Drawing, only: Collection[str] | None) -> Iterator[TeeLine]:
    groups: dict[tuple[tuple[str, ...], Sizes], list[str]] = defaultdict(list)
    for part in drawing.components.values():
        if part.kind.name == TEE and (only is None or part.id in only):
            groups[tee_order(drawing, part)].append(part.id)
    for materials, sizes in sorted(groups, key=lambda key: (key[0], _largest_first(key[1]))):
        yield TeeLine(materials, sizes, tuple(groups[materials, sizes]))


def tee_order(drawing: Drawing, tee: Component) -> tuple[tuple[str, ...], Sizes]:
    """What a tee is ordered by: the materials of its pipes, and its sizes."""
    return _tee_materials(drawing, tee), _tee_sizes(drawing, tee)


def _tee_sizes(drawing: Drawing, tee: Component) -> Sizes:
    """The run, its larger end first, then the branch; None for an end that is not known or not joined."""
    ends = [drawing.joined.get(Joint(tee.id, port)) for port in ("a", "b", "branch")]
    sizes = [None if pipe is None else drawing.pipes[pipe].data.get("size_mm") for pipe in ends]
    return (*sorted(sizes[:2], key=_size_order), sizes[2])


def _tee_materials(drawing: Drawing, tee: Component) -> tuple[str, ...]:
    found = {_MATERIAL.value(drawing.pipes[pipe].data) for pipe in drawing.pipes_of(tee.id)}
    return tuple(sorted(material for material in found if material))


def _pipes(drawing: Drawing, only: Collection[str] | None) -> Iterator[PipeLine]:
    groups: dict[tuple[str | None, float | None, float | None, bool], list[Pipe]] = defaultdict(list)
    for pipe in drawing.pipes.values():
        if only is not None and pipe.id not in only:
            continue
        material, data = _MATERIAL.value(pipe.data), pipe.data
        key = (material, data.get("size_mm"), data.get("bore_mm"), bool(data.get("heatproof")))
        groups[key].append(pipe)
    for key in sorted(groups, key=_pipe_order):
        yield _pipe_line(drawing, key, groups[key])


def _pipe_order(key: tuple[str | None, float | None, float | None, bool]) -> tuple[Any, ...]:
    material, size, bore, heatproof = key
    return (material is None, material or "", _size_order(size), _size_order(bore), heatproof)


def _pipe_line(
    drawing: Drawing, key: tuple[str | None, float | None, float | None, bool], pipes: list[Pipe]
) -> PipeLine:
    lengths = _measures(drawing, pipes, length_m)
    turns = _measures(drawing, pipes, bends)
    return PipeLine(
        *key,
        ids=tuple(pipe.id for pipe in pipes),
        length_m=fsum(each.value for each in lengths.values()),
        measured=tuple(id for id, each in lengths.items() if each.how == "measured"),
        no_length=_without(pipes, lengths),
        bends=round(fsum(each.value for each in turns.values())),
        no_bends=_without(pipes, turns),
        insulated_m=fsum(
            lengths[pipe.id].value for pipe in pipes if pipe.data.get("insulated") and pipe.id in lengths
        ),
        usual_material=tuple(pipe.id for pipe in pipes if "material" not in pipe.data),
    )


def _measures(
    drawing: Drawing, pipes: Iterable[Pipe], measure: Callable[[Drawing, Pipe], Measure | None]
) -> dict[str, Measure]:
    found = ((pipe.id, measure(drawing, pipe)) for pipe in pipes)
    return {id: each for id, each in found if each is not None}


def _without(pipes: Iterable[Pipe], known: dict[str, Measure]) -> Ids:
    return tuple(pipe.id for pipe in pipes if pipe.id not in known)


def _size_order(size: float | None) -> tuple[bool, float]:
    """Largest first, not known last."""
    return (size is None, -(size or 0.0))


def _largest_first(sizes: Sizes) -> tuple[tuple[bool, float], ...]:
    return tuple(_size_order(size) for size in sizes)
