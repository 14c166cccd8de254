"""Makes text from a file safe to print: no escapes, no invisible or direction-changing characters."""

from __future__ import annotations

import re

from circuitcheck.storage.faults import is_unseen
from circuitcheck.storage.faults import visible as plain

__all__ = ["bound", "cell", "is_unseen", "plain"]

_BEFORE_UNIT = re.compile(
    r"(?<=\d) (?=(?:bar|kPa|Pa|kWh|kW|W|l|l/min|mm|m|m/s|m³/h|m²|kg|K|°C|%|s|min)(?![\w/³²]))"
)
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def bound(text: str) -> str:
    """The text with each number bound to the unit behind it, so that no line ends between them."""
    return _BEFORE_UNIT.sub("\u00a0", text)


def cell(text: str) -> str:
    """Text for a spreadsheet cell: one that would be read as a formula gets a leading quote."""
    safe = f"'{text}" if text.startswith(_FORMULA) else text
    return plain(safe)
