"""The command line as a whole process, beside a bare interpreter: pytest -n 0 -s tests/benchmarks"""

from __future__ import annotations

import subprocess
import sys
import time

from circuitcheck.shipped import data_path


def best_s(arguments: list[str], tries: int = 7) -> float:
    """The least time of several runs of a process, in seconds."""
    times = []
    for _ in range(tries):
        start = time.perf_counter()
        subprocess.run(arguments, check=False, capture_output=True)
        times.append(time.perf_counter() - start)
    return min(times)


def test_check_of_one_sample() -> None:
    bare = best_s([sys.executable, "-I", "-c", "pass"])
    sample = sorted(data_path("samples").glob("*.wetcircuit"))[0]
    took = best_s([sys.executable, "-m", "circuitcheck", "check", str(sample)])
    ratio = took / bare
    print(f"check {sample.name}: {took * 1e3:.0f} ms, {ratio:.1f} x a bare interpreter")
