"""What is pasted from a spreadsheet: a column of values, rows copied from the table, or a schedule. No Qt."""

from __future__ import annotations

import csv
import io
import re
from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import NamedTuple

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fill_in.entering import COPIED, VALUE_COLUMN, part_words, set_answer, value_of
from circuitcheck.editor.panels.subjects import Left
from circuitcheck.editor.translating import later, of_error, tr, tr_n
from circuitcheck.report.asking import ABSENT, Question
from circuitcheck.report.plain import cell
from circuitcheck.report.wording import lower
from circuitcheck.told import worded_n

NOTHING = later("Nothing was pasted.")
HOW = later(
    "Paste one column of values; rows copied from this table, or with its headings "
    "“key” and “value”; or a table with a row for each part or pipe and the fields’ "
    "names above it. {nothing}",
)
PASSED_OVER = frozenset({"", "note", "notes", "unit", "needed by"})
"""Headings of columns that say nothing to be filled in."""
_HEADING = re.compile(r"(?P<name>[^(\[,]*?)\s*(?:[(\[,]\s*(?P<unit>[^)\]]*?)\s*[)\]]?)?")
_QUOTED = re.compile(r'(?:^|[\t\n])"(?:[^"]|"")*"(?=$|[\t\n])')
"""A cell in quotes, and not one that only begins with a sign for inches."""

Questions = Mapping[str, Question]
Rows = Sequence[Sequence[str]]


class PasteError(ValueError):
    """What was pasted cannot be taken; the message says why, and nothing was changed."""


class _Said(NamedTuple):
    """What a cell says for a question. `blank_holds`: an empty cell leaves it as it is; `is_copy`: so does
    one that only states what is worked out or usual anyway."""

    key: str
    text: str
    blank_holds: bool = True
    is_copy: bool = False


def pasted(
    drawing: Drawing, questions: Questions, following: Sequence[str], text: str
) -> tuple[str, Drawing]:
    """Answer many questions at once: the step's name, and the drawing after it.

    A single column goes into the questions that follow one another, an empty line passing one over. Rows
    of a table find their place by the key, or by the part and what is asked; those of a schedule by the
    part, and its columns by the fields' names. All or nothing: raises PasteError with the first value
    refused.
    """
    rows = _rows(text)
    if not rows:
        raise PasteError(tr("There is no text to paste."))
    after, changed = drawing, 0
    for said in _answers(drawing, questions, following, rows):
        question = questions[said.key]
        try:
            value = value_of(question.field, said.text)
            if (said.blank_holds and value is Left.OUT) or (said.is_copy and _keeps(question, value)):
                continue
            _, new = set_answer(after, question, value)
        except EditError as error:
            name = part_words(drawing, question.subject)
            said_of = f"{name}, {tr(lower(question.field.label))}: {tr(of_error(error))}"
            raise PasteError(f"{said_of} {tr(NOTHING)}") from error
        changed += new is not after
        after = new
    if not changed:
        return "", drawing
    return worded_n("Fill in 1 value", "Fill in {count} values", changed), after


def _rows(text: str) -> list[list[str]]:
    """The cells; a spreadsheet puts those that hold a line break or a tab into quotes."""
    plain = text.replace("\r\n", "\n").replace("\r", "\n").replace("\0", "")
    if _QUOTED.search(plain):
        reader = csv.reader(io.StringIO(plain), delimiter="\t")
    else:
        reader = csv.reader(io.StringIO(plain), delimiter="\t", quoting=csv.QUOTE_NONE)
    try:
        rows = [[" ".join(each.split()) for each in row] or [""] for row in reader]
    except csv.Error as error:
        raise PasteError(how()) from error
    while rows and not any(rows[-1]):
        rows.pop()
    # A table copied with empty columns beside it is as wide as what it says.
    wide = max((place + 1 for row in rows for place, said in enumerate(row) if said), default=0)
    return [row[:wide] + [""] * (wide - len(row)) for row in rows]


def _keeps(question: Question, value: object) -> bool:
    """Whether a row pasted back would only state what is not known, worked out or usual anyway."""
    if question.held is not ABSENT and question.held is not None:
        return False
    if value is Left.OUT:
        return True
    given = tuple(question.value) if isinstance(question.value, list) else question.value
    return (
        question.state.is_known
        and isinstance(value, bool) == isinstance(given, bool)
        and bool(value == given)
    )


def _answers(drawing: Drawing, questions: Questions, following: Sequence[str], rows: Rows) -> Iterator[_Said]:
    if len(rows[0]) == 1:
        return _column(questions, following, [row[0] for row in rows])
    keys = {cell(key): key for key in questions} | {key: key for key in questions}
    head = [each.casefold() for each in rows[0]]
    if "key" in head:
        return _by_key(keys, rows[1:], head.index("key"), _value_column(head))
    body = [row for row in rows if any(row)]
    for column in range(len(head)):
        if all(row[column] in keys for row in body):
            return _by_key(keys, body, column, _value_column_of(len(head), column))
    if {"part", "what", "value"} <= set(head):
        return _by_names(drawing, questions, rows[1:], head)
    return _schedule(drawing, questions, rows)


