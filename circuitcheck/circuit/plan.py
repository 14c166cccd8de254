"""A part's passages and devices sorted by what a circuit asks of them, shared by parts alike."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from itertools import combinations
from typing import Any, NamedTuple

from circuitcheck.drawing.value import Component
from circuitcheck.parts.kind import Device, Field, FieldType, Kind, Passage, Role, Way

CONTROLLED = frozenset({Way.MOTOR, Way.THERMOSTAT})
SHUTTABLE = frozenset({Way.HAND, Way.MOTOR, Way.THERMOSTAT})

LEFT_OUT = "\0left out"
"""Stands in a plan's key for a field that the data leave out; no value in a file equals it."""


class FlowPassage(NamedTuple):
    """A passage as circulation sees it; `plain`: open both ways, and nothing more. `never_shut`: no
    control shuts it, nor anybody's hand, but for an emitter's valve or a pump's own."""

    a: str
    b: str
    plain: bool
    passage: Passage
    pumps: bool
    heats: bool
    never_shut: bool


@dataclass(frozen=True, slots=True, eq=False)
class Plan:
    """`open_groups`: ports between which pressure always passes. `shut_pairs`: (a, b, leg, secured),
    between which it can be shut off. `other_pairs`: between which water can go only one way.
    `forks`: ports and points with more than one passage."""

    passages: tuple[Passage, ...]
    devices: tuple[Device, ...]
    open_groups: tuple[tuple[str, ...], ...]
    shut_pairs: tuple[tuple[str, str, str, bool], ...]
    other_pairs: tuple[tuple[str, str], ...]
    port_count: int
    has_pairs: bool
    forks: frozenset[str]
    flow_passages: tuple[FlowPassage, ...]
    never_shut_passages: tuple[FlowPassage, ...]


def plan_of(part: Component) -> Plan:
    """The plan of a part; parts of one kind whose data agree share it."""
    kind = part.kind
    data = part.data
    if not kind.rests_on or not data:
        return _plan(kind, ())
    return _plan(kind, tuple([_hashable(data.get(name, LEFT_OUT)) for name in kind.rests_on]))


def _hashable(value: Any) -> Any:
    return tuple(value) if isinstance(value, list) else value


@cache
def _plan(kind: Kind, values: tuple[Any, ...]) -> Plan:
    data = {name: value for name, value in zip(kind.rests_on, values, strict=False) if value != LEFT_OUT}
    passages = kind.passages(data)
    open_groups: list[tuple[str, ...]] = []
    shut_pairs = []
    other_pairs = []
    for passage in passages:
        if passage.gap:
            continue
        way = passage.pressure_way
        if way is Way.OPEN:
            joined = [group for group in open_groups if passage.a in group or passage.b in group]
            group = dict.fromkeys([*(port for each in joined for port in each), passage.a, passage.b])
            open_groups = [each for each in open_groups if each not in joined] + [tuple(group)]
        elif way in SHUTTABLE:
            shut_pairs.append((passage.a, passage.b, passage.leg, passage.secured))
        else:
            other_pairs.append((passage.a, passage.b))
    flow_passages = _flow_passages(passages, kind.devices(data))
    return Plan(
        passages,
        kind.devices(data),
        tuple(open_groups),
        tuple(shut_pairs),
        tuple(other_pairs),
        len(kind.ports),
        bool(shut_pairs or other_pairs),
        _forks(passages),
        flow_passages,
        tuple(each for each in flow_passages if each.never_shut),
    )


def _forks(passages: tuple[Passage, ...]) -> frozenset[str]:
    ends = [end for passage in passages for end in (passage.a, passage.b)]
    return frozenset(end for end in ends if ends.count(end) > 1)


def _flow_passages(passages: tuple[Passage, ...], devices: tuple[Device, ...]) -> tuple[FlowPassage, ...]:
    pumps = {(device.port, device.other) for device in devices if device.role is Role.PUMPS}
    heats = {(device.port, device.other) for device in devices if device.role is Role.HEATS}
    found = []
    for passage in passages:
        if passage.gap:
            continue
        ends = (passage.a, passage.b)
        plain = passage == Passage(*ends) and ends not in pumps | heats
        pump = ends in pumps
        by_hand = passage.way is Way.HAND and not (passage.gives_heat or pump)
        never_shut = passage.way not in CONTROLLED and not passage.householder and not by_hand
        found.append(FlowPassage(*ends, plain, passage, pump, ends in heats, never_shut))
    return tuple(found)


@cache
def changes_pressure(kind: Kind, field: str) -> bool:
    """Whether another value of a field the data leave out would let pressure pass otherwise."""
    return _changes(kind, field, pressure=True)


@cache
def changes_circulation(kind: Kind, field: str) -> bool:
    """Whether another value of a field the data leave out would let water circulate otherwise."""
    return _changes(kind, field, pressure=False)


def _changes(kind: Kind, field: str, *, pressure: bool) -> bool:
    usual = _shape(kind, {}, pressure=pressure)
    return any(
        _shape(kind, {field: value}, pressure=pressure) != usual for value in other_values(kind.field(field))
    )


def other_values(field: Field) -> tuple[Any, ...]:
    """Values a switch or an any-of field could have instead of its default."""
    if field.type is FieldType.SWITCH:
        return (not field.default,)
    return tuple((option,) for option in field.choices)


@cache
def every_value(kind: Kind, field: str) -> tuple[Any, ...]:
    """Every value that a field decides the ways by, its default first: for an any-of field, every
    choice of those options that change how pressure or water can go."""
    known = kind.field(field)
    if known.type is FieldType.SWITCH:
        return (known.default, *other_values(known))
    usual = _shape(kind, {}, pressure=False)
    deciding = [
        option for option in known.choices if _shape(kind, {field: (option,)}, pressure=False) != usual
    ]
    return tuple(chosen for count in range(len(deciding) + 1) for chosen in combinations(deciding, count))


def _shape(kind: Kind, data: dict[str, Any], *, pressure: bool) -> tuple[object, ...]:
    passages = kind.passages(data)
    if not pressure:
        return (passages, kind.devices(data))
    ways = []
    for passage in passages:
        way = passage.pressure_way
        ways.append((passage.a, passage.b, way if way not in SHUTTABLE else "shuttable", passage.secured))
    return (tuple(ways), kind.devices(data))
