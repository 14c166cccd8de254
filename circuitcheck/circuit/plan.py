"""A part's passages and devices sorted by what a circuit asks of them, shared by parts alike."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from itertools import combinations
from typing import Any, NamedTuple

from circuitcheck.circuit.contracting import BACK, FORWARD
from circuitcheck.circuit.labels import leg_label
from circuitcheck.drawing.value import Component
from circuitcheck.parts.kind import Device, Field, FieldType, Kind, Passage, Role, Way

CONTROLLED = frozenset({Way.MOTOR, Way.THERMOSTAT})
SHUTTABLE = frozenset({Way.HAND, Way.MOTOR, Way.THERMOSTAT})

DIRECTED = frozenset({Way.ONE_WAY, Way.SPRING, Way.REDUCING})

SECONDARY = "secondary_return"
"""The port of a store by which water comes back to it, and is not meant to leave it."""

INSIDE = "~"
"""The name of a point inside a part begins so; no pipe is on it."""

LEFT_OUT = "\0left out"
"""Stands in a plan's key for a field that the data leave out; no value in a file equals it."""


class FlowPassage(NamedTuple):
    """A passage as circulation sees it; `plain`: open both ways, and nothing more. `never_shut`: no
    control shuts it, nor anybody's hand, but for an emitter's valve or a pump's own. `both`: water can
    take it from `b` to `a` too. `inward`: by it water comes back into a store, and does not leave.
    `ways`: the same two as FORWARD and BACK.
    `label`: the leg that a control shuts, "" where it has none; None where none shuts it. `key`: the
    port that tells it from others of its sort in the part, "" where it is the only one; None for a
    passage that nobody asks for by itself. `called`: what to put behind the part's id for each of its
    names, key or label, once each."""

    a: str
    b: str
    plain: bool
    passage: Passage
    pumps: bool
    heats: bool
    never_shut: bool
    both: bool
    inward: bool
    ways: int
    label: str | None
    key: str | None
    called: tuple[str, ...]

    @property
    def is_named(self) -> bool:
        """Whether it must be told from a plain piece of pipe."""
        return not self.plain or self.inward


@dataclass(frozen=True, slots=True, eq=False)
class Plan:
    """`open_groups`: ports between which pressure always passes. `shut_pairs`: (a, b, leg, secured),
    between which it can be shut off. `other_pairs`: between which water can go only one way.
    Each port has a slot, then each point inside that a passage leads to: `slots` by name, `width` of them.
    `open_slots`, `shut_slots` and `other_slots` tell the same as the groups and pairs by slot;
    `joined_slots`: those that a passage leads to.
    `forks`: ports and points with more than one passage. `is_junction`: three ports, all open to one
    another. `motor`: "whole" for a part that a motor shuts, "leg" for one whose legs it shuts."""

    passages: tuple[Passage, ...]
    devices: tuple[Device, ...]
    open_groups: tuple[tuple[str, ...], ...]
    shut_pairs: tuple[tuple[str, str, str, bool], ...]
    other_pairs: tuple[tuple[str, str], ...]
    port_count: int
    has_pairs: bool
    slots: Mapping[str, int]
    width: int
    open_slots: tuple[tuple[int, ...], ...]
    shut_slots: tuple[tuple[int, int, str, bool], ...]
    other_slots: tuple[tuple[int, int], ...]
    joined_slots: tuple[int, ...]
    fork_slots: tuple[tuple[str, int], ...]
    flow_slots: tuple[tuple[int, int, FlowPassage], ...]
    forks: tuple[str, ...]
    flow_passages: tuple[FlowPassage, ...]
    is_junction: bool
    motor: str


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
    shut_pairs: list[tuple[str, str, str, bool]] = []
    other_pairs: list[tuple[str, str]] = []
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
    points = _points(open_groups, shut_pairs, other_pairs)
    inner = (end for each in passages for end in (each.a, each.b))
    names = dict.fromkeys((*(port.name for port in kind.ports), *points, *inner))
    slots = {name: slot for slot, name in enumerate(names)}
    forks = _forks(passages)
    flow_passages = _flow_passages(passages, kind.devices(data))
    return Plan(
        passages,
        kind.devices(data),
        tuple(open_groups),
        tuple(shut_pairs),
        tuple(other_pairs),
        len(kind.ports),
        bool(shut_pairs or other_pairs),
        slots,
        len(slots),
        tuple(tuple(slots[port] for port in group) for group in open_groups),
        tuple((slots[a], slots[b], leg, secured) for a, b, leg, secured in shut_pairs),
        tuple((slots[a], slots[b]) for a, b in other_pairs),
        tuple(slots[point] for point in points),
        tuple((port, slots[port]) for port in forks if not port.startswith(INSIDE)),
        tuple((slots[each.a], slots[each.b], each) for each in flow_passages),
        forks,
        flow_passages,
        _is_junction(passages),
        _motor(passages),
    )


