"""What lies under the pointer: a port, the free end of a pipe, a part, or a pipe."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF

from circuitcheck.drawing.routing import Routes
from circuitcheck.drawing.value import Component, Drawing, Joint
from circuitcheck.editor.sheet.content import Content
from circuitcheck.geometry import Point, distance, nearest_on_segment
from circuitcheck.picture.marks import SQUARE_PX

PORT_PX = 8.0
"""How near a port the pointer takes hold of it, in px of the screen and at most in px of the sheet."""

PIPE_PX = 6.0
"""How near a pipe's line, in px of the screen: a pipe is twelve wide to the pointer."""


@dataclass(frozen=True)
class OnPort:
    """A port that has no pipe."""

    joint: Joint
    at: Point


@dataclass(frozen=True)
class OnEnd:
    """A pipe's free end."""

    pipe: str
    which: int
    at: Point


@dataclass(frozen=True)
class OnPart:
    """A part or a control."""

    id: str


@dataclass(frozen=True)
class OnPipe:
    """A pipe; `at` is on its line, at a whole square along it where its run is level or upright."""

    id: str
    at: Point
    run: int


Hit = OnPort | OnEnd | OnPart | OnPipe


def snapped(place: QPointF) -> Point:
    """The corner of a square nearest to a place in px."""
    return Point(float(round(place.x() / SQUARE_PX)), float(round(place.y() / SQUARE_PX)))


def found(content: Content, place: QPointF, zoom: float) -> Hit | None:
    """What the pointer takes hold of at a place in px: ports and free ends first, then parts, then pipes."""
    return (
        port_at(content, content.drawing, place, zoom)
        or part_at(content, place)
        or pipe_at(content, content.layout.routes, place, zoom)
    )


def port_at(content: Content, drawing: Drawing, place: QPointF, zoom: float) -> OnPort | OnEnd | None:
    """The nearest port without a pipe, or free end of a pipe, within reach, as `drawing` has them."""
    reach = min(PORT_PX / zoom, PORT_PX)
    best: tuple[float, OnPort | OnEnd] | None = None
    at = Point(place.x() / SQUARE_PX, place.y() / SQUARE_PX)
    parts, pipes = content.near(_around(place, reach + 2))
    candidates: list[OnPort | OnEnd] = []
    for item in parts:
        if item.id in drawing.components:
            candidates += free_ports(drawing, drawing.components[item.id])
    for pipe in pipes:
        if pipe.id in drawing.pipes:
            candidates += free_ends(drawing, pipe.id)
    for candidate in candidates:
        off = distance(at, candidate.at) * SQUARE_PX
        if off <= reach and (best is None or off < best[0]):
            best = (off, candidate)
    return None if best is None else best[1]


def part_at(content: Content, place: QPointF) -> OnPart | None:
    """The topmost part whose symbol is under the pointer."""
    parts, _ = content.near(_around(place, 1))
    for item in parts:
        if item.reach.contains(place):
            return OnPart(item.id)
    return None


def pipe_at(content: Content, lines: Routes, place: QPointF, zoom: float) -> OnPipe | None:
    """The nearest pipe within reach by these lines: those on the sheet, or those before a preview moved some."""
    reach = PIPE_PX / zoom
    at = Point(place.x() / SQUARE_PX, place.y() / SQUARE_PX)
    best: tuple[float, OnPipe] | None = None
    _, pipes = content.near(_around(place, reach))
    moved = lines.others_than(content.layout.routes) if lines is not content.layout.routes else set[str]()
    for id in sorted({item.id for item in pipes} | moved):
        for run, (a, b) in enumerate(pairwise(lines.get(id, ()))):
            foot, off = nearest_on_segment(at, a, b)
            if off * SQUARE_PX <= reach and (best is None or off < best[0]):
                best = (off, OnPipe(id, _on_run(foot, a, b), run))
    return None if best is None else best[1]


def free_ports(drawing: Drawing, part: Component) -> Iterator[OnPort]:
    """The ports of a part that have no pipe."""
    for port in part.kind.ports:
        joint = Joint(part.id, port.name)
        at = part.port_at(port.name)
        if at is not None and joint not in drawing.joined:
            yield OnPort(joint, at)


def free_ends(drawing: Drawing, pipe: str) -> Iterator[OnEnd]:
    """The ends of a pipe that are on no port."""
    for which, end in enumerate(drawing.pipes[pipe].ends):
        if isinstance(end, Point):
            yield OnEnd(pipe, which, end)


def _on_run(foot: Point, a: Point, b: Point) -> Point:
    """A place on a run, at a whole square along it and not beyond its ends."""
    if a.y == b.y:
        return Point(_between(float(round(foot.x)), a.x, b.x), a.y)
    if a.x == b.x:
        return Point(a.x, _between(float(round(foot.y)), a.y, b.y))
    return foot


def _between(value: float, a: float, b: float) -> float:
    return min(max(value, min(a, b)), max(a, b))


def _around(place: QPointF, reach: float) -> QRectF:
    return QRectF(place.x() - reach, place.y() - reach, 2 * reach, 2 * reach)
