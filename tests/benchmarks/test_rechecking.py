"""Judging again after an edit that joins nothing anew, beside one pass of a compiled library.

10,000 parts on the sheet, their pipes' lines known. Run: pytest -n 0 -s tests/benchmarks
"""

from __future__ import annotations

import gc
import time
from collections.abc import Callable
from dataclasses import replace

import pytest

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.edits import relabel
from circuitcheck.drawing.filling_in import set_design, set_field
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.geometry import Point
from circuitcheck.rechecking import Rechecker
from tests.benchmarks.synthetic import plant
from tests.benchmarks.test_proofs import best_s, yardstick

FIRST, RUNG, A_ROW = 9, 4, 60
"""The parts before the first rung, the parts of a rung, and the rungs of a row."""

EDITS: tuple[tuple[str, Callable[[Drawing, int], Drawing]], ...] = (
    ("rename a tee", lambda drawing, turn: relabel(drawing, "c5009", f"Tee {turn}")),
    ("rename a radiator", lambda drawing, turn: relabel(drawing, "c5012", f"Radiator {turn}")),
    ("a note", lambda drawing, turn: set_field(drawing, "c5012", "note", f"Note {turn}")),
    ("a vessel's volume", lambda drawing, turn: set_field(drawing, "c2", "volume_l", 12.0 + turn)),
    ("the fill pressure", lambda drawing, turn: set_design(drawing, "fill_pressure_bar", 1 + turn / 10)),
    ("a radiator's output", lambda drawing, turn: set_field(drawing, "c5012", "output_w", 900.0 + turn)),
    ("move a radiator", lambda drawing, turn: move(drawing, ["c5012"], (-1) ** turn, 0)),
)


def laid_out(drawing: Drawing) -> Drawing:
    """The plant on the sheet: rung beside rung in rows that turn back at their ends, pipes straight."""
    parts = dict(drawing.components)
    for number, (id, part) in enumerate(drawing.components.items()):
        rung, step = divmod(number - FIRST, RUNG)
        row, column = divmod(max(rung, 0), A_ROW)
        across = column if row % 2 == 0 else A_ROW - 1 - column
        x, y = (
            (20 * across, 80 * row + (0, 60, 20, 40)[step]) if rung >= 0 else (-60 - 15 * number, 15 * number)
        )
        parts[id] = replace(part, at=Point(float(x), float(y)))
    pipes = {id: replace(pipe, via=()) for id, pipe in drawing.pipes.items()}
    return replace(drawing, components=parts, pipes=pipes)


@pytest.mark.parametrize("size", [10_000])
def test_rechecking(size: int) -> None:
    drawing = laid_out(plant(size))
    limit = best_s(yardstick(drawing), tries=20)
    checker = Rechecker()
    lines = routes(drawing)
    checker.analyse(drawing, lines)
    gc.collect()
    gc.freeze()
    for name, edit in EDITS:
        times = []
        for turn in range(7):
            drawing = edit(drawing, turn)
            lines = routes(drawing, lines)
            start = time.process_time()
            checker.analyse(drawing, lines)
            times.append(time.process_time() - start)
        took = min(times)
        print(f"{size:>6} components  {name:<42} {took * 1e3:9.2f} ms  {took / limit:8.2f} x yardstick")
    gc.unfreeze()
