"""The quick way into a large sound file: None for any that must be looked at field by field.

It accepts only what `reading.parse_patiently` accepts and builds an equal Drawing; where in doubt
it leaves the file to that. msgspec checks types and limits while it decodes, after types made from
the catalogue's fields.
"""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping, Sequence
from functools import cache, reduce
from itertools import chain
from math import ceil, floor, inf, nextafter
from operator import or_
from types import MappingProxyType
from typing import Annotated, Any, Final, Literal, TypedDict

from msgspec import UNSET, Meta, MsgspecError, Struct, UnsetType, defstruct
from msgspec.json import Decoder, Encoder

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import EMPTY, FORMAT_VERSION, Component, Drawing, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.parts.kind import Field, FieldType, Kind
from circuitcheck.storage import items
from circuitcheck.storage.between import check_ends, check_references
from circuitcheck.storage.faults import Faults, TooManyFaultsError
from circuitcheck.storage.limits import (
    FARTHEST,
    LONGEST_LABEL,
    LONGEST_TEXT,
    MOST_BYTES,
    MOST_OTHERS,
    MOST_PARTS,
    MOST_PIPES,
)
from circuitcheck.storage.rules import TURNS
from circuitcheck.storage.strict_json import BYTE_ORDER_MARK

# A number too long to be allowed, seen through a sieve that takes every 430th byte: it fills ten
# holes in a row. What else does so is looked at field by field.
_SIEVE: Final = 430
_LONG_NUMBER: Final = re.compile(rb"[-+.eE0-9]{10}")
# msgspec compares whole numbers with limits of 64 bits; a larger one is looked at field by field.
_LARGEST: Final = 2**62

# Types made while the program runs are values to mypy.
_annotated: Final[Any] = Annotated
_literal: Final[Any] = Literal
_list: Final[Any] = list
_tuple: Final[Any] = tuple

_Id = Annotated[str, Meta(min_length=1, max_length=LONGEST_LABEL)]
_Label = Annotated[str, Meta(max_length=LONGEST_LABEL)]
_Text = Annotated[str, Meta(max_length=LONGEST_TEXT)]
_Others = Annotated[list[dict[str, Any]], Meta(max_length=MOST_OTHERS)]


def quick(data: bytes) -> Drawing | None:
    """The Drawing of a file, or None where it must be looked at field by field."""
    # An escape of the colon's row would upset the count of colons below.
    if len(data) > MOST_BYTES or rb"\u003" in data or _LONG_NUMBER.search(data[::_SIEVE]):
        return None
    content = data.removeprefix(BYTE_ORDER_MARK)
    decoder, kinds = _decoder()
    try:
        file = decoder.decode(content)
        drawing, keys = _drawing(file, kinds)
    except (_DoubtError, TooManyFaultsError, MsgspecError, UnicodeDecodeError, RecursionError):
        return None
    # A key that msgspec dropped on the way, as repeated or as unknown, shows as a colon too many.
    # So does a colon in a text, which the slower count over what was decoded allows for.
    colons = content.count(b":")
    return drawing if colons == keys or colons == Encoder().encode(file).count(b":") else None


class _DoubtError(Exception):
    """Something that the quick way does not judge."""


@cache
def _decoder() -> tuple[Decoder[Any], Mapping[type[Struct], Kind]]:
    """The decoder of a file, and the kind that each type of component stands for."""
    kinds = {_component_type(kind): kind for kind in component_kinds().values()}
    pipe = defstruct(
        "Pipe",
        [
            ("id", _Id),
            ("ends", tuple[Joint, Joint]),
            *_optional(via=tuple[Point, ...] | None, data=_data_type(PIPE_FIELDS)),
        ],
        gc=False,
    )
    file = defstruct(
        "File",
        [
            ("wetcircuit", _literal[FORMAT_VERSION]),
            *_optional(
                title=_Label,
                sheet=_data_type(SHEET_FIELDS),
                design=_data_type(DESIGN_FIELDS),
                components=_annotated[_list[reduce(or_, kinds)], Meta(max_length=MOST_PARTS)],
                pipes=_annotated[_list[pipe], Meta(max_length=MOST_PIPES)],
                controls=_Others,
                notes=_Others,
                acceptances=_Others,
                reviews=_Others,
            ),
        ],
    )
    return Decoder(file), kinds


def _component_type(kind: Kind) -> type[Struct]:
    optional = _optional(
        label=_Label,
        at=Point | None,
        turn=_literal[TURNS],
        mirrored=bool,
        data=_data_type(kind.fields),
    )
    return defstruct(kind.name, [("id", _Id), *optional], tag_field="kind", tag=kind.name, gc=False)


def _optional(**types: Any) -> list[tuple[str, Any, Any]]:
    return [(name, type | UnsetType, UNSET) for name, type in types.items()]


def _data_type(fields: Iterable[Field]) -> Any:
    typed_dict: Any = TypedDict
    return typed_dict("Data", {field.name: _type(field) | None for field in fields}, total=False)


