"""Routing: all pipes of a drawing, and those of one part that is moved, beside the time of a frame.

pytest -n 0 -s --benchmark-enable tests/benchmarks/test_routing.py
"""

from __future__ import annotations

import time
from dataclasses import replace
from statistics import median

import pytest

from circuitcheck.drawing.arranging import move
from circuitcheck.drawing.routing import routes
from tests.benchmarks.laid_out import houses

FRAME_S = 1 / 60
MOVES = [(dx, dy) for dx in (-3, -1, 1, 3) for dy in (-2, 0, 2)]


@pytest.mark.parametrize("size", [100, 1_000, 10_000])
def test_routing(size: int) -> None:
    house = houses(size)
    drawing = replace(house, pipes={id: replace(pipe, via=None) for id, pipe in house.pipes.items()})
    begun = time.process_time()
    before = routes(drawing)
    whole_s = time.process_time() - begun
    pipes = len(drawing.pipes)
    print(f"{size:>6} parts  all pipes {whole_s * 1e3:8.1f} ms  {whole_s / pipes * 1e6:6.0f} us a pipe")
    part = max(drawing.components, key=lambda id: len(drawing.pipes_of(id)))
    took = []
    for dx, dy in MOVES:
        moved = move(drawing, [part], dx, dy)
        begun = time.process_time()
        routes(moved, before)
        took.append(time.process_time() - begun)
    print(
        f"{size:>6} parts  a part with {len(drawing.pipes_of(part))} pipes moved: median "
        f"{median(took) / FRAME_S:5.2f} of a frame, most {max(took) / FRAME_S:5.2f}"
    )
