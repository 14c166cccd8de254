"""What is tried every time, and what only of an evening."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

import pytest

if TYPE_CHECKING:
    from _pytest.mark import ParameterSet

EACH = 5
"""Every so manieth is tried every time."""


def each_fifth(names: Iterable[str]) -> list[ParameterSet]:
    """All of these to be tried, but only each fifth every time: the rest with `--evening`."""
    return [
        pytest.param(name, marks=() if place % EACH == 0 else pytest.mark.evening)
        for place, name in enumerate(names)
    ]
