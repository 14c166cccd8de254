"""Flow on the sheet: a wash and arrowheads along a pipe, and boxed figures beside it. Places in px."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from circuitcheck.picture import paths
from circuitcheck.picture.labels import Obstacles, Rect, grown, overlap
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import Fill, Mark, Path, Stroke, TextMark
from circuitcheck.picture.pipes import HOP_PX, LINES, Gap, Place, pipe_path
from circuitcheck.picture.taken import Taken

WASH_PX, WASH_SHARE = 13.0, 0.2
ARROW_LONG, ARROW_HALF = 10.0, 5.0
PITCH_PX = 30.0
"""From arrowhead to arrowhead."""
MOST_ARROWS = 400
"""On one run; on a longer one, which only a strange file has, they stand farther apart."""
CLEAR_PX = 15.0
"""What an arrowhead keeps clear of corners and ends, where the run is long enough."""
SHORT_PX = ARROW_LONG + 4
"""The shortest run that an arrowhead stands on, where a pipe has no longer one."""
FIGURE_SIZE, FIGURE_WEIGHT = 12.0, 600
BOX_HIGH, BOX_INSET, BOX_RADIUS = 18.0, 6.0, 4.0
OFF_PX = WASH_PX / 2 + 3
"""How far a boxed figure stands off the middle of its line."""
SHARES = (0.5, 0.35, 0.65, 0.2, 0.8)
"""Where along a run a figure is tried."""


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure in its box: the text, and left, top, right, bottom of the box."""

    text: str
    box: Rect


def wash(line: Sequence[Place], service: str, hops: Sequence[Place] = ()) -> Stroke:
    """A pale band of the service's colour along a pipe in which water moves."""
    return Stroke(pipe_path(line, hops), LINES[service].role, WASH_PX, join="round", opacity=WASH_SHARE)


def arrows(
    line: Sequence[Place],
    service: str,
    *,
    forward: bool,
    gap: Gap | None = None,
    hops: Sequence[Place] = (),
    taken: Taken | None = None,
    role: str = "",
) -> list[Mark]:
    """Arrowheads along a line, from its first point to its last or back: one at least where one fits.

    They keep clear of the letter's gap, of hops, and of what is taken already.
    `role`: a colour in place of the service's.
    """
    kept = [] if taken is None else taken.met(_reach(line))
    kept += [grown(gap.box, 2)] if gap is not None else []
    kept += [(x - HOP_PX, y - HOP_PX, x + HOP_PX, y + HOP_PX) for x, y in hops]
    places = [
        found
        for a, b in pairwise(line)
        for found in _along(a, b, CLEAR_PX)
        if not any(overlap(_square(found[0]), box) for box in kept)
    ]
    if not places:
        places = _one(line, kept)
    colour = role or LINES[service].role
    marks: list[Mark] = []
    for place, way in places:
        head = _head(place, way if forward else (-way[0], -way[1]))
        marks += [Stroke(head, "paper", 3.0), Fill(head, colour)]
    return marks


def boxed(figure: Figure) -> tuple[Mark, ...]:
    """A figure's box and its text."""
    left, top, right, low = figure.box
    shape = paths.rectangle(left, top, right - left, low - top, BOX_RADIUS)
    text = TextMark(figure.text, (left + right) / 2, (top + low) / 2 + 4.2, "ink", FIGURE_SIZE, FIGURE_WEIGHT)
    return Fill(shape, "paper"), Stroke(shape, "edge", 1.0), text


def word_box(text: str, x: float, y: float) -> Rect:
    """The box of a figure about its middle."""
    return _box(_half(text), (x, y))


def placed(
    text: str,
    lines: Sequence[tuple[str, Sequence[Place]]],
    obstacles: Obstacles,
    taken: Taken | None = None,
) -> tuple[str, Figure] | None:
    """Where a figure stands, and by which of several pipes, each given by its id and line.

    Beside a pipe where it meets nothing; else on the pipe's own line; else beside it over other
    pipes, whose line it then interrupts. None: there is no place clear of symbols and labels.
    """
    half = _half(text)
    over_pipes: tuple[str, Figure] | None = None
    for id, line in lines:
        for place in _beside(line, half):
            met = _met(_box(half, place), obstacles, taken)
            if not met:
                return id, Figure(text, _box(half, place))
            if over_pipes is None and all(owner.startswith("pipe ") for owner in met):
                over_pipes = id, Figure(text, _box(half, place))
    own = {f"pipe {id}" for id, _ in lines}
    for id, line in lines:
        for place in _upon(line, half):
            if _met(_box(half, place), obstacles, taken) <= own:
                return id, Figure(text, _box(half, place))
    return over_pipes


