"""How steps, fields and values are said, in the window and in what is handed over. No Qt."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Any

from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Drawing, on_one_line
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.told import Told, a_word, lower, spoken, strung, told_number, upper, worded

__all__ = [
    "fields_of",
    "lower",
    "missing_words",
    "possessive",
    "set_step",
    "short",
    "shown",
    "spoken",
    "upper",
    "value_words",
]

MOST_LETTERS = 40


def short(text: str, most: int = MOST_LETTERS) -> str:
    """The text on one line, cut where it grows longer than so many letters: as a menu can hold."""
    if isinstance(text, Told) and len(text) <= most:
        return text
    line = on_one_line(text)
    return line if len(line) <= most else f"{line[: most - 1].rstrip()}…"


def possessive(name: str) -> str:
    """`pump's`."""
    return f"{short(name)}’s"


def set_step(drawing: Drawing, ids: Iterable[str], field: Field) -> str:
    """What the step of setting a field is called: `Set pump's shut-off head`."""
    known = tuple(ids)
    if not known:
        return worded("Set {field}", field=lower(field.label))
    if len(known) == 1:
        return worded("Set {part}’s {field}", part=short(drawing.name(known[0])), field=lower(field.label))
    return worded("Set {field} of {count}", field=lower(field.label), count=len(known))


def shown(value: float, decimal: str = ".") -> str:
    """The number in full, as short as it can be, so that what is shown can be typed back."""
    text = repr(float(value))
    if "e" in text:
        text = f"{value:f}" if abs(value) >= 1 else f"{value:.17f}"
    if "." in text:
        text = text.rstrip("0").removesuffix(".")
    return text.replace(".", decimal)


def value_words(field: Field, value: Any, decimal: str = ".", drawing: Drawing | None = None) -> str:
    """A field's value in words, its unit with it."""
    if value is None:
        return a_word("not known")
    match field.type:
        case FieldType.NUMBER:
            number = told_number(shown(value, decimal))
            return worded("{value} {unit}", value=number, unit=a_word(field.unit)) if field.unit else number
        case FieldType.SWITCH:
            return a_word("yes") if value else a_word("no")
        case FieldType.CHOICES:
            return strung(spoken(each) for each in value) if value else a_word("none")
        case FieldType.REFERENCE if drawing is not None and value in drawing.components:
            return drawing.name(value)
        case FieldType.TEXT:
            return str(value).replace("_", " ")
        case _:
            return spoken(str(value))


def fields_of(drawing: Drawing, id: str) -> tuple[Field, ...]:
    """The data fields of a part, a pipe or a control, or of `design` or `sheet`. Raises KeyError."""
    if id in drawing.components:
        return drawing.components[id].kind.fields
    if id in drawing.pipes:
        return PIPE_FIELDS
    if id in drawing.controls:
        return CONTROL_FIELDS
    return {"design": DESIGN_FIELDS, "sheet": SHEET_FIELDS}[id]


def missing_words(drawing: Drawing, name: str) -> str:
    """What an unanswered finding needs, `id.field`, in words: `Pump: shut-off head`."""
    id, _, field = name.rpartition(".")
    try:
        label = next(each.label for each in fields_of(drawing, id) if each.name == field)
    except (KeyError, StopIteration):
        return spoken(name)
    if id in ("design", "sheet"):
        return worded("The drawing’s {field}", field=lower(label))
    return worded("{part}: {field}", part=upper(drawing.name(id)), field=lower(label))
