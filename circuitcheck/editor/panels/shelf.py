"""The parts shelf: every kind by what it does for the trade, found by typing, placed by click, drag or Enter."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QMimeData, QObject, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QKeyEvent, QResizeEvent
from PySide6.QtWidgets import (
    QAbstractItemView,
    QFrame,
    QLineEdit,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain
from circuitcheck.editor.dragging import mime_of
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.icons import SHELF_PX, find_icon, kind_icon
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.section import NO_BOUND_PX
from circuitcheck.editor.part_search import found_by
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.parts.catalogue import kinds, shelf
from circuitcheck.parts.kind import Group, Kind

KIND = Qt.ItemDataRole.UserRole
TITLE = Qt.ItemDataRole.UserRole + 1
GROUP = Qt.ItemDataRole.UserRole + 2
ROW_PX, GROUP_PX, INDENT_PX = 32, 30, 12
GAP_PX, LEAST_PX = 10, 150
STRIP_PX = 56
BESIDE_NAME_PX = 90
"""What stands beside a name: margins, symbol, scroll bar."""
OPEN_AT_FIRST = frozenset({Group.HEAT, Group.MOVING, Group.SAFETY})


class Tree(QTreeWidget):
    """The groups and their kinds. `placed` when a kind is taken by click or Enter."""

    placed = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Parts"))
        self.setHeaderHidden(True)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setIconSize(QSize(SHELF_PX, SHELF_PX))
        self.setIndentation(INDENT_PX)
        self.setDragEnabled(True)
        self.setDragDropMode(QAbstractItemView.DragDropMode.DragOnly)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setTextElideMode(Qt.TextElideMode.ElideRight)
        self.setExpandsOnDoubleClick(False)
        self.setMouseTracking(True)
        self.itemClicked.connect(self._clicked)

    def mimeData(self, items: list[QTreeWidgetItem]) -> QMimeData:  # type: ignore[override]  # stub: Sequence
        """What a drag carries."""
        kind = _kind_of(items[0]) if items else None
        return mime_of(kind) if kind else QMimeData()

    def _clicked(self, item: QTreeWidgetItem) -> None:
        kind = _kind_of(item)
        if kind is None:
            item.setExpanded(not item.isExpanded())
        else:
            self.placed.emit(kind)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter takes the kind at the caret, or opens the group."""
        item = self.currentItem()
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and item is not None:
            self._clicked(item)
            return
        super().keyPressEvent(event)


