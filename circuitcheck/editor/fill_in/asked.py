"""What is asked, as the table says it: which questions a choice shows, in which order, in which words. No Qt."""

from __future__ import annotations

import re
from collections.abc import Iterable, Sequence
from enum import IntEnum, StrEnum
from typing import TYPE_CHECKING, Any

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fill_in.entering import held_words, need_words, part_words, state_words
from circuitcheck.editor.translating import later, tr
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.asking import (
    Asking,
    Need,
    Needs,
    Question,
    State,
    in_order,
    needs,
    rests_on,
    touched_by,
)
from circuitcheck.report.wording import lower

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.figures.figure import Figure

DOES_NOT_APPLY = 8
"""The urgency of a field that cannot matter to its pipe: shown among everything only."""
FILLED = later("filled in")
ON_USUAL = later("A verdict rests on the usual value")


class Column(IntEnum):
    """The columns of the table."""

    PART = 0
    FIELD = 1
    VALUE = 2
    NEEDED = 3


class Shown(StrEnum):
    """Which questions the table shows."""

    OPEN = "Not known"
    NEEDED = "Needed by checks and figures"
    USUAL = "Usual values verdicts rest on"
    ALL = "Everything"


class Asked:
    """The questions of a drawing with what needs them, and which were answered since `settle`."""

    def __init__(self) -> None:
        self._asking = Asking()
        self._analysis: Analysis | None = None
        self._figures: tuple[Figure, ...] = ()
        self._names: dict[str, str] = {}
        self._open: set[str] = set()
        self._filled: set[str] = set()
        self.drawing = Drawing()
        self.questions = self._asking.all
        self.needs: Needs = {}
        self.resting: frozenset[str] = frozenset()
        self.decimal = "."

    def begin(self, drawing: Drawing) -> None:
        """Another drawing altogether: nothing of the one before holds."""
        self._asking = Asking()
        self._asking.take(drawing)
        self._names, self._open, self._filled = {}, set(), set()
        self.drawing, self.questions = drawing, self._asking.all
        self._analysis, self._figures = None, ()
        self.needs, self.resting = {}, frozenset()
        for key in self.questions:
            self._note(key, None)

    def take(self, drawing: Drawing) -> tuple[list[str], list[str]]:
        """Go on to another state of the drawing: the questions that are gone, and those that are new."""
        touched = touched_by(self.drawing, drawing)
        before = {key: self.questions[key] for subject in touched for key in self._asking.keys_of(subject)}
        self._asking.take(drawing)
        self.drawing = drawing
        after = [key for subject in touched for key in self._asking.keys_of(subject)]
        for subject in touched:
            self._names.pop(subject, None)
        for key in {*before, *after}:
            self._note(key, before.get(key))
        gone = [key for key in before if key not in self.questions]
        return gone, [key for key in after if key not in before]

    def take_needs(self, analysis: Analysis) -> list[str]:
        """Take over what the checks need; returns all the questions they speak of."""
        self._analysis, self.resting = analysis, rests_on(analysis)
        return [*self._take_needs(), *self.resting]

    def take_figures(self, figures: Sequence[Figure]) -> list[str]:
        """Take over what the figures need; returns all the questions that anything needs."""
        self._figures = tuple(figures)
        return self._take_needs()

    def _take_needs(self) -> list[str]:
        self.needs = needs(self._analysis, self._figures) if self._analysis else {}
        return list(self.needs)

    def settle(self) -> None:
        """What was answered so far is answered: it is marked no longer."""
        self._filled.clear()

    def _note(self, key: str, old: Question | None) -> None:
        """Keep count of what is not known, and of what was filled in since the rows were put in order."""
        new = self.questions.get(key)
        is_open = new is not None and not new.state.is_known
        if is_open and new is not None and new.urgency < DOES_NOT_APPLY:
            self._open.add(key)
        else:
            self._open.discard(key)
        if is_open or new is None:
            self._filled.discard(key)
        elif old is not None and not old.state.is_known:
            self._filled.add(key)

    # Which of them, in which order.

    def chosen(self, shown: Shown, words: tuple[str, ...], keys: Iterable[str] | None = None) -> list[str]:
        """Those of the keys, or of all, that a choice shows and that hold every word, as they are asked."""
        among = self.questions if keys is None else [key for key in keys if key in self.questions]
        found = (key for key in among if self._is_chosen(key, shown) and self._holds(key, words))
        return in_order((self.questions[key] for key in found), self.needs, self.resting)

    def sort_key(self, column: int, key: str) -> Any:
        """Where a question stands when sorted by a column."""
        if column == Column.PART:
            return _natural(self.name(self.questions[key].subject))
        if column == Column.FIELD:
            return self.questions[key].field.label.casefold()
        return _value_order(self.questions[key])

    def count(self, shown: Shown) -> int:
        """How many questions a choice holds, whatever is searched for."""
        match shown:
            case Shown.NEEDED:
                return sum(self._is_open(key) for key in self.needs)
            case Shown.USUAL:
                return sum(self._is_resting(key) for key in self.resting)
            case Shown.OPEN:
                return len(self._open | {key for key in self.needs if self._is_open(key)})
            case Shown.ALL:
                return len(self.questions)

    def _is_chosen(self, key: str, shown: Shown) -> bool:
        match shown:
            case Shown.NEEDED:
                return key in self.needs and self._is_open(key)
            case Shown.USUAL:
                return self._is_resting(key)
            case Shown.OPEN:
                return key in self._open or (key in self.needs and self._is_open(key))
            case Shown.ALL:
                return True

    def _holds(self, key: str, words: tuple[str, ...]) -> bool:
        if not words:
            return True
        question = self.questions[key]
        texts = (self.name(question.subject), tr(question.field.label), self.needed_words(question), key)
        text = " ".join(texts).casefold()
        return all(word in text for word in words)

    def _is_open(self, key: str) -> bool:
        return key in self.questions and not self.questions[key].state.is_known

    def _is_resting(self, key: str) -> bool:
        known = self.questions.get(key)
        return key in self.resting and known is not None and known.state is State.USUAL

    # In which words.

    def needed(self, key: str) -> tuple[Need, ...]:
        """The checks and figures that ask for it."""
        return self.needs.get(key, ())

    def name(self, subject: str) -> str:
        """What a question is about."""
        if subject not in self._names:
            self._names[subject] = part_words(self.drawing, subject)
        return self._names[subject]

    def text(self, question: Question, column: int) -> str:
        """What a cell shows."""
        match column:
            case Column.PART:
                return self.name(question.subject)
            case Column.FIELD:
                return tr(question.field.label)
            case Column.VALUE:
                return held_words(question, self.decimal, self.drawing)
            case _:
                return self.needed_words(question)

    def spoken(self, question: Question, column: int) -> str:
        """What a cell says to those who hear the window instead of seeing it."""
        if column != Column.VALUE:
            return self.text(question, column)
        unit = f" {tr(question.field.unit)}" if question.field.unit else ""
        value, state = self.text(question, Column.VALUE), state_words(question)
        said = f"{value}{unit}" + (f", {state}" if state else "") if value else state + (unit and f",{unit}")
        return f"{tr(lower(question.field.label))}: {said}"

    def needed_words(self, question: Question) -> str:
        """What asks; or that it was just filled in, or that a verdict rests on its usual value."""
        if not question.state.is_known:
            return need_words(self.needed(question.key))
        if question.key in self._filled:
            return tr(FILLED)
        return tr(ON_USUAL) if self._is_resting(question.key) else ""

    def mark(self, question: Question) -> Grade | bool | None:
        """The grade of the heaviest need, True for what was just filled in, else None."""
        if question.key in self._filled:
            return True
        needed = self.needed(question.key)
        return None if question.state.is_known or not needed else needed[0].grade


def _natural(text: str) -> list[tuple[bool, int, str]]:
    """Pipe 9 before pipe 10."""
    pieces = re.split(r"([0-9]{1,9})", text.casefold())
    return [(each.isdecimal(), int(each) if each.isdecimal() else 0, each) for each in pieces if each]


def _value_order(question: Question) -> tuple[int, float, str]:
    if question.value is None:
        return (0, 0.0, "")
    if question.field.type is FieldType.NUMBER:
        return (1, float(question.value), "")
    return (2, 0.0, str(question.value))
