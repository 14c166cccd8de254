"""Arrowheads that move along the pipes at the solved rate, painted over a picture that stands still."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import pairwise
from math import hypot

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap, QTransform

from circuitcheck.editor.sheet.painting import Palette, paint
from circuitcheck.picture import paths
from circuitcheck.picture.flow import ARROW_HALF, ARROW_LONG, PITCH_PX
from circuitcheck.picture.labels import Rect, grown, overlap
from circuitcheck.picture.marks import Fill, Mark, Stroke
from circuitcheck.picture.pipes import HOP_PX, LINES, Gap, Place
from circuitcheck.picture.taken import Taken
from circuitcheck.report.flows import PipeFlow

LEAST_PX_S, MOST_PX_S, PX_S_A_M_S = 12.0, 60.0, 60.0
"""How fast arrowheads go: a metre a second is 60 px a second, held between these."""
END_PX = 7.0
"""What an arrowhead keeps clear of a pipe's ends."""
STEP_PX = 2.0
MOST_HEADS = 1500
"""So many at once; in a larger picture they stand farther apart."""


@dataclass(frozen=True, slots=True)
class Run:
    """One straight run of a pipe in which water moves: from where, which way (a unit step), how long, how
    far along the pipe it begins, the stretches of it that an arrowhead may stand on, and how fast it goes."""

    x: float
    y: float
    ux: float
    uy: float
    long: float
    begins: float
    free: tuple[tuple[float, float], ...]
    role: str
    px_s: float


def px_s(pipe: PipeFlow) -> float:
    """How fast the arrowheads of a pipe go over the sheet, below 0 from its second end to its first."""
    if pipe.is_still:
        return 0.0
    speed = PX_S_A_M_S * (pipe.velocity_m_s or 0.0)
    speed = min(MOST_PX_S, max(LEAST_PX_S, speed))
    return speed if pipe.flow_lpm > 0 else -speed


def runs(
    pipes: Mapping[str, PipeFlow],
    lines: Mapping[str, Sequence[Place]],
    service: Mapping[str, str],
    gaps: Mapping[str, Gap],
    hops: Mapping[str, Iterable[Place]],
    taken: Iterable[Rect],
) -> tuple[Run, ...]:
    """The runs of all pipes in which water moves."""
    # Of a large drawing there are thousands of both: each run is held only against what lies near it.
    boxes = Taken(taken)
    found: list[Run] = []
    for id, pipe in pipes.items():
        line = lines.get(id)
        if not line or pipe.is_still:
            continue
        kept = [grown(gaps[id].box, 2)] if gaps.get(id) is not None else []
        kept += [(x - HOP_PX, y - HOP_PX, x + HOP_PX, y + HOP_PX) for x, y in hops.get(id, ())]
        found += _of_pipe(line, boxes, kept, LINES[service.get(id, "unknown")].role, px_s(pipe))
    return tuple(found)


def _of_pipe(
    line: Sequence[Place], boxes: Taken, own: Sequence[Rect], role: str, speed: float
) -> Iterator[Run]:
    begins = 0.0
    last = len(line) - 2
    for number, (a, b) in enumerate(pairwise(line)):
        long = hypot(b[0] - a[0], b[1] - a[1])
        if long > 0:
            ux, uy = (b[0] - a[0]) / long, (b[1] - a[1]) / long
            low = END_PX if number == 0 else 0.0
            high = long - END_PX if number == last else long
            reach = _reach(a, b)
            near = boxes.met(reach)
            near += [box for box in own if overlap(box, reach)]
            free = tuple(_free(a, (ux, uy), low, high, near))
            if free:
                yield Run(*a, ux, uy, long, begins, free, role, speed)
        begins += long


def _free(
    a: Place, way: Place, low: float, high: float, kept: Sequence[Rect]
) -> Iterator[tuple[float, float]]:
    """The stretches of a run, from `low` to `high`, that no box lies on."""
    if not kept:
        if high > low:
            yield low, high
        return
    begun: float | None = None
    at = low
    while at <= high:
        x, y = a[0] + way[0] * at, a[1] + way[1] * at
        half = ARROW_LONG / 2 + 1
        is_free = not any(overlap((x - half, y - half, x + half, y + half), box) for box in kept)
        if is_free and begun is None:
            begun = at
        elif not is_free and begun is not None:
            yield begun, at - STEP_PX
            begun = None
        at += STEP_PX
    if begun is not None:
        yield begun, high


