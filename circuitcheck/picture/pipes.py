"""Pipes as marks: line style by service, round corners, hops, and letter and bore in a gap of the line."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from circuitcheck.geometry import Point
from circuitcheck.picture import paths
from circuitcheck.picture.lettering import width
from circuitcheck.picture.marks import SQUARE_PX, Fill, Mark, Path, Step, Stroke, TextMark

CORNER_PX = 7.0
HOP_PX = 7.0
DOT_PX = 4.5
LETTER_SIZE = 12.0
LETTER_WEIGHT = 600
LEAST_RUN_PX = 4 * SQUARE_PX
"""The shortest straight run that carries letter and bore."""

Place = tuple[float, float]
Rect = tuple[float, float, float, float]


@dataclass(frozen=True, slots=True)
class Line:
    """How a service is drawn: letter, colour role, width and dashes in px; `core`: width of a paper core."""

    letter: str
    role: str
    width: float
    dash: tuple[float, ...] = ()
    cap: str = "flat"
    core: float = 0.0


LINES: Mapping[str, Line] = {
    "flow": Line("F", "flow", 3),
    "return": Line("R", "return_", 3, (11, 4)),
    "cold": Line("C", "cold", 3, (14, 4, 3, 4)),
    "hot": Line("H", "hot", 5, core=1.6),
    "discharge": Line("D", "discharge", 2, (5, 4)),
    # A dot is a dash of no length with round ends; none at all would not be drawn.
    "vent": Line("V", "vent", 3, (0.01, 5.99), "round"),
    "unknown": Line("?", "ink", 2),
}
"""The line of each service, by its name."""


@dataclass(frozen=True, slots=True)
class Gap:
    """The clear space in a pipe's line that its letter stands in: the run it is on, and its middle."""

    run: int
    middle: Place
    half: float
    """Half its length along the run, in px."""
    box: Rect
    """Left, top, right, bottom of the letters, in px."""


def in_px(line: Sequence[Point]) -> tuple[Place, ...]:
    """A line from squares to px."""
    return tuple((point.x * SQUARE_PX, point.y * SQUARE_PX) for point in line)


def caption(service: str, bore: str) -> str:
    """What stands in a pipe's gap: `F 22`, or the letter alone where the size is not known."""
    return f"{LINES[service].letter} {bore}".rstrip()


def gaps(line: Sequence[Place], text: str, hops: Sequence[Place] = ()) -> list[Gap]:
    """Where letter and bore may stand: the middle of each run long enough, longest first, then off it."""
    found = []
    wide = width(text, LETTER_SIZE, LETTER_WEIGHT)
    for run, (a, b) in enumerate(pairwise(line)):
        length = hypot(b[0] - a[0], b[1] - a[1])
        if length < LEAST_RUN_PX or (a[0] != b[0] and a[1] != b[1]):
            continue
        half = (wide / 2 + 5) if a[1] == b[1] else 9.0
        for share in (0.5, 0.3, 0.7):
            if length * min(share, 1 - share) < half + CORNER_PX + 4:
                continue
            x, y = a[0] + share * (b[0] - a[0]), a[1] + share * (b[1] - a[1])
            if any(abs(x - hop[0]) < half + HOP_PX + 2 and abs(y - hop[1]) < half for hop in hops):
                continue
            box = (x - wide / 2 - 3, y - 8, x + wide / 2 + 3, y + 8)
            found.append((share != 0.5, -length, run, Gap(run, (x, y), half, box)))
    return [gap for *_, gap in sorted(found, key=lambda entry: entry[:3])]


def pipe_marks(
    line: Sequence[Place],
    service: str,
    *,
    hops: Sequence[Place] = (),
    gap: Gap | None = None,
    text: str = "",
) -> tuple[Mark, ...]:
    """A pipe's marks from its line in px: its strokes, then its letter and bore where it has a gap."""
    style = LINES[service]
    path = pipe_path(line, hops, gap)
    marks: list[Mark] = [Stroke(path, style.role, style.width, style.dash, style.cap)]
    if style.core:
        marks.append(Stroke(path, "paper", style.core))
    if gap is not None and text:
        x, y = gap.middle
        marks.append(TextMark(text, x, y + 4.2, style.role, LETTER_SIZE, LETTER_WEIGHT))
    return tuple(marks)


