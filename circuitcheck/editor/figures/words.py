"""What the panel of figures says: subjects, results, where each number came from, what it rests on."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.language import document_tongue, shown_code
from circuitcheck.editor.translating import later, shown_told, tr, tr_n
from circuitcheck.figures.figure import Figure, Input, Moves, Result
from circuitcheck.report.sizes import moved_words, shown
from circuitcheck.report.wording import fields_of, missing_words, upper

MOST_RESULTS = 3
"""So many results stand in a row that is not opened."""
MOST_SUBJECTS = 3

HOW = {
    "given": later("given in the drawing"),
    "usual value": later("usual value, not given"),
    "measured": later("measured on the sheet"),
    "counted": later("counted on the sheet"),
}
"""How an origin that ends in `id.field` begins, and what is said of it."""

Key = tuple[str, tuple[str, ...], str]


@dataclass(frozen=True, slots=True)
class Origin:
    """Where a number came from, in words. `field`: the id and the field it stands in, to go to;
    `figure`: the name of the figure it comes from."""

    words: str
    field: tuple[str, str] | None = None
    figure: str = ""


@dataclass(frozen=True, slots=True)
class Rests:
    """What a result owes to one default, in words, and the field to go to where it is one."""

    words: str
    field: tuple[str, str] | None = None


def key(figure: Figure) -> Key:
    """What makes a figure of a changed drawing the same as one of before."""
    return figure.name, figure.subject, figure.title


def subject(drawing: Drawing, figure: Figure) -> str:
    """What a figure is about, in words; empty for the whole drawing."""
    names = [shown_told(upper(_name(drawing, id))) for id in figure.subject]
    if len(names) > MOST_SUBJECTS:
        names = [*names[:MOST_SUBJECTS], tr("{count} more", count=len(names) - MOST_SUBJECTS)]
    return ", ".join(names)


def result(each: Input | Result, decimal: str = ".") -> str:
    """A value with its unit: `10.7 l`."""
    value, unit = shown(each)
    said = shown_told(value) if isinstance(each.value, str) else value.replace("-", "−").replace(".", decimal)
    return f"{said} {unit}".rstrip()


def head(figure: Figure, decimal: str = ".") -> tuple[tuple[str, str], ...]:
    """The results of a row that is not opened, the first few of them."""
    found = [(tr(upper(each.name)), result(each, decimal)) for each in figure.results[:MOST_RESULTS]]
    rest = len(figure.results) - MOST_RESULTS
    return (*found, (tr("and {count} more", count=rest), "")) if rest > 0 else tuple(found)


def why_not(figure: Figure) -> str:
    """Why a figure is not worked, as a sentence; empty where it is."""
    if not figure.refused:
        return ""
    if figure.missing:
        number = len(figure.missing)
        return tr_n("Not worked: 1 number is missing.", "Not worked: {count} numbers are missing.", number)
    return tr("Not worked: {why}.", why=tr(figure.refused).rstrip("."))


def origin(drawing: Drawing, said: str) -> Origin:
    """An input's origin in words; a field of the drawing by the names that the window gives it."""
    for begin, words in HOW.items():
        if said.startswith(f"{begin} "):
            place = _field(drawing, said.removeprefix(f"{begin} "))
            if place is not None:
                return Origin(tr(words), place)
    if said.startswith("figure "):
        return Origin(tr("from the figure"), figure=said.removeprefix("figure "))
    from circuitcheck.report.document.figures import origin_words

    return Origin(tr(upper(origin_words(drawing, said))))


def field_words(drawing: Drawing, place: tuple[str, str]) -> str:
    """A field by the names that the window gives it: `Pump: shut-off head`."""
    return tr(missing_words(drawing, ".".join(place)))


def rests(drawing: Drawing, moves: Sequence[Moves], decimal: str = ".") -> tuple[Rests, ...]:
    """What the results owe to defaults, a line each."""
    found = []
    for each in moves:
        place = _field(drawing, each.field)
        name = field_words(drawing, place) if place else tr(upper(each.field))
        moved = tr(moved_words([each.share])).replace(".", decimal)
        found.append(Rests(f"{name}: {tr(each.by)} {moved}.", place))
    return tuple(found)


def missing_places(drawing: Drawing, figure: Figure) -> tuple[tuple[str, tuple[str, str]], ...]:
    """Each missing field in words, and the id and field to go to."""
    found = []
    for name in figure.missing:
        id, _, field = name.rpartition(".")
        found.append((tr(missing_words(drawing, name)), (id, field)))
    return tuple(found)


def note(figures: Iterable[Figure]) -> str:
    """What stands beside the panel's heading."""
    all_of_them = tuple(figures)
    refused = sum(bool(each.refused) for each in all_of_them)
    worked = len(all_of_them) - refused
    return (
        tr("{worked} worked, {refused} not", worked=worked, refused=refused)
        if refused
        else tr("{worked} worked", worked=worked)
    )


def found_in(drawing: Drawing, figure: Figure, asked: str) -> bool:
    """Whether a figure holds every word that was typed: in its title, subject, results or reason."""
    parts = [tr(figure.title), figure.name, *figure.subject, tr(figure.refused)]
    parts += [_name(drawing, id) for id in figure.subject]
    parts += [f"{tr(each.name)} {tr(each.unit)}" for each in figure.results]
    whole = " ".join(parts).casefold()
    return all(word in whole for word in asked.casefold().split())


def as_text(drawing: Drawing, figures: Iterable[Figure]) -> str:
    """Figures with all their working, as the document tells them, in the language of the window."""
    # What documents need the window comes up without.
    from circuitcheck.report.document.as_words import figure_text
    from circuitcheck.report.document.figures import worked
    from circuitcheck.report.document.telling import retold

    tongue = document_tongue(shown_code())
    return "\n".join(figure_text(each, tongue) for each in retold(worked(drawing, figures), tongue))


def spoken(drawing: Drawing, figure: Figure, decimal: str = ".") -> str:
    """A row as it is read out."""
    about = subject(drawing, figure)
    said = [f"{', '.join(each for each in (tr(figure.title), about) if each)}."]
    said += [f"{name} {value}".rstrip() + "." for name, value in head(figure, decimal)]
    said += [why] if (why := why_not(figure)) else []
    return " ".join(said)


def _name(drawing: Drawing, id: str) -> str:
    try:
        return shown_told(drawing.name(id))
    except KeyError:
        return id


def _field(drawing: Drawing, text: str) -> tuple[str, str] | None:
    """The id and the field that a text names; None for any other text."""
    id, _, field = text.rpartition(".")
    try:
        known = any(each.name == field for each in fields_of(drawing, id))
    except KeyError:
        return None
    return (id, field) if known else None