class Shelf(QWidget):
    """Signals `placing` with the kind that is taken to be placed. Its kinds are put in with the first theme."""

    placing = Signal(object)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._is_strip = False
        self.find_box = QLineEdit()
        self.find_box.setPlaceholderText(tr("Find a part"))
        self.find_box.setAccessibleName(tr("Find a part"))
        self.find_box.setClearButtonEnabled(True)
        self._glass = self.find_box.addAction(QIcon(), QLineEdit.ActionPosition.LeadingPosition)
        self.tree = Tree()
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 12, 0, 0)
        column.setSpacing(8)
        margin = QVBoxLayout()
        margin.setContentsMargins(8, 0, 12, 0)
        margin.addWidget(self.find_box)
        nest(column, margin)
        column.addWidget(self.tree, 1)
        self.tree.placed.connect(self.placing)
        self.tree.itemExpanded.connect(self._show_counts)
        self.tree.itemCollapsed.connect(self._show_counts)
        self.find_box.textChanged.connect(self._filter)
        self.find_box.installEventFilter(self)

    def set_theme(self, theme: Theme) -> None:
        """Paint the symbols anew."""
        if not self._groups():
            self._fill()
        self._glass.setIcon(find_icon(theme))
        for item in self._kind_items():
            item.setIcon(0, kind_icon(item.data(0, KIND), theme))

    def set_strip(self, strip: bool) -> None:
        """Show symbols only, in a narrow strip, or symbols and names."""
        if strip == self._is_strip:
            return
        self._is_strip = strip
        self.find_box.setVisible(not strip)
        self.tree.setIndentation(0 if strip else INDENT_PX)
        self.tree.setRootIsDecorated(not strip)
        if strip:
            self.find_box.clear()
            self.setFixedWidth(STRIP_PX)
        else:
            self.setMinimumWidth(LEAST_PX)
            self.setMaximumWidth(NO_BOUND_PX)
        off, on = Qt.ScrollBarPolicy.ScrollBarAlwaysOff, Qt.ScrollBarPolicy.ScrollBarAsNeeded
        self.tree.setVerticalScrollBarPolicy(off if strip else on)
        self._show_rows()

    def _show_rows(self) -> None:
        strip = self._is_strip
        for group in self._groups():
            group.setHidden(False)
            group.setSizeHint(0, QSize(0, GAP_PX if strip else GROUP_PX))
            group.setExpanded(strip or group.data(0, GROUP) in OPEN_AT_FIRST)
        for item in self._kind_items():
            item.setText(0, "" if strip else item.data(0, TITLE))
        self._show_counts()

    @property
    def is_strip(self) -> bool:
        """Whether only symbols are shown."""
        return self._is_strip

    def shown(self) -> list[str]:
        """The kinds that what is typed leaves, by name."""
        return [item.data(0, KIND) for item in self._kind_items() if not item.isHidden()]

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """In the find box Enter takes the first kind found and the down key goes to the list."""
        if watched is self.find_box and isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
            if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and self.find_box.text().strip():
                if found := found_by(self.find_box.text()):
                    self.placing.emit(kinds()[found[0]])
                return True
            if event.key() == Qt.Key.Key_Escape and self.find_box.text():
                self.find_box.clear()
                return True
            if event.key() == Qt.Key.Key_Down:
                self._enter_list()
                return True
        return super().eventFilter(watched, event)

    def _enter_list(self) -> None:
        first = next((item for item in self._kind_items() if not item.isHidden()), None)
        if first is not None:
            self.tree.setCurrentItem(first)
            self.tree.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def names_px(self) -> int:
        """How wide the shelf must be for every name to stand in it whole."""
        letters = self.tree.fontMetrics()
        longest = max(letters.horizontalAdvance(tr(kind.title)) for _, kinds in shelf() for kind in kinds)
        return longest + BESIDE_NAME_PX

    def _fill(self) -> None:
        for group, members in shelf():
            head = QTreeWidgetItem([tr(group.value)])
            head.setData(0, TITLE, tr(group.value))
            head.setData(0, GROUP, group.value)
            head.setFlags(Qt.ItemFlag.ItemIsEnabled | Qt.ItemFlag.ItemIsSelectable)
            head.setFont(0, scaled(self.font(), 0.95, strong=True))
            head.setSizeHint(0, QSize(0, GROUP_PX))
            for kind in members:
                head.addChild(_kind_item(kind))
            self.tree.addTopLevelItem(head)
        self._show_rows()

    def _filter(self, typed: str) -> None:
        found = found_by(typed)
        for group in self._groups():
            for item in _children(group):
                item.setHidden(item.data(0, KIND) not in found)
            group.setHidden(all(item.isHidden() for item in _children(group)))
            group.setExpanded(bool(typed.strip()) or group.data(0, GROUP) in OPEN_AT_FIRST)
        self._show_counts()

    def _show_counts(self) -> None:
        """A shut group says how many kinds it holds."""
        for group in self._groups():
            text = str(group.data(0, TITLE))
            shut = not group.isExpanded() and not self._is_strip
            group.setText(0, "" if self._is_strip else f"{text} ({group.childCount()})" if shut else text)

    def _groups(self) -> list[QTreeWidgetItem]:
        found = (self.tree.topLevelItem(index) for index in range(self.tree.topLevelItemCount()))
        return [item for item in found if item is not None]

    def _kind_items(self) -> list[QTreeWidgetItem]:
        return [item for group in self._groups() for item in _children(group)]

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the one column as wide as the shelf."""
        super().resizeEvent(event)
        self.tree.setColumnWidth(0, self.tree.viewport().width())


def _kind_item(kind: Kind) -> QTreeWidgetItem:
    item = QTreeWidgetItem([tr(kind.title)])
    item.setData(0, KIND, kind.name)
    item.setData(0, TITLE, tr(kind.title))
    item.setData(0, Qt.ItemDataRole.ToolTipRole, plain.tip_text(f"{tr(kind.title)}. {tr(kind.summary)}"))
    item.setData(0, Qt.ItemDataRole.AccessibleTextRole, tr(kind.title))
    item.setData(0, Qt.ItemDataRole.AccessibleDescriptionRole, tr(kind.summary))
    item.setSizeHint(0, QSize(0, ROW_PX))
    return item


def _children(group: QTreeWidgetItem) -> list[QTreeWidgetItem]:
    children = (group.child(index) for index in range(group.childCount()))
    return [child for child in children if child is not None]


def _kind_of(item: QTreeWidgetItem) -> Kind | None:
    name = item.data(0, KIND)
    return kinds()[name] if name else None
