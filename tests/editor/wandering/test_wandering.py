"""The real window worked by chance, in a process of its own: it ends well, and says nothing on the way."""

from __future__ import annotations

import json
import sys
from pathlib import Path

import pytest

from tests.editor.own_process import ran

ACTS, MANY = 60, 2500
pytestmark = pytest.mark.skipif(sys.platform == "win32", reason="memory is not told that way there")


def wander(seed: int, acts: int, home: Path, timeout_s: float) -> None:
    folder = home / "files"
    folder.mkdir()
    call = ["-m", "tests.editor.wandering.program", str(seed), str(acts), str(folder)]
    done = ran(home, *call, timeout_s=timeout_s)
    assert (done.returncode, done.stderr) == (0, ""), done.stderr
    figures = json.loads(done.stdout.splitlines()[-1])
    assert figures["wrong"] == []
    assert figures["acts"] == acts
    # Nothing of the windows that were closed on purpose is offered to the next start, or still claimed.
    assert not list(home.rglob("*.recovery")) and not list(home.rglob("*.open"))


def test_some_acts(tmp_path: Path) -> None:
    wander(1, ACTS, tmp_path, 110)


@pytest.mark.evening
@pytest.mark.parametrize("seed", range(2, 5))
def test_many_acts(seed: int, tmp_path: Path) -> None:
    wander(seed, MANY, tmp_path, 3000)
