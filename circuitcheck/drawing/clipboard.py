"""Taking a piece out of a drawing as a drawing of its own, and putting such a piece into another."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import replace
from types import MappingProxyType

from circuitcheck.drawing.changing import changed, with_items
from circuitcheck.drawing.edits import id_prefix
from circuitcheck.drawing.pipes import PREFIX as PIPE_PREFIX
from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import FieldType


def piece(drawing: Drawing, ids: Collection[str]) -> Drawing:
    """What is chosen of a drawing, as one of its own: nothing in it names anything outside.

    A pipe between two chosen parts comes along. One that is chosen itself and leads to a part that is
    not ends free there. What was written beside the parts (title, design, notes, records) stays behind.
    """
    chosen = frozenset(ids)
    parts = {id: part for id, part in drawing.components.items() if id in chosen}
    pipes = {}
    for id, pipe in drawing.pipes.items():
        inside = [isinstance(end, Joint) and end.part in parts for end in pipe.ends]
        if id in chosen or all(inside):
            ends = _loosened(drawing, pipe, inside)
            if ends is not None:
                pipes[id] = pipe if ends == pipe.ends else replace(pipe, ends=ends)
    controls = {id: each for id, each in drawing.controls.items() if id in chosen}
    new = {id: id for id in parts}
    return Drawing(
        components=MappingProxyType({id: _part(part, id, new) for id, part in parts.items()}),
        pipes=MappingProxyType(pipes),
        controls=MappingProxyType({id: _control(each, id, new) for id, each in controls.items()}),
    )


def put_in(drawing: Drawing, fragment: Drawing, dx: float, dy: float) -> tuple[Drawing, frozenset[str]]:
    """Put a piece into a drawing, moved by squares, everything in it under a new id.

    Of the piece only parts, pipes and controls are taken. Returns the new drawing and the ids put in.
    """
    ids = _Ids(drawing)
    new = {id: ids.next(id_prefix(part.kind)) for id, part in fragment.components.items()}
    parts = {
        new[id]: replace(_part(part, new[id], new), at=_moved(part.at, dx, dy))
        for id, part in fragment.components.items()
    }
    pipes = {}
    for pipe in fragment.pipes.values():
        id = ids.next(PIPE_PREFIX)
        first, second = (_end(end, new, dx, dy) for end in pipe.ends)
        via = None if pipe.via is None else tuple(Point(x + dx, y + dy) for x, y in pipe.via)
        pipes[id] = replace(pipe, id=id, ends=(first, second), via=via)
    controls = {}
    for each in fragment.controls.values():
        id = ids.next(id_prefix(each.kind))
        controls[id] = replace(_control(each, id, new), at=_moved(each.at, dx, dy))
    after = changed(
        drawing,
        components=with_items(drawing.components, parts),
        pipes=with_items(drawing.pipes, pipes),
        controls=with_items(drawing.controls, controls),
    )
    return after, frozenset((*parts, *pipes, *controls))


def middle(drawing: Drawing) -> Point | None:
    """The middle of the box round all that is placed, on a whole square; None where nothing is."""
    places = list(_places(drawing))
    if not places:
        return None
    xs, ys = [place.x for place in places], [place.y for place in places]
    return Point(float(round((min(xs) + max(xs)) / 2)), float(round((min(ys) + max(ys)) / 2)))


def is_bare(drawing: Drawing) -> bool:
    """Whether there is nothing in it to put anywhere."""
    return not (drawing.components or drawing.pipes or drawing.controls)


def in_words(drawing: Drawing) -> str:
    """What a piece holds, a part a line and pipe counted, for a program that takes only text."""
    things: list[Component | Control] = [*drawing.components.values(), *drawing.controls.values()]
    lines = [
        f"{thing.label} ({thing.kind.title.lower()})" if thing.label else thing.kind.title
        for thing in things
        if thing.kind.name != "tee" or thing.label
    ]
    tees = sum(part.kind.name == "tee" and not part.label for part in drawing.components.values())
    for count, word in ((tees, "tee"), (len(drawing.pipes), "pipe")):
        if count:
            lines.append(f"{count} {word}{'' if count == 1 else 's'}")
    return "\n".join(" ".join(line.split()) for line in lines)


def _loosened(drawing: Drawing, pipe: Pipe, inside: list[bool]) -> tuple[End, End] | None:
    """The ends of a pipe, free where their part stays behind; None where such an end lies nowhere."""
    found: list[End] = []
    for end, stays in zip(pipe.ends, inside, strict=True):
        at = end if stays else drawing.end_at(end)
        if at is None:
            return None
        found.append(at)
    return None if found[0] == found[1] else (found[0], found[1])


def _part(part: Component, id: str, new: Mapping[str, str]) -> Component:
    """The part under an id; what it names goes by the new ids, what is not among them is not known."""
    names = [field.name for field in part.kind.fields if field.type is FieldType.REFERENCE]
    told = {name: new.get(part.data[name]) for name in names if isinstance(part.data.get(name), str)}
    data = MappingProxyType({**part.data, **told}) if told else part.data
    return replace(part, id=id, data=data)


def _control(control: Control, id: str, new: Mapping[str, str]) -> Control:
    return replace(
        control,
        id=id,
        acts_on=tuple(new[each] for each in control.acts_on if each in new),
        in_same_room_as=tuple(new[each] for each in control.in_same_room_as if each in new),
    )


def _end(end: End, new: Mapping[str, str], dx: float, dy: float) -> End:
    return Joint(new[end.part], end.port) if isinstance(end, Joint) else Point(end.x + dx, end.y + dy)


def _moved(at: Point | None, dx: float, dy: float) -> Point | None:
    return None if at is None else Point(at.x + dx, at.y + dy)


def _places(drawing: Drawing) -> Iterator[Point]:
    for part in drawing.components.values():
        box = part.box()
        if box is not None:
            yield Point(box[0], box[1])
            yield Point(box[2], box[3])
    for control in drawing.controls.values():
        if control.at is not None:
            yield control.at
    for pipe in drawing.pipes.values():
        yield from (end for end in pipe.ends if isinstance(end, Point))


class _Ids:
    """New ids of a drawing, many at a time; one that a note speaks of counts as taken."""

    def __init__(self, drawing: Drawing) -> None:
        self._taken = {*drawing.components, *drawing.pipes, *drawing.controls}
        for note in drawing.notes:
            self._taken.update((note.id, *note.on))
        for acceptance in drawing.acceptances:
            self._taken.update(acceptance.on)
        self._last: dict[str, int] = {}

    def next(self, prefix: str) -> str:
        number = self._last.get(prefix, 0) + 1
        while f"{prefix}{number}" in self._taken:
            number += 1
        self._last[prefix] = number
        return f"{prefix}{number}"