def _half(text: str) -> float:
    """Half the width of a figure's box."""
    return width(text, FIGURE_SIZE, FIGURE_WEIGHT) / 2 + BOX_INSET


def _box(half: float, place: Place) -> Rect:
    x, y = place
    return x - half, y - BOX_HIGH / 2, x + half, y + BOX_HIGH / 2


def _met(box: Rect, obstacles: Obstacles, taken: Taken | None) -> set[str]:
    """What a figure would lie on or touch; figures that stand already are told first, for they cost least."""
    room = grown(box, 2)
    if taken is not None and taken.is_met(room):
        return {"taken"}
    return obstacles.met(room)


def _runs(line: Sequence[Place]) -> list[tuple[Place, Place, float]]:
    """The straight runs of a line with their lengths, longest first."""
    found = [(a, b, hypot(b[0] - a[0], b[1] - a[1])) for a, b in pairwise(line)]
    return sorted(found, key=lambda run: -run[2])


def _beside(line: Sequence[Place], half: float) -> Iterator[Place]:
    """Above or below a level run, to the right or the left of an upright one."""
    runs = _runs(line)
    for share in SHARES:
        for a, b, _ in runs:
            x, y = a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
            if a[1] == b[1]:
                yield x, y - OFF_PX - BOX_HIGH / 2
                yield x, y + OFF_PX + BOX_HIGH / 2
            elif a[0] == b[0]:
                yield x + OFF_PX + half, y
                yield x - OFF_PX - half, y


def _upon(line: Sequence[Place], half: float) -> Iterator[Place]:
    """On runs long enough to be seen to go on to both sides."""
    for a, b, length in _runs(line):
        level = a[1] == b[1]
        if length < (2 * half if level else BOX_HIGH) + 2 * CLEAR_PX or not (level or a[0] == b[0]):
            continue
        for share in SHARES[:3]:
            yield a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])


def _along(a: Place, b: Place, clear: float) -> list[tuple[Place, Place]]:
    """Arrowheads spread evenly over a run: the middle of each, and the way it points."""
    length = hypot(b[0] - a[0], b[1] - a[1])
    room = length - 2 * clear
    if room < 0:
        return []
    way = ((b[0] - a[0]) / length, (b[1] - a[1]) / length)
    count = min(int(room // PITCH_PX) + 1, MOST_ARROWS)
    pitch = PITCH_PX if count < MOST_ARROWS else room / count
    first = (length - (count - 1) * pitch) / 2
    steps = [first + index * pitch for index in range(count)]
    return [((a[0] + way[0] * at, a[1] + way[1] * at), way) for at in steps]


def _one(line: Sequence[Place], kept: Sequence[Rect]) -> list[tuple[Place, Place]]:
    """A single arrowhead where there is no room for the usual clearance: on the longest run that is free."""
    for a, b, length in _runs(line):
        if length < SHORT_PX:
            break
        way = ((b[0] - a[0]) / length, (b[1] - a[1]) / length)
        for share in SHARES:
            at = max(SHORT_PX / 2, min(length - SHORT_PX / 2, share * length))
            place = (a[0] + way[0] * at, a[1] + way[1] * at)
            if not any(overlap(_square(place), box) for box in kept):
                return [(place, way)]
    return []


def _head(place: Place, way: Place) -> Path:
    """A triangle about its middle that points along `way`."""
    (x, y), (ux, uy) = place, way
    back = (x - ux * ARROW_LONG / 2, y - uy * ARROW_LONG / 2)
    return paths.polygon(
        [
            (x + ux * ARROW_LONG / 2, y + uy * ARROW_LONG / 2),
            (back[0] - uy * ARROW_HALF, back[1] + ux * ARROW_HALF),
            (back[0] + uy * ARROW_HALF, back[1] - ux * ARROW_HALF),
        ]
    )


def _reach(line: Sequence[Place]) -> Rect:
    """The box round a line and the arrowheads on it."""
    xs, ys = [x for x, _ in line], [y for _, y in line]
    return grown((min(xs), min(ys), max(xs), max(ys)), ARROW_LONG)


def _square(place: Place) -> Rect:
    half = ARROW_LONG / 2 + 1
    return place[0] - half, place[1] - half, place[0] + half, place[1] + half
