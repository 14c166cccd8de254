"""The worked figures of one drawing as text, JSON or a table, each with all that it was worked from."""

from __future__ import annotations

import csv
import io
import json
import textwrap
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field
from math import isfinite
from pathlib import Path
from typing import Any

from circuitcheck.drawing.value import Drawing
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.figure import Figure, Input, Moves, Result
from circuitcheck.figures.plant import Plant
from circuitcheck.finding import NameTuple
from circuitcheck.report.as_json import escaped
from circuitcheck.report.plain import cell, plain
from circuitcheck.shipped import version
from circuitcheck.storage.reading import DrawingError, read
from circuitcheck.told import Told, a_word, strung, worded, worded_of

WIDTH = 96
COLUMNS = (
    "file",
    "figure",
    "title",
    "subject",
    "row",
    "symbol",
    "name",
    "value",
    "unit",
    "origin",
    "formula",
    "source",
    "limits",
)


@dataclass(frozen=True, slots=True)
class Sized:
    """One drawing's figures. `error` holds what is wrong with the file; then there are none.

    `names` gives what each subject is called; `taken` the defaults that the figures rest on.
    """

    file: str
    title: str = ""
    error: tuple[str, ...] = ()
    rule_book: str | None = None
    figures: tuple[Figure, ...] = ()
    names: Mapping[str, str] = field(default_factory=dict)
    taken: NameTuple = ()

    @property
    def lacking(self) -> int:
        """How many figures were refused because numbers are missing."""
        return sum(each.lacks_numbers for each in self.figures)

    @property
    def refused(self) -> int:
        """How many figures were refused for another reason."""
        return sum(
            bool(each.refused) and not each.lacks_numbers and not each.crashed for each in self.figures
        )

    @property
    def crashed(self) -> int:
        """How many figures failed inside the program."""
        return sum(each.crashed for each in self.figures)


def size_file(path: Path) -> Sized:
    """Read one file and work its figures. Never raises for what the file holds."""
    try:
        drawing = read(path)
    except DrawingError as error:
        return Sized(str(path), error=tuple(fault.message for fault in error.faults))
    except OSError as error:
        return Sized(str(path), error=(f"cannot be read: {error.strerror or error}",))
    return sized(str(path), drawing)


def sized(file: str, drawing: Drawing) -> Sized:
    """A drawing's figures as the outputs need them."""
    with Plant(drawing) as plant:
        figures = all_figures(plant)
        names = {id: drawing.name(id) for figure in figures for id in figure.subject}
        return Sized(file, drawing.title, (), plant.rules.name, figures, names, plant.taken)


def as_text(sized: Sized) -> str:
    """Every figure with its working, for a person."""
    title = f"  {sized.title}" if sized.title else ""
    lines = [plain(f"{sized.file}{title}")]
    if sized.error:
        lines.append("  This file cannot be read as a drawing:")
        for error in sized.error:
            lines += wrapped(error, "    ")
    else:
        for figure in sized.figures:
            lines += ["", *_figure(figure, sized.names)]
        lines += ["", *_ending(sized)]
    return "\n".join(line.rstrip() for line in lines) + "\n"


def _ending(sized: Sized) -> Iterator[str]:
    if not sized.figures:
        yield "  No figure applies to this drawing."
    yield f"  Rule book: {sized.rule_book}."
    if sized.taken:
        yield from wrapped(f"Taken as usual, since not given: {'; '.join(sized.taken)}.", "  ")
    yield from wrapped(
        "These figures are an aid to a competent designer. Local codes and makers' instructions come first.",
        "  ",
    )


def _figure(figure: Figure, names: Mapping[str, str]) -> Iterator[str]:
    about = ", ".join(_named(id, names) for id in figure.subject)
    yield from wrapped(f"{figure.title}{': ' if about else ''}{about}", "  ", hang="    ")
    if figure.refused:
        yield from wrapped(f"Not worked: {figure.refused.rstrip('.')}.", "    ", hang="      ")
        if figure.missing:
            yield from wrapped(f"Missing: {', '.join(figure.missing)}", "    ", hang="      ")
    yield from columns([(_upper(each.name), *shown(each)) for each in figure.results], "    = ")
    for number, line in enumerate(figure.formula.splitlines()):
        yield from wrapped(line, "    Formula: " if number == 0 else " " * 13, hang=" " * 15)
    yield from columns(
        [(each.symbol, *shown(each), _described(each)) for each in figure.inputs], "      ", last_wraps=True
    )
    for text in moves_lines(figure.moves):
        yield from wrapped(f"Rests on: {text}", "    ", hang="      ")
    for word, text in (("Source", figure.source), ("Holds", figure.limits)):
        if text:
            yield from wrapped(f"{word}: {text}", "    ", hang="      ")


def _named(id: str, names: Mapping[str, str]) -> str:
    name = names.get(id, id)
    return name if id in name.split() else f"{name} ({id})"


def _upper(text: str) -> str:
    return text[:1].upper() + text[1:]


def _described(each: Input) -> str:
    return f"{_upper(each.name)} ({each.origin})" if each.name else f"({each.origin})"


def moves_lines(moves: Sequence[Moves], named: Callable[[str], str] = str) -> Iterator[str]:
    """The defaults that a figure rests on, those of one kind together; `named` says what a field is called."""
    kinds: dict[str, list[Moves]] = {}
    for each in moves:
        kinds.setdefault(each.by, []).append(each)
    for by, alike in kinds.items():
        yield worded_of(
            "{fields}: {by} {moved}" if len(alike) == 1 else "{fields}: {by} {moved} each",
            {
                "fields": strung(named(each.field) for each in alike),
                "by": a_word(by),
                "moved": moved_words([each.share for each in alike]),
            },
        )


