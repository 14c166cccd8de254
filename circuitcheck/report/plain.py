"""Makes text from a file safe to print: no escapes, no invisible or direction-changing characters."""

from __future__ import annotations

from circuitcheck.storage.faults import is_unseen
from circuitcheck.storage.faults import visible as plain

__all__ = ["cell", "is_unseen", "plain"]

_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def cell(text: str) -> str:
    """Text for a spreadsheet cell: one that would be read as a formula gets a leading quote."""
    safe = f"'{text}" if text.startswith(_FORMULA) else text
    return plain(safe)
