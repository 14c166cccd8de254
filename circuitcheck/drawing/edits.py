"""The edits of a drawing: pure functions from a Drawing to a Drawing that shares all it did not touch."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace
from typing import Any

from circuitcheck.drawing.arranging import mirror, move, turn
from circuitcheck.drawing.changing import (
    EditError,
    accepted,
    accepted_data,
    changed,
    control_named,
    new_id,
    require_parts,
    with_items,
)
from circuitcheck.drawing.fields import CONTROL_FIELDS
from circuitcheck.drawing.filling_in import (
    clear_design,
    clear_field,
    set_design,
    set_field,
    set_sheet,
    set_title,
)
from circuitcheck.drawing.removing import remove
from circuitcheck.drawing.value import EMPTY, Component, Control, Drawing
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Kind
from circuitcheck.told import a_word, lower, worded

__all__ = [
    "EditError",
    "add_control",
    "change_control",
    "clear_design",
    "clear_field",
    "mirror",
    "move",
    "new_id",
    "place",
    "relabel",
    "remove",
    "set_design",
    "set_field",
    "set_sheet",
    "set_title",
    "turn",
]

TURNS = (0, 90, 180, 270)


def id_prefix(kind: Kind) -> str:
    """What ids of a kind begin with: the initials of its words, or its one word."""
    words = kind.name.split("_")
    return words[0] if len(words) == 1 else "".join(word[0] for word in words)


def place(
    drawing: Drawing,
    kind: Kind,
    at: Point | None,
    *,
    turn: int = 0,
    mirrored: bool = False,
    label: str = "",
    data: Mapping[str, Any] = EMPTY,
) -> tuple[Drawing, str]:
    """Place a part at `at` (squares; None: not placed yet), turned by 0, 90, 180 or 270 degrees clockwise.

    Returns the new drawing and the part's id. Raises EditError for a control, another turn or
    data the kind does not take.
    """
    if kind.is_control:
        raise EditError(worded("A {part} is a control: it stands on no pipe.", part=lower(kind.title)))
    if turn not in TURNS:
        raise EditError(a_word("A part is turned by 0, 90, 180 or 270 degrees."))
    id = new_id(drawing, id_prefix(kind))
    checked = accepted_data(drawing, kind.fields, data, kind.title)
    where = None if at is None else Point(*at)
    part = Component(id, kind, label, where, turn, mirrored, checked)
    return changed(drawing, components=with_items(drawing.components, {id: part})), id


def relabel(drawing: Drawing, id: str, label: str) -> Drawing:
    """Give a part or a control another label. Raises EditError for anything else."""
    if id in drawing.components:
        part = drawing.components[id]
        if part.label == label:
            return drawing
        renamed = {id: replace(part, label=label)}
        return changed(drawing, components=with_items(drawing.components, renamed))
    if id in drawing.pipes:
        raise EditError(a_word("A pipe has no label."))
    return change_control(drawing, id, label=label)


def add_control(
    drawing: Drawing,
    kind: Kind,
    *,
    acts_on: Iterable[str] = (),
    in_same_room_as: Iterable[str] = (),
    label: str = "",
    at: Point | None = None,
    set_c: float | None = None,
) -> tuple[Drawing, str]:
    """Add a control; returns the new drawing and its id.

    Raises EditError for a kind that is no control, or where it would act on no part of the drawing.
    """
    if not kind.is_control:
        raise EditError(worded("A {part} is no control.", part=lower(kind.title)))
    id = new_id(drawing, id_prefix(kind))
    bare = changed(drawing, controls=with_items(drawing.controls, {id: Control(id, kind)}))
    where = {} if at is None else {"at": at}
    after = change_control(
        bare, id, label=label, acts_on=acts_on, in_same_room_as=in_same_room_as, set_c=set_c, **where
    )
    return after, id


def change_control(drawing: Drawing, id: str, **changes: Any) -> Drawing:
    """Change a control's `label`, `at`, `acts_on`, `in_same_room_as` or `set_c`; the rest stays.

    Raises EditError for no such control, another name, or ids that are no parts.
    """
    control = control_named(drawing, id)
    new: dict[str, Any] = {}
    for name, value in changes.items():
        match name:
            case "label":
                new[name] = str(value)
            case "at":
                new[name] = None if value is None else Point(*value)
            case "acts_on" | "in_same_room_as":
                new[name] = require_parts(drawing, value)
            case "set_c":
                new[name] = accepted(drawing, CONTROL_FIELDS[0], value)
            case _:
                raise EditError(worded("A control has no field {name!r}.", name=name))
    after = replace(control, **new)
    if after == control:
        return drawing
    return changed(drawing, controls=with_items(drawing.controls, {id: after}))
