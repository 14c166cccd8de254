"""Figures with their working, as the document tells them."""

from __future__ import annotations

from collections.abc import Iterable

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.figure import Figure, Input
from circuitcheck.report.document.content import Worked
from circuitcheck.report.sizes import moves_lines, shown
from circuitcheck.report.wording import lower, missing_words, upper

MOST_NAMED = 4


def worked(drawing: Drawing, figures: Iterable[Figure]) -> tuple[Worked, ...]:
    """Every figure, those too that could not be worked, each saying why."""
    return tuple(_worked(drawing, figure) for figure in figures)


def _worked(drawing: Drawing, figure: Figure) -> Worked:
    names = [upper(drawing.name(id)) for id in figure.subject]
    if len(names) > MOST_NAMED:
        names = [*names[:MOST_NAMED], f"{len(names) - MOST_NAMED} more"]
    return Worked(
        figure.title,
        ", ".join(names),
        tuple((upper(each.name), *_signed(shown(each))) for each in figure.results),
        tuple(figure.formula.splitlines()),
        tuple(_input(drawing, each) for each in figure.inputs),
        tuple(moves_lines(figure.moves)),
        figure.source,
        figure.limits,
        f"{upper(figure.refused.rstrip('.'))}." if figure.refused else "",
        tuple(missing_words(drawing, each) for each in figure.missing),
    )


def _input(drawing: Drawing, each: Input) -> tuple[str, str, str, str, str]:
    return each.symbol, *_signed(shown(each)), upper(each.name), origin_words(drawing, each.origin)


def _signed(value: tuple[str, str]) -> tuple[str, str]:
    return value[0].replace("-", "−") if value[0][:1] == "-" else value[0], value[1]


HOW = {
    "given": "given",
    "usual value": "usual value, not given",
    "measured": "measured on the sheet",
    "counted": "counted on the sheet",
}
"""How an origin that ends in `id.field` begins, and what is said of it."""


def origin_words(drawing: Drawing, origin: str) -> str:
    """Where a number came from, without the ids of the file where their field says it in words."""
    for start, words in HOW.items():
        name = origin.removeprefix(f"{start} ")
        if name != origin and " " not in name and "." in name:
            return f"{words}: {lower(missing_words(drawing, name))}"
    if origin.startswith("figure "):
        return f"from the figure {origin.removeprefix('figure ').replace('-', ' ')}"
    return origin
