"""What msgspec must find in a sound file, in types made from the catalogue's fields."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping
from contextlib import contextmanager
from functools import cache, reduce
from math import ceil, floor, inf, nextafter
from operator import or_
from threading import Lock
from typing import Annotated, Any, Final, Literal, NamedTuple, TypedDict

from msgspec import UNSET, Meta, Struct, UnsetType, ValidationError, defstruct
from msgspec.json import Decoder

from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import FORMAT_VERSION, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.parts.kind import Field, FieldType, Kind
from circuitcheck.storage.between import port_names, references
from circuitcheck.storage.limits import (
    FARTHEST,
    LONGEST_LABEL,
    LONGEST_TEXT,
    MOST_OTHERS,
    MOST_PARTS,
    MOST_PIPES,
)
from circuitcheck.storage.rules import TURNS

# msgspec compares whole numbers with limits of 64 bits; a larger one is looked at field by field.
_LARGEST: Final = 2**62

_ONE_AT_A_TIME: Final = Lock()
"""Of two decoders made at once each would know other types than the other's, and one take for others' own what was
narrowed for its sake."""

# Types made while the program runs are values to mypy.
_annotated: Final[Any] = Annotated
_literal: Final[Any] = Literal
_list: Final[Any] = list
_tuple: Final[Any] = tuple

_Id = Annotated[str, Meta(min_length=1, max_length=LONGEST_LABEL)]
_Label = Annotated[str, Meta(max_length=LONGEST_LABEL)]
_Text = Annotated[str, Meta(max_length=LONGEST_TEXT)]
_Others = Annotated[list[dict[str, Any]], Meta(max_length=MOST_OTHERS)]


class FreePorts(dict[str, "FreePorts"]):
    """The ports of a part that no pipe is on yet. By the name of one: what is free once a pipe is on it; KeyError
    for any other name. Parts alike share them, so that to follow all ports of a file makes nothing anew."""

    def __init__(self, names: frozenset[str]) -> None:
        self._names = names

    def __missing__(self, port: str) -> FreePorts:
        if port not in self._names:
            raise KeyError(port)
        left = self[port] = free_ports(self._names - {port})
        return left


@cache
def free_ports(names: frozenset[str]) -> FreePorts:
    """These ports, with no pipe on any."""
    return FreePorts(names)


Expected = tuple[Kind, FreePorts, tuple[str, ...], tuple[str, ...]]
"""What a type of component stands for: its kind, and what of it msgspec does not check: its ports, its data fields
that are lists without repeats, and those that name another item. A bare tuple: it is taken apart for each part, and
a named one takes five times as long."""


class FileTypes(NamedTuple):
    """The decoder of a file, and what the type of each component that it decodes stands for.

    Every end of a pipe comes as a joint; a free one has two numbers in it, and what is no end at all may have one.
    """

    decoder: Decoder[Any]
    expected: Mapping[type[Struct], Expected]


def file_types() -> FileTypes:
    """Made once, whichever threads ask first."""
    with _ONE_AT_A_TIME:
        return _file_types()


@cache
def _file_types() -> FileTypes:
    expected = {_component_type(kind): _expected(kind) for kind in component_kinds().values()}
    pipe = defstruct(
        "Pipe",
        [
            ("id", _Id),
            ("ends", tuple[Joint, Joint]),
            *_optional(via=tuple[Point, ...] | None, data=_data_type(PIPE_FIELDS)),
        ],
        gc=False,
    )
    control = defstruct(
        "Control",
        [
            ("id", _Id),
            ("kind", _literal[tuple(control_kinds())]),
            *_optional(
                label=_Label,
                at=Point | None,
                acts_on=tuple[_Id, ...],
                in_same_room_as=tuple[_Id, ...],
                **{field.name: _type(field) | None for field in CONTROL_FIELDS},
            ),
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
                components=_annotated[_list[reduce(or_, expected)], Meta(max_length=MOST_PARTS)],
                pipes=_annotated[_list[pipe], Meta(max_length=MOST_PIPES)],
                controls=_annotated[_list[control], Meta(max_length=MOST_OTHERS)],
                notes=_Others,
                acceptances=_Others,
                reviews=_Others,
            ),
        ],
    )
    with _narrowed():
        decoder = Decoder(file)
        _check_narrowed()
    return FileTypes(decoder, expected)


@contextmanager
def _narrowed() -> Iterator[None]:
    """Meanwhile a place and a joint say of themselves what they must be in a file, for msgspec to check it as it
    makes them: to look at each afterwards takes a tenth of the time of opening a file. It also makes no string for
    the name of a port then, but takes the one that all have. A joint may have numbers in place of names: msgspec
    knows no choice between two kinds of array. It remembers all this."""
    number = _annotated[float, Meta(ge=-FARTHEST, le=FARTHEST)]
    port = _literal[tuple(sorted(frozenset().union(*map(port_names, component_kinds().values()))))]
    narrow: Mapping[Any, dict[str, Any]] = {
        Point: {"x": number, "y": number},
        Joint: {"part": str | number, "port": port | number},
    }
    wide = {named_tuple: named_tuple.__annotations__ for named_tuple in narrow}
    try:
        for named_tuple, types in narrow.items():
            named_tuple.__annotations__ = types
        yield
    finally:
        for named_tuple, types in wide.items():
            named_tuple.__annotations__ = types


def _check_narrowed() -> None:
    """Raises AssertionError where msgspec had met a place before, and remembers it as it is elsewhere."""
    try:
        Decoder(Point).decode(f"[{2 * FARTHEST}, 0]")
    except ValidationError:
        return
    raise AssertionError("Places must be told to msgspec here first.")


def _component_type(kind: Kind) -> type[Struct]:
    optional = _optional(
        label=_Label,
        at=Point | None,
        turn=_literal[TURNS],
        mirrored=bool,
        data=_data_type(kind.fields),
    )
    return defstruct(kind.name, [("id", _Id), *optional], tag_field="kind", tag=kind.name, gc=False)


def _expected(kind: Kind) -> Expected:
    lists = tuple(field.name for field in kind.fields if field.type is FieldType.CHOICES)
    return kind, free_ports(port_names(kind)), lists, references(kind)


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