def joint_dot(x: float, y: float, service: str) -> Fill:
    """The disc where three pipes meet, in px."""
    return Fill(paths.circle(x, y, DOT_PX), LINES[service].role)


def pipe_path(line: Sequence[Place], hops: Sequence[Place] = (), gap: Gap | None = None) -> Path:
    """The path of a pipe's line: corners rounded, a half circle at each hop, open at the gap."""
    corners = _corner_radii(line)
    steps: list[Step] = [("M", line[0])]
    for run, (a, b) in enumerate(pairwise(line)):
        length = hypot(b[0] - a[0], b[1] - a[1])
        if length == 0:
            continue
        ux, uy = (b[0] - a[0]) / length, (b[1] - a[1]) / length
        events = _events(a, b, length, hops, gap if gap is not None and gap.run == run else None)
        for at, half, is_gap in events:
            before = (a[0] + ux * (at - half), a[1] + uy * (at - half))
            after = (a[0] + ux * (at + half), a[1] + uy * (at + half))
            steps.append(("L", before))
            steps.extend([("M", after)] if is_gap else _hop(before, after))
        r = corners[run + 1]
        steps.append(("L", (b[0] - ux * r, b[1] - uy * r)))
        if r:
            steps.append(_corner(b, (ux, uy), line[run + 2], r))
    return tuple(steps)


def _events(
    a: Place, b: Place, length: float, hops: Sequence[Place], gap: Gap | None
) -> list[tuple[float, float, bool]]:
    """Hops and the gap along a run: distance from its start, half length, whether it is the gap."""
    events = []
    if a[1] == b[1]:
        low, high = min(a[0], b[0]), max(a[0], b[0])
        for x, y in hops:
            if y == a[1] and low < x < high:
                half = min(HOP_PX, x - low, high - x)
                events.append((abs(x - a[0]), half, False))
    if gap is not None:
        along = hypot(gap.middle[0] - a[0], gap.middle[1] - a[1])
        events.append((along, min(gap.half, along, length - along), True))
    return sorted(events)


def _hop(before: Place, after: Place) -> list[Step]:
    """Half a circle over the top, from one side of the crossing to the other."""
    r = abs(after[0] - before[0]) / 2
    way = 1 if after[0] > before[0] else -1
    x, y, k = (before[0] + after[0]) / 2, before[1], r * paths.KAPPA
    return [
        ("C", (before[0], y - k, x - way * k, y - r, x, y - r)),
        ("C", (x + way * k, y - r, after[0], y - k, after[0], y)),
    ]


def _corner_radii(line: Sequence[Place]) -> list[float]:
    """The radius at each point of the line: 7 px, less where a run is short; none at ends and straight on."""
    radii = [0.0] * len(line)
    lengths = [hypot(b[0] - a[0], b[1] - a[1]) for a, b in pairwise(line)]
    for index in range(1, len(line) - 1):
        before, after = lengths[index - 1], lengths[index]
        (ax, ay), (bx, by), (cx, cy) = line[index - 1], line[index], line[index + 1]
        bends = abs((bx - ax) * (cy - by) - (by - ay) * (cx - bx)) > 1e-9
        radii[index] = min(CORNER_PX, before / 2, after / 2) if bends else 0.0
    return radii


def _corner(b: Place, way: Place, c: Place, r: float) -> Step:
    """A round corner at b, coming along `way` and going on to c."""
    length = hypot(c[0] - b[0], c[1] - b[1])
    vx, vy = (c[0] - b[0]) / length, (c[1] - b[1]) / length
    k = r * (1 - paths.KAPPA)
    return (
        "C",
        (b[0] - way[0] * k, b[1] - way[1] * k, b[0] + vx * k, b[1] + vy * k, b[0] + vx * r, b[1] + vy * r),
    )
