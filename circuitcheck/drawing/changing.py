"""What every edit is made of: a refusal in plain words, new ids, and new maps that share what stays."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from math import isfinite
from types import MappingProxyType
from typing import Any, TypeVar

from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.told import worded

Key = TypeVar("Key")
Item = TypeVar("Item")


class EditError(ValueError):
    """An edit that cannot be made; the message says why in one plain sentence."""


def changed(drawing: Drawing, **fields: Any) -> Drawing:
    """The drawing with some of its fields replaced; the drawing itself where none differs.

    What was worked out from the pipes alone goes along where the pipes stay the same.
    """
    new = {name: value for name, value in fields.items() if value is not getattr(drawing, name)}
    if not new:
        return drawing
    result = replace(drawing, **new)
    if "pipes" not in new and "joined" in drawing.__dict__:
        result.__dict__["joined"] = drawing.joined
    return result


def with_items(items: Mapping[str, Item], new: Mapping[str, Item]) -> Mapping[str, Item]:
    """The map with items put in: known ids keep their place, new ones come last.

    The map itself where nothing differs.
    """
    differing = {id: item for id, item in new.items() if items.get(id) is not item}
    if not differing:
        return items
    found = copied(items)
    found.update(differing)
    return MappingProxyType(found)


def copied(items: Mapping[Key, Item]) -> dict[Key, Item]:
    """A map of its own with the same items. A read-only view of thousands copies what it looks at itself: to go
    over it from outside takes fourteen times as long."""
    return items.copy() if isinstance(items, MappingProxyType) else dict(items)


def without_items(items: Mapping[str, Item], gone: Iterable[str]) -> Mapping[str, Item]:
    """The map without these ids, in the same order; the map itself where it holds none of them."""
    leaving = {id for id in gone if id in items}
    if not leaving:
        return items
    return MappingProxyType({id: item for id, item in items.items() if id not in leaving})


def with_value(data: Mapping[str, Any], name: str, value: Any) -> Mapping[str, Any]:
    """The data with one field put in; the data themselves where it holds just that already."""
    if name in data and type(data[name]) is type(value) and data[name] == value:
        return data
    return MappingProxyType({**data, name: value})


def new_id(drawing: Drawing, prefix: str) -> str:
    """The first of prefix1, prefix2, ... that nothing in the drawing is called.

    An id that a note or an acceptance still speaks of counts as taken though its part is gone:
    what was said of that part must not seem to be said of the new one.
    """
    spoken_of = {note.id for note in drawing.notes}
    spoken_of.update(*(note.on for note in drawing.notes))
    spoken_of.update(*(acceptance.on for acceptance in drawing.acceptances))
    taken = (drawing.components, drawing.pipes, drawing.controls, spoken_of)
    number = 1
    while any(f"{prefix}{number}" in ids for ids in taken):
        number += 1
    return f"{prefix}{number}"


def part_named(drawing: Drawing, id: str) -> Component:
    """The part of that id. Raises EditError where there is none."""
    if id not in drawing.components:
        raise EditError(worded("There is no part {id!r} in the drawing.", id=id))
    return drawing.components[id]


def pipe_named(drawing: Drawing, id: str) -> Pipe:
    """The pipe of that id. Raises EditError where there is none."""
    if id not in drawing.pipes:
        raise EditError(worded("There is no pipe {id!r} in the drawing.", id=id))
    return drawing.pipes[id]


def control_named(drawing: Drawing, id: str) -> Control:
    """The control of that id. Raises EditError where there is none."""
    if id not in drawing.controls:
        raise EditError(worded("There is no control {id!r} in the drawing.", id=id))
    return drawing.controls[id]


def require_port(drawing: Drawing, joint: Joint) -> None:
    """Raise EditError unless the part has that port."""
    part = part_named(drawing, joint.part)
    if all(port.name != joint.port for port in part.kind.ports):
        raise EditError(worded("{name} has no port {port!r}.", name=part.name, port=joint.port))


def require_parts(drawing: Drawing, ids: Iterable[str]) -> tuple[str, ...]:
    """The ids once each, in their order. Raises EditError where one is no part."""
    return tuple(part_named(drawing, id).id for id in dict.fromkeys(ids))


def field_named(fields: Iterable[Field], name: str, owner: str) -> Field:
    """The field of that name. Raises EditError where there is none."""
    for known in fields:
        if known.name == name:
            return known
    raise EditError(worded("{owner} has no field {name!r}.", owner=owner, name=name))


def accepted(drawing: Drawing, field: Field, value: Any) -> Any:
    """The value as it is kept in `data`; None (not known yet) always is accepted.

    Raises EditError where the type is wrong, a limit is passed or a reference names no part.
    """
    if value is None:
        return None
    match field.type:
        case FieldType.NUMBER:
            return _number(field, value)
        case FieldType.SWITCH:
            right = isinstance(value, bool)
        case FieldType.CHOICE:
            right = value in field.choices
        case FieldType.CHOICES:
            right = not isinstance(value, str) and all(one in field.choices for one in value)
            value = tuple(value) if right else value
        case FieldType.REFERENCE:
            return part_named(drawing, value).id
        case FieldType.TEXT:
            right = isinstance(value, str)
    if not right:
        options = (
            worded(" It is one of {choices}.", choices=", ".join(field.choices)) if field.choices else ""
        )
        raise EditError(
            worded(
                "{label}: {value!r} cannot be set.{options}", label=field.label, value=value, options=options
            )
        )
    return value


def _number(field: Field, value: Any) -> float:
    unit = f" {field.unit}" if field.unit else ""
    if isinstance(value, bool) or not isinstance(value, int | float) or not isfinite(value):
        raise EditError(worded("{label}: {value!r} is not a number.", label=field.label, value=value))
    if field.above is not None and value <= field.above:
        raise EditError(
            worded(
                "{label} must be more than {above:g}{unit}.", label=field.label, above=field.above, unit=unit
            )
        )
    if field.least is not None and value < field.least:
        raise EditError(
            worded(
                "{label} must be at least {least:g}{unit}.", label=field.label, least=field.least, unit=unit
            )
        )
    if field.most is not None and value > field.most:
        raise EditError(
            worded("{label} must be at most {most:g}{unit}.", label=field.label, most=field.most, unit=unit)
        )
    return value


def accepted_data(
    drawing: Drawing, fields: Iterable[Field], data: Mapping[str, Any], owner: str
) -> Mapping[str, Any]:
    """The data, each field checked as `accepted` does it."""
    known = tuple(fields)
    return MappingProxyType(
        {name: accepted(drawing, field_named(known, name, owner), value) for name, value in data.items()}
    )
