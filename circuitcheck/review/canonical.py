"""What a drawing says, as one text that no reordering changes: the content a review record covers.

Two texts, hashed apart. The *meaning* is what is there: title, design, parts with their data, pipes with what
they join, controls. The *layout* is where it stands on the sheet: places, turns, corners, scale. A length or a
number of bends that is measured from a line is meaning too, since figures rest on it.

What a file may write in more ways than one is one here: 5 and 5.0, an unknown number left out or null, the
order of items, of keys, and of lists whose order says nothing. Unknown fields count like known ones.

Source: RFC 8785, JSON Canonicalization Scheme (2020); FIPS 180-4, Secure Hash Standard (2015), SHA-256.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from hashlib import sha256
from typing import Any

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.measuring import Measure, bends, length_m
from circuitcheck.drawing.value import FORMAT_VERSION, Component, Control, Drawing, Joint, Pipe
from circuitcheck.parts.kind import Field, FieldType

Object = dict[str, Any]

MOST_EXACT = 2**53 - 1
"""The largest whole number that RFC 8785 can write: beyond it JSON's numbers no longer tell two apart."""


def meaning(drawing: Drawing) -> Object:
    """What is there, whatever the order of the file and wherever it stands on the sheet."""
    return {
        "wetcircuit": FORMAT_VERSION,
        "title": drawing.title,
        "design": _data(drawing.design, DESIGN_FIELDS),
        "components": {part.id: _part(part) for part in drawing.components.values()},
        "pipes": {pipe.id: _pipe(drawing, pipe) for pipe in drawing.pipes.values()},
        "controls": {control.id: _control(control) for control in drawing.controls.values()},
        "extra": dict(drawing.extra),
    }


def layout(drawing: Drawing) -> Object:
    """Where it stands on the sheet, and the sheet's scale."""
    return {
        "sheet": _data(drawing.sheet, SHEET_FIELDS),
        "components": _lying(
            {
                part.id: {"at": _place(part.at), "turn": part.turn, "mirrored": part.mirrored}
                for part in drawing.components.values()
            }
        ),
        "pipes": _lying({pipe.id: _line(pipe) for pipe in drawing.pipes.values()}),
        "controls": _lying({control.id: {"at": _place(control.at)} for control in drawing.controls.values()}),
    }


def canonical(content: Object) -> str:
    """The content as RFC 8785 writes it.

    Whole numbers beyond what that standard can write stand as the nearest it can, and all their digits
    once more beside the content, so that no change of them is lost. Half a character, which no file can
    hold, stands as its escape.
    """
    # Imported here: checking a drawing that has no record needs no such thing.
    import rfc8785

    large: Object = {}
    told = _writable(content, (), large)
    whole = {"content": told, "large_numbers": large} if large else told
    return rfc8785.dumps(whole).decode()


def digest(text: str) -> str:
    """SHA-256 of a text in UTF-8, in hex."""
    return sha256(text.encode()).hexdigest()


def sorted_texts(items: Iterable[Object]) -> list[Object]:
    """Objects whose order says nothing, in one order."""
    return sorted(items, key=canonical)


def _part(part: Component) -> Object:
    told = {"label": part.label, "data": _data(part.data, part.kind.fields), "extra": dict(part.extra)}
    return {"kind": part.kind.name, **_filled(told)}


def _pipe(drawing: Drawing, pipe: Pipe) -> Object:
    measured = {
        name: round(found.value, 6) for name, found in _measures(drawing, pipe) if found.how == "measured"
    }
    told = {"data": _data(pipe.data, PIPE_FIELDS), "extra": dict(pipe.extra), "measured": measured}
    return {"ends": [list(end) if isinstance(end, Joint) else None for end in pipe.ends], **_filled(told)}


def _line(pipe: Pipe) -> Object:
    ends = [None if isinstance(end, Joint) else list(end) for end in pipe.ends]
    return {
        "via": None if pipe.via is None else [list(corner) for corner in pipe.via],
        "free_ends": ends if any(ends) else None,
    }


def _measures(drawing: Drawing, pipe: Pipe) -> Iterator[tuple[str, Measure]]:
    for name, measure in (("length_m", length_m), ("bends", bends)):
        found = measure(drawing, pipe)
        if found is not None:
            yield name, found


def _control(control: Control) -> Object:
    told = {
        "label": control.label,
        "acts_on": sorted(control.acts_on),
        "in_same_room_as": sorted(control.in_same_room_as),
        "extra": dict(control.extra),
    }
    set_c = {} if control.set_c is None else {"set_c": control.set_c}
    return {"kind": control.kind.name, **set_c, **_filled(told)}


def _filled(told: Object) -> Object:
    """Without texts, lists and maps that are empty: for these, empty is what leaving out means."""
    return {name: value for name, value in told.items() if value}


def _lying(places: Mapping[str, Object]) -> Object:
    """Places without what they are by default, and without those that are nothing else."""
    told = {
        id: {name: value for name, value in place.items() if value is not None and value != 0}
        for id, place in places.items()
    }
    return {id: place for id, place in told.items() if place}


def _data(data: Mapping[str, Any], known: Sequence[Field]) -> Object:
    """Data as it counts: an unknown number is left out, whether the file does so or says null."""
    fields = {field.name: field for field in known}
    told = {}
    for name, value in data.items():
        field = fields.get(name)
        if field is not None and value is None and not field.has_default:
            continue
        is_set = field is not None and field.type is FieldType.CHOICES and value is not None
        told[name] = sorted(value) if is_set else value
    return told


def _place(at: Sequence[float] | None) -> list[float] | None:
    return None if at is None else list(at)


def _writable(value: Any, path: tuple[str, ...], large: Object) -> Any:
    if isinstance(value, str):
        return value if value.isascii() else _whole_characters(value)
    if isinstance(value, Mapping):
        return {
            _whole_characters(name): _writable(each, (*path, name), large) for name, each in value.items()
        }
    if isinstance(value, (list, tuple)):
        return [_writable(each, (*path, str(place)), large) for place, each in enumerate(value)]
    if type(value) is int and abs(value) > MOST_EXACT:
        return _nearest(value, path, large)
    return value


def _nearest(value: int, path: tuple[str, ...], large: Object) -> float | None:
    try:
        nearest = float(value)
    except OverflowError:
        nearest = None
    if nearest is None or int(nearest) != value:
        large[_whole_characters("/".join(path))] = hex(value)
    return nearest


def _whole_characters(text: str) -> str:
    return text.encode("utf-8", "backslashreplace").decode()