def _type(field: Field) -> Any:
    match field.type:
        case FieldType.NUMBER:
            return _number_type(field)
        case FieldType.SWITCH:
            return bool
        case FieldType.CHOICE:
            return _literal[field.choices]
        case FieldType.CHOICES:
            return _tuple[_literal[field.choices], ...]
        case FieldType.REFERENCE:
            return _Id
        case FieldType.TEXT:
            return _Text


def _number_type(field: Field) -> Any:
    most = _LARGEST if field.most is None else field.most
    least = -_LARGEST if field.least is None else field.least
    above = field.above
    whole = Meta(ge=ceil(least) if above is None else floor(above) + 1, le=floor(most))
    decimal = Meta(ge=least if above is None else nextafter(above, inf), le=most)
    return Annotated[int, whole] | Annotated[float, decimal]


def _drawing(file: Any, kinds: Mapping[type[Struct], Kind]) -> tuple[Drawing, int]:
    """The Drawing, and how many keys all its objects have together."""
    components, keys_of_components = _components(_given(file.components, ()), kinds)
    pipes, keys_of_pipes = _pipes(_given(file.pipes, ()))
    others = [_given(part, []) for part in (file.controls, file.notes, file.acceptances, file.reviews)]
    faults = Faults()
    controls = items.each(others[0], "", items.control, faults)
    notes = items.each(others[1], "", items.note, faults)
    drawing = Drawing(
        title=_given(file.title, ""),
        sheet=_given(file.sheet, EMPTY) or EMPTY,
        design=_given(file.design, EMPTY) or EMPTY,
        components=MappingProxyType(components),
        pipes=MappingProxyType(pipes),
        controls=MappingProxyType({control.id: control for control in controls}),
        notes=notes,
        acceptances=items.each(others[2], "", items.acceptance, faults),
        reviews=items.each(others[3], "", items.review, faults),
    )
    ids = {*components, *pipes, *drawing.controls, *(note.id for note in notes)}
    if len(ids) != len(components) + len(pipes) + len(controls) + len(notes):
        raise _DoubtError
    check_ends(pipes, components, frozenset(), faults)
    check_references(components, drawing.controls, ids, faults)
    if faults:
        raise _DoubtError
    top = sum(getattr(file, name) is not UNSET for name in file.__struct_fields__)
    keys = top + len(drawing.sheet) + len(drawing.design) + _keys(others)
    return drawing, keys + keys_of_components + keys_of_pipes


def _given(value: Any, default: Any) -> Any:
    return default if value is UNSET else value


def _keys(value: Any) -> int:
    if isinstance(value, dict):
        return len(value) + sum(_keys(each) for each in value.values())
    return sum(_keys(each) for each in value) if isinstance(value, list) else 0


def _components(raws: Sequence[Any], kinds: Mapping[type[Struct], Kind]) -> tuple[dict[str, Component], int]:
    """The parts, and how many keys their objects have together."""
    lists = {kind: names for kind in kinds.values() if (names := _lists(kind))}
    made: dict[str, Component] = {}
    keys = 7 * len(raws)
    for raw in raws:
        kind = kinds[type(raw)]
        label, at, turn, mirrored, data = raw.label, raw.at, raw.turn, raw.mirrored, raw.data
        keys -= (label is UNSET) + (at is UNSET) + (turn is UNSET) + (mirrored is UNSET) + (data is UNSET)
        if data is UNSET:
            data = EMPTY
        else:
            keys += len(data)
            if kind in lists:
                _check_lists(data, lists[kind])
        made[raw.id] = Component(
            raw.id,
            kind,
            "" if label is UNSET else label,
            None if at is UNSET else at,
            0 if turn is UNSET else turn,
            mirrored is True,
            data or EMPTY,
        )
    _check_places([part.at for part in made.values() if part.at is not None])
    if len(made) != len(raws):
        raise _DoubtError
    return made, keys


def _pipes(raws: Sequence[Any]) -> tuple[dict[str, Pipe], int]:
    """The pipes, and how many keys their objects have together."""
    made: dict[str, Pipe] = {}
    keys = 4 * len(raws)
    for raw in raws:
        via, data = raw.via, raw.data
        keys -= (via is UNSET) + (data is UNSET)
        if data is UNSET:
            data = EMPTY
        else:
            keys += len(data)
        made[raw.id] = Pipe(raw.id, raw.ends, None if via is UNSET else via, data or EMPTY)
    _check_places(list(chain.from_iterable(pipe.via for pipe in made.values() if pipe.via)))
    if len(made) != len(raws):
        raise _DoubtError
    return made, keys


def _check_places(points: list[Point]) -> None:
    numbers = list(chain.from_iterable(points))
    if numbers and not -FARTHEST <= min(numbers) <= max(numbers) <= FARTHEST:
        raise _DoubtError


def _lists(kind: Kind) -> tuple[str, ...]:
    return tuple(field.name for field in kind.fields if field.type is FieldType.CHOICES)


def _check_lists(data: Mapping[str, Any], names: tuple[str, ...]) -> None:
    for name in names:
        chosen = data.get(name) or ()
        if len(set(chosen)) != len(chosen):
            raise _DoubtError
