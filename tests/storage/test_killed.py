"""Killed at any moment, an editing program loses no step older than a second, and never the saved file."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

TRIALS = 100


@pytest.mark.skipif(sys.platform == "win32", reason="the trials fork")
def test_a_killed_program_loses_at_most_a_second() -> None:
    done = subprocess.run(
        [sys.executable, "-m", "tests.storage.killing", str(TRIALS), "1"],
        capture_output=True,
        text=True,
        timeout=300,
        check=False,
    )
    found = json.loads(done.stdout)
    assert (found["trials"], found["wrong"], done.returncode) == (TRIALS, [], 0), done.stderr
