"""Draws heating and hot-water circuits, and proves them safe or shows what makes them unsafe.

The public interface: `read`, `write`, `analyse` and `DrawingError`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from circuitcheck.analysis import analyse
    from circuitcheck.storage.reading import DrawingError, read
    from circuitcheck.storage.writing import write

__all__ = ["DrawingError", "analyse", "read", "write"]

_HOMES = {
    "DrawingError": "circuitcheck.storage.reading",
    "analyse": "circuitcheck.analysis",
    "read": "circuitcheck.storage.reading",
    "write": "circuitcheck.storage.writing",
}


def __getattr__(name: str) -> Any:
    # Importing the package costs next to nothing; what is asked for is fetched when it is.
    home = _HOMES.get(name)
    if home is None:
        raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
    from importlib import import_module

    return getattr(import_module(home), name)
