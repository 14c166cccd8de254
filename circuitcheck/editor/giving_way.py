"""What is worked out beside the window gives way to it at once.

One thread at a time runs Python. A thread that works keeps at it for five milliseconds before it lets another one in,
and the window's lets go at every call into Qt that may take a while: while a large drawing was judged, a step of a
drag took ten times as long as alone, and the longest a fifth of a second.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from contextlib import contextmanager

GIVES_WAY_S = 0.0005
"""Measured in `tests/benchmarks/test_beside_work.py`: with less the window is no quicker."""


@contextmanager
def giving_way() -> Iterator[None]:
    """While this lasts, a thread lets another one in after so short a time."""
    before = sys.getswitchinterval()
    sys.setswitchinterval(GIVES_WAY_S)
    try:
        yield
    finally:
        sys.setswitchinterval(before)