def _points(
    open_groups: list[tuple[str, ...]],
    shut_pairs: list[tuple[str, str, str, bool]],
    other_pairs: list[tuple[str, str]],
) -> tuple[str, ...]:
    """What passages lead to, each once, in the order in which a circuit numbers what no pipe is on."""
    groups = (port for group in open_groups for port in group)
    shuttable = (port for a, b, _, _ in shut_pairs for port in (a, b))
    others = (port for pair in other_pairs for port in pair)
    return tuple(dict.fromkeys((*groups, *shuttable, *others)))


def _is_junction(passages: tuple[Passage, ...]) -> bool:
    open_to_all = all(each.way is Way.OPEN and not each.driven and not each.gap for each in passages)
    return len(passages) == 3 and open_to_all and len(_forks(passages)) == 3


def _motor(passages: tuple[Passage, ...]) -> str:
    legs = [bool(passage.leg) for passage in passages if passage.way is Way.MOTOR]
    return "" if not legs else "leg" if all(legs) else "whole"


def _forks(passages: tuple[Passage, ...]) -> tuple[str, ...]:
    ends = [end for passage in passages for end in (passage.a, passage.b)]
    return tuple(dict.fromkeys(end for end in ends if ends.count(end) > 1))


def _flow_passages(passages: tuple[Passage, ...], devices: tuple[Device, ...]) -> tuple[FlowPassage, ...]:
    pumps = {(device.port, device.other) for device in devices if device.role is Role.PUMPS}
    heats = {(device.port, device.other) for device in devices if device.role is Role.HEATS}
    driven = any((passage.a, passage.b) in pumps | heats for passage in passages if not passage.gap)
    found = []
    for passage in passages:
        if passage.gap:
            continue
        ends = (passage.a, passage.b)
        plain = passage == Passage(*ends) and ends not in pumps | heats
        pump = ends in pumps
        by_hand = passage.way is Way.HAND and not (passage.gives_heat or pump)
        never_shut = passage.way not in CONTROLLED and not passage.householder and not by_hand
        alike = [
            each for each in passages if (each.gives_heat, each.way) == (passage.gives_heat, passage.way)
        ]
        is_asked_for = passage.gives_heat or (passage.way in DIRECTED and not driven)
        label = passage.leg if passage.way in CONTROLLED else None
        key = None if not is_asked_for else passage.a if len(alike) > 1 else ""
        both = not passage.driven and passage.way not in DIRECTED
        inward = passage.b == SECONDARY
        names = ("" if pump or ends in heats else None, key, label)
        found.append(
            FlowPassage(
                *ends,
                plain,
                passage,
                pump,
                ends in heats,
                never_shut,
                both,
                inward,
                ways=(0 if inward else FORWARD) | (BACK if both else 0),
                label=label,
                key=key,
                called=tuple(
                    dict.fromkeys(leg_label("", each) if each else "" for each in names if each is not None)
                ),
            )
        )
    return tuple(found)


@cache
def apart(plan: Plan) -> tuple[int, ...]:
    """The slot of one port of each of those groups of a part's ports that its passages join, whichever way
    water goes: the others of a group stand in the same body of water."""
    group = list(range(plan.width))
    for passage in plan.passages:
        if not passage.gap:
            a, b = group[plan.slots[passage.a]], group[plan.slots[passage.b]]
            group = [min(a, b) if each in (a, b) else each for each in group]
    return tuple(dict.fromkeys(group[: plan.port_count]))


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
