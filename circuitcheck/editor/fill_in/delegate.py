"""Paints a row with its value in a field, and lets one type into it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import (
    QAbstractItemModel,
    QEvent,
    QObject,
    QRect,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QIcon, QKeyEvent, QPainter, QPalette, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from circuitcheck.editor.fill_in.asked import Column
from circuitcheck.editor.fill_in.entering import state_words
from circuitcheck.editor.fill_in.entries import ChoiceEntry, Entry, NumberEntry, entry_for, row_of
from circuitcheck.editor.fill_in.model import QUESTION, AskModel, Index
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.translating import tr
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.asking import Question

INSET_PX, FIELD_INSET_PX, TEXT_PX, MARK_PX = 5, 4, 9, 20
RADIUS_PX = 5
WASH = 0.12
ROLE = QPalette.ColorRole


class AskDelegate(QStyledItemDelegate):
    """`answered` carries a question's key and its new value, `refused` its key and why; `moved` is sent
    after an answer was taken: 1 to go on, -1 to go back."""

    answered = Signal(str, object)
    refused = Signal(str, str)
    moved = Signal(int)

    def __init__(self, model: AskModel, parent: QObject) -> None:
        super().__init__(parent)
        self._model = model
        self._was_refused = False

    def refuse(self) -> None:
        """What was just answered cannot be: the entry stays open."""
        self._was_refused = True

    # Painting.

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """One cell; the value stands in a field."""
        question = index.data(QUESTION)
        if not isinstance(question, Question):
            return
        painter.save()
        palette: QPalette = option.palette
        rect: QRect = option.rect
        # The table has painted a chosen row in the full colour of choice: too loud for one to type in.
        painter.fillRect(rect, palette.color(ROLE.Window))
        if option.state & QStyle.StateFlag.State_Selected:
            wash = palette.color(ROLE.Highlight)
            wash.setAlphaF(WASH)
            painter.fillRect(rect, wash)
        painter.setPen(QPen(palette.color(ROLE.Mid), 1))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        painter.setFont(option.font)
        if index.column() == Column.VALUE:
            self._paint_field(painter, option, question, str(index.data() or ""))
        else:
            self._paint_text(painter, option, index)
        painter.restore()

    def _paint_text(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        rect: QRect = option.rect.adjusted(INSET_PX, 0, -INSET_PX, 0)
        mark = index.data(Qt.ItemDataRole.DecorationRole)
        if isinstance(mark, QIcon):
            side = max(MARK_PX, option.fontMetrics.height())
            place = QRect(rect.left(), rect.center().y() - side // 2, side, side)
            mark.paint(painter, place)
            rect = rect.adjusted(side + 6, 0, 0, 0)
        role = ROLE.PlaceholderText if index.column() == Column.NEEDED else ROLE.WindowText
        if index.column() == Column.PART:
            painter.setFont(scaled(option.font, 1.0, strong=True))
        painter.setPen(option.palette.color(role))
        metrics = painter.fontMetrics()
        text = metrics.elidedText(str(index.data() or ""), Qt.TextElideMode.ElideRight, rect.width())
        painter.drawText(rect, _LEFT, text)

    def _paint_field(
        self, painter: QPainter, option: QStyleOptionViewItem, question: Question, value: str
    ) -> None:
        palette = option.palette
        box = field_rect(option.rect)
        has_focus = bool(option.state & QStyle.StateFlag.State_HasFocus)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge = ROLE.Highlight if has_focus else ROLE.Dark
        painter.setPen(QPen(palette.color(edge), 2 if has_focus else 1))
        painter.setBrush(palette.color(ROLE.Base))
        shift = 1.0 if has_focus else 0.5
        painter.drawRoundedRect(box.toRectF().adjusted(shift, shift, -shift, -shift), RADIUS_PX, RADIUS_PX)
        inner = box.adjusted(TEXT_PX, 0, -TEXT_PX, 0)
        # What is not a number is chosen; a list of several has its own panel.
        sign = tr(question.field.unit) if question.field.type is FieldType.NUMBER else ""
        if question.field.type is FieldType.NUMBER:
            inner = _right(painter, palette, inner, sign)
        else:
            _arrow(painter, palette, inner)
            inner.setRight(inner.right() - 16)
        state = state_words(question)
        words = f"({state})" if value and state else state
        painter.setPen(palette.color(ROLE.Text))
        metrics = painter.fontMetrics()
        shown = metrics.elidedText(value, Qt.TextElideMode.ElideRight, inner.width())
        painter.drawText(inner, _LEFT, shown)
        inner.setLeft(inner.left() + metrics.horizontalAdvance(shown) + (5 if shown else 0))
        painter.setPen(palette.color(ROLE.PlaceholderText))
        painter.drawText(inner, _LEFT, metrics.elidedText(words, Qt.TextElideMode.ElideRight, inner.width()))

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as a field in its row."""
        return QSize(120, row_height(option.fontMetrics.height()))

    # Typing.

    def createEditor(self, parent: QWidget, option: QStyleOptionViewItem, index: Index) -> QWidget:
        """A number's field or a choice, which tell their own answers."""
        question = index.data(QUESTION)
        if not isinstance(question, Question):
            return super().createEditor(parent, option, index)
        made = entry_for(question, parent)
        made.committed.connect(self._answerer(question.key))
        if isinstance(made, NumberEntry):
            made.refused.connect(self._refuser(question.key))
        else:
            made.committed.connect(self._picked)
        return made

    def setEditorData(self, editor: QWidget, index: Index) -> None:
        """Show what the drawing holds."""
        question = index.data(QUESTION)
        if isinstance(editor, NumberEntry | ChoiceEntry) and isinstance(question, Question):
            editor.show_row(row_of(self._model, question))
            if isinstance(editor, NumberEntry) and not editor.isModified():
                editor.selectAll()

    def setModelData(self, editor: QWidget, model: QAbstractItemModel, index: Index) -> None:
        """Nothing: an entry tells its answer itself, and a drawing is changed by steps alone."""

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        """Over the field that is painted."""
        editor.setGeometry(field_rect(option.rect))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Enter and Tab answer and go on, with Shift back; Escape leaves it as it was."""
        if isinstance(watched, NumberEntry | ChoiceEntry) and event.type() is QEvent.Type.KeyPress:
            assert isinstance(event, QKeyEvent)
            step = _step(event)
            if step:
                self._finish(watched, step)
                return True
            if event.key() == Qt.Key.Key_Escape:
                watched.put_back()
        return super().eventFilter(watched, event)

    def _finish(self, editor: Entry, step: int) -> None:
        self._was_refused = False
        editor.take()
        if self._was_refused:
            editor.setFocus(Qt.FocusReason.OtherFocusReason)
            return
        self.closeEditor.emit(editor, QStyledItemDelegate.EndEditHint.NoHint)
        self.moved.emit(step)

    def _picked(self) -> None:
        """Something was picked from the list by mouse or key: that is an answer, the field has done."""
        editor = self.sender()
        if isinstance(editor, ChoiceEntry) and not self._was_refused:
            self.closeEditor.emit(editor, QStyledItemDelegate.EndEditHint.NoHint)

    def _answerer(self, key: str) -> Callable[[object], None]:
        return lambda value: self.answered.emit(key, value)

    def _refuser(self, key: str) -> Callable[[str], None]:
        def refuse(sentence: str) -> None:
            self.refuse()
            self.refused.emit(key, sentence)

        return refuse


_LEFT = int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
_RIGHT = int(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)


def row_height(text_height: int) -> int:
    """A field 30 high in a row of 38, more where letters are larger."""
    return max(30, text_height + 14) + 2 * FIELD_INSET_PX


def field_rect(cell: QRect) -> QRect:
    """Where the field stands in its cell."""
    return cell.adjusted(FIELD_INSET_PX, FIELD_INSET_PX, -FIELD_INSET_PX, -FIELD_INSET_PX)


def _right(painter: QPainter, palette: QPalette, rect: QRect, text: str) -> QRect:
    """Write at the right edge; what is left of the room."""
    if not text:
        return QRect(rect)
    painter.setPen(palette.color(ROLE.PlaceholderText))
    painter.drawText(rect, _RIGHT, text)
    return rect.adjusted(0, 0, -painter.fontMetrics().horizontalAdvance(text) - 6, 0)


def _arrow(painter: QPainter, palette: QPalette, rect: QRect) -> None:
    pen = QPen(palette.color(ROLE.Text), 1.5)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    x, y = rect.right() - 6, rect.center().y() + 2
    painter.drawLine(x - 4, y - 4, x, y)
    painter.drawLine(x, y, x + 4, y - 4)


def _step(event: QKeyEvent) -> int:
    """1 for the keys that go on, -1 for those that go back, 0 for all others."""
    back = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
    if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
        return -1 if back else 1
    return {int(Qt.Key.Key_Tab): 1, int(Qt.Key.Key_Backtab): -1}.get(event.key(), 0)
