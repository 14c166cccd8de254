"""The outline of large drawings: brought up to date while shut, and opened at a part in the middle, with growth.

Times are of the window's own thread, beside the reading of the same drawing by plain `json.loads`.
Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_outline.py
"""

from __future__ import annotations

import json
import time

import pytest
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.outline.panel import OutlinePanel
from circuitcheck.storage.writing import dump
from tests.benchmarks.laid_out import houses
from tests.benchmarks.sheet_settings import median_of


@pytest.mark.parametrize("size", [100, 1_000, 10_000])
def test_outline(qapp: QApplication, size: int) -> None:
    drawing = houses(size)
    saved = dump(drawing)
    limit_s = median_of(lambda: json.loads(saved))
    panel = OutlinePanel()
    panel.resize(360, 800)
    panel.show()
    start = time.thread_time()
    panel.show_drawing(drawing)
    panel.bring_up_to_date()
    shut_s = time.thread_time() - start
    middle = list(drawing.components)[len(drawing.components) // 2]
    start = time.thread_time()
    row = panel.model.outline.row_of(("thing", middle))
    assert row is not None
    panel.tree.setCurrentIndex(panel.model.index_of(row))
    opened_s = time.thread_time() - start
    for what, took_s in (("shut, brought up to date", shut_s), ("opened at a part", opened_s)):
        print(
            f"\n{size:>6} parts  {what:<26} {took_s * 1e3:8.2f} ms  {took_s / limit_s:6.2f} x json.loads",
            end="",
        )
    panel.close()
    panel.deleteLater()
