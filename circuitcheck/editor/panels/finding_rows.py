"""The rows of the findings list: a model of the findings and a delegate that paints each in a few lines."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date

from PySide6.QtCore import (
    QAbstractListModel,
    QModelIndex,
    QPersistentModelIndex,
    QRect,
    QSize,
    Qt,
)
from PySide6.QtGui import QFont, QFontMetrics, QIcon, QPainter
from PySide6.QtWidgets import QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.icons import GRADE_PX, grade_icon
from circuitcheck.editor.styling import wash
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding, Grade
from circuitcheck.report.finding_text import grade_words, message, title
from circuitcheck.review.acceptances import acceptance_of

Index = QModelIndex | QPersistentModelIndex
FINDING = Qt.ItemDataRole.UserRole
MESSAGE = Qt.ItemDataRole.UserRole + 1
INSET_PX, MARK_PX, PAD_PX = 16, 32, 9
LEAST_PX = 44
WRAP = int(Qt.TextFlag.TextWordWrap) | int(Qt.AlignmentFlag.AlignLeft) | int(Qt.AlignmentFlag.AlignTop)


class FindingsModel(QAbstractListModel):
    """The findings, heaviest first; after them one row without a finding, for the verdict."""

    def __init__(self) -> None:
        super().__init__()
        self._drawing = Drawing()
        self._findings: tuple[Finding, ...] = ()
        self._accepted: set[int] = set()
        self._is_shown = False
        self._icons: dict[Grade, QIcon] = {}

    def set_theme(self, theme: Theme) -> None:
        """Paint the marks anew."""
        self._icons = {grade: grade_icon(grade, theme) for grade in Grade}

    def show_findings(self, drawing: Drawing, findings: Sequence[Finding]) -> None:
        """Replace all rows."""
        self.beginResetModel()
        self._drawing, self._findings = drawing, tuple(findings)
        today = date.today()
        self._accepted = (
            {row for row, each in enumerate(findings) if acceptance_of(each, drawing, today)}
            if drawing.acceptances
            else set()
        )
        self._is_shown = True
        self.endResetModel()

    @property
    def findings(self) -> tuple[Finding, ...]:
        """The findings in their order."""
        return self._findings

    def rowCount(self, parent: Index = QModelIndex()) -> int:  # noqa: B008  # Qt's own default
        """The findings and the verdict; none before the first answer."""
        return 0 if parent.isValid() or not self._is_shown else len(self._findings) + 1

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """A finding's title, mark, sentence, and what is read out of it."""
        if not index.isValid() or index.row() >= len(self._findings):
            return None
        finding = self._findings[index.row()]
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return (
                    tr("{finding} (accepted)", finding=title(finding))
                    if index.row() in self._accepted
                    else tr(title(finding))
                )
            case Qt.ItemDataRole.DecorationRole:
                return self._icons.get(finding.grade)
            case Qt.ItemDataRole.AccessibleTextRole:
                accepted = tr(", accepted") if index.row() in self._accepted else ""
                words, sentence = tr(grade_words(finding)), tr(message(self._drawing, finding))
                return f"{words}{accepted}: {tr(title(finding))}. {sentence}"
            case _ if role == FINDING:
                return finding
            case _ if role == MESSAGE:
                return tr(message(self._drawing, finding))
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """The verdict's row is a widget of its own and cannot be chosen."""
        if index.row() >= len(self._findings):
            return Qt.ItemFlag.ItemIsEnabled
        return Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable


class FindingDelegate(QStyledItemDelegate):
    """Paints mark, title and sentence; rows that carry a widget are as high as `heights` says."""

    def __init__(self) -> None:
        super().__init__()
        self.theme = light()
        self.width = 320
        self.heights: dict[int, int] = {}

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as the wrapped texts are at the list's width."""
        if index.row() in self.heights:
            return QSize(self.width, self.heights[index.row()])
        title_font, second = self._fonts(option.font)
        room = self._text_width()
        high = _height(title_font, room, str(index.data()))
        high += _height(second, room, str(index.data(MESSAGE))) + 2
        return QSize(self.width, max(LEAST_PX, high + 2 * PAD_PX))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: Index) -> None:
        """Paint one finding."""
        if index.row() in self.heights:
            return
        rect: QRect = option.rect
        state: QStyle.StateFlag = option.state
        painter.save()
        if state & QStyle.StateFlag.State_MouseOver:
            painter.fillRect(rect, wash(self.theme, 0.10))
        mark = index.data(Qt.ItemDataRole.DecorationRole)
        if isinstance(mark, QIcon):
            mark.paint(painter, rect.left() + INSET_PX - 1, rect.top() + PAD_PX - 1, GRADE_PX, GRADE_PX)
        title_font, second = self._fonts(option.font)
        room = QRect(rect.left() + INSET_PX + MARK_PX, rect.top() + PAD_PX, self._text_width(), rect.height())
        painter.setFont(title_font)
        painter.setPen(self.theme["ink"])
        painter.drawText(room, WRAP, str(index.data()))
        room.translate(0, _height(title_font, room.width(), str(index.data())) + 2)
        painter.setFont(second)
        painter.setPen(self.theme["ink_2"])
        painter.drawText(room, WRAP, str(index.data(MESSAGE)))
        painter.setPen(self.theme["hairline"])
        painter.drawLine(room.left(), rect.bottom(), rect.right() - INSET_PX, rect.bottom())
        if state & QStyle.StateFlag.State_HasFocus:
            pen = painter.pen()
            pen.setColor(self.theme["select"])
            pen.setWidth(2)
            painter.setPen(pen)
            painter.drawRoundedRect(rect.adjusted(3, 2, -3, -3), 5, 5)
        painter.restore()

    def updateEditorGeometry(self, editor: QWidget, option: QStyleOptionViewItem, index: Index) -> None:
        """A widget in a row has the whole row."""
        editor.setGeometry(option.rect)

    def _fonts(self, font: QFont) -> tuple[QFont, QFont]:
        return scaled(font, 1.0, strong=True), scaled(font, 0.93)

    def _text_width(self) -> int:
        return max(60, self.width - 2 * INSET_PX - MARK_PX)


def _height(font: QFont, width: int, text: str) -> int:
    return QFontMetrics(font).boundingRect(QRect(0, 0, width, 10_000), WRAP, text).height()
