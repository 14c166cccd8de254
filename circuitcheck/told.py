"""English texts that remember what they were made of, so that they can be told again in another language. No Qt.

Every row writes English, and files, documents and the command line hand English on. A sentence with values in
it could not be looked up in a dictionary afterwards; a `Told` is that English sentence, and keeps its template and
its values for whoever wants to tell it in the language of the person at the window.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Mapping
from types import MappingProxyType
from typing import Protocol


class Tongue(Protocol):
    """A language that texts are told in."""

    @property
    def decimal(self) -> str:
        """The sign before the decimals."""

    def text(self, english: str) -> str:
        """A whole text, or a template whose `{names}` are still to be filled in."""

    def lower(self, text: str) -> str:
        """A text of this language with its first letter as it stands in the middle of a sentence."""


class _English:
    """The language that texts are written in."""

    decimal = "."

    def text(self, english: str) -> str:
        return english

    def lower(self, text: str) -> str:
        return text[:1].lower() + text[1:]


ENGLISH: Tongue = _English()
Again = Callable[[Tongue], str]
_DAY = re.compile(r"(\d{4})-(\d\d)-(\d\d)")
THIN_SPACE = "\u202f"
"""What parts thousands where the comma parts the decimals: a point there is read as either."""


class Told(str):
    """An English text that can be told again in a tongue. Copied or put together with others it is plain English.

    `values` are those that were filled into its template, by their names.
    """

    __slots__ = ("_again", "values")
    _again: Again
    values: Mapping[str, object]

    def __new__(cls, english: str, again: Again, values: Mapping[str, object] = MappingProxyType({})) -> Told:
        """`english` as it stands; `again` makes it in a tongue."""
        made = super().__new__(cls, english)
        made._again = again
        made.values = values
        return made

    def told_in(self, tongue: Tongue) -> str:
        """The text in that tongue."""
        return self._again(tongue)

    def __reduce__(self) -> tuple[type[str], tuple[str]]:
        # What goes to another process or a file is the English.
        return str, (str(self),)


class _Number(float):
    """A number that a template formats with the decimal sign of a tongue, and a thin space between thousands."""

    decimal = "."

    def __format__(self, form: str) -> str:
        return super().__format__(form).replace(",", THIN_SPACE).replace(".", self.decimal)


class _Whole(int):
    """A whole number that a template formats with a thin space between thousands."""

    def __format__(self, form: str) -> str:
        return super().__format__(form).replace(",", THIN_SPACE)


def worded(template: str, /, **values: object) -> Told:
    """A template of the program's own with its values: `{names}` are filled in after the template is translated.

    A value that is itself `Told` is told along; any other is put in as it is, for it may come from a file.
    """
    return worded_of(template, values)


def worded_of(template: str, values: Mapping[str, object]) -> Told:
    """The same, of values in a mapping."""

    def again(tongue: Tongue) -> str:
        found = template.told_in(tongue) if isinstance(template, Told) else tongue.text(template)
        return found.format_map({name: in_tongue(each, tongue) for name, each in values.items()})

    return Told(template.format_map(values), again, values)


def worded_n(one: str, many: str, count: int, /, **values: object) -> Told:
    """`one` where the count is 1, else `many`, both with `{count}` filled in."""
    return worded_of(one if count == 1 else many, {"count": count, **values})


def a_word(text: str) -> Told:
    """A text of the program's own that stands by itself or as a value in another."""
    return text if isinstance(text, Told) else Told(text, lambda tongue: tongue.text(text))


def spoken(value: str) -> Told:
    """A value of the file in words: `hot_water` is `hot water`."""
    return a_word(value.replace("_", " "))


def told_number(text: str) -> Told:
    """A number as it was written, with a point."""
    return Told(text, lambda tongue: text.replace(".", tongue.decimal))


def dated(text: str) -> str:
    """A day as its language writes it, where the text is one such as `2026-11-25`; any other stays as it is."""
    found = _DAY.fullmatch(text)
    if found is None:
        return text
    year, month, day = found.groups()
    return worded("{year}-{month}-{day}", year=year, month=month, day=day)


def listed(texts: Iterable[str]) -> str:
    """`a`, `a and b`, or `a, b and c`."""
    each = list(texts)
    if len(each) < 2:
        return each[0] if each else ""
    *most, last = each
    return worded("{these} and {last}", these=strung(most), last=last)


def strung(texts: Iterable[str], between: str = ", ") -> str:
    """Texts one after another, with the same between all of them."""
    each = list(texts)
    if len(each) == 1:
        return each[0]
    return Told(between.join(each), lambda tongue: between.join(str(in_tongue(one, tongue)) for one in each))


def upper(text: str) -> str:
    """The text with its first letter upper-case: the beginning of a sentence."""
    if not isinstance(text, Told):
        return text[:1].upper() + text[1:]
    return Told(text[:1].upper() + text[1:], lambda tongue: upper(text.told_in(tongue)))


def lower(text: str) -> str:
    """The text with its first letter lower-case: for the middle of a sentence."""
    if not isinstance(text, Told):
        return text[:1].lower() + text[1:]
    return Told(text[:1].lower() + text[1:], lambda tongue: tongue.lower(text.told_in(tongue)))


def ended(text: str) -> str:
    """The text with one full stop at its end; empty where it is."""
    if not text:
        return ""
    if not isinstance(text, Told):
        return f"{text.rstrip('.')}."
    return Told(f"{text.rstrip('.')}.", lambda tongue: f"{text.told_in(tongue).rstrip('.')}.")


def tell(text: str, tongue: Tongue) -> str:
    """The text in that tongue; one that is no `Told` stays as it is, for it may come from a person or a file."""
    return text.told_in(tongue) if isinstance(text, Told) and tongue is not ENGLISH else text


def in_tongue(value: object, tongue: Tongue) -> object:
    """A value as it is put into a sentence of that tongue."""
    if isinstance(value, Told):
        return value.told_in(tongue)
    if isinstance(value, Exception):
        return in_tongue(value.args[0], tongue) if value.args else ""
    # The sign is asked only for a number: the window's tongue asks Qt for it each time.
    if isinstance(value, bool) or not isinstance(value, int | float) or tongue.decimal == ".":
        return value
    if isinstance(value, int):
        return _Whole(value)
    number = _Number(value)
    number.decimal = tongue.decimal
    return number
