"""Random drawings for hypothesis: every kind of part, data known and not, pipes joined and free, records."""

from __future__ import annotations

import string
from collections.abc import Callable, Iterable, Mapping
from dataclasses import replace
from datetime import date
from functools import cache
from typing import Any

from hypothesis import strategies as st

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import (
    EMPTY,
    Acceptance,
    Component,
    Control,
    Drawing,
    End,
    Joint,
    Note,
    Pipe,
    Reply,
    Review,
)
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from circuitcheck.parts.kind import Field, FieldType, Kind

# Names that no version of the program gives a field: what a newer program might add.
UNKNOWN = "later_"


@cache
def texts(most: int = 12) -> st.SearchStrategy[str]:
    """Any text that a file can hold: quotes, line ends, other scripts, marks that show nothing."""
    return st.text(st.characters(codec="utf-8"), max_size=most)


@cache
def ids() -> st.SearchStrategy[str]:
    """Ids as people and programs give them, now and then a strange one."""
    plain = st.text(string.ascii_lowercase + string.digits, min_size=1, max_size=4)
    return plain | st.text(st.characters(codec="utf-8"), min_size=1, max_size=6)


@cache
def points() -> st.SearchStrategy[Point]:
    """Places on the sheet: mostly whole squares, now and then between."""
    axis = st.integers(-50, 50).map(float) | st.floats(-1e6, 1e6)
    return st.builds(Point, axis, axis)


def numbers(field: Field) -> st.SearchStrategy[float]:
    """Numbers within the field's limits, whole and not, of any size they allow."""
    least = field.least if field.above is None else field.above
    decimal = st.floats(
        least,
        field.most,
        exclude_min=field.above is not None,
        allow_nan=False,
        allow_infinity=False,
    )
    low = -(2**60) if least is None else int(least) + (field.above is not None)
    return decimal | st.integers(low, None if field.most is None else int(field.most))


def values(field: Field, references: Iterable[str] = ()) -> st.SearchStrategy[Any]:
    """What a data field may hold, null included; `references` are ids it may name."""
    names = sorted(references)
    by_type: dict[FieldType, Callable[[], st.SearchStrategy[Any]]] = {
        FieldType.NUMBER: lambda: numbers(field),
        FieldType.SWITCH: st.booleans,
        FieldType.CHOICE: lambda: st.sampled_from(field.choices),
        FieldType.CHOICES: lambda: st.lists(st.sampled_from(field.choices), unique=True).map(tuple),
        FieldType.REFERENCE: lambda: st.sampled_from(names) if names else st.none(),
        FieldType.TEXT: texts,
    }
    return st.none() | by_type[field.type]()


@cache
def json_values() -> st.SearchStrategy[Any]:
    """Any JSON value, as an unknown field may hold."""
    scalars = (
        st.none() | st.booleans() | st.integers() | st.floats(allow_nan=False, allow_infinity=False) | texts()
    )
    return st.recursive(
        scalars,
        lambda inner: st.lists(inner, max_size=3) | st.dictionaries(texts(5), inner, max_size=3),
        max_leaves=5,
    )


@cache
def extras() -> st.SearchStrategy[dict[str, Any]]:
    """Fields that this program does not know; mostly none."""
    names = texts(5).map(lambda name: UNKNOWN + name)
    return st.just({}) | st.dictionaries(names, json_values(), max_size=2)


def data(fields: Iterable[Field], references: Iterable[str] = ()) -> st.SearchStrategy[Mapping[str, Any]]:
    """Data of these fields, each there or left out; `references` are ids it may name."""
    fields = tuple(fields)
    refers = any(field.type is FieldType.REFERENCE for field in fields)
    return _data(fields, tuple(sorted(references)) if refers else ())


@cache
def _data(fields: tuple[Field, ...], references: tuple[str, ...]) -> st.SearchStrategy[Mapping[str, Any]]:
    known = {field.name: values(field, references) for field in fields}
    return st.just(EMPTY) | st.fixed_dictionaries({}, optional=known).map(lambda found: found or EMPTY)


def components(id: str, kind: Kind, references: Iterable[str] = ()) -> st.SearchStrategy[Component]:
    """A part of that kind, placed or not, with no unknown fields."""
    return st.builds(
        Component,
        st.just(id),
        st.just(kind),
        texts(),
        st.none() | points(),
        st.sampled_from((0, 90, 180, 270)),
        st.booleans(),
        data(kind.fields, references),
    )


