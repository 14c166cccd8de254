"""Texts of a file may be very long; a label or a tooltip shows how they begin.

Qt sets all of a label's text anew for every size that it is asked for: with a note of fifty thousand lines, which a
file may hold, a change of colours held the window up for minutes.
"""

from __future__ import annotations

import re

MOST_LINES, MOST_LETTERS = 40, 2_000
LONG_WORD = 1_000
"""Letters without a blank: nobody reads them as a word."""
_LONG_WORD = re.compile(rf"[^ \n]{{{LONG_WORD + 1}}}")
"""Only what Qt breaks at for sure ends a word: not a blank that does not break, nor all that ends a line to Python."""


def is_long(text: str) -> bool:
    """Whether a label would not show all of it."""
    return len(text) > MOST_LETTERS or len(text.splitlines()) > MOST_LINES


def in_short(text: str) -> str:
    """The text as it is, or how it begins where it is long."""
    if not is_long(text):
        return text
    return "\n".join(text[:MOST_LETTERS].splitlines()[:MOST_LINES]).rstrip() + "…"


def has_long_word(text: str) -> bool:
    """Whether a word in it is so long that breaking the text at words serves nobody.

    Qt looks for where such a word ends at each of its lines: of a hundred thousand letters that takes seconds, again
    at each change of the width.
    """
    return _LONG_WORD.search(text) is not None
