"""What is typed into: a field for a number and a choice, which answer only when they are told to."""

from __future__ import annotations

from PySide6.QtWidgets import QWidget

from circuitcheck.editor.fill_in.entering import NOT_KNOWN_SIGN, subject_ids
from circuitcheck.editor.fill_in.model import AskModel
from circuitcheck.editor.panels.field_editors import ChoiceEditor
from circuitcheck.editor.panels.number_field import NumberField
from circuitcheck.editor.panels.subjects import Held, Left, Row, rows
from circuitcheck.editor.translating import tr
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.report.asking import ABSENT, Question


class NumberEntry(NumberField):
    """A number; a question mark says that it is not known."""

    def __init__(self, field: Field, parent: QWidget) -> None:
        super().__init__(field, parent)
        self._shown: Row | None = None

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds, unless something is being typed."""
        self._shown = row
        if not self.isModified():
            self.show_held(row.held)

    def take(self) -> None:
        """Answer with what was typed."""
        self._commit()

    def put_back(self) -> None:
        """Forget what was typed."""
        if self._shown is not None:
            self.show_held(self._shown.held)

    def _commit(self) -> None:
        if self.isModified() and self.text().strip() == NOT_KNOWN_SIGN:
            self.put_back()
            self.committed.emit(None)
            return
        super()._commit()


class ChoiceEntry(ChoiceEditor):
    """A choice: arrows and letters only move in it, Enter or a click answers."""

    def __init__(self, field: Field, parent: QWidget) -> None:
        super().__init__(field)
        self.setParent(parent)
        self._shown: Row | None = None
        self._is_open = False

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        if row != self._shown:
            self._shown = row
            super().show_row(row)

    def take(self) -> None:
        """Answer with what is chosen, where that is not what the drawing holds."""
        held = self._shown.held.value if self._shown else Left.OUT
        index = self.currentIndex()
        if index >= 0 and index != self._index_of(held):
            super()._commit(index)

    def put_back(self) -> None:
        """Forget what was chosen."""
        if self._shown is not None:
            super().show_row(self._shown)

    def showPopup(self) -> None:
        """The list stands open."""
        self._is_open = True
        super().showPopup()

    def hidePopup(self) -> None:
        """The list is shut."""
        super().hidePopup()
        self._is_open = False

    def _commit(self, index: int) -> None:
        # Sent while the list closes for what was picked in it, and for every arrow key without it.
        if self._is_open:
            super()._commit(index)


Entry = NumberEntry | ChoiceEntry


def entry_for(question: Question, parent: QWidget) -> Entry:
    """The entry of a question, named for those who hear the window instead of seeing it."""
    field = question.field
    made: Entry
    made = NumberEntry(field, parent) if field.type is FieldType.NUMBER else ChoiceEntry(field, parent)
    unit = f", {tr(field.unit)}" if field.unit else ""
    made.setAccessibleName(f"{tr(field.label)}{unit}")
    made.setAccessibleDescription(tr(field.help))
    return made


def row_of(model: AskModel, question: Question) -> Row:
    """The question as the details panel's editors are told it."""
    if question.field.type is FieldType.REFERENCE:
        known = rows(model.drawing, subject_ids(question.subject))
        return next(row for row in known if row.key == question.field.name)
    return Row(question.field, Held(Left.OUT if question.held is ABSENT else question.held))


def kept_words(model: AskModel, question: Question) -> str:
    """What the drawing goes on holding after a refusal: the sentence of the details panel."""
    if question.field.type is not FieldType.NUMBER:
        return ""
    field = NumberField(question.field)
    field.show_held(row_of(model, question).held)
    return field.kept()
