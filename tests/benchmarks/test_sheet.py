"""The sheet beside a bare painter that strokes the same over the full view of 1920 x 1080, with growth.

Times are of the window's own thread, so that what else runs does not count.
Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_sheet.py
"""

from __future__ import annotations

import gc
import time
import tracemalloc
from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet import SheetView
from circuitcheck.rechecking import Rechecker
from tests.benchmarks.laid_out import houses
from tests.benchmarks.sheet_settings import (
    HELD,
    HIGH,
    WIDE,
    BarePainter,
    drawn_sheet,
    median_of,
    middle_of_held,
    spin,
)

SIZES = (100, 1_000, 10_000)
STEPS = 24
MOVES, MOVE_PX = 96, 4
"""A drag over 24 squares at half a metre a second of screen, of which a mouse tells 125 times a second."""


@pytest.fixture(params=SIZES)
def size(request: pytest.FixtureRequest) -> int:
    return int(request.param)


@pytest.fixture
def view(qapp: QApplication, size: int) -> Iterator[SheetView]:
    """A view of 1920 x 1080 on the plant, the part with four pipes in its middle, at 100 %."""
    made = SheetView()
    made.resize(WIDE, HIGH)
    made.show()
    drawing = drawn_sheet(size)
    made.edited.connect(lambda _, after: made.set_drawing(after))
    start = time.thread_time()
    made.set_drawing(drawing)
    print(
        f"\n{size:>6} parts  shown first: {(time.thread_time() - start) * 1e3:9.1f} ms of the window's thread"
    )
    wait_for_lines(made)
    made.zoom_reset()
    made.centerOn(middle_of_held(drawing))
    spin(0.5)
    gc.collect()
    yield made
    made.stop()
    made.close()
    made._content.close()


def wait_for_lines(view: SheetView) -> None:
    end = time.perf_counter() + 60
    while view.is_laying_out and time.perf_counter() < end:
        spin(0.02)


def tell(size: int, what: str, took_s: float, limit_s: float, aim: float) -> None:
    print(
        f"{size:>6} parts  {what:<44} {took_s * 1e3:8.2f} ms  {took_s / limit_s:6.2f} x bare painter"
        f" ({limit_s * 1e3:.2f} ms), aim {aim}"
    )


def mouse(view: SheetView, kind: QEvent.Type, place: QPointF) -> None:
    at = QPointF(view.mapFromScene(place))
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    button = none if kind is QEvent.Type.MouseMove else left
    held = none if kind is QEvent.Type.MouseButtonRelease else left
    viewport = view.viewport()
    event = QMouseEvent(kind, at, viewport.mapToGlobal(at), button, held, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(viewport, event)


def test_opening(size: int) -> None:
    """What the lines of all pipes take: of houses side by side, as laid out and with no corners set."""
    house = houses(size)
    freed = {id: replace(pipe, via=None) for id, pipe in house.pipes.items()}
    parts = len(house.components)
    for what, drawing in (("as laid out", house), ("no corners set", replace(house, pipes=freed))):
        gc.collect()
        start = time.thread_time()
        routes(drawing)
        took = time.thread_time() - start
        print(
            f"\n{parts:>6} parts  opening, lines of all pipes, {what:<16} {took * 1e3:9.1f} ms"
            f"  {took / parts * 1e6:6.1f} us a part",
            end="",
        )
    print()


def test_painting(view: SheetView, size: int) -> None:
    bare = BarePainter(view)
    limit = median_of(bare.paint)
    viewport = view.viewport()
    viewport.repaint()
    tell(size, f"full repaint, {len(bare)} things in view", median_of(viewport.repaint), limit, 1.8)

    place, steps, paints = middle_of_held(view._stage.drawing), [], []
    mouse(view, QEvent.Type.MouseButtonPress, place)
    for step in range(1, STEPS):
        start = time.thread_time()
        mouse(view, QEvent.Type.MouseMove, place + QPointF(16 * step, 16 * (step % 3)))
        middle = time.thread_time()
        QApplication.processEvents()
        steps.append(time.thread_time() - start)
        paints.append(time.thread_time() - middle)
    drag = sorted(steps)[len(steps) // 2]
    tell(size, "  of it the repaint of a step of a drag", sorted(paints)[len(paints) // 2], limit, 0.3)
    tell(size, "drag a part with four pipes, a square on", drag, limit, 0.3)
    start = time.thread_time()
    mouse(view, QEvent.Type.MouseButtonRelease, place + QPointF(16 * STEPS, 0))
    QApplication.processEvents()
    tell(size, "let it go: the move made", time.thread_time() - start, limit, 1)
    judged = judged_again_s(view._stage.drawing)
    tell(size, "drag a square on and judge again", drag + judged, limit, 0.3)
    gc.collect()
    by_hand = dragged_by_hand_s(view) + judged
    tell(size, "drag, let go, judge again: a mouse move", by_hand / MOVES, limit, 0.3)


def dragged_by_hand_s(view: SheetView) -> float:
    """What a whole drag takes at a pace of the hand: from pressing to letting go, `MOVES` moves of the mouse."""
    start, place = time.thread_time(), middle_of_held(view._stage.drawing)
    mouse(view, QEvent.Type.MouseButtonPress, place)
    for step in range(1, MOVES + 1):
        mouse(view, QEvent.Type.MouseMove, place - QPointF(MOVE_PX * step, step))
        QApplication.processEvents()
    mouse(view, QEvent.Type.MouseButtonRelease, place - QPointF(MOVE_PX * MOVES, MOVES))
    QApplication.processEvents()
    return time.thread_time() - start


def judged_again_s(drawing: Drawing) -> float:
    """What judging again takes after a move by one square, its lines known."""
    checker, lines = Rechecker(), routes(drawing)
    checker.analyse(drawing, lines)
    gc.collect()
    gc.freeze()
    times = []
    for turn in range(7):
        drawing = move(drawing, [HELD], (-1) ** turn, 0)
        lines = routes(drawing, lines)
        start = time.thread_time()
        checker.analyse(drawing, lines)
        times.append(time.thread_time() - start)
    gc.unfreeze()
    return sorted(times)[len(times) // 2]


def test_looking_from_afar(view: SheetView, size: int) -> None:
    limit = median_of(BarePainter(view).paint)
    for zoom in (0.3125, 0.1875, 0.0625):
        start = time.thread_time()
        view.zoom_to(zoom)
        QApplication.processEvents()
        tell(size, f"first look from {zoom:.2%}", time.thread_time() - start, limit, 10)
        spin(0.3)
        took = median_of(view.viewport().repaint)
        tell(size, f"overview at {zoom:.2%}, aim within 16 ms", took, limit, 16e-3 / limit)
    view.fit()
    spin(0.3)
    start = time.thread_time()
    view.zoom_to(1.0)
    QApplication.processEvents()
    tell(size, "zoom in to 100 %", time.thread_time() - start, limit, 10)
    start = time.thread_time()
    view._scroller.by(QPointF(40, 40).toPoint())
    QApplication.processEvents()
    tell(size, "scroll by 40 px", time.thread_time() - start, limit, 1)


def test_memory(qapp: QApplication, size: int) -> None:
    drawing = drawn_sheet(size)
    view = SheetView()
    view.resize(WIDE, HIGH)
    tracemalloc.start()
    view.set_drawing(drawing)
    wait_for_lines(view)
    held, _ = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    print(
        f"\n{size:>6} parts  memory of the sheet, Python's: {held / len(drawing.components) / 1024:8.2f} KiB a part"
    )
    view.stop()
    view.close()
    view._content.close()
