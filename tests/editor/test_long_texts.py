"""Texts as long as a file may hold, of every kind that is laid out in its own way: nothing holds the window up."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from tests.editor.long_texts import KINDS
from tests.editor.own_process import faults_said, ran

MOST_S = 20
"""Minutes were what it came to where it went wrong; a slow machine takes three seconds now."""


@pytest.mark.evening
@pytest.mark.parametrize("kind", KINDS)
def test_a_window_full_of_them_goes_on_answering(kind: str, tmp_path: Path) -> None:
    done = ran(tmp_path, "-m", "tests.editor.long_texts", kind, str(tmp_path), timeout_s=300)
    assert (done.returncode, faults_said(done)) == (0, [])
    tried = json.loads(done.stdout)
    print(f"{kind}: {tried['acts']} acts, at most {tried['worst_s']:.2f} s: {tried['worst']}")
    assert tried["worst_s"] < MOST_S
