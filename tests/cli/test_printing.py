"""What is printed, where whoever reads it has seen enough."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from circuitcheck.shipped import data_path

SAMPLES = data_path("samples")
SOUND, DANGEROUS = (
    str(SAMPLES / f"{name}.wetcircuit") for name in ("cottage", "terrace-valve-before-vessel")
)


@pytest.mark.parametrize(
    ("arguments", "status"),
    [
        (["check", SOUND], 0),
        (["check", DANGEROUS], 1),
        (["sizes", SOUND], 0),
        (["parts", "--help"], 0),
        (["--help"], 0),
        (["check", str(SAMPLES), "--as", "json", "--jobs", "1"], 1),
    ],
)
def test_a_reader_that_goes_is_no_error_and_the_status_says_what_was_found(
    arguments: list[str], status: int, tmp_path: Path
) -> None:
    reading, writing = os.pipe()
    os.close(reading)
    done = subprocess.run(
        [sys.executable, "-m", "circuitcheck", *arguments],
        stdout=writing,
        stderr=subprocess.PIPE,
        text=True,
        check=False,
        env={**os.environ, "HOME": str(tmp_path), "XDG_CACHE_HOME": str(tmp_path)},
    )
    os.close(writing)
    assert "Error" not in done.stderr and "Traceback" not in done.stderr, done.stderr
    assert done.returncode == status
