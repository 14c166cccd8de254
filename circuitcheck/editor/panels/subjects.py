"""What the details panel shows of a selection, and what it changes: rows of fields. No Qt."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import Any

from circuitcheck.drawing import edits
from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Component, Control, Drawing, Joint, Pipe
from circuitcheck.editor.translating import later, shown_told, tr
from circuitcheck.parts.kind import CISTERN, MOTOR_VALVE, Field, FieldType, Role, Way
from circuitcheck.report.wording import set_step, short, spoken, upper
from circuitcheck.told import worded

Ids = tuple[str, ...]
Options = tuple[tuple[str, str], ...]


class Left(Enum):
    """A field that the drawing does not state: its default holds."""

    OUT = "left out"


@dataclass(frozen=True, slots=True)
class Held:
    """What the drawing holds for a field: `Left.OUT`, None (not known yet) or a value.

    `differs`: several are selected and do not agree; the value is then the first one's.
    """

    value: Any
    differs: bool = False


@dataclass(frozen=True, slots=True)
class Row:
    """One field of the panel. `options` are ids and names where the field names parts."""

    field: Field
    held: Held
    options: Options = ()

    @property
    def key(self) -> str:
        """The field's name: what `put` is told."""
        return self.field.name


LABEL = Field("label", later("Label"), FieldType.TEXT)
TITLE = Field("title", later("Title"), FieldType.TEXT)
SET_C = Field("set_c", later("Set"), FieldType.NUMBER, "°C", least=-50, most=300)
ACTS_ON = Field("acts_on", later("Acts on"), FieldType.CHOICES)
SAME_ROOM = Field("in_same_room_as", later("In one room with"), FieldType.CHOICES)
ONE_LINE = frozenset({"label", "title"})


def in_order(drawing: Drawing, ids: Collection[str]) -> Ids:
    """The ids in the order of the drawing, so that the first of several is always the same."""
    if len(ids) < 2:
        return tuple(ids)
    everything = (*drawing.components, *drawing.pipes, *drawing.controls)
    return tuple(id for id in everything if id in ids)


def heading(drawing: Drawing, ids: Ids) -> str:
    """What is selected, in a word or two."""
    if not ids:
        return tr("Drawing")
    if len(ids) > 1:
        return tr("{count} selected", count=len(ids))
    thing = _thing(drawing, ids[0])
    return tr("Pipe") if isinstance(thing, Pipe) else tr(thing.kind.title)


def remark(drawing: Drawing, ids: Ids, shown: Collection[Row]) -> str:
    """A line under the heading: what a pipe joins, or that several things share no field. `shown` are their `rows`."""
    if len(ids) == 1 and ids[0] in drawing.pipes:
        start, finish = (_end_words(drawing, end) for end in drawing.pipes[ids[0]].ends)
        return tr("From {start} to {finish}.", start=start, finish=finish)
    if len(ids) > 1 and not shown:
        return tr("These have no field in common.")
    return ""


def _end_words(drawing: Drawing, end: object) -> str:
    if isinstance(end, Joint):
        return f"{shown_told(drawing.name(end.part))} ({tr(spoken(end.port))})"
    return tr("a free end")


def rows(drawing: Drawing, ids: Ids) -> tuple[Row, ...]:
    """The fields of what is selected, in the order they are shown; of several, those all share."""
    if not ids:
        return _rows_of_drawing(drawing)
    first = _rows_of(drawing, ids[0])
    if len(ids) == 1:
        return first
    shared = [row for row in first if row.key not in ("label", "note")]
    # Of thousands only one of each kind is asked for all its fields.
    for id in _unlike(drawing, ids):
        theirs = {row.key: row.field for row in _rows_of(drawing, id, with_options=False)}
        shared = [row for row in shared if theirs.get(row.key) == row.field]
        if not shared:
            return ()
    return tuple(
        Row(
            row.field,
            Held(row.held.value, any(_held(drawing, id, row.key) != row.held for id in ids)),
            row.options,
        )
        for row in shared
    )


def _unlike(drawing: Drawing, ids: Ids) -> Iterator[str]:
    """One of each kind of part, one pipe if there is one, and every control: their fields differ one by one."""
    known: set[object] = set()
    for id in ids:
        thing = _thing(drawing, id)
        kind = (
            id if isinstance(thing, Control) else type(thing) if isinstance(thing, Pipe) else thing.kind.name
        )
        if kind not in known:
            known.add(kind)
            yield id


def _held(drawing: Drawing, id: str, key: str) -> Held:
    """What a thing holds for a field other than its label."""
    thing = _thing(drawing, id)
    if isinstance(thing, Control):
        found = (row.held for row in _rows_of_control(drawing, thing, with_options=False) if row.key == key)
        return next(found)
    return Held(thing.data.get(key, Left.OUT))


def put(drawing: Drawing, ids: Ids, key: str, value: Any) -> tuple[str, Drawing]:
    """Set a field of all that is selected, or leave it out: the step's name, and the drawing after it.

    Raises EditError, with a sentence, for a value that cannot be.
    """
    if not ids:
        return _put_in_drawing(drawing, key, value)
    field = next(row.field for row in rows(drawing, ids) if row.key == key)
    step = set_step(drawing, ids, field)
    after = drawing
    for id in ids:
        after = _put_in(after, id, key, value)
    if key == "label":
        step = worded("Rename {name}", name=short(drawing.name(ids[0])))
    return step, after


