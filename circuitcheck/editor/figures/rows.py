"""The rows of the figures: a model of those that were found, and a delegate that paints each in a few lines."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QFont, QIcon, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import words
from circuitcheck.editor.figures.heights import (
    INSET_PX,
    PAD_PX,
    WRAP,
    Faces,
    Measures,
    Rows,
    Said,
    Setting,
    said_of,
)
from circuitcheck.editor.icons import GRADE_PX, grade_icon
from circuitcheck.editor.styling import wash
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.figures.figure import Figure
from circuitcheck.finding import Grade

Index = QModelIndex | QPersistentModelIndex
FIGURE = Qt.ItemDataRole.UserRole
RIGHT = int(Qt.AlignmentFlag.AlignRight) | int(Qt.AlignmentFlag.AlignTop)


class FiguresModel(QAbstractListModel):
    """The figures that are shown, in their order."""

    def __init__(self, decimal: str) -> None:
        super().__init__()
        self.decimal = decimal
        self.drawing = Drawing()
        self.figures: tuple[Figure, ...] = ()

    def show_figures(self, drawing: Drawing, figures: Sequence[Figure]) -> None:
        """Replace all rows."""
        self.beginResetModel()
        self.drawing, self.figures = drawing, tuple(figures)
        self.endResetModel()

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """One a figure."""
        return 0 if parent.isValid() else len(self.figures)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A figure's title, itself, and what is read out of it."""
        if not index.isValid() or index.row() >= len(self.figures):
            return None
        figure = self.figures[index.row()]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return tr(figure.title)
            case Qt.ItemDataRole.AccessibleTextRole:
                return words.spoken(self.drawing, figure, self.decimal)
            case _ if role == FIGURE:
                return figure
        return None


class FigureDelegate(QStyledItemDelegate):
    """Paints title, subject and the first results; the opened row carries a widget, `opened_high` px high."""

    def __init__(self, model: FiguresModel) -> None:
        super().__init__()
        self._model = model
        self.width = 320
        self.opened_row = -1
        self.opened_high = 0
        self._theme = light()
        self._unanswered = QIcon()
        self._faces: tuple[str, Faces] | None = None
        self.rows = Rows(lambda figure: said_of(model.drawing, figure, model.decimal), self._high)

    @property
    def theme(self) -> Theme:
        """The colours it paints in."""
        return self._theme

    def set_theme(self, theme: Theme) -> None:
        """Paint in other colours."""
        self._theme = theme
        self._unanswered = grade_icon(Grade.UNANSWERED, theme)

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as its lines are at the list's width."""
        if index.row() == self.opened_row:
            return QSize(self.width, self.opened_high)
        # Not by way of `index.data`: a list asks for thousands of rows at a time.
        figure = self._model.figures[index.row()]
        name, _ = self._in(option.font)
        return QSize(self.width, self.rows.high(figure, Setting(self.width, name)))

    def _in(self, font: QFont) -> tuple[str, Faces]:
        """The key of a font, and the faces made of it."""
        name = font.key()
        if self._faces is None or self._faces[0] != name:
            self._faces = name, Faces(font)
        return self._faces

    def _high(self, figure: Figure, said: Said) -> int:
        assert self._faces is not None
        return Measures(self._faces[1], self.width).high(figure, said)

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint one figure."""
        figure = index.data(FIGURE)
        if index.row() == self.opened_row or not isinstance(figure, Figure):
            return
        rect: QRect = option.rect
        state: QStyle.StateFlag = option.state
        painter.save()
        if state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(rect, wash(self._theme, 0.10))
        if figure.lacks_numbers:
            self._unanswered.paint(
                painter, rect.right() - INSET_PX - GRADE_PX, rect.top() + PAD_PX - 1, GRADE_PX, GRADE_PX
            )
        _, faces = self._in(option.font)
        measures, said = Measures(faces, self.width), self.rows.said(figure)
        room = QRect(rect.left() + INSET_PX, rect.top() + PAD_PX, measures.room(figure), rect.height())
        for text, face, high in measures.texts(figure, said):
            painter.setFont(face)
            painter.setPen(self._theme["ink" if face is faces.title else "ink_2"])
            painter.drawText(room, WRAP, text)
            room.translate(0, high)
        self._paint_results(painter, measures, said, QRect(room.left(), room.top(), measures.inner, 0))
        painter.setPen(self._theme["hairline"])
        painter.drawLine(rect.left() + INSET_PX, rect.bottom(), rect.right() - INSET_PX, rect.bottom())
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(self._theme["select"], 2))
            painter.drawRoundedRect(rect.adjusted(3, 2, -3, -3), 5, 5)
        painter.restore()

    def _paint_results(self, painter: QPainter, measures: Measures, said: Said, room: QRect) -> None:
        """The first results: the name of each to the left, its value to the right."""
        faces = measures.faces
        for name, value, wide, high in measures.results(said):
            painter.setFont(faces.text)
            painter.setPen(self._theme["ink_2"])
            painter.drawText(QRect(room.left(), room.top(), wide, high), WRAP, name)
            painter.setFont(faces.value)
            painter.setPen(self._theme["ink"])
            painter.drawText(QRect(room.left(), room.top(), room.width(), high), RIGHT, value)
            room.translate(0, high)

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        """A widget in a row has the whole row."""
        editor.setGeometry(option.rect)
