"""Many files one after another or several at a time, with how far it is on a terminal."""

from __future__ import annotations

import sys
from collections.abc import Callable, Iterator, Sequence
from typing import TypeVar

_Task = TypeVar("_Task")
_Done = TypeVar("_Done")


def at_once(one: Callable[[_Task], _Done], tasks: Sequence[_Task], jobs: int) -> list[_Done]:
    """What becomes of each task, in their order, so many at a time."""
    if jobs == 1 or len(tasks) == 1:
        return list(_with_progress(map(one, tasks), len(tasks)))
    from concurrent.futures import ProcessPoolExecutor

    with ProcessPoolExecutor(min(jobs, len(tasks))) as pool:
        return list(_with_progress(pool.map(one, tasks, chunksize=4), len(tasks)))


def _with_progress(done: Iterator[_Done], total: int) -> Iterator[_Done]:
    """Pass the answers on; on a terminal, a long run shows how far it is."""
    shows = total > 20 and sys.stderr.isatty()
    for number, each in enumerate(done, start=1):
        if shows:
            sys.stderr.write(f"\r{number} of {total}")
            sys.stderr.flush()
        yield each
    if shows:
        sys.stderr.write("\r\x1b[K")
