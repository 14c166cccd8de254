"""The questions as a model: rows stay where they are while values are filled in."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, Any

from PySide6.QtCore import QAbstractTableModel, QModelIndex, QPersistentModelIndex, Qt
from PySide6.QtGui import QIcon

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.fill_in.asked import Asked, Column, Shown
from circuitcheck.editor.icons import grade_icon
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import decimal_sign, later, tr
from circuitcheck.finding import Grade
from circuitcheck.parts.kind import FieldType
from circuitcheck.report.asking import Question

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.figures.figure import Figure

Index = QModelIndex | QPersistentModelIndex
HEADINGS = (later("Part or pipe"), later("What"), later("Value"), later("Needed by"))
QUESTION = Qt.ItemDataRole.UserRole
AS_ASKED = -1
_SORTED = (Column.PART, Column.FIELD, Column.VALUE)
_NOWHERE = QModelIndex()


class AskModel(QAbstractTableModel):
    """Rows are questions. `put_in_order` decides which and where; a change of the drawing moves none."""

    def __init__(self) -> None:
        super().__init__()
        self.asked = Asked()
        self.asked.decimal = decimal_sign()
        self.shown = Shown.OPEN
        self._keys: list[str] = []
        self._rows: dict[str, int] = {}
        self._icons: dict[Grade | None, QIcon] = {}
        self._words: tuple[str, ...] = ()
        self._sorted_by, self._order = AS_ASKED, Qt.SortOrder.AscendingOrder

    # What the drawing says.

    def show_drawing(self, drawing: Drawing) -> None:
        """Take over a changed drawing: what is shown stays where it is, what is new comes last."""
        gone, new = self.asked.take(drawing)
        if any(key in self._rows for key in gone):
            self._replace([key for key in self._keys if key in self.asked.questions])
        self._add(new)
        self._tell_changed()

    def show_analysis(self, analysis: Analysis) -> None:
        """Take over what the checks need."""
        self._add(self.asked.take_needs(analysis))
        self._tell_changed()

    def show_figures(self, figures: Sequence[Figure]) -> None:
        """Take over what the figures need."""
        self._add(self.asked.take_figures(figures))
        self._tell_changed()

    def begin(self, drawing: Drawing) -> None:
        """Another drawing altogether: nothing of the one before holds."""
        self.asked.begin(drawing)
        self.put_in_order()

    # Which questions are shown, and in which order.

    def put_in_order(self) -> None:
        """Show what is to be shown now, in the order in which it is asked or sorted."""
        self.asked.settle()
        found = self.asked.chosen(self.shown, self._words)
        is_falling = self._order is Qt.SortOrder.DescendingOrder
        if self._sorted_by in _SORTED:
            # What weighs alike stays in the order of asking.
            found.sort(key=lambda key: self.asked.sort_key(self._sorted_by, key), reverse=is_falling)
        elif is_falling:
            found.reverse()
        self._replace(found)

    def choose(self, shown: Shown) -> None:
        """Show another choice of questions."""
        self.shown = shown
        self.put_in_order()

    def find(self, typed: str) -> None:
        """Show only questions that hold every word typed."""
        self._words = tuple(typed.casefold().split())
        self.put_in_order()

    def sort(self, column: int, order: Qt.SortOrder = Qt.SortOrder.AscendingOrder) -> None:
        """Sort by a column; -1 for the order in which questions are asked."""
        self._sorted_by = column
        self._order = order if column >= 0 else Qt.SortOrder.AscendingOrder
        self.put_in_order()

    def _replace(self, keys: list[str]) -> None:
        self.beginResetModel()
        self._keys = keys
        self._rows = {key: row for row, key in enumerate(keys)}
        self.endResetModel()

    def _add(self, keys: Iterable[str]) -> None:
        fresh = (key for key in dict.fromkeys(keys) if key not in self._rows)
        new = self.asked.chosen(self.shown, self._words, fresh)
        if not new:
            return
        first = len(self._keys)
        self.beginInsertRows(_NOWHERE, first, first + len(new) - 1)
        self._rows |= {key: first + place for place, key in enumerate(new)}
        self._keys += new
        self.endInsertRows()

    def _tell_changed(self) -> None:
        if self._keys:
            self.dataChanged.emit(self.index(0, 0), self.index(len(self._keys) - 1, Column.NEEDED))

    # What the table asks.

    @property
    def drawing(self) -> Drawing:
        """The drawing the questions are of."""
        return self.asked.drawing

    @property
    def keys(self) -> list[str]:
        """The keys of the rows, in their order."""
        return self._keys

    def question(self, row: int) -> Question | None:
        """The question of a row; None where there is no such row."""
        return self.asked.questions[self._keys[row]] if 0 <= row < len(self._keys) else None

    def row_of(self, key: str) -> int | None:
        """The row of a question; None where it is not shown."""
        return self._rows.get(key)

    def set_theme(self, theme: Theme) -> None:
        """Paint the marks anew."""
        self._icons = {grade: grade_icon(grade, theme) for grade in (*Grade, None)}
        self._tell_changed()

    def rowCount(self, parent: Index = _NOWHERE) -> int:
        """One row a question."""
        return 0 if parent.isValid() else len(self._keys)

    def columnCount(self, parent: Index = _NOWHERE) -> int:
        """Part, field, value, need."""
        return 0 if parent.isValid() else len(HEADINGS)

    def headerData(self, section: int, orientation: Qt.Orientation, role: int = 0) -> Any:
        """The headings."""
        if orientation is Qt.Orientation.Horizontal and role == Qt.ItemDataRole.DisplayRole:
            return tr(HEADINGS[section])
        return None

    def flags(self, index: Index) -> Qt.ItemFlag:
        """Every row can be chosen; the value edited, but for a list of several, which has its own panel."""
        if not index.isValid():
            return Qt.ItemFlag.NoItemFlags
        found = Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable
        question = self.question(index.row())
        if index.column() == Column.VALUE and question and question.field.type is not FieldType.CHOICES:
            found |= Qt.ItemFlag.ItemIsEditable
        return found

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> Any:
        """Texts, the mark of the heaviest need, and the question itself."""
        question = self.question(index.row())
        if question is None:
            return None
        column = index.column()
        match role:
            case Qt.ItemDataRole.UserRole:
                return question
            case Qt.ItemDataRole.DisplayRole:
                return self.asked.text(question, column)
            case Qt.ItemDataRole.AccessibleTextRole:
                return self.asked.spoken(question, column)
            case Qt.ItemDataRole.ToolTipRole if column != Column.VALUE:
                return plain.tip_text(self.asked.text(question, column))
            case Qt.ItemDataRole.DecorationRole if column == Column.NEEDED:
                return self._mark(question)
            case _:
                return None

    def _mark(self, question: Question) -> QIcon | None:
        mark = self.asked.mark(question)
        if isinstance(mark, Grade):
            return self._icons.get(mark)
        return self._icons.get(None) if mark else None
