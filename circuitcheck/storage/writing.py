"""Writes a Drawing as the bytes of a file: the same drawing gives the same bytes."""

from __future__ import annotations

import os
from collections.abc import Iterable, Mapping
from json.encoder import encode_basestring
from typing import Any, Final

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import (
    FORMAT_VERSION,
    REVIEW_FIELDS,
    Acceptance,
    Component,
    Control,
    Drawing,
    Note,
    Pipe,
    Reply,
    Review,
)
from circuitcheck.parts.kind import Field
from circuitcheck.storage.reading import parse
from circuitcheck.storage.saver import save_bytes

# From here on a float no longer holds every whole number.
_EXACT: Final = 2.0**53


def write(drawing: Drawing, path: str | os.PathLike[str]) -> None:
    """Save a drawing as a file, whole or not at all.

    Raises SaveError where the disk refuses, and DrawingError, the file on the disk left as it
    was, for a drawing that could not be read again (a label far too long, say).
    """
    data = dump(drawing)
    # A good file is never replaced by one that will not open.
    parse(data, os.fspath(path))
    save_bytes(path, data)


def dump(drawing: Drawing) -> bytes:
    """The file of a drawing, in UTF-8: keys in a fixed order, one item a line, defaults left out.

    What stands in a `data`, `design` or `sheet` map is all written, nulls and defaults too.
    """
    lines = [
        f'  "wetcircuit": {FORMAT_VERSION}',
        f'  "title": {_text(drawing.title)}',
        f'  "sheet": {_data(drawing.sheet, SHEET_FIELDS)}',
        f'  "design": {_data(drawing.design, DESIGN_FIELDS)}',
        _list("components", map(_component, drawing.components.values())),
        _list("pipes", map(_pipe, drawing.pipes.values())),
        _list("controls", map(_control, drawing.controls.values())),
        _list("notes", map(_note, drawing.notes)),
        _list("acceptances", map(_acceptance, drawing.acceptances)),
        _list("reviews", map(_review, drawing.reviews)),
        *(f"  {_text(name)}: {_value(value)}" for name, value in drawing.extra.items()),
    ]
    # Half a character has no UTF-8; as an escape it lets reading say where it stands.
    return ("{\n" + ",\n".join(lines) + "\n}\n").encode("utf-8", "backslashreplace")


def _list(name: str, items: Iterable[str]) -> str:
    lines = ",\n    ".join(items)
    return f'  "{name}": [\n    {lines}\n  ]' if lines else f'  "{name}": []'


def _component(part: Component) -> str:
    fields = [f'"id": {_text(part.id)}, "kind": "{part.kind.name}"']
    if part.label:
        fields.append(f'"label": {_text(part.label)}')
    if part.at is not None:
        fields.append(f'"at": {_value(part.at)}')
    if part.turn:
        fields.append(f'"turn": {part.turn}')
    if part.mirrored:
        fields.append('"mirrored": true')
    if part.data:
        fields.append(f'"data": {_data(part.data, part.kind.fields)}')
    return _object(fields, part.extra)


def _pipe(pipe: Pipe) -> str:
    fields = [f'"id": {_text(pipe.id)}, "ends": {_value(pipe.ends)}']
    if pipe.via is not None:
        fields.append(f'"via": {_value(pipe.via)}')
    if pipe.data:
        fields.append(f'"data": {_data(pipe.data, PIPE_FIELDS)}')
    return _object(fields, pipe.extra)


def _control(control: Control) -> str:
    fields = [f'"id": {_text(control.id)}, "kind": "{control.kind.name}"']
    fields += _given(control, ("label", "at", "acts_on", "in_same_room_as", "set_c"))
    return _object(fields, control.extra)


def _note(note: Note) -> str:
    fields = [f'"id": {_text(note.id)}', *_given(note, ("on", "author", "date", "text"))]
    if note.state != "open":
        fields.append(f'"state": {_text(note.state)}')
    if note.replies:
        fields.append(f'"replies": [{", ".join(map(_reply, note.replies))}]')
    return _object(fields, note.extra)


def _reply(reply: Reply) -> str:
    return _object(_given(reply, ("author", "date", "text")), reply.extra)


def _acceptance(acceptance: Acceptance) -> str:
    names = ("check", "on", "reason", "author", "date", "until")
    return _object(_given(acceptance, names), acceptance.extra)


def _review(review: Review) -> str:
    return _object(_given(review, REVIEW_FIELDS), review.extra)


def _given(item: object, names: Iterable[str]) -> list[str]:
    """The fields that are not empty; for these, empty is the default."""
    values = ((name, getattr(item, name)) for name in names)
    return [f'"{name}": {_value(value)}' for name, value in values if value not in (None, "", ())]


def _object(fields: list[str], extra: Mapping[str, Any]) -> str:
    fields += (f"{_text(name)}: {_value(value)}" for name, value in extra.items())
    return f"{{{', '.join(fields)}}}"


def _data(data: Mapping[str, Any], known: Iterable[Field]) -> str:
    """Known fields in the catalogue's order, whatever order they were set in, then the others."""
    first = {field.name: data[field.name] for field in known if field.name in data}
    return _value({**first, **data})


def _text(text: str) -> str:
    return encode_basestring(text)


def _value(value: Any) -> str:
    if isinstance(value, str):
        return _text(value)
    if value is None:
        return "null"
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, float):
        # 5 and 5.0 are one number and must give the same bytes.
        return str(int(value)) if abs(value) <= _EXACT and value.is_integer() else repr(value)
    if isinstance(value, int):
        return str(value)
    if isinstance(value, Mapping):
        return f"{{{', '.join(f'{_text(name)}: {_value(each)}' for name, each in value.items())}}}"
    return f"[{', '.join(map(_value, value))}]"
