"""What must hold of every drawing, whatever edits made it."""

from __future__ import annotations

from collections.abc import Iterator

from circuitcheck.drawing.fields import DESIGN_FIELDS, PIPE_FIELDS
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.kind import FieldType


def broken(drawing: Drawing) -> list[str]:
    """A sentence for each thing that does not hold; none for a drawing that is whole."""
    return [*_ids(drawing), *_pipes(drawing), *_references(drawing), *_fields(drawing)]


def _ids(drawing: Drawing) -> Iterator[str]:
    maps = (drawing.components, drawing.pipes, drawing.controls)
    ids = [id for items in maps for id in items] + [note.id for note in drawing.notes]
    if len(ids) != len(set(ids)):
        yield "an id is used twice"
    for items in maps:
        for id, item in items.items():
            if item.id != id:
                yield f"{item.id} stands under {id}"
    for part in drawing.components.values():
        if part.turn not in (0, 90, 180, 270):
            yield f"{part.id} is turned by {part.turn}"


def _pipes(drawing: Drawing) -> Iterator[str]:
    taken = set[Joint]()
    for pipe in drawing.pipes.values():
        if pipe.ends[0] == pipe.ends[1]:
            yield f"{pipe.id} ends where it begins"
        for end in pipe.ends:
            if not isinstance(end, Joint):
                continue
            part = drawing.components.get(end.part)
            if part is None or end.port not in [port.name for port in part.kind.ports]:
                yield f"{pipe.id} ends on {end}, which is not there"
            if end in taken:
                yield f"two pipes on {end}"
            taken.add(end)
        places = [*(pipe.via or ()), *(end for end in pipe.ends if not isinstance(end, Joint))]
        if any(type(place) is not Point for place in places):
            yield f"{pipe.id} has a place that is no point"
    fresh = {end: pipe.id for pipe in drawing.pipes.values() for end in pipe.joints}
    if dict(drawing.joined) != fresh:
        yield "what is kept of the joints is stale"


def _references(drawing: Drawing) -> Iterator[str]:
    for control in drawing.controls.values():
        for id in (*control.acts_on, *control.in_same_room_as):
            if id not in drawing.components:
                yield f"{control.id} names {id}, which is not there"
    for part in drawing.components.values():
        for field in part.kind.fields:
            named = part.data.get(field.name)
            if field.type is FieldType.REFERENCE and named is not None and named not in drawing.components:
                yield f"{part.id}.{field.name} names {named}, which is not there"


def _fields(drawing: Drawing) -> Iterator[str]:
    for part in drawing.components.values():
        for name in part.data:
            if name not in [field.name for field in part.kind.fields]:
                yield f"{part.id} has a field {name}"
    known = [field.name for field in PIPE_FIELDS]
    for pipe in drawing.pipes.values():
        for name in pipe.data:
            if name not in known:
                yield f"{pipe.id} has a field {name}"
    for name in drawing.design:
        if name not in [field.name for field in DESIGN_FIELDS]:
            yield f"the design has a field {name}"
