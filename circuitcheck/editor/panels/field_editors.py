"""The editors of the details panel: one for each type of field, all with the same three members."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any, Protocol

from PySide6.QtCore import QSignalBlocker, QSize, Qt, Signal, SignalInstance
from PySide6.QtGui import QFocusEvent, QKeyEvent, QWheelEvent
from PySide6.QtWidgets import QComboBox, QGridLayout, QLineEdit, QPlainTextEdit, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.panels.edged import ArrowedComboBox, EdgedCheckBox
from circuitcheck.editor.panels.number_field import NumberField
from circuitcheck.editor.panels.subjects import ACTS_ON, ONE_LINE, SAME_ROOM, Held, Left, Row
from circuitcheck.editor.translating import decimal_sign, tr
from circuitcheck.parts.kind import Field, FieldType
from circuitcheck.report.wording import spoken, value_words

NOTE_LINES = 3
LONGEST_LINE = 200
UNKNOWN = "unknown"
"""The one named value that says what an empty field says."""
SEVERAL = "~several"
"""Stands for no value: the selected things do not agree."""


class FieldEditor(Protocol):
    """`committed` carries the new value, None (not known yet) or `Left.OUT`."""

    @property
    def committed(self) -> SignalInstance:
        """The user's change."""

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""

    def kept(self) -> str:
        """What the drawing goes on holding, as a sentence for after a refusal; may be empty."""


class NumberEditor(NumberField):
    """A number."""

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        self.show_held(row.held)


class LineEditor(QLineEdit):
    """A text on one line: a label, the title."""

    committed = Signal(object)

    def __init__(self, field: Field) -> None:
        super().__init__()
        self._held = ""
        self.setMaxLength(LONGEST_LINE)
        self.editingFinished.connect(self._commit)

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        self._held = str(row.held.value)
        self.setText(self._held)
        self.setCursorPosition(0)

    def kept(self) -> str:
        """Nothing: no text is refused."""
        return ""

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape puts back what the drawing holds."""
        if event.key() == Qt.Key.Key_Escape and self.text() != self._held:
            self.setText(self._held)
            event.accept()
            return
        super().keyPressEvent(event)

    def _commit(self) -> None:
        # A label of the file may hold what a line does not show; unless edited it stays as it is.
        if self.isModified() and self.text() != self._held:
            self.setModified(False)
            self.committed.emit(self.text())


class NoteEditor(QPlainTextEdit):
    """A text of several lines, committed when the focus leaves it."""

    committed = Signal(object)

    def __init__(self, field: Field) -> None:
        super().__init__()
        self._held = ""
        self.setTabChangesFocus(True)
        self.setFixedHeight(self.fontMetrics().lineSpacing() * NOTE_LINES + 14)

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        self._held = "" if row.held.value in (None, Left.OUT) else str(row.held.value)
        if self.toPlainText() != self._held:
            self.setPlainText(self._held)
        self.document().setModified(False)

    def kept(self) -> str:
        """Nothing: no text is refused."""
        return ""

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Commit what was written."""
        super().focusOutEvent(event)
        text = self.toPlainText()
        if self.document().isModified() and text != self._held:
            self.committed.emit(text or Left.OUT)


