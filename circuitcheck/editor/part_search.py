"""Finding a kind of part by what is typed: its name, the beginnings or initials of its words, what it does."""

from __future__ import annotations

from collections.abc import Sequence
from enum import IntEnum

from circuitcheck.editor.translating import tr
from circuitcheck.parts.catalogue import kinds
from circuitcheck.parts.kind import Kind


class Fit(IntEnum):
    """How well a name fits what is typed, the best first."""

    WHOLE = 0
    BEGINS = 1
    WORDS_BEGIN = 2
    INITIALS = 3
    HOLDS = 4
    DOES = 5
    LETTERS = 6


IN_NAME = Fit.HOLDS
FEWEST_LETTERS = 3
"""From so many on, letters in their order are looked for: `zvlv`."""


def found_by(typed: str, recent: Sequence[str] = ()) -> list[str]:
    """The kinds that fit what is typed, the likeliest first; all of them where nothing is typed.

    Where a name fits, those that only do such a thing are left out. `recent` are names of kinds placed
    lately, the last one first: of those that fit alike they come first.
    """
    text = " ".join(typed.casefold().replace("-", " ").split())
    fits = {kind.name: fit for kind in kinds().values() if (fit := _fit(kind, text)) is not None}
    if any(fit <= IN_NAME for fit in fits.values()):
        fits = {name: fit for name, fit in fits.items() if fit <= IN_NAME}
    lately = {name: place for place, name in enumerate(recent)}

    def order(name: str) -> tuple[int, int, str]:
        return fits[name], lately.get(name, len(lately)), tr(kinds()[name].title)

    return sorted(fits, key=order)


def _fit(kind: Kind, text: str) -> Fit | None:
    title = tr(kind.title).casefold().replace("-", " ")
    words, typed = title.split(), text.split()
    if title == text:
        return Fit.WHOLE
    if title.startswith(text):
        return Fit.BEGINS
    if all(any(word.startswith(each) for word in words) for each in typed):
        return Fit.WORDS_BEGIN
    if len(text) > 1 and "".join(word[0] for word in words).startswith(text):
        return Fit.INITIALS
    if all(each in title for each in typed):
        return Fit.HOLDS
    told = f"{title} {tr(kind.summary).casefold()}"
    if all(each in told for each in typed):
        return Fit.DOES
    if len(text) >= FEWEST_LETTERS and text[0] == title[0] and _in_order(text, title):
        return Fit.LETTERS
    return None


def _in_order(letters: str, text: str) -> bool:
    rest = iter(text)
    return all(letter in rest for letter in letters if letter != " ")
