"""A box to find something by typing: a field with the matches below it, worked by keys or pointer."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QObject, QPoint, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QIcon, QKeyEvent
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

from circuitcheck.editor import plain
from circuitcheck.editor.translating import tr

WIDE_PX, MOST_WIDE_PX, ROW_PX, MOST_ROWS, ICON_PX = 420, 640, 32, 9, 24
GAP_PX, BESIDE_PX = 8, 64
"""What edges, a scroll bar and the gap between both columns take of the width."""
ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
STEPS = {
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_PageDown: MOST_ROWS - 1,
    Qt.Key.Key_PageUp: 1 - MOST_ROWS,
}
STAYS_FOR = (Qt.FocusReason.ActiveWindowFocusReason, Qt.FocusReason.PopupFocusReason)
"""Where the keyboard goes for these, it comes back."""


@dataclass(frozen=True)
class Match:
    """One row: what it says, what stands beside it, and what choosing it means."""

    text: str
    data: object
    beside: str = ""
    icon: QIcon | None = None
    can_be_chosen: bool = True


class FindBox(QFrame):
    """Shows the matches it is given.

    `typed` with the text, `moved` with the data of the row the keys are on (None: of none), `chosen`
    with the data and the keys held, `taken` with the data where Tab was pressed, `left` when it is over.
    """

    typed = Signal(str)
    moved = Signal(object)
    chosen = Signal(object, object)
    taken = Signal(object)
    left = Signal()

    def __init__(self, parent: QWidget, name: str, none_found: str) -> None:
        super().__init__(parent)
        self._none_found = none_found
        self.setObjectName("find")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.edit = QLineEdit()
        self.edit.setPlaceholderText(name)
        self.edit.setAccessibleName(name)
        self.list = QTreeWidget()
        self._set_up_list(name)
        self._none = plain.label("", "second")
        self._none.setContentsMargins(8, 4, 8, 4)
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 8, 8, 8)
        column.setSpacing(6)
        for widget in (self.edit, self.list, self._none):
            column.addWidget(widget)
        self.edit.textChanged.connect(self.typed)
        self.edit.installEventFilter(self)
        self.list.currentItemChanged.connect(self._moved)
        self.list.itemClicked.connect(self._clicked)
        self.hide()

    def _set_up_list(self, name: str) -> None:
        rows = self.list
        rows.setAccessibleName(tr("{name}: what was found", name=name))
        rows.setColumnCount(2)
        rows.setHeaderHidden(True)
        rows.header().setStretchLastSection(False)
        rows.header().setSectionResizeMode(0, QHeaderView.ResizeMode.Stretch)
        rows.header().setSectionResizeMode(1, QHeaderView.ResizeMode.Fixed)
        rows.setRootIsDecorated(False)
        rows.setUniformRowHeights(True)
        rows.setIconSize(QSize(ICON_PX, ICON_PX))
        rows.setFrameShape(QFrame.Shape.NoFrame)
        rows.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        rows.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        rows.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        rows.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)

    @property
    def current(self) -> object | None:
        """The data of the row the keys are on."""
        item = self.list.currentItem()
        return None if item is None else item.data(0, Qt.ItemDataRole.UserRole)

    def texts(self) -> list[str]:
        """What the rows say, as far as they can be chosen."""
        items = (self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount()))
        return [item.text(0) for item in items if item is not None and not item.isDisabled()]

    def begin(self, text: str, at: QPoint) -> None:
        """Open at a place of the parent, moved so far that it lies within; the keyboard comes here."""
        parent = self.parentWidget()
        self.setFixedWidth(self._within(WIDE_PX))
        self.show()
        self.raise_()
        self.edit.setFocus(Qt.FocusReason.ShortcutFocusReason)
        if self.edit.text() == text:
            self.typed.emit(text)
        self.edit.setText(text)
        self.adjustSize()
        if parent is not None:
            x = min(max(8, at.x()), max(8, parent.width() - self.width() - 8))
            y = min(max(8, at.y()), max(8, parent.height() - self._highest() - 8))
            self.move(x, y)

    def show_matches(self, matches: Sequence[Match]) -> None:
        """Show these, with the keys on the first that can be chosen."""
        self.list.blockSignals(True)
        self.list.clear()
        first = None
        for match in matches:
            item = QTreeWidgetItem([match.text, match.beside])
            item.setData(0, Qt.ItemDataRole.UserRole, match.data)
            item.setTextAlignment(1, Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            item.setSizeHint(0, QSize(0, ROW_PX))
            if match.icon is not None:
                item.setIcon(0, match.icon)
            self.list.addTopLevelItem(item)
            item.setDisabled(not match.can_be_chosen)
            if first is None and match.can_be_chosen:
                first = item
        if first is not None:
            self.list.setCurrentItem(first)
        self.list.blockSignals(False)
        self.list.setColumnHidden(1, not any(match.beside for match in matches))
        self._widen(matches)
        self._share()
        self.list.setVisible(bool(matches))
        self.list.setFixedHeight(max(1, min(len(matches), MOST_ROWS)) * ROW_PX + 2)
        nothing = not matches and bool(self.edit.text().strip())
        self._none.setText(self._none_found if nothing else "")
        self._none.setVisible(nothing)
        self.adjustSize()
        self.moved.emit(self.current)

    def _within(self, wide: int) -> int:
        """So wide, as far as the parent has room."""
        parent = self.parentWidget()
        return wide if parent is None else min(wide, max(160, parent.width() - 16))

    def _widen(self, matches: Sequence[Match]) -> None:
        """Grow about the middle until the longest row has room; while it is open it never gets narrower."""
        letters = self.list.fontMetrics().horizontalAdvance
        beside = max((letters(match.beside) for match in matches), default=0)
        icon = ICON_PX + GAP_PX if any(match.icon for match in matches) else 0
        needs = max((letters(match.text) for match in matches), default=0) + icon + beside + BESIDE_PX
        wide = self._within(min(MOST_WIDE_PX, max(self.width(), needs)))
        grown = wide - self.width()
        if grown <= 0:
            return
        self.setFixedWidth(wide)
        parent = self.parentWidget()
        right = max(8, (wide if parent is None else parent.width()) - wide - 8)
        self.move(min(max(8, self.x() - grown // 2), right), self.y())

    def _share(self) -> None:
        """What stands beside takes what it needs, and never the room of more than a part of the names."""
        self.list.header().resizeSection(1, min(self.list.sizeHintForColumn(1), self.width() * 2 // 5))

    def end(self) -> None:
        """Close, without a word."""
        self.hide()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """In the field Enter chooses, Tab takes, Escape leaves, the arrows go along the rows."""
        if watched is self.edit and not self.isHidden():
            if isinstance(event, QKeyEvent) and event.type() is QEvent.Type.KeyPress:
                return self._key(event)
            goes = isinstance(event, QFocusEvent) and event.type() is QEvent.Type.FocusOut
            if goes and isinstance(event, QFocusEvent) and event.reason() not in STAYS_FOR:
                self.left.emit()
        return super().eventFilter(watched, event)

    def _key(self, event: QKeyEvent) -> bool:
        key = Qt.Key(event.key())
        if key is Qt.Key.Key_Escape:
            self.left.emit()
        elif key in ENTER:
            if self.current is not None:
                self.chosen.emit(self.current, event.modifiers())
        elif key in (Qt.Key.Key_Tab, Qt.Key.Key_Backtab):
            if self.current is not None:
                self.taken.emit(self.current)
        elif key in STEPS:
            self._step(STEPS[key])
        else:
            return False
        return True

    def _step(self, by: int) -> None:
        """Go on by so many rows that can be chosen, and not past the ends."""
        items = [self.list.topLevelItem(row) for row in range(self.list.topLevelItemCount())]
        can = [item for item in items if item is not None and not item.isDisabled()]
        now = self.list.currentItem()
        if can:
            index = (can.index(now) if now in can else 0) + by
            self.list.setCurrentItem(can[min(max(index, 0), len(can) - 1)])

    def _moved(self) -> None:
        self.moved.emit(self.current)

    def _clicked(self, item: QTreeWidgetItem) -> None:
        if not item.isDisabled():
            self.chosen.emit(item.data(0, Qt.ItemDataRole.UserRole), Qt.KeyboardModifier.NoModifier)

    def _highest(self) -> int:
        return self.edit.sizeHint().height() + MOST_ROWS * ROW_PX + 32
