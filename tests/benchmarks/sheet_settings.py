"""What the benchmarks of the sheet stand on: plants laid out with a separator of four pipes in their midst,
a bare painter that strokes what a view shows, and the time of one thread."""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import replace
from math import ceil, sqrt
from types import MappingProxyType

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.value import Component, Drawing, Joint, Pipe
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.sheet.painting import Prepared
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import component_kinds
from circuitcheck.picture.labels import marks_of
from circuitcheck.picture.marks import moved
from circuitcheck.picture.pipes import pipe_marks
from circuitcheck.picture.symbols import symbol
from tests.benchmarks.laid_out import HIGH as HOUSE_HIGH
from tests.benchmarks.laid_out import WIDE as HOUSE_WIDE
from tests.benchmarks.laid_out import houses
from tests.benchmarks.synthetic import plant
from tests.benchmarks.test_rechecking import laid_out

WIDE, HIGH = 1920, 1080
HELD = "held"
"""The part with four pipes that is dragged."""


def sheet_drawing(components: int) -> Drawing:
    """The plant on the sheet, and in the middle of it, between two rows, a separator with a cap to each port."""
    rows = max((components - 9) // 4 // 60, 1)
    x, y = 610.0 if components > 500 else 90.0, 80.0 * (rows // 2) + 70.0
    return _with_separator(laid_out(plant(components)), x, y)


def drawn_sheet(components: int) -> Drawing:
    """Houses side by side as they are drawn, and in the midst of one, where it has room, the separator.

    The view is measured on this sheet and not on the plant in rows: a view of 1920 x 1080 at 100 % holds
    about 180 parts and pipes of it, of the rows 71, of which most are slanting lines of one stroke. Nobody draws so
    thinly (a sample of 48 parts has over 100 in one view), and what everything is held against, painting the full
    view, would cost a quarter of what it does on the sheets that people look at.
    """
    house = houses(components)
    middle = len(house.components) // 48 // 2
    in_row = ceil(sqrt(len(house.components) // 48))
    x, y = HOUSE_WIDE * (middle % in_row) + 18.0, HOUSE_HIGH * (middle // in_row) + 44.0
    return _with_separator(house, x, y)


def _with_separator(drawing: Drawing, x: float, y: float) -> Drawing:
    """The drawing with a separator there, and a cap on a pipe before each of its ports."""
    parts, pipes = dict(drawing.components), dict(drawing.pipes)
    kind = component_kinds()["separator"]
    parts[HELD] = Component(HELD, kind, at=Point(x, y))
    for number, port in enumerate(kind.ports):
        cap = f"held-cap{number}"
        side = 1 if port.at[0] > 0 else -1
        parts[cap] = Component(cap, component_kinds()["cap"], at=Point(x + 8 * side, y + port.at[1]))
        ends = (Joint(HELD, port.name), Joint(cap, component_kinds()["cap"].ports[0].name))
        pipes[f"held-p{number}"] = Pipe(f"held-p{number}", ends)
    # As a file's maps and an edit's are: they may be looked at only.
    return replace(drawing, components=MappingProxyType(parts), pipes=MappingProxyType(pipes))


def middle_of_held(drawing: Drawing) -> QPointF:
    """Where the part that is dragged stands, in px of the sheet."""
    at = drawing.components[HELD].at
    assert at is not None
    return QPointF(at.x * 16, at.y * 16)


def best_of(work: Callable[[], object], tries: int = 7) -> float:
    """The least time of several tries, in seconds of this thread: other programs do not count."""
    times = []
    for _ in range(tries):
        start = time.thread_time()
        work()
        times.append(time.thread_time() - start)
    return min(times)


def median_of(work: Callable[[], object], tries: int = 9) -> float:
    """The median time of several tries, in seconds of this thread."""
    times = []
    for _ in range(tries):
        start = time.thread_time()
        work()
        times.append(time.thread_time() - start)
    return sorted(times)[len(times) // 2]


def spin(seconds: float) -> None:
    """Let the event loop run."""
    end = time.perf_counter() + seconds
    while time.perf_counter() < end:
        QApplication.processEvents()
        time.sleep(0.002)


class BarePainter:
    """Strokes, fills and texts of all that a view shows, made ready beforehand, on an image of its size.

    It is the limit: nothing is looked up, no item is walked, nothing is done in vain.
    """

    def __init__(self, view: SheetView) -> None:
        content, seen = view._content, view._scroller.seen()
        self._image = QImage(WIDE, HIGH, QImage.Format.Format_RGB32)
        self._place = view.viewportTransform()
        self._paper = view._theme["paper"]
        self._ready: list[Prepared] = []
        for pipe in content.pipes.values():
            if any(box.intersects(seen) for box in pipe.boxes):
                shown = pipe.view
                marks = pipe_marks(shown.line, shown.service, hops=shown.hops, gap=shown.gap, text=shown.text)
                self._ready.append(Prepared(marks, shown.palette))
        for part in content.parts.values():
            if any(box.intersects(seen) for box in part.boxes):
                view_of, look = part.view, part.view.look
                strokes = moved(symbol(look.kind, look.states, look.turn, look.mirrored), *view_of.at)
                label = () if view_of.label is None else marks_of(view_of.label)
                self._ready.append(Prepared((*strokes, *label), view_of.palette))
        self.paint()

    def __len__(self) -> int:
        return len(self._ready)

    def paint(self) -> None:
        """Paint it all."""
        painter = QPainter(self._image)
        painter.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        painter.fillRect(QRectF(0, 0, WIDE, HIGH), self._paper)
        painter.setTransform(self._place)
        for each in self._ready:
            each.paint(painter)
        painter.end()
