"""A house at work over the whole of a large screen: a frame beside painting the sheet once.

Times are of the window's own thread, so that what else runs does not count.
Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_operating.py
"""

from __future__ import annotations

import itertools
from collections.abc import Iterator

import pytest
from pytestqt.qtbot import QtBot

from circuitcheck.editor.operating.bar import Shown
from circuitcheck.editor.operating.live_view import LiveView
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.benchmarks.sheet_settings import HIGH, WIDE, median_of


@pytest.fixture
def view(qtbot: QtBot) -> Iterator[LiveView]:
    made = LiveView(closable=True)
    qtbot.addWidget(made)
    made.resize(WIDE, HIGH)
    made.show()
    qtbot.waitExposed(made)
    made.show_drawing(read(data_path("samples") / "guest-house.wetcircuit"), situation="both")
    qtbot.waitUntil(lambda: made.standing is not None and not made.is_busy, timeout=30_000)
    yield made
    made.close_down()


def tell(what: str, took_s: float, whole_s: float, aim: float) -> None:
    print(
        f"\n{what:<36} {took_s * 1e3:8.2f} ms  {took_s / whole_s:6.2f} x the sheet painted once, aim {aim:.2f}"
    )


def test_a_frame(view: LiveView) -> None:
    sheet, viewport = view.sheet, view.sheet.viewport()
    assert sheet.is_moving and view.player is not None
    whole_s = median_of(lambda: sheet._still_picture(viewport.devicePixelRatioF()))

    def frame() -> None:
        sheet._next_frame()
        viewport.repaint()

    seen = len(sheet.frames)
    frame_s = median_of(frame)
    assert len(sheet.frames) > seen
    tell("a frame, aim within 16 ms as well", frame_s, whole_s, 1 / 3)
    # While time runs pressures are written anew two or three times a second: placed, and the sheet painted.
    view.bar.shown.setCurrentIndex(list(Shown).index(Shown.PRESSURE))
    player, seconds = view.player, itertools.count(60, 24)

    def read_anew() -> None:
        player.chart.moved.emit(float(next(seconds)))
        viewport.repaint()

    tell("pressures written anew", median_of(read_anew), whole_s, 10)