def how() -> str:
    """What can be pasted, for who pasted something else."""
    return tr(HOW, nothing=tr(NOTHING))


def _column(questions: Questions, following: Sequence[str], texts: Sequence[str]) -> Iterator[_Said]:
    if following and len(texts) > 1 and _names(questions[following[0]], texts[0]):
        texts = texts[1:]
    if len(texts) > len(following):
        many = "{values} values do not fit into {count} rows."
        said = tr_n("{values} values do not fit into 1 row.", many, len(following), values=len(texts))
        raise PasteError(f"{said} {tr(NOTHING)}")
    return (_Said(key, text) for key, text in zip(following, texts, strict=False))


def _names(question: Question, text: str) -> bool:
    """Whether a cell is the heading of a column of values, and not one of them."""
    heading = _HEADING.fullmatch(text.casefold())
    return heading is not None and heading["name"] in {"value", *_called(question)}


def _called(question: Question) -> tuple[str, str]:
    return question.field.label.casefold(), question.field.name


def _value_column(head: Sequence[str]) -> int:
    if "value" not in head:
        raise PasteError(how())
    return head.index("value")


def _value_column_of(wide: int, key_column: int) -> int:
    """Where the values stand in rows that begin without headings."""
    if wide == 2:
        return 1 - key_column
    # Copied from this table; what needs a value may be empty, and the column then is not there.
    if key_column == 0 and VALUE_COLUMN < wide <= len(COPIED):
        return VALUE_COLUMN
    raise PasteError(how())


def _by_key(keys: Mapping[str, str], rows: Rows, key: int, value: int) -> Iterator[_Said]:
    for row in rows:
        if row[key] in keys:
            yield _Said(keys[row[key]], row[value], blank_holds=False, is_copy=True)
        elif any(row) and row[key].casefold() != COPIED[0]:
            said = tr("Nothing drawn has the key “{name}”.", name=row[key])
            raise PasteError(f"{said} {tr(NOTHING)}")


def _by_names(drawing: Drawing, questions: Questions, rows: Rows, head: Sequence[str]) -> Iterator[_Said]:
    part, what, value = (head.index(name) for name in ("part", "what", "value"))
    subjects = _subjects(drawing, questions)
    for row in rows:
        if any(row):
            question = _question(subjects, row[part], row[what])
            yield _Said(question.key, row[value], blank_holds=False, is_copy=True)


def _schedule(drawing: Drawing, questions: Questions, rows: Rows) -> Iterator[_Said]:
    """A row for each part, a column for each field."""
    fields = {name for question in questions.values() for name in _called(question)}
    names = [_HEADING.fullmatch(each.casefold()) for each in rows[0]]
    columns = [place for place, name in enumerate(names) if name is not None and name["name"] in fields]
    others = [place for place in range(len(names)) if place not in columns]
    if not columns or not others:
        raise PasteError(how())
    part = others[0]
    for place in others[1:]:
        if rows[0][place].casefold() not in PASSED_OVER:
            said = tr("“{name}” is no field that can be filled in.", name=rows[0][place])
            raise PasteError(f"{said} {tr(NOTHING)}")
    subjects = _subjects(drawing, questions)
    for row in rows[1:]:
        for place in columns:
            name = names[place]
            if row[place] and name is not None:
                question = _question(subjects, row[part], name["name"])
                _same_unit(question, name["unit"] or "")
                yield _Said(question.key, row[place])


def _subjects(drawing: Drawing, questions: Questions) -> Mapping[str, list[Question]]:
    """The questions by what they are about, as it may be called: its id or its name."""
    found: dict[str, list[Question]] = defaultdict(list)
    for question in questions.values():
        subject = question.subject
        name = part_words(drawing, subject).casefold()
        also = tr("pipe {id}", id=subject).casefold() if subject in drawing.pipes else name
        for called in {subject.casefold(), cell(subject).casefold(), name, also}:
            found[called].append(question)
    return found


def _question(subjects: Mapping[str, list[Question]], part: str, field: str) -> Question:
    about = subjects.get(part.casefold())
    if not about:
        raise PasteError(f"{tr('Nothing drawn is called “{name}”.', name=part)} {tr(NOTHING)}")
    if len({question.subject for question in about}) > 1:
        said = tr("Several things are called “{name}”: name them by their ids.", name=part)
        raise PasteError(f"{said} {tr(NOTHING)}")
    asked = [question for question in about if field.casefold() in _called(question)]
    if len(asked) != 1:
        said = tr("“{name}” has no field “{field}”.", name=part, field=field)
        raise PasteError(f"{said} {tr(NOTHING)}")
    return asked[0]


def _same_unit(question: Question, unit: str) -> None:
    """Numbers under a heading in another unit would all be wrong by the same factor."""
    own = question.field.unit
    if unit and unit.casefold() != own.casefold():
        label = tr(question.field.label)
        if own:
            said = tr("{label} is told in {own}, and not in {unit}.", label=label, own=tr(own), unit=unit)
        else:
            said = tr("{label} has no unit, and is not told in {unit}.", label=label, unit=unit)
        raise PasteError(f"{said} {tr(NOTHING)}")
