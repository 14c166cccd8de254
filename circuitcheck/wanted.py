"""Whether what takes a while is still wanted: asked by the work itself, now and then.

What takes long lies many calls below whoever knows that it is wanted, and knows nothing of threads or windows.
So the question is not handed down from call to call: it belongs to the thread that works.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from threading import Lock

ASKED_EVERY_S = 0.02
"""How often whoever waits for another thread asks."""

_IS_WANTED: ContextVar[Callable[[], bool] | None] = ContextVar("is_wanted", default=None)


class NoLongerWantedError(BaseException):
    """Ends work that nobody wants any more. It is no Exception, so that nobody takes it for a failure of the
    program and makes an answer of it."""


@contextmanager
def while_wanted(is_wanted: Callable[[], bool]) -> Iterator[None]:
    """What is done meanwhile in this thread goes on only as long as this is true; it is asked in this thread."""
    token = _IS_WANTED.set(is_wanted)
    try:
        yield
    finally:
        _IS_WANTED.reset(token)


def go_on() -> None:
    """Raises NoLongerWantedError where nobody wants what this thread does. Where nobody asked for it to be
    stoppable it goes on. Call it where nothing is half done that stays."""
    is_wanted = _IS_WANTED.get()
    if is_wanted is not None and not is_wanted():
        raise NoLongerWantedError


@contextmanager
def holding(lock: Lock) -> Iterator[None]:
    """Wait for a lock as long as that is wanted, and hold it meanwhile."""
    while not lock.acquire(timeout=ASKED_EVERY_S):
        go_on()
    try:
        yield
    finally:
        lock.release()
