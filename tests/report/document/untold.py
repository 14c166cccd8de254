"""Finds what of a text is still English where German is asked for, whatever its drawing calls its things."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable, Iterator
from dataclasses import fields, is_dataclass
from enum import Enum
from functools import cache
from xml.etree import ElementTree

from circuitcheck.drawing.value import Drawing
from circuitcheck.picture.marks import TextMark
from circuitcheck.sheet.pictures import Picture
from circuitcheck.shipped import data_path

WORDS = re.compile(
    r"\b(the|of|is|and|with|not|from|to|by|no|its|are|shut|for|that|or|which|be|can|open|hot|cold|water|at|each|"
    r"given|known|usual|none|valve|pump|store|heating|flow|return|page|drawing|check|checks|found)\b",
    re.IGNORECASE,
)
"""Words that no German text has, but in the name of a thing."""
TITLES = ("Water Regulations", "Water Supply (Water Fittings) Regulations")
"""What is called so in every language."""
POINT = re.compile(
    r"\d\.\d+\s?(bar|k?Pa|l/min|l|k?Wh?|m/s|mm|m³|m²|m|°C|K|%|s|kg|kN)(?![\w/])|^[−+]?\d+\.\d+$"
)
"""A number in front of its unit, or alone, with the decimal sign of English."""
LEAST = 12
"""So many letters make an English text long enough to be looked for inside others."""

BETWEEN = "\n\x00\n"
"""Between two texts; no text and no name holds it."""


@cache
def translations() -> dict[str, str]:
    """Every text of the program, with its German."""
    messages = ElementTree.parse(data_path("editor") / "languages" / "de.ts").iterfind(".//message")
    return {each.findtext("source") or "": each.findtext("translation") or "" for each in messages}


@cache
def sources() -> tuple[str, ...]:
    """The English texts that have another German one and are long enough to be told from parts of words."""
    return tuple(
        source
        for source, told in translations().items()
        if source != told and len(source) >= LEAST and " " in source and "{" not in source
    )


def names_of(*drawings: Drawing) -> list[str]:
    """What a person called things, and the ids that stand for them; the longest first."""
    found = set[str]().union(*(_names_in(each) for each in drawings))
    return sorted((each for each in found if len(each) > 1), key=len, reverse=True)


def _names_in(drawing: Drawing) -> set[str]:
    found = {drawing.title, *drawing.components, *drawing.controls, *drawing.pipes}
    found |= {each.label for each in drawing.components.values()}
    found |= {each.label for each in drawing.controls.values()}
    for note in drawing.notes:
        found |= {
            note.text,
            note.author,
            *(text for each in note.replies for text in (each.text, each.author)),
        }
    for accepted in drawing.acceptances:
        found |= {accepted.reason, accepted.author}
    return found


def english_in(texts: Iterable[str], names: Collection[str]) -> list[str]:
    """Those of the texts that are English, in whole or in part."""
    unique = list(dict.fromkeys(texts))
    bare = dict(zip(unique, _without(unique, names), strict=True))
    whole = "\n".join(bare.values())
    left = [source for source in sources() if source in whole]
    return [
        text
        for text in unique
        if _is_known(text, names)
        or WORDS.search(bare[text])
        or POINT.search(bare[text])
        or any(source in bare[text] for source in left)
    ]


def _is_known(text: str, names: Collection[str]) -> bool:
    told = translations().get(text)
    return told is not None and told != text and text not in names and text not in translations().values()


def _without(texts: list[str], names: Collection[str]) -> list[str]:
    """The texts without names. All are gone through as one: there are a hundred names to a thousand texts."""
    whole = re.sub(r"\S+\.wetcircuit", "", BETWEEN.join(texts).replace("\u00a0", " "))
    for name in (*TITLES, *names):
        # At the beginning of a sentence it has a capital.
        whole = whole.replace(name, "").replace(name[:1].upper() + name[1:], "")
    return whole.split(BETWEEN) if texts else []


def texts_of(value: object) -> Iterator[str]:
    """Every text of a content, of blocks, and of the pictures in them."""
    if isinstance(value, Enum):
        return
    if isinstance(value, str):
        yield value
    elif isinstance(value, Picture):
        yield value.words
        yield from (mark.text for mark in value.marks if isinstance(mark, TextMark))
    elif isinstance(value, tuple):
        for each in value:
            yield from texts_of(each)
    elif is_dataclass(value) and not isinstance(value, type):
        for each in fields(value):
            if each.name not in ("tongue", "day", "key", "grade", "ids", "no_length", "no_bends"):
                yield from texts_of(getattr(value, each.name))
