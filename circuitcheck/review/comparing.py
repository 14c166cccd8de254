"""Two drawings compared by what they hold, not by the order or the layout of their files.

What is the same thing in both is settled in `matching`. Of each thing that is in one only: removed or
fitted. Of each that is in both: moved on the sheet, changed (field by field), re-piped, or called by
another id. Nothing that the format holds is passed over: two drawings between which nothing is found have
the same content.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS, SHEET_FIELDS
from circuitcheck.drawing.value import (
    REVIEW_FIELDS,
    Acceptance,
    Component,
    Control,
    Drawing,
    Joint,
    Note,
    Pipe,
    Review,
)
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.review.matching import Matches, carried, matched_controls, matched_parts, matched_pipes
from circuitcheck.told import worded

Ids = tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Change:
    """One field of one thing that differs. `old_id` and `new_id` are empty for the drawing itself;
    `field` is `label`, `design.flow_temperature_c`, a data field's name, ...; values are as given, None
    where nothing is."""

    old_id: str
    new_id: str
    field: str
    old: Any
    new: Any


@dataclass(frozen=True, slots=True)
class Repiped:
    """A pipe that now joins something else. An end is `part.port`, or `free`, in the ids of its drawing."""

    old_id: str
    new_id: str
    old_ends: tuple[str, str]
    new_ends: tuple[str, str]


@dataclass(frozen=True, slots=True)
class Remarks:
    """What was said of the drawing that came and went; ids of notes, checks of acceptances, names of records."""

    came: Ids = ()
    gone: Ids = ()
    changed: Ids = ()


@dataclass(frozen=True)
class Comparison:
    """What differs from `old` to `new`. `removed`, `moved[0]` and the like are ids of the old drawing,
    `fitted` of the new; `moved` and `renumbered` are pairs of both. `same` gives the new id by the old of
    everything that is in both."""

    old: Drawing
    new: Drawing
    same: Matches
    removed: Ids
    fitted: Ids
    moved: tuple[tuple[str, str], ...]
    renumbered: tuple[tuple[str, str], ...]
    changed: tuple[Change, ...]
    repiped: tuple[Repiped, ...]
    notes: Remarks = field(default_factory=Remarks)
    acceptances: Remarks = field(default_factory=Remarks)
    reviews: Remarks = field(default_factory=Remarks)

    @property
    def is_nothing(self) -> bool:
        """Whether the two hold the same."""
        return not (self.alters or self.moved or self.says_otherwise)

    @property
    def alters(self) -> bool:
        """Whether anything is there, joined or set otherwise, wherever it stands."""
        return bool(self.removed or self.fitted or self.renumbered or self.changed or self.repiped)

    @property
    def says_otherwise(self) -> bool:
        """Whether notes, acceptances or review records differ."""
        return any(
            each.came or each.gone or each.changed for each in (self.notes, self.acceptances, self.reviews)
        )


def compare(old: Drawing, new: Drawing) -> Comparison:
    """What differs from one drawing to another."""
    parts = matched_parts(old, new)
    pipes = matched_pipes(old, new, parts)
    controls = matched_controls(old, new)
    same = {**parts, **pipes, **controls}
    theirs = set(same.values())
    return Comparison(
        old,
        new,
        same,
        removed=tuple(id for id in _ids(old) if id not in same),
        fitted=tuple(id for id in _ids(new) if id not in theirs),
        moved=tuple((mine, its) for mine, its in same.items() if _lies_elsewhere(old, new, mine, its, parts)),
        renumbered=tuple((mine, its) for mine, its in same.items() if mine != its),
        changed=tuple(_changes(old, new, parts, pipes, controls)),
        repiped=tuple(_repiped(old, new, parts, pipes)),
        notes=_remarks(_notes(old, same), _notes(new, {})),
        acceptances=_remarks(_acceptances(old, same), _acceptances(new, {})),
        reviews=_remarks(_reviews(old), _reviews(new)),
    )


def _ids(drawing: Drawing) -> Iterator[str]:
    yield from drawing.components
    yield from drawing.pipes
    yield from drawing.controls


def _lies_elsewhere(old: Drawing, new: Drawing, mine: str, its: str, parts: Matches) -> bool:
    if mine in old.components:
        return _place(old.components[mine]) != _place(new.components[its])
    if mine in old.controls:
        return old.controls[mine].at != new.controls[its].at
    was, now = old.pipes[mine], new.pipes[its]
    return _line(was, turned=_is_reversed(was, now, parts)) != _line(now)


def _place(part: Component) -> tuple[Point | None, int, bool]:
    return part.at, part.turn, part.mirrored


def _line(pipe: Pipe, *, turned: bool = False) -> tuple[object, object]:
    """The corners a person set and the free ends; `turned`: from the second end to the first."""
    way = -1 if turned else 1
    free = tuple(None if isinstance(end, Joint) else tuple(end) for end in pipe.ends[::way])
    via = None if pipe.via is None else tuple(tuple(corner) for corner in pipe.via[::way])
    return free, via


def _changes(
    old: Drawing, new: Drawing, parts: Matches, pipes: Matches, controls: Matches
) -> Iterator[Change]:
    same = {**parts, **pipes, **controls}
    yield from _field_changes("", "", "title", old.title, new.title)
    yield from _map_changes("", "", "sheet.", old.sheet, new.sheet, SHEET_FIELDS, {})
    yield from _map_changes("", "", "design.", old.design, new.design, DESIGN_FIELDS, {})
    yield from _map_changes("", "", "", old.extra, new.extra, (), {})
    for mine, its in parts.items():
        yield from _part_changes(old.components[mine], new.components[its], same)
    for mine, its in pipes.items():
        was, now = old.pipes[mine], new.pipes[its]
        if _is_reversed(was, now, parts):
            yield Change(mine, its, "direction", "as drawn", "the other way round")
        yield from _map_changes(mine, its, "", was.data, now.data, PIPE_FIELDS, {})
        yield from _map_changes(mine, its, "", was.extra, now.extra, (), {})
    for mine, its in controls.items():
        yield from _control_changes(old.controls[mine], new.controls[its], same)


def _part_changes(old: Component, new: Component, same: Matches) -> Iterator[Change]:
    yield from _field_changes(old.id, new.id, "label", old.label, new.label)
    yield from _map_changes(old.id, new.id, "", old.data, new.data, new.kind.fields, same)
    yield from _map_changes(old.id, new.id, "", old.extra, new.extra, (), {})


def _control_changes(old: Control, new: Control, same: Matches) -> Iterator[Change]:
    yield from _field_changes(old.id, new.id, "label", old.label, new.label)
    yield from _field_changes(old.id, new.id, "set_c", old.set_c, new.set_c)
    for name in ("acts_on", "in_same_room_as"):
        mine, its = getattr(old, name), getattr(new, name)
        if sorted(same.get(id, "") for id in mine) != sorted(its):
            yield Change(old.id, new.id, name, tuple(sorted(mine)), tuple(sorted(its)))
    yield from _map_changes(old.id, new.id, "", old.extra, new.extra, (), {})


def _field_changes(old_id: str, new_id: str, name: str, old: Any, new: Any) -> Iterator[Change]:
    if not alike(old, new):
        yield Change(old_id, new_id, name, old, new)


def _map_changes(
    old_id: str,
    new_id: str,
    prefix: str,
    old: Mapping[str, Any],
    new: Mapping[str, Any],
    known: Sequence[Field],
    same: Matches,
) -> Iterator[Change]:
    if old is new:
        return
    fields = {each.name: each for each in known}
    for name in dict.fromkeys((*old, *new)):
        field = fields.get(name)
        mine, its = old.get(name), new.get(name)
        told = same.get(mine, mine) if _refers(field) and isinstance(mine, str) else mine
        if field is not None and field.type is FieldType.CHOICES:
            told, its = (sorted(each) if each is not None else None for each in (told, its))
        # Left out and null are one where no usual value stands for what is left out.
        counts = field is None or field.has_default
        if not alike(told, its) or (counts and (name in old) != (name in new)):
            yield Change(old_id, new_id, f"{prefix}{name}", mine, new.get(name))


def _refers(field: Field | None) -> bool:
    return field is not None and field.type is FieldType.REFERENCE


def alike(old: Any, new: Any) -> bool:
    """Whether two values are one: 5 and 5.0 are, 1 and true are not."""
    if isinstance(old, bool) or isinstance(new, bool):
        return old is new
    if isinstance(old, Mapping) and isinstance(new, Mapping):
        return old.keys() == new.keys() and all(alike(old[name], new[name]) for name in old)
    if isinstance(old, (list, tuple)) and isinstance(new, (list, tuple)):
        return len(old) == len(new) and all(map(alike, old, new))
    return bool(old == new)


def _carried_ends(pipe: Pipe, parts: Matches) -> list[object]:
    return [carried(end, parts) if isinstance(end, Joint) else "free" for end in pipe.ends]


def _own_ends(pipe: Pipe) -> list[object]:
    return [end if isinstance(end, Joint) else "free" for end in pipe.ends]


def _is_reversed(old: Pipe, new: Pipe, parts: Matches) -> bool:
    mine, its = _carried_ends(old, parts), _own_ends(new)
    return mine != its and mine == its[::-1]


def _repiped(old: Drawing, new: Drawing, parts: Matches, pipes: Matches) -> Iterator[Repiped]:
    for mine, its in pipes.items():
        was, now = old.pipes[mine], new.pipes[its]
        before, after = _carried_ends(was, parts), _own_ends(now)
        if before not in (after, after[::-1]):
            yield Repiped(mine, its, end_names(was), end_names(now))


def end_names(pipe: Pipe) -> tuple[str, str]:
    """A pipe's two ends, `part.port` or `free`."""
    first, second = (f"{end.part}.{end.port}" if isinstance(end, Joint) else "free" for end in pipe.ends)
    return first, second


