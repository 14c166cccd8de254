"""Lists whose rows are as high as their text needs in the width there is."""

from __future__ import annotations

from PySide6.QtCore import QRect, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QTreeWidget, QTreeWidgetItem, QTreeWidgetItemIterator

PAD_PX, BESIDE_PX, LEAST_PX = 6, 30, 24


class Rows(QTreeWidget):
    """A list, or a list under headings; texts of the first column wrap, none is cut short.

    `beside`: px that a tick or a sign takes before the text.
    """

    def __init__(self, name: str, *, indent: int = 0, beside: int = 0) -> None:
        super().__init__()
        self._beside = beside
        self.setAccessibleName(name)
        self.setHeaderHidden(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setRootIsDecorated(indent > 0)
        self.setIndentation(indent)
        self.setWordWrap(True)
        self.setUniformRowHeights(False)
        self.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)

    def add(self, text: str, parent: QTreeWidgetItem | None = None) -> QTreeWidgetItem:
        """One row more, under a heading or at the end."""
        item = QTreeWidgetItem([text])
        if parent is None:
            self.addTopLevelItem(item)
        else:
            parent.addChild(item)
        self._measure(item)
        return item

    @property
    def row(self) -> int:
        """The number of the row at hand among those of the first level; -1 for none."""
        item = self.currentItem()
        return -1 if item is None else self.indexOfTopLevelItem(item)

    def choose_row(self, row: int) -> None:
        """Take a row of the first level in hand."""
        item = self.topLevelItem(row)
        if item is not None:
            self.setCurrentItem(item)

    @property
    def height_of_all(self) -> int:
        """Px that all rows of the first level need."""
        items = (self.topLevelItem(row) for row in range(self.topLevelItemCount()))
        return sum(item.sizeHint(0).height() for item in items if item is not None)

    def measure(self) -> None:
        """Make every row as high as it needs."""
        walk = QTreeWidgetItemIterator(self)
        while (item := walk.value()) is not None:
            self._measure(item)
            walk += 1

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width is another height."""
        super().resizeEvent(event)
        self.measure()

    def _measure(self, item: QTreeWidgetItem) -> None:
        depth = 1 if item.parent() is not None else 0
        indent = self.indentation() * (depth + (1 if self.rootIsDecorated() else 0))
        wide = max(60, self.columnWidth(0) - indent - self._beside - BESIDE_PX // 3)
        box = QRect(0, 0, wide, 4000)
        flags = int(Qt.TextFlag.TextWordWrap)
        need = self.fontMetrics().boundingRect(box, flags, item.text(0)).height()
        item.setSizeHint(0, QSize(0, max(LEAST_PX, need + PAD_PX)))
