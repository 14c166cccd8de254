"""The parts list: everything drawn by its name, to be found by typing, and by those who do not see the sheet."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QSignalBlocker, Qt, Signal
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QHeaderView,
    QLineEdit,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.translating import shown_told, tr
from circuitcheck.report.wording import upper

ID = Qt.ItemDataRole.UserRole


class PartsList(QWidget):
    """Signals `selected` with the ids chosen in it."""

    selected = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._drawing = Drawing()
        self._ids: frozenset[str] = frozenset()
        self._is_stale = True
        self.find_box = QLineEdit()
        self.find_box.setPlaceholderText(tr("Find in the drawing"))
        self.find_box.setAccessibleName(tr("Find in the drawing"))
        self.find_box.setClearButtonEnabled(True)
        self.tree = QTreeWidget()
        self.tree.setAccessibleName(tr("Parts, pipes and controls of the drawing"))
        self.tree.setHeaderLabels([tr("Name"), tr("What it is")])
        self.tree.setFrameShape(QFrame.Shape.NoFrame)
        self.tree.setSelectionMode(QAbstractItemView.SelectionMode.ExtendedSelection)
        self.tree.setRootIsDecorated(False)
        self.tree.header().setStretchLastSection(False)
        self.tree.header().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        self.tree.setUniformRowHeights(True)
        self.tree.setSortingEnabled(True)
        self.tree.sortByColumn(0, Qt.SortOrder.AscendingOrder)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 8, 12, 8)
        column.addWidget(self.find_box)
        column.addWidget(self.tree, 1)
        self.find_box.textChanged.connect(self._filter)
        self.tree.itemSelectionChanged.connect(self._tell)

    def show_drawing(self, drawing: Drawing) -> None:
        """List what a drawing holds; put off as long as the list is not seen."""
        self._drawing = drawing
        self._is_stale = True
        if self.isVisible():
            self._fill()

    def show_selection(self, ids: Iterable[str]) -> None:
        """Mark what is selected on the sheet."""
        self._ids = frozenset(ids)
        if not self._is_stale:
            self._mark()

    def showEvent(self, event: QShowEvent) -> None:
        """List what was put off."""
        super().showEvent(event)
        if self._is_stale:
            self._fill()

    def _fill(self) -> None:
        self._is_stale = False
        with QSignalBlocker(self.tree):
            self.tree.setSortingEnabled(False)
            self.tree.clear()
            self.tree.addTopLevelItems([_item(*entry) for entry in _entries(self._drawing)])
            self.tree.setSortingEnabled(True)
        self._filter(self.find_box.text())
        self._mark()

    def _mark(self) -> None:
        with QSignalBlocker(self.tree):
            first = None
            for item in self._items():
                is_chosen = item.data(0, ID) in self._ids
                item.setSelected(is_chosen)
                first = item if is_chosen and first is None else first
            if first is not None:
                self.tree.scrollToItem(first)

    def _filter(self, typed: str) -> None:
        words = typed.casefold().split()
        for item in self._items():
            text = f"{item.text(0)} {item.text(1)} {item.data(0, ID)}".casefold()
            item.setHidden(not all(word in text for word in words))

    def _tell(self) -> None:
        self.selected.emit(frozenset(item.data(0, ID) for item in self.tree.selectedItems()))

    def _items(self) -> list[QTreeWidgetItem]:
        found = (self.tree.topLevelItem(index) for index in range(self.tree.topLevelItemCount()))
        return [item for item in found if item is not None]


def _entries(drawing: Drawing) -> list[tuple[str, str, str]]:
    """Id, name and what it is, of all that is drawn."""
    found = [
        (id, shown_told(upper(drawing.name(id))), tr(part.kind.title))
        for id, part in drawing.components.items()
    ]
    found += [
        (id, shown_told(upper(drawing.name(id))), tr(control.kind.title))
        for id, control in drawing.controls.items()
    ]
    for id, pipe in drawing.pipes.items():
        ends = (drawing.name(end.part) if isinstance(end, Joint) else tr("free end") for end in pipe.ends)
        found.append((id, upper(" to ".join(ends)), tr("Pipe")))
    return found


def _item(id: str, name: str, what: str) -> QTreeWidgetItem:
    made = QTreeWidgetItem([" ".join(name.split()), what])
    made.setData(0, ID, id)
    return made
