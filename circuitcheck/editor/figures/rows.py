"""The rows of the figures: a model of those that were found, and a delegate that paints each in a few lines."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QAbstractListModel, QModelIndex, QPersistentModelIndex, QRect, QSize, Qt
from PySide6.QtGui import QFont, QFontMetrics, QIcon, QPainter, QPen
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.figures import words
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.icons import GRADE_PX, grade_icon
from circuitcheck.editor.styling import wash
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.figures.figure import Figure
from circuitcheck.finding import Grade

Index = QModelIndex | QPersistentModelIndex
FIGURE = Qt.ItemDataRole.UserRole
INSET_PX, PAD_PX, BETWEEN_PX = 16, 9, 10
LEAST_PX = 44
WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignTop)
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
        figure = index.data(FIGURE)
        if not isinstance(figure, Figure):
            return QSize(self.width, LEAST_PX)
        high = sum(high for _, high in self._texts(option.font, figure))
        high += sum(high for *_, high in self._results(option.font, figure))
        return QSize(self.width, max(LEAST_PX, high + 2 * PAD_PX))

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
        room = QRect(rect.left() + INSET_PX, rect.top() + PAD_PX, self._room(figure), rect.height())
        strong = True
        for text, high in self._texts(option.font, figure):
            painter.setFont(self._font(option.font, strong=strong))
            painter.setPen(self._theme["ink" if strong else "ink_2"])
            painter.drawText(room, WRAP, text)
            room.translate(0, high)
            strong = False
        self._paint_results(painter, option, figure, QRect(room.left(), room.top(), self._inner(), 0))
        painter.setPen(self._theme["hairline"])
        painter.drawLine(rect.left() + INSET_PX, rect.bottom(), rect.right() - INSET_PX, rect.bottom())
        if state & QStyle.StateFlag.State_HasFocus:
            painter.setPen(QPen(self._theme["select"], 2))
            painter.drawRoundedRect(rect.adjusted(3, 2, -3, -3), 5, 5)
        painter.restore()

    def _paint_results(
        self, painter: QPainter, option: QStyleOptionViewItem, figure: Figure, room: QRect
    ) -> None:
        """The first results: the name of each to the left, its value to the right."""
        for name, value, wide, high in self._results(option.font, figure):
            painter.setFont(self._font(option.font, strong=False))
            painter.setPen(self._theme["ink_2"])
            painter.drawText(QRect(room.left(), room.top(), wide, high), WRAP, name)
            painter.setFont(scaled(option.font, 0.93, strong=True))
            painter.setPen(self._theme["ink"])
            painter.drawText(QRect(room.left(), room.top(), room.width(), high), RIGHT, value)
            room.translate(0, high)

    def _results(self, font: QFont, figure: Figure) -> list[tuple[str, str, int, int]]:
        """The first results: name, value, how wide the name may be, and how high both are."""
        value_face = QFontMetrics(scaled(font, 0.93, strong=True))
        name_face = QFontMetrics(self._font(font, strong=False))
        found = []
        for name, value in words.head(figure, self._model.decimal):
            taken = value_face.horizontalAdvance(value) + BETWEEN_PX if value else 0
            wide = max(60, self._inner() - taken)
            high = name_face.boundingRect(QRect(0, 0, wide, 10_000), WRAP, name).height()
            found.append((name, value, wide, max(high, value_face.height()) + 1))
        return found

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        """A widget in a row has the whole row."""
        editor.setGeometry(option.rect)

    def _texts(self, font: QFont, figure: Figure) -> list[tuple[str, int]]:
        """Title, subject and why it is not worked, those there are, each with its height."""
        about = words.subject(self._model.drawing, figure)
        found = []
        for index, text in enumerate((tr(figure.title), about, words.why_not(figure))):
            if text:
                face = QFontMetrics(self._font(font, strong=index == 0))
                box = face.boundingRect(QRect(0, 0, self._room(figure), 10_000), WRAP, text)
                found.append((text, box.height() + 2))
        return found

    def _font(self, font: QFont, *, strong: bool) -> QFont:
        return scaled(font, 1.0, strong=True) if strong else scaled(font, 0.93)

    def _inner(self) -> int:
        return max(60, self.width - 2 * INSET_PX)

    def _room(self, figure: Figure) -> int:
        """What the texts have, beside the mark where there is one."""
        return self._inner() - (GRADE_PX + BETWEEN_PX if figure.lacks_numbers else 0)
