"""Edits of pipes: drawing them, ending one on another, cutting a part in, setting corners."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from types import MappingProxyType
from typing import Any

from circuitcheck.drawing.arranging import with_end
from circuitcheck.drawing.changing import (
    EditError,
    accepted_data,
    changed,
    new_id,
    part_named,
    pipe_named,
    require_port,
    with_items,
)
from circuitcheck.drawing.corners import Corners, direction_at, is_square, parted
from circuitcheck.drawing.difference import made_of
from circuitcheck.drawing.edits import place
from circuitcheck.drawing.fields import PIPE_FIELDS
from circuitcheck.drawing.healing import halves_of_data
from circuitcheck.drawing.removing import with_end_moved
from circuitcheck.drawing.value import EMPTY, Drawing, End, Joint, Pipe
from circuitcheck.geometry import Point, turned
from circuitcheck.parts.kind import Kind, Port
from circuitcheck.parts.tee import KIND as TEE
from circuitcheck.told import a_word, lower, worded

PREFIX = "p"


def draw_pipe(
    drawing: Drawing,
    start: End,
    finish: End,
    *,
    via: Iterable[Point] | None = None,
    data: Mapping[str, Any] = EMPTY,
) -> tuple[Drawing, str]:
    """Draw a pipe from one end to another; `via` None: the program routes it.

    Returns the new drawing and the pipe's id. Raises EditError for a port that is not there or
    has a pipe already, and for a pipe that ends where it begins.
    """
    start, finish = _sound_end(drawing, start), _sound_end(drawing, finish)
    if start == finish:
        raise EditError(a_word("A pipe cannot end where it begins."))
    id = new_id(drawing, PREFIX)
    corners = None if via is None else tuple(Point(*corner) for corner in via)
    pipe = Pipe(id, (start, finish), corners, accepted_data(drawing, PIPE_FIELDS, data, "A pipe"))
    return changed(drawing, pipes=with_items(drawing.pipes, {id: pipe})), id


def draw_pipe_onto(drawing: Drawing, start: End, pipe_id: str, at: Point) -> tuple[Drawing, str]:
    """Draw a pipe that ends on another, and make the tee where it lands.

    The first half keeps the other pipe's id. Returns the new drawing and the new pipe's id.
    Raises EditError as `draw_pipe` does.
    """
    pipe_named(drawing, pipe_id)
    start, at = _sound_end(drawing, start), Point(*at)
    if start == at:
        raise EditError(a_word("A pipe cannot end where it begins."))
    after, tee = place(drawing, TEE, at)
    after, _ = cut_pipe(after, pipe_id, Joint(tee, "a"), Joint(tee, "b"), at)
    return draw_pipe(after, start, Joint(tee, "branch"))


def join(drawing: Drawing, pipe_id: str, which_end: int, end: End) -> Drawing:
    """Put a pipe's end (0 or 1) on another port, or free at a place.

    A tee that it leaves with two pipes is taken out and these two heal. Raises EditError as
    `draw_pipe` does.
    """
    pipe = pipe_named(drawing, pipe_id)
    _require_end_number(which_end)
    if pipe.ends[which_end] == end:
        return drawing
    end = _sound_end(drawing, end)
    if pipe.ends[1 - which_end] == end:
        raise EditError(a_word("A pipe cannot end where it begins."))
    return with_end_moved(drawing, with_end(drawing, pipe, which_end, end), which_end)


def join_onto(drawing: Drawing, pipe_id: str, which_end: int, onto: str, at: Point) -> Drawing:
    """Put a pipe's end (0 or 1) on another pipe, and make the tee where it lands.

    Raises EditError where the other pipe is the pipe itself.
    """
    pipe_named(drawing, pipe_id)
    pipe_named(drawing, onto)
    _require_end_number(which_end)
    if onto == pipe_id:
        raise EditError(a_word("A pipe cannot end on itself."))
    after, tee = place(drawing, TEE, Point(*at))
    after, _ = cut_pipe(after, onto, Joint(tee, "a"), Joint(tee, "b"), Point(*at))
    return join(after, pipe_id, which_end, Joint(tee, "branch"))


def cut_in(
    drawing: Drawing,
    pipe_id: str,
    kind: Kind,
    at: Point,
    *,
    line: Sequence[Point] | None = None,
    turned_round: bool = False,
) -> tuple[Drawing, str]:
    """Cut a part into a pipe by its two inline ports, the first of them nearer the pipe's first end.

    `turned_round`: the second of them is.

    The part lies along the pipe; `line` is the pipe as it is shown, by which a routed one tells its
    direction. Returns the new drawing and the part's id. Raises EditError for a kind without two
    ports in one line.
    """
    pipe_named(drawing, pipe_id)
    ports = inline_ports(kind)
    if ports is None:
        raise EditError(worded("A {part} cannot be cut into a pipe.", part=lower(kind.title)))
    if turned_round:
        ports = ports[::-1]
    at = Point(*at)
    shown = line if line is not None else _known_line(drawing, drawing.pipes[pipe_id], at)
    way = direction_at(shown, at)
    unturned = _along(kind.port(ports[0]), kind.port(ports[1]))
    turn = next(quarter for quarter in (0, 90, 180, 270) if turned(unturned, quarter, False) == Point(*way))
    after, part = place(drawing, kind, at, turn=turn)
    after, _ = cut_pipe(after, pipe_id, Joint(part, ports[0]), Joint(part, ports[1]), at)
    return after, part


def move_into(
    drawing: Drawing, pipe_id: str, part_id: str, at: Point, *, line: Sequence[Point] | None = None
) -> Drawing:
    """Cut a part that stands free into a pipe, as `cut_in` does a new one; it keeps all it holds.

    Raises EditError for a part with a pipe on it, or of a kind without two ports in one line.
    """
    part = part_named(drawing, part_id)
    if drawing.pipes_of(part_id):
        raise EditError(worded("{name} has a pipe on it already.", name=part.name))
    after, made = cut_in(drawing, pipe_id, part.kind, at, line=line)
    place_ = after.components[made]
    stands = replace(part, at=place_.at, turn=place_.turn, mirrored=False)
    parts = {id: each for id, each in after.components.items() if id != made}
    parts[part_id] = stands
    pipes = {
        pipe.id: replace(
            pipe, ends=(_renamed(pipe.ends[0], made, part_id), _renamed(pipe.ends[1], made, part_id))
        )
        for pipe in (after.pipes[id] for id in after.pipes_of(made))
    }
    return changed(after, components=MappingProxyType(parts), pipes=with_items(after.pipes, pipes))


def _renamed(end: End, old: str, new: str) -> End:
    return Joint(new, end.port) if isinstance(end, Joint) and end.part == old else end


def set_corners(drawing: Drawing, pipe_id: str, via: Iterable[Point] | None) -> Drawing:
    """Set the corners of a pipe, first end to second; None: the program routes it."""
    pipe = pipe_named(drawing, pipe_id)
    corners = None if via is None else tuple(Point(*corner) for corner in via)
    if corners == pipe.via:
        return drawing
    after = changed(drawing, pipes=with_items(drawing.pipes, {pipe_id: replace(pipe, via=corners)}))
    return made_of(drawing, after, (), (pipe_id,))


def inline_ports(kind: Kind) -> tuple[str, str] | None:
    """The first two ports that lie in one line, face away from each other and have a way between.

    None where the kind has no such ports, so that it cannot be cut into a pipe.
    """
    passages = kind.passages(EMPTY)
    for place_, a in enumerate(kind.ports):
        reached = {a.name}
        for _ in passages:
            for passage in passages:
                if reached & {passage.a, passage.b}:
                    reached |= {passage.a, passage.b}
        for b in kind.ports[place_ + 1 :]:
            if b.name in reached and _in_line(a, b):
                return a.name, b.name
    return None


def _in_line(a: Port, b: Port) -> bool:
    if a.faces is None or b.faces is None:
        return a.faces is b.faces
    away = (a.faces[0] + b.faces[0], a.faces[1] + b.faces[1]) == (0, 0)
    dx, dy = b.at[0] - a.at[0], b.at[1] - a.at[1]
    return away and dx * b.faces[1] == dy * b.faces[0]


def _along(a: Port, b: Port) -> tuple[int, int]:
    """The unit step from the first inline port to the second; to the right for a tee's."""
    return (1, 0) if b.faces is None else b.faces


