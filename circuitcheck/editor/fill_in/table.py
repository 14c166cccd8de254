"""The table itself: keys, copying, pasting, and a current row whose value is ready to be typed."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QContextMenuEvent, QFontMetrics, QKeyEvent, QKeySequence, QPalette, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QHeaderView, QTableView

from circuitcheck.editor.fill_in.asked import Column
from circuitcheck.editor.fill_in.delegate import AskDelegate, row_height
from circuitcheck.editor.fill_in.model import AskModel, Index
from circuitcheck.editor.translating import tr
from circuitcheck.parts.kind import FieldType

_Trigger = QAbstractItemView.EditTrigger
LETTERS = {Column.PART: 36, Column.FIELD: 36, Column.VALUE: 30}
"""How wide a column begins, in letters of the font."""
MOST_SHARE = {Column.PART: 0.22, Column.FIELD: 0.24, Column.VALUE: 0.24}
"""The most of the table that it takes, so that what needs the value is in view too."""


class AskTable(QTableView):
    """`elsewhere` is sent for a field that is filled in in the details panel."""

    elsewhere = Signal()
    copy_wanted = Signal()
    paste_wanted = Signal()
    menu_wanted = Signal(object)

    def __init__(self, model: AskModel) -> None:
        super().__init__()
        self._asked = model
        self._is_own = False
        self.setModel(model)
        self.delegate = AskDelegate(model, self)
        self.setItemDelegate(self.delegate)
        self.setAccessibleName(tr("What is not known, and what needs it"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setShowGrid(False)
        self.setWordWrap(False)
        self.setTabKeyNavigation(False)
        self.setSelectionBehavior(QAbstractItemView.SelectionBehavior.SelectRows)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setEditTriggers(_Trigger.EditKeyPressed | _Trigger.AnyKeyPressed | _Trigger.DoubleClicked)
        self.viewport().setBackgroundRole(QPalette.ColorRole.Window)
        self.verticalHeader().hide()
        self.verticalHeader().setSectionResizeMode(QHeaderView.ResizeMode.Fixed)
        header = self.horizontalHeader()
        header.setHighlightSections(False)
        header.setDefaultAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        header.setStretchLastSection(True)
        # Off: the sort indicator is cleared by a third click, and the order of asking is back.
        header.setSortIndicatorClearable(True)
        header.setSortIndicator(-1, Qt.SortOrder.AscendingOrder)
        self.setSortingEnabled(True)
        header.sectionHandleDoubleClicked.connect(self._own)
        header.sectionResized.connect(self._resized)
        self.clicked.connect(self._clicked)
        self.delegate.moved.connect(self.go)
        self._fit_rows()

    def use_widths(self) -> None:
        """Columns as wide as their texts need in this font, until somebody drags one."""
        if self._is_own:
            return
        letter = QFontMetrics(self.font()).averageCharWidth()
        with QSignalBlocker(self.horizontalHeader()):
            for column, letters in LETTERS.items():
                most = int(self.viewport().width() * MOST_SHARE[column])
                self.setColumnWidth(column, min(letters * letter, most))
        self.updateGeometries()
        self.viewport().update()

    @property
    def is_typing(self) -> bool:
        """Whether an entry stands open."""
        return self.state() is QAbstractItemView.State.EditingState

    def current_row(self) -> int:
        """The current row, -1 for none."""
        return self.currentIndex().row()

    def go_to(self, row: int) -> None:
        """Make a row the current one."""
        if 0 <= row < self._asked.rowCount():
            self.setCurrentIndex(self._asked.index(row, Column.VALUE))

    def go(self, step: int) -> None:
        """Go to the next row and type there; the last one ends it."""
        row = self.current_row() + step
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        if 0 <= row < self._asked.rowCount():
            self.go_to(row)
            self.begin(by_hand=False)

    def begin(self, *, by_hand: bool = True) -> None:
        """Type into the current row; a list of several is filled in elsewhere, if asked for by hand."""
        index = self._asked.index(self.current_row(), Column.VALUE)
        question = self._asked.question(index.row())
        if question is None:
            return
        if question.field.type is not FieldType.CHOICES:
            self.edit(index)
        elif by_hand:
            self.elsewhere.emit()

    def currentChanged(self, current: Index, previous: Index) -> None:
        """The value of the current row is what one types into, wherever the row was clicked."""
        super().currentChanged(current, previous)
        if current.isValid() and current.column() != Column.VALUE:
            self.setCurrentIndex(self._asked.index(current.row(), Column.VALUE))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter types into the current row; copy and paste as everywhere."""
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_wanted.emit()
        elif event.matches(QKeySequence.StandardKey.Paste):
            self.paste_wanted.emit()
        elif event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self.begin()
        else:
            super().keyPressEvent(event)

    def contextMenuEvent(self, event: QContextMenuEvent) -> None:
        """What can be done with the current row."""
        if self.current_row() >= 0:
            by_key = event.reason() is QContextMenuEvent.Reason.Keyboard
            below = self.visualRect(self.currentIndex()).bottomLeft()
            self.menu_wanted.emit(self.viewport().mapToGlobal(below) if by_key else event.globalPos())

    def changeEvent(self, event: QEvent) -> None:
        """Rows grow with the letters."""
        super().changeEvent(event)
        if event.type() in (QEvent.Type.FontChange, QEvent.Type.StyleChange):
            self._fit_rows()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Columns keep their share."""
        super().resizeEvent(event)
        self.use_widths()

    def _resized(self, section: int, before: int, after: int) -> None:
        if section != Column.NEEDED and self.isVisible():
            self._own()

    def _own(self) -> None:
        self._is_own = True

    def _fit_rows(self) -> None:
        height = row_height(QFontMetrics(self.font()).height())
        header = self.verticalHeader()
        if header.defaultSectionSize() != height:
            header.setMinimumSectionSize(height)
            header.setDefaultSectionSize(height)
            self.use_widths()

    def _clicked(self, index: QModelIndex) -> None:
        if index.column() == Column.VALUE:
            self.begin()
