"""Whatever is done in whatever order: the drawing stays whole, and every earlier value stays as it was."""

from __future__ import annotations

import copy
from collections.abc import Callable
from typing import Any

from hypothesis import given
from hypothesis import strategies as st

from circuitcheck.drawing import edits, pipes
from circuitcheck.drawing.changing import EditError
from circuitcheck.drawing.value import Drawing, End, Joint
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds, control_kinds
from tests.drawing.invariants import broken

Draw = Callable[[st.SearchStrategy[Any]], Any]
Edit = Callable[[Drawing, Draw], Drawing]

PLACES = st.builds(Point, st.integers(0, 12), st.integers(0, 12))
CORNERS = st.none() | st.lists(PLACES, max_size=3)
STEPS = st.integers(-4, 4)
KINDS = st.sampled_from(sorted(component_kinds().values(), key=lambda kind: kind.name))
# Parts that heal, and the tee above all, come up more often than the catalogue would have it.
INLINE = st.sampled_from(
    [component_kinds()[name] for name in ("tee", "zone_valve", "three_port_valve", "pump", "tundish")]
)
FIELDS = st.sampled_from(
    [("length_m", 2), ("rise_m", -0.5), ("bends", 1), ("size_mm", 22), ("straight_drop_m", 0.4)]
)


def some_end(drawing: Drawing, draw: Draw) -> End:
    ports = [Joint(part.id, port.name) for part in drawing.components.values() for port in part.kind.ports]
    return draw(st.sampled_from(ports) | PLACES) if ports else draw(PLACES)  # type: ignore[no-any-return]  # Any


def some(ids: Any, draw: Draw) -> Any:
    return draw(st.sampled_from(list(ids)))


def several(drawing: Drawing, draw: Draw) -> list[str]:
    ids = [*drawing.components, *drawing.pipes, *drawing.controls]
    return draw(st.lists(st.sampled_from(ids), max_size=4, unique=True)) if ids else []


def place(drawing: Drawing, draw: Draw) -> Drawing:
    at = draw(st.none() | PLACES | PLACES | PLACES)
    return edits.place(drawing, draw(KINDS | INLINE), at, turn=draw(st.sampled_from([0, 90])))[0]


def draw_pipe(drawing: Drawing, draw: Draw) -> Drawing:
    name, value = draw(FIELDS)
    start, finish = some_end(drawing, draw), some_end(drawing, draw)
    return pipes.draw_pipe(drawing, start, finish, via=draw(CORNERS), data={name: value})[0]


def draw_onto(drawing: Drawing, draw: Draw) -> Drawing:
    return pipes.draw_pipe_onto(drawing, some_end(drawing, draw), some(drawing.pipes, draw), draw(PLACES))[0]


def cut_in(drawing: Drawing, draw: Draw) -> Drawing:
    return pipes.cut_in(drawing, some(drawing.pipes, draw), draw(INLINE), draw(PLACES))[0]


def join(drawing: Drawing, draw: Draw) -> Drawing:
    return pipes.join(drawing, some(drawing.pipes, draw), draw(st.integers(0, 1)), some_end(drawing, draw))


def join_onto(drawing: Drawing, draw: Draw) -> Drawing:
    pipe, onto = some(drawing.pipes, draw), some(drawing.pipes, draw)
    return pipes.join_onto(drawing, pipe, draw(st.integers(0, 1)), onto, draw(PLACES))


def set_corners(drawing: Drawing, draw: Draw) -> Drawing:
    return pipes.set_corners(drawing, some(drawing.pipes, draw), draw(CORNERS))


def set_pipe_field(drawing: Drawing, draw: Draw) -> Drawing:
    name, value = draw(FIELDS)
    return edits.set_field(drawing, some(drawing.pipes, draw), name, draw(st.sampled_from([value, None])))


def refer(drawing: Drawing, draw: Draw) -> Drawing:
    store, named = some(drawing.components, draw), some(drawing.components, draw)
    return edits.set_field(drawing, store, draw(st.sampled_from(["energy_cut_out", "over"])), named)


def add_control(drawing: Drawing, draw: Draw) -> Drawing:
    kind = draw(st.sampled_from(list(control_kinds().values())))
    acts_on = draw(st.lists(st.sampled_from(list(drawing.components)), max_size=2, unique=True))
    return edits.add_control(drawing, kind, acts_on=acts_on)[0]


def move(drawing: Drawing, draw: Draw) -> Drawing:
    return edits.move(drawing, several(drawing, draw), draw(STEPS), draw(STEPS))


def turn(drawing: Drawing, draw: Draw) -> Drawing:
    return edits.turn(drawing, several(drawing, draw))


def mirror(drawing: Drawing, draw: Draw) -> Drawing:
    return edits.mirror(drawing, several(drawing, draw))


def remove(drawing: Drawing, draw: Draw) -> Drawing:
    return edits.remove(drawing, several(drawing, draw))


ALWAYS: list[Edit] = [place, draw_pipe, move, turn, mirror, remove]
WITH_PIPES: list[Edit] = [draw_onto, cut_in, join, join_onto, set_corners, set_pipe_field]
WITH_PARTS: list[Edit] = [refer, add_control]


def possible(drawing: Drawing) -> list[Edit]:
    growing: list[Edit] = [place, draw_pipe]
    return ALWAYS + growing + WITH_PIPES * bool(drawing.pipes) + WITH_PARTS * bool(drawing.components)


def frozen_copy(drawing: Drawing) -> dict[str, Any]:
    """The drawing's content in containers of its own, which no edit can reach."""
    return {
        "components": [(id, *_fields(part)) for id, part in drawing.components.items()],
        "pipes": [(id, *_fields(pipe)) for id, pipe in drawing.pipes.items()],
        "controls": [(id, *_fields(control)) for id, control in drawing.controls.items()],
    }


def _fields(item: Any) -> list[Any]:
    values = [getattr(item, name) for name in item.__slots__]
    return [copy.copy(dict(value)) if hasattr(value, "keys") else value for value in values]


@given(st.data())
def test_any_sequence_of_edits_keeps_the_drawing_whole(data: st.DataObject) -> None:
    drawing = Drawing()
    history = [(drawing, frozen_copy(drawing))]
    for _ in range(data.draw(st.integers(1, 25))):
        edit = data.draw(st.sampled_from(possible(drawing)))
        try:
            after = edit(drawing, data.draw)
        except EditError:
            continue
        assert broken(after) == [], edit.__name__
        if after == drawing and list(after.pipes) == list(drawing.pipes):
            assert edit in (move, turn, mirror, remove) or after is drawing, edit.__name__
        drawing = after
        history.append((drawing, frozen_copy(drawing)))
    for earlier, content in history:
        assert frozen_copy(earlier) == content
        assert broken(earlier) == []


@given(st.data())
def test_what_an_edit_leaves_alone_is_the_same_object(data: st.DataObject) -> None:
    drawing = Drawing()
    for _ in range(12):
        drawing = place(drawing, data.draw) if data.draw(st.booleans()) else drawing
        try:
            drawing = draw_pipe(drawing, data.draw)
        except EditError:
            continue
    edit = data.draw(st.sampled_from(possible(drawing)))
    try:
        after = edit(drawing, data.draw)
    except EditError:
        return
    for before_items, items in (
        (drawing.components, after.components),
        (drawing.pipes, after.pipes),
        (drawing.controls, after.controls),
    ):
        kept = [id for id in items if id in before_items]
        assert kept == [id for id in before_items if id in items]
        assert list(items)[: len(kept)] == kept
        for id in kept:
            if items[id] == before_items[id]:
                assert items[id] is before_items[id]
