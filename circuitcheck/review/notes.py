"""Notes pinned to parts: add one, answer it, settle it, open it again, take it out; each a new Drawing."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from datetime import date

from circuitcheck.drawing.changing import EditError, changed, new_id
from circuitcheck.drawing.value import OPEN, SETTLED, Drawing, Note, Reply
from circuitcheck.told import a_word, worded


def add_note(drawing: Drawing, on: Iterable[str], author: str, day: date, text: str) -> tuple[Drawing, str]:
    """Pin a note to parts, pipes or controls; on none it is about the whole drawing.

    Returns the drawing and the note's id. Raises EditError for an empty text, a name left out or an
    unknown id.
    """
    pins = tuple(dict.fromkeys(on))
    for id in pins:
        _require(drawing, id)
    note = Note(new_id(drawing, "n"), pins, _name(author), day.isoformat(), _text(text))
    return changed(drawing, notes=(*drawing.notes, note)), note.id


def answer_note(drawing: Drawing, id: str, author: str, day: date, text: str) -> Drawing:
    """Add an answer to a note's thread. Raises EditError for an empty text, no name or no such note."""
    note = note_of(drawing, id)
    reply = Reply(_name(author), day.isoformat(), _text(text))
    return _with(drawing, replace(note, replies=(*note.replies, reply)))


def settle_note(drawing: Drawing, id: str) -> Drawing:
    """Close a note. Raises EditError for no such note."""
    return _with(drawing, replace(note_of(drawing, id), state=SETTLED))


def reopen_note(drawing: Drawing, id: str) -> Drawing:
    """Open a settled note again. Raises EditError for no such note."""
    return _with(drawing, replace(note_of(drawing, id), state=OPEN))


def remove_note(drawing: Drawing, id: str) -> Drawing:
    """Take a note out with its thread. Raises EditError for no such note."""
    note = note_of(drawing, id)
    return changed(drawing, notes=tuple(each for each in drawing.notes if each is not note))


def note_of(drawing: Drawing, id: str) -> Note:
    """The note of that id. Raises EditError for no such note."""
    for note in drawing.notes:
        if note.id == id:
            return note
    raise EditError(worded("There is no note {id}.", id=id))


def gone(drawing: Drawing, note: Note) -> tuple[str, ...]:
    """The ids a note is pinned to that are no longer in the drawing."""
    return tuple(id for id in note.on if not is_there(drawing, id))


def pinned_name(drawing: Drawing, id: str) -> str:
    """What to call what a note is pinned to, gone or not."""
    return drawing.name(id) if is_there(drawing, id) else worded("{id} (gone)", id=id)


def is_there(drawing: Drawing, id: str) -> bool:
    """Whether an id is that of a part, a pipe or a control of the drawing."""
    return id in drawing.components or id in drawing.pipes or id in drawing.controls


def _require(drawing: Drawing, id: str) -> None:
    if not is_there(drawing, id):
        raise EditError(
            worded("A note is pinned to parts, pipes or controls of the drawing; {id} is none.", id=id)
        )


def _name(author: str) -> str:
    if not author.strip():
        raise EditError(a_word("A note says who wrote it."))
    return author.strip()


def _text(text: str) -> str:
    if not text.strip():
        raise EditError(a_word("A note says something."))
    return text.strip()


def _with(drawing: Drawing, note: Note) -> Drawing:
    notes = tuple(note if each.id == note.id else each for each in drawing.notes)
    return changed(drawing, notes=notes)
