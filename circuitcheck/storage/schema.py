"""The drawing file as a JSON Schema (2020-12), made from the catalogue of parts and fields.

`python -m circuitcheck.storage.schema` writes the copy that ships beside this module anew. What a
schema cannot say (one id for one item, one pipe on a port, references that lead somewhere) only
reading checks. `x-` words are notes for people and programs: units, footprints, ports.
"""

from __future__ import annotations

import json
from collections.abc import Iterable
from pathlib import Path
from typing import Any, Final

from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import FORMAT_VERSION
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.parts.kind import Field, FieldType, Kind
from circuitcheck.storage.limits import (
    FARTHEST,
    LONGEST_LABEL,
    LONGEST_TEXT,
    MOST_OTHERS,
    MOST_PARTS,
    MOST_PIPES,
)
from circuitcheck.storage.rules import NOTE_STATES, TURNS

SHIPPED: Final = Path(__file__).with_name("wetcircuit.schema.json")

Schema = dict[str, Any]


def schema() -> Schema:
    """The schema of a drawing file, as plain JSON data."""
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$id": f"urn:circuitcheck:wetcircuit:{FORMAT_VERSION}",
        "title": f"Drawing of a heating and hot-water circuit, format version {FORMAT_VERSION}",
        "description": "Positions and sizes are in squares of the sheet, x to the right, y down. "
        "A field left out has its default; without one, and where it is null, it is not known yet.",
        **_object(
            {
                "wetcircuit": {"const": FORMAT_VERSION},
                "title": _ref("label"),
                "sheet": _data(SHEET_FIELDS),
                "design": _data(DESIGN_FIELDS),
                "components": _list(_ref("component"), MOST_PARTS),
                "pipes": _list(_ref("pipe"), MOST_PIPES),
                "controls": _list(_ref("control"), MOST_OTHERS),
                "notes": _list(_ref("note"), MOST_OTHERS),
                "acceptances": _list(_ref("acceptance"), MOST_OTHERS),
                "reviews": _list(_ref("review"), MOST_OTHERS),
            },
            "wetcircuit",
        ),
        "$defs": {
            **_words(),
            "component": _component(),
            "pipe": _pipe(),
            "control": _control(),
            **_records(),
            **{f"kind-{name}": _kind(kind) for name, kind in component_kinds().items()},
        },
    }


def written() -> str:
    """The schema as the text of the file that ships."""
    return json.dumps(schema(), indent=1, ensure_ascii=False) + "\n"


def _words() -> Schema:
    number = {"type": "number", "minimum": -FARTHEST, "maximum": FARTHEST}
    point = {"type": "array", "prefixItems": [number, number], "items": False, "minItems": 2}
    text = {"type": "string"}
    joint = {
        "description": "The id of a part, and the name of one of its ports.",
        "type": "array",
        "prefixItems": [text, text],
        "items": False,
        "minItems": 2,
    }
    return {
        "id": {"type": "string", "minLength": 1, "maxLength": LONGEST_LABEL},
        "ids": {"type": "array", "items": _ref("id"), "default": []},
        "label": {"type": "string", "maxLength": LONGEST_LABEL, "default": ""},
        "text": {"type": "string", "maxLength": LONGEST_TEXT, "default": ""},
        "digest": {
            "type": "string",
            "pattern": "^[0-9a-fA-F]*$",
            "maxLength": LONGEST_LABEL,
            "default": "",
        },
        "point": {"description": "A place on the sheet, [x, y].", **point},
        "end": {"description": "On a port, or free at a place.", "anyOf": [joint, _ref("point")]},
    }


def _component() -> Schema:
    fields = _object(
        {
            "id": _ref("id"),
            "kind": {"enum": list(component_kinds())},
            "label": _ref("label"),
            "at": _or_null(_ref("point")),
            "turn": {"enum": list(TURNS), "default": 0, "x-unit": "degrees clockwise"},
            "mirrored": {"type": "boolean", "default": False},
            "data": {"type": "object"},
        },
        "id",
        "kind",
    )
    # The data of a part hangs on its kind.
    cases = [
        {
            "if": {"properties": {"kind": {"const": name}}, "required": ["kind"]},
            "then": {"properties": {"data": _ref(f"kind-{name}")}},
        }
        for name in component_kinds()
    ]
    return {**fields, "allOf": cases}


