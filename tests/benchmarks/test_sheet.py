"""The sheet at 100, 1,000 and 10,000 parts, beside a bare painter: pytest -n 0 -s tests/benchmarks/test_sheet.py

The bare painter paints what lies in view (1920 x 1080, 100 %) straight from marks that are ready for Qt: no scene,
no items, no search. All figures are medians of one run, printed as ratios to it where that says something.
"""

from __future__ import annotations

import gc
import json
import statistics
import subprocess
import sys
import time
import tracemalloc
from collections.abc import Callable
from pathlib import Path

import pytest
from PySide6.QtCore import QEventLoop, QPoint, QRectF, QSettings, Qt, QTimer
from PySide6.QtGui import QImage, QPainter
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.sheet.painting import Prepared
from circuitcheck.editor.sheet.view import SheetView
from circuitcheck.editor.window import MainWindow
from circuitcheck.picture.labels import marks_of
from circuitcheck.picture.marks import SQUARE_PX, moved
from circuitcheck.picture.pipes import pipe_marks
from circuitcheck.picture.symbols import symbol
from circuitcheck.storage.reading import parse
from circuitcheck.storage.writing import dump
from tests.benchmarks.laid_out import houses

WIDE, HIGH = 1920, 1080
SIZES = (100, 1_000, 10_000)
FRAME_MS = 16.0


def median_ms(does: Callable[[], object], tries: int = 15) -> float:
    """The median time of several calls, in ms."""
    times = []
    for _ in range(tries):
        start = time.perf_counter()
        does()
        times.append((time.perf_counter() - start) * 1e3)
    return statistics.median(times)


def bare_ms(view: SheetView) -> float:
    """A bare painter over all that the view shows, in ms."""
    scale = view.transform().m11()
    box = view.mapToScene(view.viewport().rect()).boundingRect()
    parts, pipes = view._content.near(box)
    ready = []
    for pipe in pipes:
        seen = pipe.view
        ready.append(
            Prepared(
                pipe_marks(seen.line, seen.service, hops=seen.hops, gap=seen.gap, text=seen.text),
                seen.palette,
            )
        )
    for part in parts:
        shown, look = part.view, part.view.look
        ready.append(
            Prepared(
                moved(symbol(look.kind, look.states, look.turn, look.mirrored), *shown.at), shown.palette
            )
        )
        if shown.label is not None:
            ready.append(Prepared(marks_of(shown.label), shown.palette))
    image = QImage(WIDE, HIGH, QImage.Format.Format_ARGB32_Premultiplied)

    def paint() -> None:
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(QRectF(0, 0, WIDE, HIGH), Qt.GlobalColor.white)
        painter.scale(scale, scale)
        painter.translate(-box.topLeft())
        for each in ready:
            each.paint(painter)
        painter.end()

    paint()
    return median_ms(paint)


@pytest.mark.parametrize("parts", SIZES)
def test_painting_and_dragging(qtbot: QtBot, tmp_path: Path, parts: int) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    Appearances(settings).apply()
    drawing = houses(parts)
    view = SheetView()
    qtbot.addWidget(view)
    view.resize(WIDE, HIGH)
    view.show()
    start = time.perf_counter()
    view.set_drawing(drawing)
    laid = time.perf_counter() - start
    view.zoom_reset()
    middle = drawing.components["t_return_bypass-0"].at
    assert middle is not None
    view.centerOn(middle.x * SQUARE_PX, middle.y * SQUARE_PX)
    QTest.qWait(300)
    viewport = view.viewport()
    bare = bare_ms(view)
    full = median_ms(lambda: (viewport.update(), viewport.repaint()))
    print(f"\n{len(drawing.components)} parts, {len(drawing.pipes)} pipes: laid out in {laid * 1e3:.0f} ms")
    print(f"  bare painter {bare:.1f} ms   full repaint {full / bare:.2f} x (aim 1.8)")

    # A pump, two pipes of it going along and their neighbours' labels, pulled to and fro.
    at = drawing.components["pump-0"].at
    assert at is not None
    here = view.mapFromScene(at.x * SQUARE_PX, at.y * SQUARE_PX)
    QTest.mousePress(viewport, Qt.MouseButton.LeftButton, pos=here)
    places = [QPoint(here.x() + (-1) ** n * (16 + 16 * (n % 5)), here.y() + 16 * (n % 3)) for n in range(40)]
    steps = iter(places)

    def drag() -> None:
        QTest.mouseMove(viewport, next(steps))
        QApplication.processEvents(QEventLoop.ProcessEventsFlag.ExcludeUserInputEvents)

    dragged = median_ms(drag, 30)
    QTest.mouseRelease(viewport, Qt.MouseButton.LeftButton, pos=here)
    print(f"  a step of a drag with its repaint {dragged:.1f} ms, {dragged / bare:.2f} x (aim 0.3)")

    start = time.perf_counter()
    view.fit()
    QTest.qWait(1)
    first = (time.perf_counter() - start) * 1e3
    overview = median_ms(lambda: (viewport.update(), viewport.repaint()))
    print(f"  the whole in view {overview:.1f} ms, first {first:.0f} ms (aim {FRAME_MS:.0f})")


