"""When Python looks for garbage: not while much is built that stays."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager


@contextmanager
def building_to_stay() -> Iterator[None]:
    """While thousands of things are built that will stay Python looks for no garbage: there is none, and to
    look for it again and again takes as long as the building.

    What was built goes to the oldest generation unlooked at. Where the program keeps things frozen they
    stay so. Threads may do this at the same time; the last that found it on puts it on again.
    """
    was_on = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if was_on:
            if gc.get_freeze_count() == 0:
                gc.freeze()
                gc.unfreeze()
            gc.enable()
