"""Numbers as they are typed and shown: a comma or a point as the decimal sign, never a group sign. No Qt."""

from __future__ import annotations

import re

from circuitcheck.told import worded

_TYPED = re.compile(r"[+-]?(?:[0-9]+[.,]?[0-9]*|[.,][0-9]+)")
_MINUS_SIGNS = str.maketrans({"−": "-", "–": "-"})
_LONGEST = 40


class NotANumberError(ValueError):
    """A text that is no number; the message says so in one plain sentence."""


def typed(text: str) -> float:
    """The number a person typed. Raises NotANumberError.

    A comma and a point both part the decimals, so that `1,5` and `1.5` are one and a half wherever
    the program runs; two of them, or a space between digits, are refused and never dropped.
    """
    stripped = text.strip().translate(_MINUS_SIGNS)
    if len(stripped) > _LONGEST or not _TYPED.fullmatch(stripped):
        raise NotANumberError(worded("“{text}” is not a number.", text=text.strip()[:_LONGEST]))
    number = float(stripped.replace(",", "."))
    return int(number) if number.is_integer() and not re.search("[.,]", stripped) else number