@st.composite
def drawings(
    draw: st.DrawFn,
    kinds: Iterable[Kind] = tuple(component_kinds().values()),
    *,
    most_parts: int = 6,
    with_records: bool = True,
    with_free_ends: bool = True,
    with_extras: bool = True,
) -> Drawing:
    """A drawing that a file may hold, sound or not as a circuit.

    It has up to `most_parts` parts of the `kinds` and any pipes between their ports. Unless left
    out it has free ends; controls, notes, acceptances and review records; and now and then, here
    and there, fields that this program does not know.
    """
    chosen: list[Kind] = draw(st.lists(st.sampled_from(tuple(kinds)), max_size=most_parts))
    names: list[str] = draw(
        st.lists(ids(), unique=True, min_size=len(chosen) + 10, max_size=len(chosen) + 10)
    )
    part_ids, rest = names[: len(chosen)], names[len(chosen) :]
    parts = {id: draw(components(id, kind, part_ids)) for id, kind in zip(part_ids, chosen, strict=True)}
    pipes = draw(_pipes(parts, rest[:6], with_free_ends))
    known = [*parts, *pipes]
    controls = draw(_controls(rest[6:8], known)) if with_records else EMPTY
    drawing: Drawing = Drawing(
        title=draw(texts()),
        sheet=draw(data(SHEET_FIELDS)),
        design=draw(data(DESIGN_FIELDS)),
        components=parts,
        pipes=pipes,
        controls=controls,
        notes=draw(_notes(rest[8:], known)) if with_records else (),
        acceptances=draw(_few(_acceptances(known))) if with_records else (),
        reviews=draw(_few(_reviews())) if with_records else (),
    )
    if with_extras and draw(st.booleans()):
        drawing = draw(_with_extras(drawing))
    return drawing


@st.composite
def _with_extras(draw: st.DrawFn, drawing: Drawing) -> Drawing:
    """The drawing with unknown fields in everything that may have some."""

    def extended(item: Any, *maps: str) -> Any:
        return replace(item, **{name: {**getattr(item, name), **draw(extras())} for name in maps})

    notes = tuple(
        extended(replace(note, replies=tuple(extended(reply, "extra") for reply in note.replies)), "extra")
        for note in drawing.notes
    )
    whole: Drawing = extended(drawing, "extra", "sheet", "design")
    return replace(
        whole,
        components={part.id: extended(part, "data", "extra") for part in drawing.components.values()},
        pipes={pipe.id: extended(pipe, "data", "extra") for pipe in drawing.pipes.values()},
        controls={control.id: extended(control, "extra") for control in drawing.controls.values()},
        notes=notes,
        acceptances=tuple(extended(each, "extra") for each in drawing.acceptances),
        reviews=tuple(extended(each, "extra") for each in drawing.reviews),
    )


@st.composite
def _pipes(
    draw: st.DrawFn, parts: Mapping[str, Component], names: list[str], with_free_ends: bool
) -> dict[str, Pipe]:
    ports = [Joint(part.id, port.name) for part in parts.values() for port in part.kind.ports]
    shuffled: list[End] = draw(st.permutations(ports))
    if not with_free_ends:
        names = names[: len(ports) // 2]
    made: dict[str, Pipe] = {}
    for id in names[: draw(st.integers(0, len(names)))]:
        first, second = (
            draw(points())
            if not shuffled or (with_free_ends and not draw(st.integers(0, 3)))
            else shuffled.pop()
            for _ in range(2)
        )
        via = draw(st.none() | st.lists(points(), max_size=3).map(tuple))
        made[id] = Pipe(id, (first, second), via, draw(data(PIPE_FIELDS)))
    return made


@st.composite
def _controls(draw: st.DrawFn, names: list[str], known: list[str]) -> dict[str, Control]:
    some = _some(known)
    return {
        id: draw(
            st.builds(
                Control,
                st.just(id),
                st.sampled_from(tuple(control_kinds().values())),
                texts(),
                st.none() | points(),
                some,
                some,
                st.none() | st.integers(-50, 300) | st.floats(-50, 300),
            )
        )
        for id in names[: draw(st.integers(0, len(names)))]
    }


@st.composite
def _notes(draw: st.DrawFn, names: list[str], known: list[str]) -> tuple[Note, ...]:
    replies = st.lists(st.builds(Reply, texts(), texts(), texts()), max_size=2).map(tuple)
    # A note may be on a part that is gone.
    on = _some([*known, "long gone"])
    states = st.sampled_from(("open", "settled"))
    return tuple(
        draw(st.builds(Note, st.just(id), on, texts(), texts(), texts(), states, replies))
        for id in names[: draw(st.integers(0, len(names)))]
    )


def _acceptances(known: list[str]) -> st.SearchStrategy[Acceptance]:
    until = st.none() | st.dates(date(1000, 1, 1)).map(date.isoformat)
    return st.builds(Acceptance, texts(), _some([*known, "long gone"]), texts(), texts(), texts(), until)


def _reviews() -> st.SearchStrategy[Review]:
    digest = st.text("0123456789abcdef", max_size=64)
    words = [texts()] * 7
    return st.builds(Review, *words, digest, digest, digest, digest)


def _some(known: list[str]) -> st.SearchStrategy[tuple[str, ...]]:
    return st.lists(st.sampled_from(known), max_size=3).map(tuple) if known else st.just(())


def _few(items: st.SearchStrategy[Any]) -> st.SearchStrategy[tuple[Any, ...]]:
    return st.lists(items, max_size=2).map(tuple)
