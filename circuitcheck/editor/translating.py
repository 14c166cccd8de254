"""Texts of the window in the language of the person at it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication, QLocale

from circuitcheck.told import Told, Tongue, in_tongue
from circuitcheck.tongues import piece_by_piece

# One context for all: a term of the trade has one word in a language, wherever it stands.
CONTEXT = "circuitcheck"


class _Window:
    """The tongue of the window: what is installed in the application, and its locale's decimal sign."""

    @property
    def decimal(self) -> str:
        return decimal_sign()

    def text(self, english: str) -> str:
        return _translated(english)

    def lower(self, text: str) -> str:
        # In German a noun keeps its capital wherever it stands, and labels begin with nouns.
        return text if is_translated() else text[:1].lower() + text[1:]


WINDOW: Tongue = _Window()
"""For what is set and measured by the rows below, as labels on the sheet are."""


def tr(text: str, /, **values: object) -> str:
    """The English text in the language chosen, its `{names}` filled in afterwards.

    The text is the key, so it is written out in full where it is used; or it is `Told` by a row below, and is
    told again. A value that is `Told` is told along; any other is put in as it is, never read as a template: it may
    come from a file.
    """
    found = text.told_in(WINDOW) if isinstance(text, Told) else _translated(text)
    return (
        found.format_map({name: in_tongue(each, WINDOW) for name, each in values.items()})
        if values
        else found
    )


def tr_n(one: str, many: str, count: int, /, **values: object) -> str:
    """`one` where the count is 1, else `many`, both with `{count}` filled in."""
    return tr(one if count == 1 else many, count=count, **values)


def later(text: str) -> str:
    """The text itself: marks one that is written in one place and translated in another, by `tr`."""
    return text


def lower(text: str) -> str:
    """A text in the language of the window as it stands in the middle of a sentence."""
    return WINDOW.lower(text)


def shown_told(text: str) -> str:
    """A text that may be the program's own or a person's: only what is `Told` is told again."""
    return text.told_in(WINDOW) if isinstance(text, Told) else text


def decimal_sign() -> str:
    """The place's decimal sign, for what is shown; either is taken for what is typed."""
    return "," if QLocale().decimalPoint() == "," else "."


def is_translated() -> bool:
    """Whether the window speaks another language than English."""
    return bool(_looked_up(IS_TRANSLATED) != IS_TRANSLATED)


IS_TRANSLATED = "(name of the language of this translation)"
"""A text that every translation has, so that the window can tell whether there is one."""


def _looked_up(text: str) -> str:
    return QCoreApplication.translate(CONTEXT, text) if text else ""


def _translated(text: str) -> str:
    found = _looked_up(text)
    if found != text or not is_translated():
        return found
    return piece_by_piece(text, _looked_up) or text


def of_error(error: Exception) -> str:
    """What an error says, as it was told: `str(error)` would be the English alone."""
    if isinstance(error, OSError) and isinstance(error.strerror, Told):
        return error.strerror
    return error.args[0] if error.args and isinstance(error.args[0], str) else str(error)