def _kind(kind: Kind) -> Schema:
    ports = [
        {"name": port.name, "at": list(port.at), "faces": None if port.faces is None else list(port.faces)}
        for port in kind.ports
    ]
    notes = {"x-group": str(kind.group), "x-size": list(kind.size), "x-ports": ports}
    return {"title": kind.title, "description": kind.summary, **notes, **_data(kind.fields)}


def _pipe() -> Schema:
    end = _ref("end")
    return _object(
        {
            "id": _ref("id"),
            "ends": {"type": "array", "prefixItems": [end, end], "items": False, "minItems": 2},
            "via": {
                "description": "The corners a person set; left out or null, the program routes the pipe.",
                **_or_null({"type": "array", "items": _ref("point")}),
            },
            "data": _data(PIPE_FIELDS),
        },
        "id",
        "ends",
    )


def _control() -> Schema:
    return _object(
        {
            "id": _ref("id"),
            "kind": {"enum": list(control_kinds())},
            "label": _ref("label"),
            "at": _or_null(_ref("point")),
            "acts_on": _ref("ids"),
            "in_same_room_as": _ref("ids"),
            **{field.name: _field(field) for field in CONTROL_FIELDS},
        },
        "kind",
    )


def _records() -> Schema:
    reply: Schema = {"author": _ref("label"), "date": _ref("label"), "text": _ref("text")}
    day = {"type": "string", "format": "date", "pattern": "^[0-9]{4}-[0-9]{2}-[0-9]{2}$"}
    digests = {name: _ref("digest") for name in ("meaning", "layout", "findings", "previous")}
    labels = {name: _ref("label") for name in ("author", "role", "date", "decision", "program", "rule_book")}
    return {
        "note": _object(
            {
                "id": _ref("id"),
                "on": _ref("ids"),
                **reply,
                "state": {"enum": list(NOTE_STATES), "default": NOTE_STATES[0]},
                "replies": {"type": "array", "items": _object(reply), "default": []},
            }
        ),
        "acceptance": _object(
            {
                "check": _ref("label"),
                "on": _ref("ids"),
                "reason": _ref("text"),
                "author": _ref("label"),
                "date": _ref("label"),
                "until": {"description": "The last day it holds.", **_or_null(day)},
            }
        ),
        "review": _object({**labels, "remarks": _ref("text"), **digests}),
    }


def _object(properties: Schema, *required: str) -> Schema:
    needed = {"required": list(required)} if required else {}
    return {"type": "object", "properties": properties, **needed}


def _list(items: Schema, most: int) -> Schema:
    return {"type": "array", "items": items, "maxItems": most, "default": []}


def _data(fields: Iterable[Field]) -> Schema:
    return _object({field.name: _field(field) for field in fields})


def _field(field: Field) -> Schema:
    notes: Schema = {"title": field.label}
    if field.help:
        notes["description"] = field.help
    if field.unit:
        notes["x-unit"] = field.unit
    default = list(field.default) if isinstance(field.default, tuple) else field.default
    return {**notes, **_type(field), "default": default}


def _type(field: Field) -> Schema:
    match field.type:
        case FieldType.NUMBER:
            limits = {"minimum": field.least, "exclusiveMinimum": field.above, "maximum": field.most}
            given = {word: limit for word, limit in limits.items() if limit is not None}
            return {"type": ["number", "null"], **given}
        case FieldType.SWITCH:
            return {"type": ["boolean", "null"]}
        case FieldType.CHOICE:
            return {"enum": [*field.choices, None]}
        case FieldType.CHOICES:
            chosen = {"enum": list(field.choices)}
            return {"type": ["array", "null"], "items": chosen, "uniqueItems": True}
        case FieldType.REFERENCE:
            return {"type": ["string", "null"], "minLength": 1, "maxLength": LONGEST_LABEL}
        case FieldType.TEXT:
            return {"type": ["string", "null"], "maxLength": LONGEST_TEXT}


def _or_null(schema: Schema) -> Schema:
    return {"anyOf": [schema, {"type": "null"}], "default": None}


def _ref(name: str) -> Schema:
    return {"$ref": f"#/$defs/{name}"}


if __name__ == "__main__":
    SHIPPED.write_text(written(), encoding="utf-8", newline="\n")
