"""Figures with their working, as the document tells them."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import figures
from circuitcheck.figures.figure import Figure, Input, Result
from circuitcheck.report.document.content import Worked
from circuitcheck.report.sizes import moves_lines, shown
from circuitcheck.report.wording import fields_of, lower, missing_words, spoken, upper
from circuitcheck.rules.book import book
from circuitcheck.told import Told, a_word, ended, strung, told_number, worded

MOST_NAMED = 4


def worked(drawing: Drawing, found: Iterable[Figure]) -> tuple[Worked, ...]:
    """Every figure, those too that could not be worked, each saying why."""
    return tuple(_worked(drawing, figure) for figure in found)


def _worked(drawing: Drawing, figure: Figure) -> Worked:
    names = [upper(_name(drawing, id)) for id in figure.subject]
    if len(names) > MOST_NAMED:
        names = [*names[:MOST_NAMED], worded("{count} more", count=len(names) - MOST_NAMED)]
    return Worked(
        a_word(figure.title),
        strung(names),
        tuple((upper(a_word(each.name)), *_written(each)) for each in figure.results),
        a_word(figure.formula) if figure.formula else "",
        tuple(_input(drawing, each) for each in figure.inputs),
        tuple(moves_lines(figure.moves, partial(_moved_field, drawing))),
        a_word(figure.source) if figure.source else "",
        a_word(figure.limits) if figure.limits else "",
        upper(ended(a_word(figure.refused))) if figure.refused else "",
        tuple(missing_words(drawing, each) for each in figure.missing),
    )


def _name(drawing: Drawing, id: str) -> str:
    """What a subject is called; in the window a figure may be of the drawing before, with what is gone since."""
    try:
        return drawing.name(id)
    except KeyError:
        return id


def _input(drawing: Drawing, each: Input) -> tuple[str, str, str, str, str]:
    return each.symbol, *_written(each), upper(a_word(each.name)), origin_words(drawing, each.origin)


def _written(each: Input | Result) -> tuple[str, str]:
    """A value and its unit. A text may name what a person called so; what the program says is told."""
    value, unit = shown(each)
    if isinstance(each.value, str):
        return value, a_word(unit) if unit else ""
    signed = value.replace("-", "−") if value[:1] == "-" else value
    return told_number(signed) if value[-1:].isdigit() else a_word(value), a_word(unit) if unit else ""


def _moved_field(drawing: Drawing, name: str) -> str:
    """A default by the names of part and field; one that is no field of the drawing as it is called."""
    id, _, field = name.rpartition(".")
    try:
        is_field = any(each.name == field for each in fields_of(drawing, id))
    except KeyError:
        is_field = False
    return missing_words(drawing, name) if is_field else upper(a_word(name))


HOW = {
    "given": a_word("given"),
    "usual value": a_word("usual value, not given"),
    "measured": a_word("measured on the sheet"),
    "counted": a_word("counted on the sheet"),
}
"""How an origin that ends in `id.field` begins, and what is said of it."""


def origin_words(drawing: Drawing, origin: str) -> str:
    """Where a number came from, without the ids of the file where their field says it in words."""
    if isinstance(origin, Told):
        return origin
    return strung((_origin_words(drawing, each) for each in origin.split("; ")), "; ")


def _origin_words(drawing: Drawing, origin: str) -> str:
    for start, words in HOW.items():
        name = origin.removeprefix(f"{start} ")
        if name != origin and " " not in name and "." in name:
            return worded("{how}: {field}", how=words, field=lower(missing_words(drawing, name)))
    if origin.startswith("figure "):
        name = origin.removeprefix("figure ")
        known = figures().get(name)
        title = lower(a_word(known.title)) if known else name.replace("-", " ")
        return worded("from the figure {title}", title=title)
    if origin.startswith("usual value, "):
        return worded("usual value, {source}", source=a_word(origin.removeprefix("usual value, ")))
    if origin.startswith("rule "):
        title, _, name = origin.removeprefix("rule ").partition(": ")
        source = a_word(book(title).limit(name).source)
        return worded("rule book {book}: {source}", book=upper(spoken(title)), source=source)
    return a_word(origin) if origin else ""