@pytest.mark.parametrize("parts", SIZES)
def test_opening_and_judging_hold_the_window_up(qtbot: QtBot, tmp_path: Path, parts: int) -> None:
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    path = tmp_path / "houses.wetcircuit"
    data = dump(houses(parts))
    path.write_bytes(data)
    document = Document()
    window = MainWindow(document, settings, Appearances(settings))
    window.resize(WIDE, HIGH)
    window.show()
    qtbot.waitExposed(window)
    gaps: list[float] = []
    last = [time.perf_counter()]

    def tick() -> None:
        now = time.perf_counter()
        gaps.append((now - last[0]) * 1e3)
        last[0] = now

    timer = QTimer(interval=2)
    timer.timeout.connect(tick)
    start = time.perf_counter()
    assert window.files.read(path)
    opened = time.perf_counter() - start
    last[0] = time.perf_counter()
    timer.start()
    qtbot.waitUntil(lambda: document.analysis is not None, timeout=120_000)
    judged = time.perf_counter() - start
    print(
        f"\n{parts} parts: window's own work to open {opened * 1e3:.0f} ms, judged after {judged * 1e3:.0f} ms"
    )
    print(f"  longest pause of the window while that ran {max(gaps, default=0):.0f} ms")
    gaps.clear()
    last[0] = time.perf_counter()
    from circuitcheck.drawing.arranging import move

    start = time.perf_counter()
    document.do("Move", move(document.drawing, ["pump-0"], 1, 0))
    step = (time.perf_counter() - start) * 1e3
    # A stale answer is never shown as current.
    assert document.analysis is None or document.analysis.drawing is document.drawing
    qtbot.waitUntil(lambda: document.analysis is not None, timeout=120_000)
    print(f"  a move: {step:.0f} ms in the window, longest pause after {max(gaps, default=0):.0f} ms")
    timer.stop()
    window.close()

    bare = median_ms(lambda: json.loads(data), 5)
    read = median_ms(lambda: parse(data, "x"), 5)
    gc.collect()
    tracemalloc.start()
    kept = parse(data, "x")
    held, _ = tracemalloc.get_traced_memory()
    tracemalloc.stop()
    print(
        f"  reading, checked for sense {read / bare:.2f} x bare json.loads (aim 1)   {held / len(kept.components):.0f} bytes a part"
    )


def test_the_window_comes_up(tmp_path: Path) -> None:
    """A window with a house, and an empty main window, each as a process of its own."""
    sample = Path(__file__).resolve().parents[2] / "samples" / "terrace-as-proposed.wetcircuit"
    empty = (
        "import sys\nfrom PySide6.QtWidgets import QApplication, QMainWindow\n"
        "a = QApplication(sys.argv)\nw = QMainWindow()\nw.resize(1440, 900)\nw.show()\na.processEvents()\n"
    )
    ours = (
        "import sys\nfrom pathlib import Path\nfrom PySide6.QtCore import QTimer\n"
        "from PySide6.QtWidgets import QApplication\nfrom circuitcheck.editor.main import run\n"
        "a = QApplication(sys.argv)\nQTimer.singleShot(0, lambda: QTimer.singleShot(0, a.closeAllWindows))\n"
        f"run([{str(sample)!r}])\n"
    )

    def took(code: str) -> float:
        return median_ms(
            lambda: subprocess.run([sys.executable, "-c", code], capture_output=True, check=True), 5
        )

    bare, house = took(empty), took(ours)
    print(f"\nwindow up with a house {house:.0f} ms, {house / bare:.2f} x an empty main window (aim 1.5)")