def moved_words(shares: Sequence[float]) -> str:
    """What moves of these shares do: `would move the result by +2.3%`."""
    if not all(isfinite(share) for share in shares):
        return a_word("would leave no figure: what it is worked by does not hold then")
    ends = (min(shares, key=abs), max(shares, key=abs))
    least, most = (f"{share:+.1%}".replace("-", "−") for share in ends)
    if least == most:
        return worded("would move the result by {share}", share=_share(least))
    return worded("would move the result by {least} to {most}", least=_share(least), most=_share(most))


def _share(text: str) -> Told:
    """A share as `+2.3%`; where it is told again its sign stands off a little, as it is set in print."""
    return Told(text, lambda tongue: text.replace(".", tongue.decimal).replace("%", "\u00a0%"))


def shown(each: Input | Result) -> tuple[str, str]:
    """A value as it is written, and its unit."""
    return (each.value if isinstance(each.value, str) else _number(each.value)), each.unit


def _number(value: float) -> str:
    """At most four significant figures, but never less than the whole number; no exponent a person
    would have to count."""
    if not isfinite(value):
        return "without limit" if value > 0 else "none"
    if value == 0:
        return "0"
    if 1e-4 <= abs(value) < 1e4:
        return f"{value:.4g}"
    return f"{value:.0f}" if 1e4 <= abs(value) < 1e9 else f"{value:.3e}"


def columns(rows: Sequence[tuple[str, ...]], indent: str, *, last_wraps: bool = False) -> Iterator[str]:
    """Rows as aligned columns; numbers keep to the right of the second. `last_wraps`: the last goes on below itself."""
    cells = [[plain(text) for text in row] for row in rows]
    fixed = [row[:-1] if last_wraps else row for row in cells]
    widths = [max(len(text) for text in column) for column in zip(*fixed, strict=True)]
    for row, own in zip(cells, fixed, strict=True):
        padded = [
            text.rjust(width) if place == 1 else text.ljust(width)
            for place, (text, width) in enumerate(zip(own, widths, strict=True))
        ]
        start = indent + "  ".join(padded)
        if not last_wraps:
            yield start
            continue
        room = max(WIDTH, len(start) + 40)
        yield from textwrap.wrap(
            row[-1], room, initial_indent=f"{start}  ", subsequent_indent=" " * (len(start) + 2)
        )


def wrapped(text: str, indent: str, hang: str = "") -> list[str]:
    """A text in lines; those after the first hang by `hang`."""
    return textwrap.wrap(plain(text), WIDTH, initial_indent=indent, subsequent_indent=hang or indent)


def as_json(sized: Sized) -> str:
    """One object; the same drawing gives the same text. A value without limit is null."""
    found = {
        "program": f"circuitcheck {version()}",
        "rule_book": sized.rule_book,
        "file": sized.file,
        "title": sized.title,
        "error": list(sized.error) or None,
        "taken": list(sized.taken),
        "figures": [_object(each) for each in sized.figures],
    }
    return escaped(json.dumps(found, ensure_ascii=False, indent=1, allow_nan=False) + "\n")


def _object(figure: Figure) -> dict[str, Any]:
    return {
        "figure": figure.name,
        "title": figure.title,
        "subject": list(figure.subject),
        "refused": figure.refused or None,
        "missing": list(figure.missing),
        "results": [
            {"name": each.name, "value": _value(each.value), "unit": each.unit} for each in figure.results
        ],
        "formula": figure.formula,
        "inputs": [
            {
                "symbol": each.symbol,
                "name": each.name,
                "value": _value(each.value),
                "unit": each.unit,
                "origin": each.origin,
            }
            for each in figure.inputs
        ],
        "source": figure.source,
        "limits": figure.limits,
        "moves": [{"field": each.field, "by": each.by, "share": _value(each.share)} for each in figure.moves],
    }


def _value(value: float | str) -> float | str | None:
    if isinstance(value, str):
        return value
    return float(f"{value:.6g}") if isfinite(value) else None


def as_csv(sized: Sized) -> str:
    """A header and a row for each result, input, refusal and missing field, safe to open in a spreadsheet."""
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\n")
    writer.writerow(COLUMNS)
    for row in _rows(sized):
        writer.writerow([cell(text) if isinstance(text, str) else text for text in row])
    return out.getvalue()


def _rows(sized: Sized) -> Iterator[tuple[str | float, ...]]:
    blank = ("",) * 3
    for error in sized.error:
        yield (sized.file, "", "", "", "error", "", error, "", "", "", *blank)
    for figure in sized.figures:
        start = (sized.file, figure.name, figure.title, " ".join(figure.subject))
        working = (figure.formula.replace("\n", "; "), figure.source, figure.limits)
        if figure.refused:
            yield (*start, "refused", "", figure.refused, "", "", "", *working)
        for name in figure.missing:
            yield (*start, "missing", "", name, "", "", "", *blank)
        for result in figure.results:
            yield (*start, "result", "", result.name, _cell(result.value), result.unit, "", *working)
        for each in figure.inputs:
            yield (*start, "input", each.symbol, each.name, _cell(each.value), each.unit, each.origin, *blank)
        for moves in figure.moves:
            yield (*start, "moves", "", moves.field, _cell(moves.share), "share", moves.by, *blank)


def _cell(value: float | str) -> str | float:
    """Numbers stay numbers, so that one below 0 is no formula; what has no limit is left empty."""
    found = _value(value)
    return "" if found is None else found
