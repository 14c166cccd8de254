"""When Python looks for garbage: not while much is built."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def no_collection() -> Iterator[None]:
    """Meanwhile Python looks for no garbage: what is built lives until the end, and to look through it again
    and again takes a third of the time of judging a drawing, and half that of building a sheet. Threads may do this
    at the same time; the last that found it on puts it on again."""
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            gc.enable()


@contextmanager
def building_to_stay() -> Iterator[None]:
    """The same, and what was built goes to the oldest generation unlooked at. Nothing in the
    program is kept frozen for longer: to ask whether anything is would be to count it all."""
    with no_collection():
        try:
            yield
        finally:
            grow_old()


def grow_old() -> None:
    """Put all there is into the oldest generation, unlooked at."""
    gc.freeze()
    gc.unfreeze()
