"""Texts of the window in the language of the person at it."""

from __future__ import annotations

from PySide6.QtCore import QCoreApplication

# One context for all: a term of the trade has one word in a language, wherever it stands.
CONTEXT = "circuitcheck"


def tr(text: str, /, **values: object) -> str:
    """The English text in the language chosen, its `{names}` filled in afterwards.

    The text is the key, so it is written out in full where it is used. A value is put in as it
    is, never read as a template: it may come from a file.
    """
    told = QCoreApplication.translate(CONTEXT, text)
    return told.format_map(values) if values else told


def tr_n(one: str, many: str, count: int, /, **values: object) -> str:
    """`one` where the count is 1, else `many`, both with `{count}` filled in."""
    return tr(one if count == 1 else many, count=count, **values)
