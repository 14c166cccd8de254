"""Makes text from a file safe to print: no escapes, no invisible or direction-changing characters."""

from __future__ import annotations

import unicodedata

_UNSEEN = frozenset({"Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"})
_FORMULA = ("=", "+", "-", "@", "\t", "\r")


def plain(text: str) -> str:
    """The text with every control, format and direction character shown as its code, `<U+202E>`."""
    if text.isprintable():
        return text
    return "".join(f"<U+{ord(each):04X}>" if is_unseen(each) else each for each in text)


def is_unseen(character: str) -> bool:
    """Whether a character is none that is seen: control, format, direction, or no character at all."""
    return unicodedata.category(character) in _UNSEEN


def cell(text: str) -> str:
    """Text for a spreadsheet cell: one that would be read as a formula gets a leading quote."""
    safe = f"'{text}" if text.startswith(_FORMULA) else text
    return plain(safe)
