"""Lettering: how wide a text is in the font that ships with the program, worked from the font's tables."""

from __future__ import annotations

import struct
from bisect import bisect_left
from functools import cache, lru_cache

from circuitcheck.shipped import data_path

FACES = {400: "Regular", 500: "Medium", 600: "SemiBold", 700: "Bold"}
"""The weights that ship, and the ending of each one's file name."""

ELLIPSIS = "…"


@lru_cache(maxsize=4096)
def width(text: str, size: float, weight: int = 400) -> float:
    """How wide a line of text is, in px, at a size in px; without kerning, so it errs to the wide side."""
    face = _face(weight)
    return size * sum(face.advance(ord(letter)) for letter in text)


def fitted(text: str, size: float, weight: int, most: float) -> str:
    """The text, cut and ended with an ellipsis where it is wider than `most` px."""
    if width(text, size, weight) <= most:
        return text
    room = most - width(ELLIPSIS, size, weight)
    kept = 0
    while kept < len(text) and (room := room - width(text[kept], size, weight)) >= 0:
        kept += 1
    return text[:kept].rstrip() + ELLIPSIS


def wrapped(text: str, size: float, weight: int, most: float) -> list[str]:
    """The text in lines of whole words, each at most `most` px wide; a longer word is cut short."""
    lines: list[str] = []
    for word in text.split():
        longer = f"{lines[-1]} {word}" if lines else word
        if lines and width(longer, size, weight) <= most:
            lines[-1] = longer
        else:
            lines.append(fitted(word, size, weight, most))
    return lines


class _Face:
    """The advance of every letter of one font file, in parts of the letter's height (em)."""

    def __init__(self, data: bytes) -> None:
        tables = {}
        for index in range(struct.unpack_from(">H", data, 4)[0]):
            tag, _, offset, length = struct.unpack_from(">4sIII", data, 12 + 16 * index)
            tables[tag] = data[offset : offset + length]
        (self._em,) = struct.unpack_from(">H", tables[b"head"], 18)
        (count,) = struct.unpack_from(">H", tables[b"hhea"], 34)
        self._advances = struct.unpack_from(">" + "Hh" * count, tables[b"hmtx"])[::2]
        self._map = _letters(tables[b"cmap"])
        self._known: dict[int, float] = {}

    def advance(self, letter: int) -> float:
        """The advance of a letter by its code point; of the empty box where the font lacks it."""
        found = self._known.get(letter)
        if found is None:
            glyph = self._map.glyph(letter)
            found = self._known[letter] = float(
                self._advances[min(glyph, len(self._advances) - 1)] / self._em
            )
        return found


class _Letters:
    """A character map of format 4: which glyph stands for which code point up to 65535."""

    def __init__(self, table: bytes) -> None:
        twice = struct.unpack_from(">H", table, 6)[0]
        count = twice // 2
        self._ends = struct.unpack_from(f">{count}H", table, 14)
        self._starts = struct.unpack_from(f">{count}H", table, 16 + twice)
        self._deltas = struct.unpack_from(f">{count}H", table, 16 + 2 * twice)
        self._offsets_at = 16 + 3 * twice
        self._offsets = struct.unpack_from(f">{count}H", table, self._offsets_at)
        self._table = table

    def glyph(self, letter: int) -> int:
        """The glyph's number; 0 where there is none."""
        if letter > 0xFFFF:
            return 0
        index = bisect_left(self._ends, letter)
        if index == len(self._ends) or self._starts[index] > letter:
            return 0
        if self._offsets[index] == 0:
            return int(letter + self._deltas[index]) & 0xFFFF
        at = self._offsets_at + 2 * index + self._offsets[index] + 2 * (letter - self._starts[index])
        (glyph,) = struct.unpack_from(">H", self._table, at)
        return int(glyph + self._deltas[index]) & 0xFFFF if glyph else 0


def _letters(cmap: bytes) -> _Letters:
    for index in range(struct.unpack_from(">H", cmap, 2)[0]):
        _, _, offset = struct.unpack_from(">HHI", cmap, 4 + 8 * index)
        (form,) = struct.unpack_from(">H", cmap, offset)
        if form == 4:
            return _Letters(cmap[offset:])
    raise ValueError("the font has no character map of format 4")


@cache
def _face(weight: int) -> _Face:
    return _Face((data_path("fonts") / f"SourceSans3-{FACES[weight]}.ttf").read_bytes())