def _sound_end(drawing: Drawing, end: End) -> End:
    """The end as it is kept. Raises EditError for a port that is not there or is joined already."""
    if not isinstance(end, Joint):
        return Point(*end)
    require_port(drawing, end)
    if end in drawing.joined:
        name = part_named(drawing, end.part).name
        raise EditError(worded("{name} has a pipe on its port {port} already.", name=name, port=end.port))
    return end


def _require_end_number(which_end: int) -> None:
    if which_end not in (0, 1):
        raise EditError(a_word("A pipe's ends are 0 and 1."))


def _known_line(drawing: Drawing, pipe: Pipe, at: Point) -> tuple[Point, ...]:
    """The pipe's line as far as the drawing says it; an end that is not placed lies at the next corner."""
    corners = pipe.via or ()
    start, finish = (drawing.end_at(end) for end in pipe.ends)
    return (
        start if start is not None else (*corners, at)[0],
        *corners,
        finish if finish is not None else (at, *corners)[-1],
    )


def cut_pipe(
    drawing: Drawing, pipe_id: str, first: Joint, second: Joint, at: Point | None
) -> tuple[Drawing, str]:
    """Part a pipe at two free ports: the first half keeps its id and ends on `first`.

    `at` is where on its line; None where it has none. Returns the new drawing and the other half's id.
    """
    pipe = drawing.pipes[pipe_id]
    data = halves_of_data(drawing, pipe)
    via: tuple[Corners | None, Corners | None] = (None, None)
    if pipe.via is not None and at is not None:
        known = _known_line(drawing, pipe, at)
        via = _corners_of_halves(drawing, known, first, second, at)
    id = new_id(drawing, PREFIX)
    halves = {
        pipe_id: replace(pipe, ends=(pipe.ends[0], first), via=via[0], data=data[0]),
        id: replace(pipe, id=id, ends=(second, pipe.ends[1]), via=via[1], data=data[1]),
    }
    return changed(drawing, pipes=with_items(drawing.pipes, halves)), id


def _corners_of_halves(
    drawing: Drawing, line: Sequence[Point], first: Joint, second: Joint, at: Point
) -> tuple[Corners | None, Corners | None]:
    before, after = parted(line, at)
    joints = drawing.end_at(first), drawing.end_at(second)
    reach = 0.0 if joints[0] is None else max(abs(joints[0].x - at.x), abs(joints[0].y - at.y))

    def clear(corner: Point) -> bool:
        return max(abs(corner.x - at.x), abs(corner.y - at.y)) > reach

    before = tuple(corner for corner in before if clear(corner))
    after = tuple(corner for corner in after if clear(corner))
    return (
        _kept_if_square((line[0], *before), joints[0], before),
        _kept_if_square((line[-1], *reversed(after)), joints[1], after),
    )


def _kept_if_square(run: Sequence[Point], joint: Point | None, corners: Corners) -> Corners | None:
    """The corners of a half, or None where the part that came in covered one of them."""
    return corners if joint is None or is_square(run[-1], joint) else None
