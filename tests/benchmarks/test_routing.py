"""Routing the pipes of one moved part anew, and those of a whole sheet, beside one look at every number of it.

1,000 and 10,000 parts. Run: pytest -n 0 -s tests/benchmarks/test_routing.py
"""

from __future__ import annotations

import gc
import time
from dataclasses import replace
from itertools import cycle, islice

import pytest

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from tests.benchmarks.laid_out import houses
from tests.benchmarks.sheet_settings import HELD, best_of, sheet_drawing
from tests.drawing.laid import without_corners

FRAME_S = 16e-3
STEPS = 48
AROUND = ((1, 0), (0, 1), (1, 0), (0, -1), (-1, 0), (0, 1), (-1, 0), (0, -1))


def sheets(size: int) -> tuple[tuple[str, Drawing, str], ...]:
    """Sheets of so many parts, each with the part that is moved: it has four pipes or five."""
    side_by_side = without_corners(houses(size))
    four = next(id for id in side_by_side.components if len(side_by_side.pipes_of(id)) >= 4)
    return (("rows", without_corners(sheet_drawing(size)), HELD), ("houses", side_by_side, four))


def limit_s(drawing: Drawing) -> float:
    """The least that routing could do: to look at each pipe's ends and each part's box once."""

    def look() -> None:
        for pipe in drawing.pipes.values():
            for end in pipe.ends:
                drawing.end_at(end)
        for part in drawing.components.values():
            part.box()

    return best_of(look)


@pytest.mark.parametrize("size", [1_000, 10_000])
def test_routing(size: int) -> None:
    for name, drawing, held in sheets(size):
        limit = limit_s(drawing)
        gc.collect()
        whole = best_of(lambda drawing=drawing: routes(replace(drawing)), tries=3)  # type: ignore[misc]
        print(
            f"\n{size:>6} parts in {name:<8} all pipes {whole * 1e3:9.2f} ms  {whole / limit:8.2f} x one look"
        )
        lines, times = routes(drawing), []
        for dx, dy in islice(cycle(AROUND), STEPS):
            drawing = move(drawing, [held], dx, dy)
            start = time.thread_time()
            lines = routes(drawing, lines)
            times.append(time.thread_time() - start)
        times.sort()
        for what, took in (("median", times[len(times) // 2]), ("worst", times[-1])):
            print(
                f"{size:>6} parts in {name:<8} a part with its pipes, {what:<7} {took * 1e3:7.2f} ms"
                f"  {took / limit:6.2f} x one look, {took / FRAME_S:5.2f} of a frame"
            )
        if size == 1_000:
            assert times[len(times) * 9 // 10] < FRAME_S