def _remarks(old: Iterable[tuple[str, str, Any]], new: Iterable[tuple[str, str, Any]]) -> Remarks:
    """Each remark is what it is known by, what to call it, and all that it says."""
    mine = {key: (name, said) for key, name, said in old}
    its = {key: (name, said) for key, name, said in new}
    return Remarks(
        tuple(its[key][0] for key in its if key not in mine),
        tuple(mine[key][0] for key in mine if key not in its),
        tuple(its[key][0] for key in its if key in mine and not alike(mine[key][1], its[key][1])),
    )


def _notes(drawing: Drawing, same: Matches) -> Iterator[tuple[str, str, Any]]:
    for note in drawing.notes:
        yield note.id, note.id, _note_said(note, same)


def _note_said(note: Note, same: Matches) -> Any:
    replies = [[each.author, each.date, each.text, each.extra] for each in note.replies]
    on = sorted(same.get(id, id) for id in note.on)
    return [on, note.author, note.date, note.text, note.state, replies, note.extra]


def _acceptances(drawing: Drawing, same: Matches) -> Iterator[tuple[str, str, Any]]:
    seen: dict[str, int] = {}
    for each in drawing.acceptances:
        key = repr((each.check, sorted(same.get(id, id) for id in each.on)))
        seen[key] = seen.get(key, 0) + 1
        yield f"{key} {seen[key]}", acceptance_name(each), [
            each.reason, each.author, each.date, each.until, each.extra
        ]  # fmt: skip


def acceptance_name(acceptance: Acceptance) -> str:
    """An acceptance by its check and what it is on."""
    return (
        worded("{check} on {parts}", check=acceptance.check, parts=", ".join(acceptance.on))
        if acceptance.on
        else acceptance.check
    )


def _reviews(drawing: Drawing) -> Iterator[tuple[str, str, Any]]:
    for place, each in enumerate(drawing.reviews):
        said = [getattr(each, name) for name in REVIEW_FIELDS]
        yield str(place), review_name(each), [*said, each.extra]


def review_name(review: Review) -> str:
    """A review record by who made it and when."""
    return f"{review.author or 'no name'}, {review.date or 'no date'}"
