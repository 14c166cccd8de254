"""Edits of data: the fields of parts, pipes, controls, the design and the sheet."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from circuitcheck.drawing.changing import (
    accepted,
    changed,
    control_named,
    field_named,
    with_items,
    with_value,
)
from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.told import worded

Data = Mapping[str, Any]


def set_field(drawing: Drawing, id: str, field: str, value: Any) -> Drawing:
    """Set a data field of a part, a pipe or a control; None says that it is not known yet.

    Raises EditError for an id or a field there is not, a wrong type or a value beyond its limits.
    """
    if id in drawing.components:
        part = drawing.components[id]
        known = field_named(part.kind.fields, field, part.name)
        return _with_part_data(drawing, id, with_value(part.data, field, accepted(drawing, known, value)))
    if id in drawing.pipes:
        known = field_named(PIPE_FIELDS, field, worded("Pipe {id}", id=id))
        data = with_value(drawing.pipes[id].data, field, accepted(drawing, known, value))
        return _with_pipe_data(drawing, id, data)
    control = control_named(drawing, id)
    known = field_named(CONTROL_FIELDS, field, drawing.name(id))
    number = accepted(drawing, known, value)
    if number == control.set_c:
        return drawing
    new = {id: replace(control, set_c=number)}
    return changed(drawing, controls=with_items(drawing.controls, new))


def clear_field(drawing: Drawing, id: str, field: str) -> Drawing:
    """Leave a data field out, so that its default holds. Raises EditError as `set_field` does."""
    if id in drawing.components:
        part = drawing.components[id]
        field_named(part.kind.fields, field, part.name)
        return _with_part_data(drawing, id, _without(part.data, field))
    if id in drawing.pipes:
        field_named(PIPE_FIELDS, field, worded("Pipe {id}", id=id))
        return _with_pipe_data(drawing, id, _without(drawing.pipes[id].data, field))
    return set_field(drawing, id, field, None)


def set_design(drawing: Drawing, field: str, value: Any) -> Drawing:
    """Set a field of the design; None: not known yet. Raises EditError as `set_field` does."""
    known = field_named(DESIGN_FIELDS, field, "The design")
    return changed(drawing, design=with_value(drawing.design, field, accepted(drawing, known, value)))


def clear_design(drawing: Drawing, field: str) -> Drawing:
    """Leave a field of the design out, so that its default holds."""
    field_named(DESIGN_FIELDS, field, "The design")
    return changed(drawing, design=_without(drawing.design, field))


def set_sheet(drawing: Drawing, field: str, value: Any) -> Drawing:
    """Set a field of the sheet; None leaves it out. Raises EditError as `set_field` does."""
    known = field_named(SHEET_FIELDS, field, "The sheet")
    number = accepted(drawing, known, value)
    sheet = _without(drawing.sheet, field) if number is None else with_value(drawing.sheet, field, number)
    return changed(drawing, sheet=sheet)


def set_title(drawing: Drawing, title: str) -> Drawing:
    """Give the drawing a title."""
    return drawing if title == drawing.title else changed(drawing, title=title)


def _with_part_data(drawing: Drawing, id: str, data: Data) -> Drawing:
    part = drawing.components[id]
    if data is part.data:
        return drawing
    return changed(drawing, components=with_items(drawing.components, {id: replace(part, data=data)}))


def _with_pipe_data(drawing: Drawing, id: str, data: Data) -> Drawing:
    pipe = drawing.pipes[id]
    if data is pipe.data:
        return drawing
    return changed(drawing, pipes=with_items(drawing.pipes, {id: replace(pipe, data=data)}))


def _without(data: Data, field: str) -> Data:
    if field not in data:
        return data
    return MappingProxyType({name: value for name, value in data.items() if name != field})