def _rows_of_drawing(drawing: Drawing) -> tuple[Row, ...]:
    found = [Row(TITLE, Held(drawing.title))]
    found += [Row(field, Held(drawing.design.get(field.name, Left.OUT))) for field in DESIGN_FIELDS]
    found += [Row(field, Held(drawing.sheet.get(field.name, Left.OUT))) for field in SHEET_FIELDS]
    return tuple(found)


def _put_in_drawing(drawing: Drawing, key: str, value: Any) -> tuple[str, Drawing]:
    if key == "title":
        return later("Set title"), edits.set_title(drawing, value)
    if any(field.name == key for field in SHEET_FIELDS):
        return later("Set scale"), edits.set_sheet(drawing, key, None if value is Left.OUT else value)
    field = next(field for field in DESIGN_FIELDS if field.name == key)
    step = set_step(drawing, (), field)
    if value is Left.OUT:
        return step, edits.clear_design(drawing, key)
    return step, edits.set_design(drawing, key, value)


def _rows_of(drawing: Drawing, id: str, *, with_options: bool = True) -> tuple[Row, ...]:
    thing = _thing(drawing, id)
    if isinstance(thing, Control):
        return _rows_of_control(drawing, thing, with_options=with_options)
    if isinstance(thing, Pipe):
        return tuple(Row(field, Held(thing.data.get(field.name, Left.OUT))) for field in PIPE_FIELDS)
    found = [Row(LABEL, Held(thing.label))]
    for field in thing.kind.fields:
        refers = with_options and field.type is FieldType.REFERENCE
        options = _options(drawing, _namable(drawing, thing, field)) if refers else ()
        found.append(Row(field, Held(thing.data.get(field.name, Left.OUT)), options))
    return tuple(found)


def _rows_of_control(drawing: Drawing, control: Control, *, with_options: bool) -> tuple[Row, ...]:
    found = [Row(LABEL, Held(control.label))]
    # A programmer keeps times, not a temperature; one that a file gives it is shown all the same.
    if "thermostat" in control.kind.name or control.set_c is not None:
        found.append(Row(SET_C, Held(Left.OUT if control.set_c is None else control.set_c)))
    is_in_a_room = control.kind.name.startswith("room") or bool(control.in_same_room_as)
    driven: Options = ()
    beside: Options = ()
    if with_options:
        parts = drawing.components.items()
        driven = _options(drawing, [*(id for id, part in parts if _is_driven(part)), *control.acts_on])
        if is_in_a_room:
            emitters = (id for id, part in parts if _has(part, Role.EMITS))
            beside = _options(drawing, [*emitters, *control.in_same_room_as])
    found.append(Row(ACTS_ON, Held(control.acts_on), driven))
    if is_in_a_room:
        found.append(Row(SAME_ROOM, Held(control.in_same_room_as), beside))
    return tuple(found)


def _put_in(drawing: Drawing, id: str, key: str, value: Any) -> Drawing:
    if key == "label":
        return edits.relabel(drawing, id, value)
    if id in drawing.controls and key in ("acts_on", "in_same_room_as"):
        return edits.change_control(drawing, id, **{key: () if value is Left.OUT else value})
    if value is Left.OUT:
        return edits.clear_field(drawing, id, key)
    return edits.set_field(drawing, id, key, value)


def _thing(drawing: Drawing, id: str) -> Component | Pipe | Control:
    return drawing.components.get(id) or drawing.pipes.get(id) or drawing.controls[id]


def _options(drawing: Drawing, ids: Iterable[str]) -> Options:
    """These parts by name; a tee or another thing with no size is none that one speaks of."""
    found: Sequence[str] = [id for id in dict.fromkeys(ids) if drawing.components[id].kind.size != (0, 0)]
    names = [(id, shown_told(upper(drawing.name(id)))) for id in found]
    borne = Counter(name for _, name in names)
    return tuple((id, name if borne[name] == 1 else f"{name} ({id})") for id, name in names)


def _namable(drawing: Drawing, part: Component, field: Field) -> list[str]:
    """The ids that a reference of a part can sensibly name, and the one that it does name."""
    sensible = _SENSIBLE.get(field.refers_to, _is_any)
    return [
        id
        for id, other in drawing.components.items()
        if (id != part.id and sensible(other)) or id == part.data.get(field.name)
    ]


def _is_any(part: Component) -> bool:
    return True


def _is_motor_valve(part: Component) -> bool:
    return any(passage.way is Way.MOTOR for passage in part.kind.passages(part.data))


def _is_driven(part: Component) -> bool:
    """Whether a control can act on it: a motor valve, a pump, a heat source."""
    return _is_motor_valve(part) or _has(part, Role.PUMPS) or _has(part, Role.HEATS)


def _has(part: Component, role: Role) -> bool:
    return any(device.role is role for device in part.kind.devices(part.data))


_SENSIBLE: Mapping[str, Callable[[Component], bool]] = {
    MOTOR_VALVE: _is_motor_valve,
    CISTERN: lambda part: _has(part, Role.FEEDS),
}
