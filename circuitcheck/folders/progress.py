"""How far a long run is, on a terminal."""

from __future__ import annotations

import sys
import time
from collections.abc import Iterable, Iterator
from typing import Final, TypeVar

_Each = TypeVar("_Each")
FROM: Final = 20
"""Runs of so many files or fewer are over before one could read it."""
EVERY_S: Final = 0.2


def with_progress(done: Iterable[_Each], total: int, before: int = 0) -> Iterator[_Each]:
    """Pass the answers on, and tell how many of `total` there are, `before` of them from an earlier run."""
    if total - before <= FROM or not sys.stderr.isatty():
        yield from done
        return
    start = last = time.monotonic()
    try:
        for number, each in enumerate(done, start=1):
            now = time.monotonic()
            if now - last >= EVERY_S:
                last = now
                sys.stderr.write(f"\r\x1b[K{words(number, before, total, now - start)}")
                sys.stderr.flush()
            yield each
    finally:
        sys.stderr.write("\r\x1b[K")
        sys.stderr.flush()


def words(number: int, before: int, total: int, seconds: float) -> str:
    """Such as `1,200 of 10,000 files, 14 a second, 10 min left`."""
    rate = number / max(seconds, 1e-9)
    left = (total - before - number) / rate
    for limit, one, name in ((90, 1, "s"), (90 * 60, 60, "min"), (float("inf"), 3600, "h")):
        if left < limit:
            told = f"{left / one:.0f} {name} left"
            break
    return f"{number + before:,} of {total:,} files, {rate:.3g} a second, {told}"
