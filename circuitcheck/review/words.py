"""What a comparison and a review record say, in sentences for a person."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from circuitcheck.drawing.fields import CONTROL_FIELDS, DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import Drawing
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.review.comparing import Change, Comparison, Remarks, Repiped
from circuitcheck.review.holding import Held, Seal
from circuitcheck.told import a_word, dated, listed, lower, spoken, told_number, worded

NOT_GIVEN = a_word("not given")
_OF_DRAWING = {f"design.{field.name}": field for field in DESIGN_FIELDS} | {
    f"sheet.{field.name}": field for field in SHEET_FIELDS
}
_OF_CONTROL = {field.name: field for field in CONTROL_FIELDS}
_OF_PIPE = {field.name: field for field in PIPE_FIELDS}
_LABELS = {
    "label": a_word("name"),
    "title": a_word("title"),
    "acts_on": a_word("acts on"),
    "in_same_room_as": a_word("in the same room as"),
    "direction": a_word("direction"),
}


def called(drawing: Drawing, id: str) -> str:
    """A thing by its name and id, so that two of one name can be told apart."""
    name = drawing.name(id)
    return name if id in name.split() else worded("{name} ({id})", name=name, id=id)


def field_of(found: Comparison, change: Change) -> Field | None:
    """The format's field that changed; None for a label, an unknown field and the like."""
    if not change.new_id:
        return _OF_DRAWING.get(change.field)
    if change.new_id in found.new.pipes:
        return _OF_PIPE.get(change.field)
    if change.new_id in found.new.controls:
        return _OF_CONTROL.get(change.field)
    fields = {field.name: field for field in found.new.components[change.new_id].kind.fields}
    return fields.get(change.field)


def field_words(found: Comparison, change: Change) -> str:
    """What changed, as the details call it: `set pressure`, `name`."""
    field = field_of(found, change)
    if field is None:
        return _LABELS.get(change.field, change.field)
    return lower(field.label)


def value_words(field: Field | None, value: Any) -> str:
    """A value as a person reads it, with its unit; what is not given with what stands for it."""
    if value is None:
        usual = field is not None and field.has_default and field.default != ()
        return (
            worded("not given (usual: {value})", value=_shown(field, field.default))
            if field and usual
            else NOT_GIVEN
        )
    return _shown(field, value)


def change_words(found: Comparison, change: Change) -> str:
    """One change: `set pressure from 3 bar to 6 bar`."""
    field = field_of(found, change)
    return worded(
        "{field} from {old} to {new}",
        field=field_words(found, change),
        old=value_words(field, change.old),
        new=value_words(field, change.new),
    )


def repiped_words(found: Comparison, each: Repiped) -> str:
    """What a pipe joined and joins now."""
    before = _ends(found.old, each.old_ends)
    after = _ends(found.new, each.new_ends)
    return worded("joined {before}, now {after}", before=before, after=after)


def change_lines(found: Comparison) -> Iterator[str]:
    """Everything that differs, a sentence for each, what weighs most first."""
    for id in found.removed:
        yield worded("Removed: {part}.", part=called(found.old, id))
    for id in found.fitted:
        yield worded("Fitted: {part}.", part=called(found.new, id))
    for each in found.repiped:
        yield worded(
            "Re-piped: {part} {how}.", part=called(found.new, each.new_id), how=repiped_words(found, each)
        )
    for change in found.changed:
        what = called(found.new, change.new_id) if change.new_id else a_word("the drawing")
        yield worded("Changed: {what}, {how}.", what=what, how=change_words(found, change))
    for mine, its in found.renumbered:
        yield worded("Called by another id: {mine} is now {its}.", mine=mine, its=its)
    for _, its in found.moved:
        yield worded("Moved on the sheet: {part}.", part=called(found.new, its))
    yield from remark_lines(found)


def remark_lines(found: Comparison) -> Iterator[str]:
    """What was said of the drawing that differs: notes, acceptances, records."""
    yield from _remark_lines(a_word("note"), found.notes)
    yield from _remark_lines(a_word("acceptance"), found.acceptances)
    yield from _remark_lines(a_word("review record"), found.reviews)


def held_words(held: Held) -> str:
    """One sentence on how a record stands."""
    if held.broken:
        return worded("The record is broken: {broken}.", broken=listed(_BROKEN[name] for name in held.broken))
    if held.state == "incomplete":
        return a_word(
            "The record does not say enough of the drawing it was made of to be held against this one."
        )
    if held.findings is Seal.OTHER_PROGRAM:
        return worded(
            "The record holds: the drawing, its notes and acceptances are as they were reviewed; its findings were "
            "worked out by {program} and are not told again here.",
            program=held.review.program,
        )
    return a_word(
        "The record holds: the drawing, its findings, notes and acceptances are as they were reviewed."
    )


def held_lines(held: Held, most: int | None = None) -> Iterator[str]:
    """What broke a record, as sentences: what changed since, or that the record does not tell."""
    yield held_words(held)
    if not held.broken:
        return
    if held.circuit_is_as_reviewed:
        yield a_word("What is there and how it is joined is as it was reviewed.")
    if held.since is None:
        yield a_word("The record does not tell how the drawing was, so what changed cannot be named.")
        return
    lines = list(change_lines(held.since))
    yield from lines[:most]
    if most is not None and len(lines) > most:
        yield worded("And {count} more.", count=len(lines) - most)
    if "findings" in held.broken and not lines:
        yield a_word("The record's own words, or what it says was found, are not what was signed.")


def record_title(held: Held) -> str:
    """A record in one line: who, when, what was decided."""
    review = held.review
    who = ", ".join(each for each in (review.author, review.role) if each) or a_word("no name")
    # A decision may be one that the window offers, or any other text of a file.
    return worded(
        "{who}, {date}: {decision}",
        who=who,
        date=dated(review.date) or a_word("no date"),
        decision=a_word(review.decision) if review.decision else a_word("no decision"),
    )


_BROKEN = {
    "meaning": a_word("the circuit or its data have changed"),
    "layout": a_word("the layout on the sheet has changed"),
    "findings": a_word("findings, notes, acceptances or the record's own words have changed"),
    "previous": a_word("the record before it was altered or taken out"),
}


def _remark_lines(what: str, remarks: Remarks) -> Iterator[str]:
    for verb, names in (
        (a_word("New"), remarks.came),
        (a_word("Gone"), remarks.gone),
        (a_word("Changed"), remarks.changed),
    ):
        for name in names:
            yield worded("{verb} {what}: {name}.", verb=verb, what=what, name=name)


def _ends(drawing: Drawing, ends: tuple[str, str]) -> str:
    return listed(_end(drawing, end) for end in ends)


def _end(drawing: Drawing, end: str) -> str:
    part, dot, port = end.rpartition(".")
    if not dot:
        return a_word("nothing")
    return worded("{part} at {port}", part=called(drawing, part), port=spoken(port))


def _shown(field: Field | None, value: Any) -> str:
    if isinstance(value, bool):
        return a_word("yes") if value else a_word("no")
    if isinstance(value, (int, float)):
        number = told_number(f"{value:.6g}")
        if field is None or not field.unit:
            return number
        return worded("{value} {unit}", value=number, unit=a_word(field.unit))
    if isinstance(value, (list, tuple)):
        return listed(spoken(str(each)) for each in value) or a_word("none")
    if field is not None and field.type is FieldType.CHOICE:
        return spoken(str(value))
    return worded("“{text}”", text=value) if isinstance(value, str) else str(value)
