"""A file opened and checked for sense, beside the plain loading of its JSON, with growth.

Run: pytest -n 0 -q -s --benchmark-enable tests/benchmarks/test_reading.py
"""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from circuitcheck.storage.reading import LARGE, parse, parse_patiently, read
from circuitcheck.storage.writing import write
from tests.benchmarks.laid_out import houses
from tests.benchmarks.test_proofs import best_s

SIZES = (100, 1_000, 10_000)


@pytest.mark.parametrize("size", SIZES)
def test_opening_a_file(size: int, tmp_path: Path) -> None:
    file = tmp_path / "houses.wetcircuit"
    drawing = houses(size)
    write(drawing, file)
    # What is loaded once is loaded: a process goes the quick way once it has read as much as pays for that.
    data = file.read_bytes()
    for _ in range(1 + LARGE // len(data)):
        assert parse(data, "houses.wetcircuit") == drawing
    limit = best_s(lambda: json.loads(file.read_bytes()))
    took = best_s(lambda: read(file))
    print(
        f"\n{len(drawing.components):>6} parts, {file.stat().st_size / 1e6:5.2f} MB  opened and checked for sense"
        f" {took * 1e3:8.2f} ms  {took / limit:5.2f} x json.loads ({limit * 1e3:.2f} ms), aim 1"
    )
    if len(data) < LARGE:
        alone = best_s(lambda: parse_patiently(data, "houses.wetcircuit"))
        print(
            f"{'':>6} among the first files of a process {alone * 1e3:8.2f} ms  {alone / limit:5.2f} x json.loads"
        )
