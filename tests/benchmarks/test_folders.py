"""A folder of thousands of drawings: how the work grows with their number, and what the first process holds.

The drawings are the samples with other numbers and titles. Run: pytest -n 0 -s tests/benchmarks
"""

from __future__ import annotations

import json
import random
import subprocess
import sys
import time
from pathlib import Path
from typing import Any

from circuitcheck.shipped import data_path

FEW, MANY = 100, 3000
ROOT = Path(__file__).parents[2]
_MEASURED = (
    "import resource, sys; from circuitcheck.cli import run; run(sys.argv[1:]);"
    "print(resource.getrusage(resource.RUSAGE_SELF).ru_maxrss, file=sys.stderr)"
)


def varied(told: Any, chance: random.Random) -> Any:
    """The same drawing with other numbers in its data, one part in ten more or less."""
    if isinstance(told, dict):
        kept = {"wetcircuit", "at", "via", "ends", "id"}
        return {name: each if name in kept else varied(each, chance) for name, each in told.items()}
    if isinstance(told, list):
        return [varied(each, chance) for each in told]
    return round(told * chance.uniform(0.9, 1.1), 3) if isinstance(told, float) else told


def drawings(folder: Path, count: int) -> Path:
    """So many drawings, some hundreds in a folder."""
    samples = [json.loads(path.read_bytes()) for path in sorted(data_path("samples").glob("*.wetcircuit"))]
    chance = random.Random(7)
    for number in range(count):
        below = folder / f"{number // 500:02}"
        below.mkdir(parents=True, exist_ok=True)
        made = {**varied(samples[number % len(samples)], chance), "title": f"House {number}"}
        (below / f"{number:05}.wetcircuit").write_text(json.dumps(made))
    return folder


def checked(folder: Path, *more: str) -> tuple[float, int]:
    """Seconds, and the most the first process held, in the system's unit."""
    call = ["check", str(folder), "--as", "json", *more]
    start = time.perf_counter()
    done = subprocess.run([sys.executable, "-c", _MEASURED, *call], cwd=ROOT, capture_output=True, check=True)
    return time.perf_counter() - start, int(done.stderr.split()[-1])


def test_folders(tmp_path: Path) -> None:
    few, many = drawings(tmp_path / "few", FEW), drawings(tmp_path / "many", MANY)
    state = str(tmp_path / "state")
    few_s, few_held = checked(few)
    many_s, many_held = checked(many, "--resume", "--state", state)
    again_s, _ = checked(many, "--resume", "--state", state)
    # What starting costs is in both; a drawing more costs the difference.
    each_s = (many_s - few_s) / (MANY - FEW)
    growth = (many_s / MANY) / (few_s / FEW)
    print(f"\n{MANY} drawings: {1 / each_s:.0f} a second; seconds a drawing {growth:.2f} × those of {FEW}")
    print(
        f"memory of the first process {many_held / few_held:.2f} ×; taken over in {again_s / many_s:.3f} of the time"
    )
    assert growth < 1.5
    assert many_held < 1.5 * few_held
    assert again_s < many_s / 2
