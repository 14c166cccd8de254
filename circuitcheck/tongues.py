"""The languages that documents are told in, read from the files that translators edit. No Qt."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from functools import cache

from circuitcheck.shipped import data_path
from circuitcheck.told import ENGLISH, Tongue

SOURCE = "en"
"""The language that texts are written in; no file is needed for it."""
_DECIMALS = {"de": ","}
CODES = (SOURCE, *_DECIMALS)
_SEAMS = re.compile(r"(?=[ .,:;])")
_LETTERS = re.compile(r"[^\W\d_](?![^{]*\})")
"""A letter that is not inside the braces of a value."""


class _Translated:
    """A language by its texts, each under the English one."""

    def __init__(self, texts: Mapping[str, str], decimal: str) -> None:
        self._texts, self.decimal = texts, decimal

    def text(self, english: str) -> str:
        found = self._texts.get(english)
        return found or piece_by_piece(english, lambda piece: self._texts.get(piece, piece)) or english

    def lower(self, text: str) -> str:
        # In German a noun keeps its capital wherever it stands, and labels begin with nouns.
        return text


@cache
def tongue(code: str, decimal: str = "") -> Tongue:
    """The language of that code, one of `CODES`, with its own decimal sign unless another is given.

    English has the point always: so it is written.
    """
    return ENGLISH if code == SOURCE else _Translated(_texts(code), decimal or _DECIMALS[code])


@cache
def _texts(code: str) -> Mapping[str, str]:
    # Imported here: who asks for English, as most calls of the command line do, need not wait for it.
    from xml.etree import ElementTree

    messages = ElementTree.parse(data_path("editor") / "languages" / f"{code}.ts").iterfind(".//message")
    pairs = ((each.findtext("source"), each.findtext("translation")) for each in messages)
    return {source: told for source, told in pairs if source and told}


def piece_by_piece(text: str, looked_up: Callable[[str], str]) -> str:
    """A text that was put together where it was written, of pieces that are known one by one; empty where one is not.

    `looked_up` gives a known text in the language, and any other as it is. A piece is known without the space at
    its edges, and the longest is taken first.
    """
    bare = text.strip()
    if not _LETTERS.search(bare):
        return text
    before, after = text[: text.index(bare)], text[text.index(bare) + len(bare) :]
    told = looked_up(bare)
    if told != bare:
        return f"{before}{told}{after}"
    for seam in reversed(list(_SEAMS.finditer(bare))):
        first = bare[: seam.start()]
        told = looked_up(first)
        # What holds values and no letter needs no translation.
        is_known = told != first or (first and not _LETTERS.search(first))
        rest = piece_by_piece(bare[seam.start() :], looked_up) if is_known else ""
        if rest:
            return f"{before}{told}{rest}{after}"
    return ""