def _reach(a: Place, b: Place) -> Rect:
    return grown((min(a[0], b[0]), min(a[1], b[1]), max(a[0], b[0]), max(a[1], b[1])), ARROW_LONG)


def heads(run: Run, travelled_s: float, pitch: float) -> Iterator[Place]:
    """Where the arrowheads of a run stand once it has flowed for so many seconds, in px of the sheet."""
    first = (run.px_s * travelled_s - run.begins) % pitch
    at = first
    while at <= run.long:
        for low, high in run.free:
            if low <= at <= high:
                yield run.x + run.ux * at, run.y + run.uy * at
                break
        at += pitch


class Arrows:
    """Paints the arrowheads of runs, each way's picture made once for a zoom."""

    def __init__(self, palette: Palette) -> None:
        self._palette = palette
        self._runs: tuple[Run, ...] = ()
        self._pictures: dict[tuple[str, float, float, float], QPixmap] = {}
        self._scale = (0.0, 0.0)
        self._pitch = PITCH_PX

    @property
    def runs(self) -> tuple[Run, ...]:
        """What is shown."""
        return self._runs

    def show(self, runs: tuple[Run, ...], palette: Palette) -> None:
        """Show other runs, or other colours."""
        if palette is not self._palette:
            self._pictures.clear()
        self._runs, self._palette = runs, palette
        self._pitch = PITCH_PX
        while sum(run.long for run in runs) / self._pitch > MOST_HEADS:
            self._pitch *= 2

    def paint(
        self, painter: QPainter, place: QTransform, seen: QRectF, travelled_s: float, ratio: float
    ) -> None:
        """Paint them on a view: `place` takes the sheet to the view, `seen` is the view's box."""
        zoom, dx, dy = place.m11(), place.dx(), place.dy()
        if (zoom, ratio) != self._scale:
            self._scale = (zoom, ratio)
            self._pictures.clear()
        left, top, right, low = seen.left(), seen.top(), seen.right(), seen.bottom()
        for run in self._runs:
            x0, y0 = run.x * zoom + dx, run.y * zoom + dy
            x1, y1 = x0 + run.ux * run.long * zoom, y0 + run.uy * run.long * zoom
            if max(x0, x1) < left or min(x0, x1) > right or max(y0, y1) < top or min(y0, y1) > low:
                continue
            picture = self._picture(run, zoom, ratio)
            half = picture.width() / ratio / 2
            for x, y in heads(run, travelled_s, self._pitch):
                painter.drawPixmap(QPointF(x * zoom + dx - half, y * zoom + dy - half), picture)

    def _picture(self, run: Run, zoom: float, ratio: float) -> QPixmap:
        sign = 1.0 if run.px_s > 0 else -1.0
        ux, uy = sign * run.ux, sign * run.uy
        key = (run.role, ux, uy, zoom)
        if key not in self._pictures:
            self._pictures[key] = _head_picture(run.role, ux, uy, zoom * ratio, ratio, self._palette)
        return self._pictures[key]


def _head_picture(role: str, ux: float, uy: float, scale: float, ratio: float, palette: Palette) -> QPixmap:
    side = max(3, round((ARROW_LONG + 8) * scale))
    made = QPixmap(side, side)
    made.fill(Qt.GlobalColor.transparent)
    painter = QPainter(made)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(side / 2, side / 2)
    painter.scale(scale, scale)
    back = (-ux * ARROW_LONG / 2, -uy * ARROW_LONG / 2)
    head = paths.polygon(
        [
            (ux * ARROW_LONG / 2, uy * ARROW_LONG / 2),
            (back[0] - uy * ARROW_HALF, back[1] + ux * ARROW_HALF),
            (back[0] + uy * ARROW_HALF, back[1] - ux * ARROW_HALF),
        ]
    )
    marks: list[Mark] = [Stroke(head, "paper", 3.0), Fill(head, role)]
    paint(painter, marks, palette)
    painter.end()
    made.setDevicePixelRatio(ratio)
    return made
