"""The outline's panel: everything drawn by its name, to find by typing, to walk along, and to hear read out."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from PySide6.QtCore import QItemSelection, QItemSelectionModel, QModelIndex, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QLineEdit, QTreeView, QVBoxLayout, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.outline.model import OutlineModel
from circuitcheck.editor.outline.rows import Form, Key, Outline, Row
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding

INDENT_PX = 16
WAIT_MS = 120
"""How long an edit rests before the rows are made anew: several in a row cost one."""
MOST_OPENED = 200
"""Up to so many things found by typing are shown opened."""
_Flag = QItemSelectionModel.SelectionFlag


class OutlineTree(QTreeView):
    """The tree. `entered` on Enter or a double click."""

    entered_row = Signal(QModelIndex)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Outline of the drawing"))
        self.setAccessibleDescription(
            tr(
                "Arrow right opens a row, arrow left closes it. Enter goes on along a pipe, or opens a finding."
            )
        )
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.setUniformRowHeights(True)
        self.setHeaderHidden(True)
        self.setIndentation(INDENT_PX)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setExpandsOnDoubleClick(False)
        self.doubleClicked.connect(self.entered_row)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter goes on from the row."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.currentIndex().isValid():
            self.entered_row.emit(self.currentIndex())
            event.accept()
            return
        super().keyPressEvent(event)


class OutlinePanel(QWidget):
    """Signals `selected` with the ids chosen in it, and `finding_wanted` with a finding to open."""

    selected = Signal(object)
    finding_wanted = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._drawing = Drawing()
        self._findings: Sequence[Finding] = ()
        self._ids: frozenset[str] = frozenset()
        self._is_stale = True
        self._is_marking = False
        self.find_box = QLineEdit()
        self.find_box.setPlaceholderText(tr("Find in the drawing"))
        self.find_box.setAccessibleName(tr("Find in the drawing"))
        self.find_box.setClearButtonEnabled(True)
        self.tree = OutlineTree()
        self.model = OutlineModel(self)
        self.tree.setModel(self.model)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self.find_box)
        column.addWidget(self.tree, 1)
        self._waiting = QTimer(self, interval=WAIT_MS, singleShot=True)
        self._waiting.timeout.connect(self.bring_up_to_date)
        self.find_box.textChanged.connect(self._search)
        self.tree.selectionModel().selectionChanged.connect(self._tell)
        self.tree.entered_row.connect(self._enter)

    def show_drawing(self, drawing: Drawing) -> None:
        """List what a drawing holds; put off as long as the outline is not seen."""
        self._drawing = drawing
        self._wait()

    def show_findings(self, findings: Sequence[Finding]) -> None:
        """List what the checks say."""
        self._findings = tuple(findings)
        self._wait()

    def show_selection(self, ids: Iterable[str]) -> None:
        """Mark and reveal what is selected on the sheet."""
        wanted = frozenset(ids)
        if wanted != self._ids:
            self._ids = wanted
            if not self._is_stale:
                self._mark()

    def show_finding(self, finding: Finding | None) -> None:
        """Go to a finding that was opened elsewhere."""
        if finding is None or self._is_stale or self.tree.hasFocus():
            return
        key = ("finding", finding.check, *finding.components, *finding.pipes)
        row = self.model.outline.row_of(key)
        if row is not None:
            self._go_to(row, _Flag.NoUpdate)

    def bring_up_to_date(self) -> None:
        """Make the rows anew, where they are stale; what was open stays open, and one stays where one was."""
        if not self._is_stale:
            return
        self._is_stale = False
        self._waiting.stop()
        opened, at, chosen = self._opened(), self._at(), self._chosen()
        self._is_marking = True
        self.model.show(Outline(self._drawing, self._findings, self.find_box.text()))
        self._is_marking = False
        self._open_again(opened)
        self._choose_again(chosen)
        row = None if at is None else self.model.outline.row_of(at)
        if row is None and self.model.outline.top:
            row = self.model.outline.top[0]
        if row is not None:
            self._go_to(row, _Flag.NoUpdate)
        self._mark()

    def showEvent(self, event: QShowEvent) -> None:
        """List what was put off."""
        super().showEvent(event)
        self.bring_up_to_date()

    def _wait(self) -> None:
        self._is_stale = True
        if self.isVisible():
            self._waiting.start()

    def _search(self) -> None:
        self._is_stale = True
        self.bring_up_to_date()

    def _opened(self) -> list[Key]:
        """Which rows are open; of those that a search opened none."""
        if self.model.outline.is_searched:
            return []
        found: list[Key] = []
        rows = list(self.model.outline.top)
        while rows:
            row = rows.pop()
            if self.tree.isExpanded(self.model.index_of(row)):
                found.append(row.key)
                rows += row.below or ()
        return found[::-1]

    def _open_again(self, keys: list[Key]) -> None:
        outline = self.model.outline
        if outline.is_searched:
            found = outline.top if sum(len(each.members) for each in outline.top) <= MOST_OPENED else ()
        else:
            found = [row for key in keys if (row := outline.row_of(key)) is not None]
        for row in found:
            self.tree.setExpanded(self.model.index_of(row), True)

    def _chosen(self) -> Key | None:
        """The row selected, where it is one: below a part it says more than what is selected on the sheet."""
        rows = self.tree.selectionModel().selectedIndexes()
        row = self.model.row_at(rows[0]) if len(rows) == 1 else None
        return None if row is None else row.key

    def _choose_again(self, key: Key | None) -> None:
        row = None if key is None else self.model.outline.row_of(key)
        if row is not None:
            self._is_marking = True
            self._go_to(row, _Flag.ClearAndSelect)
            self._is_marking = False

    def _at(self) -> Key | None:
        row = self.model.row_at(self.tree.currentIndex())
        return None if row is None else row.key

    def _mark(self) -> None:
        """Select the rows of what is selected on the sheet, unless the rows selected say just that."""
        if self._told() == self._ids:
            return
        rows = self.model.outline.rows_of(self._ids)
        self._is_marking = True
        self.tree.selectionModel().select(self.model.selection_of(rows), _Flag.ClearAndSelect | _Flag.Rows)
        if rows:
            self._go_to(rows[0], _Flag.NoUpdate)
        self._is_marking = False

    def _go_to(self, row: Row, how: QItemSelectionModel.SelectionFlag) -> None:
        index = self.model.index_of(row)
        self.tree.selectionModel().setCurrentIndex(index, how)
        self.tree.scrollTo(index)

    def _told(self) -> frozenset[str]:
        """The ids of the rows selected that are still in the drawing: a finding may name what was taken out since."""
        drawing = self._drawing
        rows = map(self.model.row_at, self.tree.selectionModel().selectedIndexes())
        named = (id for row in rows if row is not None for id in row.ids)
        return frozenset(
            id for id in named if id in drawing.components or id in drawing.pipes or id in drawing.controls
        )

    def _tell(self, chosen: QItemSelection, left: QItemSelection) -> None:
        if not self._is_marking:
            self._ids = self._told()
            self.selected.emit(self._ids)

    def _enter(self, index: QModelIndex) -> None:
        """Go on from a row: open a group or a finding, else go along the pipe to where it leads."""
        row = self.model.row_at(index)
        if row is None:
            return
        if row.form is Form.FINDING:
            self.finding_wanted.emit(row.finding)
        elif row.form in (Form.PORT, Form.END, Form.NAMED):
            there = self.model.outline.row_of(("thing", row.leads_to))
            if there is not None:
                self._go_to(there, _Flag.ClearAndSelect)
        else:
            self.tree.setExpanded(index, not self.tree.isExpanded(index))
