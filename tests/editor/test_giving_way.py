"""The threads beside the window give way to it while the program runs, and no longer."""

from __future__ import annotations

import sys

import pytest

from circuitcheck.editor.giving_way import GIVES_WAY_S, giving_way


def test_while_it_lasts_and_no_longer() -> None:
    before = sys.getswitchinterval()
    with giving_way():
        assert sys.getswitchinterval() == pytest.approx(GIVES_WAY_S)
    assert sys.getswitchinterval() == before


def fails() -> None:
    with giving_way():
        raise KeyError


def test_nor_after_a_failure() -> None:
    before = sys.getswitchinterval()
    with pytest.raises(KeyError):
        fails()
    assert sys.getswitchinterval() == before
