"""Edits of place: moving, turning and mirroring parts, with their pipes keeping their shape."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass, replace
from typing import Any

from circuitcheck.drawing.changing import EditError, changed, with_items
from circuitcheck.drawing.corners import Corners, follow
from circuitcheck.drawing.difference import made_of
from circuitcheck.drawing.layers import over
from circuitcheck.drawing.value import Component, Control, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point
from circuitcheck.told import worded

Rigid = Callable[[Point], Point]
PutIn = Callable[[Mapping[str, Any], Mapping[str, Any]], Mapping[str, Any]]
NO_WAY = Point(0, 0)


@dataclass(frozen=True, slots=True)
class _Chosen:
    """What is selected, by its sort; a control without a place or a part without one stays so."""

    parts: Mapping[str, Component]
    controls: Mapping[str, Control]
    pipes: frozenset[str]

    def places(self, drawing: Drawing) -> list[Point]:
        """Where the selected parts, controls and free ends of selected pipes stand."""
        found = [part.at for part in self.parts.values() if part.at is not None]
        found.extend(control.at for control in self.controls.values() if control.at is not None)
        for id in self.pipes:
            found.extend(end for end in drawing.pipes[id].ends if isinstance(end, Point))
        return found


def move(drawing: Drawing, ids: Iterable[str], dx: float, dy: float, *, passing: bool = False) -> Drawing:
    """Move parts, controls and the free ends of selected pipes by (dx, dy) squares.

    The corners of a pipe whose two ends go along move with it; where one end goes, the corners
    next to it give way. `passing`: one step of a drag, gone with the next: no map of thousands is made for it.
    Raises EditError for an id that is not in the drawing.
    """
    if dx == 0 and dy == 0:
        return drawing

    def shifted(point: Point) -> Point:
        return Point(point.x + dx, point.y + dy)

    put_in = over if passing else with_items
    return _arranged(drawing, _choose(drawing, ids), shifted, lambda part: part, put_in)


def shift(drawing: Drawing, by: Mapping[str, Point]) -> Drawing:
    """Move each part, control or pipe's free ends by squares of its own, as one edit.

    A pipe whose two ends go alike goes along whole; else the corners next to an end give way.
    Raises EditError for an id that is not in the drawing.
    """
    chosen = _choose(drawing, [id for id, off in by.items() if off != NO_WAY])
    parts = {
        id: replace(part, at=_off(part.at, by[id]))
        for id, part in chosen.parts.items()
        if part.at is not None
    }
    controls = {
        id: replace(control, at=_off(control.at, by[id]))
        for id, control in chosen.controls.items()
        if control.at is not None
    }
    after = changed(
        drawing,
        components=with_items(drawing.components, parts),
        controls=with_items(drawing.controls, controls),
    )
    pipes = {}
    for id in {id for part in parts for id in drawing.pipes_of(part)} | chosen.pipes:
        pipe = drawing.pipes[id]
        offs = [by.get(end.part if isinstance(end, Joint) else id, NO_WAY) for end in pipe.ends]
        first, second = (
            end if isinstance(end, Joint) else _off(end, off)
            for end, off in zip(pipe.ends, offs, strict=True)
        )
        via = pipe.via
        if via is not None and offs[0] == offs[1]:
            via = tuple(_off(corner, offs[0]) for corner in via)
        elif via is not None:
            via = _followed(drawing, after, pipe.ends, (first, second), via)
        pipes[id] = replace(pipe, ends=(first, second), via=via)
    after = changed(after, pipes=with_items(drawing.pipes, pipes))
    return made_of(drawing, after, parts, pipes)


def turn(drawing: Drawing, ids: Iterable[str]) -> Drawing:
    """Turn 90 degrees clockwise: one part about its own `at`, a group about its middle.

    Four turns give the drawing back exactly. Raises EditError for an id that is not there.
    """
    chosen = _choose(drawing, ids)
    places = chosen.places(drawing)
    if not places:
        return drawing
    middle = _middle_for_turning(places)

    def quarter(point: Point) -> Point:
        return Point(middle.x - (point.y - middle.y), middle.y + (point.x - middle.x))

    return _arranged(drawing, chosen, quarter, lambda part: replace(part, turn=(part.turn + 90) % 360))


def mirror(drawing: Drawing, ids: Iterable[str]) -> Drawing:
    """Mirror left to right as it stands on the sheet: one part about its own `at`, a group about its middle.

    Twice gives the drawing back exactly. Raises EditError for an id that is not there.
    """
    chosen = _choose(drawing, ids)
    places = chosen.places(drawing)
    if not places:
        return drawing
    doubled = min(place.x for place in places) + max(place.x for place in places)

    def reflected(point: Point) -> Point:
        return Point(doubled - point.x, point.y)

    # A part is mirrored first and turned then, so a mirror on top of its turn turns it back.
    def flipped(part: Component) -> Component:
        return replace(part, turn=-part.turn % 360, mirrored=not part.mirrored)

    return _arranged(drawing, chosen, reflected, flipped)


def _off(at: Point, off: Point) -> Point:
    return Point(at.x + off.x, at.y + off.y)


def _choose(drawing: Drawing, ids: Iterable[str]) -> _Chosen:
    parts, controls, pipes = {}, {}, set[str]()
    for id in ids:
        if id in drawing.components:
            parts[id] = drawing.components[id]
        elif id in drawing.controls:
            controls[id] = drawing.controls[id]
        elif id in drawing.pipes:
            pipes.add(id)
        else:
            raise EditError(worded("There is nothing called {id!r} in the drawing.", id=id))
    return _Chosen(parts, controls, frozenset(pipes))


def _middle_for_turning(places: list[Point]) -> Point:
    """The middle of the places' box, moved half a square where turning would leave the grid.

    Of the two grid points beside such a middle it takes the one whose x + y is even: each of the
    four middles that turning about that point runs through then finds the same point again.
    """
    xs, ys = [place.x for place in places], [place.y for place in places]
    x, y = (min(xs) + max(xs)) / 2, (min(ys) + max(ys)) / 2
    if any(value % 1 for value in (*xs, *ys)) or (x + y) % 1 == 0:
        return Point(x, y)
    beside = [Point(x - x % 1, y - y % 1), Point(x + x % 1, y + y % 1)]
    return beside[0] if (beside[0].x + beside[0].y) % 2 == 0 else beside[1]


def _arranged(
    drawing: Drawing,
    chosen: _Chosen,
    where: Rigid,
    facing: Callable[[Component], Component],
    put_in: PutIn = with_items,
) -> Drawing:
    """The drawing after a rigid change of place of all that is chosen."""
    parts = {
        id: replace(facing(part), at=where(part.at))
        for id, part in chosen.parts.items()
        if part.at is not None
    }
    controls = {
        id: replace(control, at=where(control.at))
        for id, control in chosen.controls.items()
        if control.at is not None
    }
    after = changed(
        drawing,
        components=put_in(drawing.components, parts),
        controls=with_items(drawing.controls, controls),
    )
    concerned = {id for part in parts for id in drawing.pipes_of(part)} | chosen.pipes
    pipes = {}
    for id in concerned:
        pipe = drawing.pipes[id]
        goes = tuple(end.part in parts if isinstance(end, Joint) else id in chosen.pipes for end in pipe.ends)
        pipes[id] = _carried(drawing, after, pipe, (goes[0], goes[1]), where)
    after = changed(after, pipes=put_in(drawing.pipes, pipes))
    return made_of(drawing, after, parts, pipes)


def _carried(drawing: Drawing, after: Drawing, pipe: Pipe, goes: tuple[bool, bool], where: Rigid) -> Pipe:
    """The pipe after those of its ends that go have gone."""
    if not any(goes):
        return pipe
    first, second = (_gone(end, where) if going else end for end, going in zip(pipe.ends, goes, strict=True))
    ends = (first, second)
    via = pipe.via
    if via is not None and all(goes):
        via = tuple(where(corner) for corner in via)
    elif via is not None:
        via = _followed(drawing, after, pipe.ends, ends, via)
    return pipe if (ends, via) == (pipe.ends, pipe.via) else replace(pipe, ends=ends, via=via)


def _gone(end: End, where: Rigid) -> End:
    return end if isinstance(end, Joint) else where(end)


def _followed(
    before: Drawing, after: Drawing, old_ends: tuple[End, End], new_ends: tuple[End, End], via: Corners
) -> Corners | None:
    """The corners after one of the ends, or both apart, went elsewhere."""
    first, second = (before.end_at(end) for end in old_ends)
    new_first, new_second = (after.end_at(end) for end in new_ends)
    if first is None or second is None or new_first is None or new_second is None:
        return via
    followed = follow(via, first, new_first, second)
    if followed is None:
        return None
    back = follow(followed[::-1], second, new_second, new_first)
    return None if back is None else back[::-1]


def with_end(drawing: Drawing, pipe: Pipe, which_end: int, end: End) -> Pipe:
    """The pipe with one end (0 or 1) elsewhere, its corners following."""
    ends = (end, pipe.ends[1]) if which_end == 0 else (pipe.ends[0], end)
    via = pipe.via
    if via is not None:
        via = _followed(drawing, drawing, pipe.ends, ends, via)
    return replace(pipe, ends=ends, via=via)