class ChoiceEditor(ArrowedComboBox):
    """One of several: the usual one left unsaid, each of them, and not known."""

    committed = Signal(object)

    def __init__(self, field: Field) -> None:
        super().__init__()
        self._field = field
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizeAdjustPolicy(QComboBox.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.setMinimumContentsLength(6)
        self.activated.connect(self._commit)

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        with QSignalBlocker(self):
            self.clear()
            for value, words in self._entries(row):
                self.addItem(words, value)
            if row.held.differs:
                self.insertItem(0, tr("several"), SEVERAL)
                self.setCurrentIndex(0)
            else:
                self.setCurrentIndex(self._index_of(row.held.value))

            self.updateGeometry()

    def sizeHint(self) -> QSize:
        """As wide as what is chosen."""
        hint = super().sizeHint()
        return hint + QSize(self.wanting_px(self.currentText(), hint), 0)

    def kept(self) -> str:
        """Nothing: what can be chosen is not refused."""
        return ""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """A wheel over it scrolls the panel and changes nothing."""
        event.ignore()

    def _entries(self, row: Row) -> list[tuple[Any, str]]:
        known: list[tuple[Any, str]] = []
        if self._field.default == UNKNOWN:
            return [
                (Left.OUT, tr("not known")),
                *((c, tr(spoken(c))) for c in self._field.choices if c != UNKNOWN),
            ]
        if self._field.has_default:
            known.append(
                (
                    Left.OUT,
                    tr(
                        "{value} (usual)", value=value_words(self._field, self._field.default, decimal_sign())
                    ),
                )
            )
        if self._field.type is FieldType.SWITCH:
            known += [(True, tr("yes")), (False, tr("no"))]
        elif self._field.type is FieldType.REFERENCE:
            known += row.options
        else:
            known += [(each, tr(spoken(each))) for each in self._field.choices]
        return [*known, (None, tr("not known"))]

    def _index_of(self, value: Any) -> int:
        if self._field.default == UNKNOWN and value in (None, UNKNOWN):
            value = Left.OUT
        elif value is Left.OUT and not self._field.has_default:
            value = None
        values = [self.itemData(index) for index in range(self.count())]
        return next((index for index, each in enumerate(values) if _same(each, value)), self.count() - 1)

    def _commit(self, index: int) -> None:
        value = self.itemData(index)
        if value != SEVERAL:
            self.committed.emit(value)


class ChecksEditor(QWidget):
    """Any of several, as boxes to tick; then none of them, and not known, where the field can say so."""

    committed = Signal(object)

    def __init__(self, field: Field) -> None:
        super().__init__()
        self._field = field
        self._boxes: dict[Any, EdgedCheckBox] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 4)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(2)
        self._held = Held(Left.OUT)

    def show_row(self, row: Row) -> None:
        """Show what the drawing holds."""
        self._held = row.held
        entries: list[tuple[object, str]] = [*row.options]
        if not entries:
            entries = [(each, tr(spoken(each))) for each in self._field.choices]
        names_parts = self._field in (ACTS_ON, SAME_ROOM)
        if not names_parts:
            entries += [
                (Left.OUT, tr("none (usual)")),
                ((), tr("none, for certain")),
                (None, tr("not known")),
            ]
        if list(self._boxes) != [value for value, _ in entries]:
            self._build(entries, columns=1 if names_parts else 2)
        value = self._held.value
        chosen = value if isinstance(value, tuple | list) else ()
        for each, box in self._boxes.items():
            with QSignalBlocker(box):
                is_one = isinstance(each, str) and each in chosen
                box.setChecked(not row.held.differs and (is_one or (not chosen and _same(each, value))))
        for each, words in entries:
            self._boxes[each].setText(plain.action_text(words))

    def kept(self) -> str:
        """Nothing: what can be ticked is not refused."""
        return ""

    def sizeHint(self) -> QSize:
        """As the boxes need it."""
        return self._grid.sizeHint()

    def _build(self, entries: list[tuple[Any, str]], columns: int) -> None:
        for box in self._boxes.values():
            self._grid.removeWidget(box)
            box.deleteLater()
        self._boxes = {}
        if not entries:
            self._grid.addWidget(plain.label(tr("none drawn yet"), "second"), 0, 0)
        for place, (value, words) in enumerate(entries):
            box = EdgedCheckBox(plain.action_text(words))
            box.setAccessibleName(f"{tr(self._field.label)}: {words}")
            box.clicked.connect(self._committer(value))
            self._boxes[value] = box
            self._grid.addWidget(box, place // columns, place % columns)

    def _committer(self, value: Any) -> Callable[[bool], None]:
        def commit(ticked: bool) -> None:
            if not isinstance(value, str):
                self.committed.emit(value)
                return
            now = self._held.value if isinstance(self._held.value, tuple | list) else ()
            chosen = [
                each for each in self._boxes if isinstance(each, str) and (each in now) != (each == value)
            ]
            self.committed.emit(tuple(chosen) or Left.OUT)

        return commit


def editor_for(field: Field) -> NumberEditor | LineEditor | NoteEditor | ChoiceEditor | ChecksEditor:
    """The editor of a field, named for those who hear the window instead of seeing it."""
    made = _editor(field)
    unit = f", {tr(field.unit)}" if field.unit else ""
    made.setAccessibleName(f"{tr(field.label)}{unit}")
    made.setAccessibleDescription(tr(field.help))
    plain.set_tip(made, field.help)
    return made


def _editor(field: Field) -> NumberEditor | LineEditor | NoteEditor | ChoiceEditor | ChecksEditor:
    match field.type:
        case FieldType.NUMBER:
            return NumberEditor(field)
        case FieldType.TEXT:
            return LineEditor(field) if field.name in ONE_LINE else NoteEditor(field)
        case FieldType.CHOICES:
            return ChecksEditor(field)
        case _:
            return ChoiceEditor(field)


def _same(one: Any, two: Any) -> bool:
    """Equal, and not merely 1 for yes."""
    return type(one) is type(two) and bool(one == two)
