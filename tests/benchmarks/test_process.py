"""The command line as a whole process, beside a bare interpreter: pytest -n 0 -s tests/benchmarks"""

from __future__ import annotations

import os
import subprocess
import sys
import time
from pathlib import Path
from statistics import median

import pytest

from circuitcheck.shipped import data_path

HOUSE = str(data_path("samples") / "terrace-as-proposed.wetcircuit")
BARE = ("-I", "-c", "pass")
TURNS = 7
COMMANDS = (
    ("check", HOUSE),
    ("sizes", HOUSE),
    ("explain",),
    ("parts", HOUSE),
    ("--help",),
)


def took_s(compiled: Path, *arguments: str) -> float:
    """What one process takes from its start to its end, in seconds."""
    # What is installed has been compiled, whatever is set where this runs.
    kept = {name: value for name, value in os.environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    surroundings = {**kept, "PYTHONPYCACHEPREFIX": str(compiled)}
    start = time.perf_counter()
    subprocess.run([sys.executable, *arguments], env=surroundings, check=True, capture_output=True)
    return time.perf_counter() - start


@pytest.mark.parametrize("command", COMMANDS, ids=lambda command: command[0])
def test_command(command: tuple[str, ...], tmp_path: Path) -> None:
    arguments = ("-m", "circuitcheck", *command)
    took_s(tmp_path, *arguments)  # the first one compiles what was changed
    bare, ours = [], []
    for _ in range(TURNS):
        bare.append(took_s(tmp_path, *BARE))
        ours.append(took_s(tmp_path, *arguments))
    ratio = median(one / other for one, other in zip(ours, bare, strict=True))
    print(f"\n{command[0]:8} {median(ours) * 1e3:6.0f} ms  {ratio:5.1f} x a bare interpreter")
