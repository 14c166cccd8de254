"""The outline as Qt asks for it: rows are looked up by number, so that an index that is stale leads nowhere."""

from __future__ import annotations

from PySide6.QtCore import (
    QAbstractItemModel,
    QItemSelection,
    QItemSelectionRange,
    QModelIndex,
    QObject,
    QPersistentModelIndex,
    QSize,
    Qt,
)

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.outline.rows import Outline, Row

Index = QModelIndex | QPersistentModelIndex
NOWHERE = QModelIndex()
ROW_PX = 26
"""How high a row is: large enough to hit."""


class OutlineModel(QAbstractItemModel):
    """One column: what a row says. Rows below another are made when a view asks for them."""

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.outline = Outline(Drawing())

    def show(self, outline: Outline) -> None:
        """Replace all rows."""
        self.beginResetModel()
        self.outline = outline
        self.endResetModel()

    def row_at(self, index: Index) -> Row | None:
        """The row an index stands for."""
        return self.outline.numbered(index.internalId()) if index.isValid() else None

    def index_of(self, row: Row) -> QModelIndex:
        """The index of a row."""
        return self.createIndex(row.place, 0, row.number)

    def selection_of(self, rows: list[Row]) -> QItemSelection:
        """Rows as Qt selects them: those that follow one another as one piece."""
        selection = QItemSelection()
        start = before = None
        for row in rows:
            follows = before is not None and row.above is before.above and row.place == before.place + 1
            if not follows:
                if start is not None and before is not None:
                    selection.append(QItemSelectionRange(self.index_of(start), self.index_of(before)))
                start = row
            before = row
        if start is not None and before is not None:
            selection.append(QItemSelectionRange(self.index_of(start), self.index_of(before)))
        return selection

    def index(self, row: int, column: int, parent: Index = NOWHERE) -> QModelIndex:
        """The index of a place below another."""
        rows = self._below(parent)
        return self.index_of(rows[row]) if column == 0 and 0 <= row < len(rows) else QModelIndex()

    def parent(self, child: Index = NOWHERE) -> QModelIndex:  # type: ignore[override]  # QObject has another
        """The index above."""
        row = self.row_at(child)
        return QModelIndex() if row is None or row.above is None else self.index_of(row.above)

    def rowCount(self, parent: Index = NOWHERE) -> int:
        """How many rows there are below one; they are made by this."""
        return len(self._below(parent))

    def columnCount(self, parent: Index = NOWHERE) -> int:
        """One."""
        return 1

    def hasChildren(self, parent: Index = NOWHERE) -> bool:
        """Whether a row can be opened, without making what is below it."""
        row = self.row_at(parent)
        return bool(self.outline.top) if row is None else self.outline.has_below(row)

    def data(self, index: Index, role: int = Qt.ItemDataRole.DisplayRole) -> object:
        """What a row says, and what is read out of it."""
        row = self.row_at(index)
        if row is None:
            return None
        match role:
            case Qt.ItemDataRole.DisplayRole:
                return self.outline.text(row)
            case Qt.ItemDataRole.ToolTipRole:
                return plain.tip_text(self.outline.spoken(row))
            case Qt.ItemDataRole.AccessibleTextRole:
                return self.outline.spoken(row)
            case Qt.ItemDataRole.SizeHintRole:
                return QSize(0, ROW_PX)
        return None

    def _below(self, parent: Index) -> list[Row]:
        if not parent.isValid():
            return self.outline.top
        row = self.row_at(parent)
        return [] if row is None else self.outline.below(row)
