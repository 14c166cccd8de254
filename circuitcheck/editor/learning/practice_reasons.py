"""The list of reasons: what can be wrong, by topic, found by typing."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QModelIndex, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QLineEdit, QTreeWidgetItem, QVBoxLayout, QWidget

from circuitcheck.checks.catalogue import checks
from circuitcheck.editor import plain
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.learning.practice_words import reason_words, topic_words
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.sheet.keyboard import ENTER
from circuitcheck.editor.translating import tr

CHECK = Qt.ItemDataRole.UserRole


class Reasons(QWidget):
    """Signals `taken` with the name of a check."""

    taken = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.edit = QLineEdit()
        self.edit.setPlaceholderText(tr("Type to search the reasons"))
        self.edit.setAccessibleName(tr("Search the reasons"))
        self.edit.setClearButtonEnabled(True)
        self.list = Rows(tr("What can be wrong"), indent=12)
        self.list.setRootIsDecorated(False)
        self.list.setItemsExpandable(False)
        self.none_found = plain.label(tr("No reason says that."), "second")
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(6)
        for widget in (self.edit, self.list, self.none_found):
            column.addWidget(widget)
        self._items: list[tuple[QTreeWidgetItem, str]] = []
        self._heads: list[QTreeWidgetItem] = []
        self._fill()
        self.edit.textChanged.connect(self._narrow)
        self.edit.installEventFilter(self)
        self.list.itemActivated.connect(self._activated)
        self._narrow("")

    def begin(self) -> None:
        """Let a reason be looked for anew."""
        self.edit.clear()
        self.edit.setFocus(Qt.FocusReason.OtherFocusReason)

    @property
    def current(self) -> str:
        """The check of the row the keys are on; empty where on none."""
        item = self.list.currentItem()
        return "" if item is None or item.isHidden() else str(item.data(0, CHECK) or "")

    def shown(self) -> list[str]:
        """The checks that can be taken now, in their order."""
        return [str(item.data(0, CHECK)) for item in self._rows() if not item.isHidden()]

    def _fill(self) -> None:
        for topic in sorted({check.topic for check in checks().values()}, key=topic_words):
            head = self.list.add(topic_words(topic))
            head.setFlags(Qt.ItemFlag.ItemIsEnabled)
            self._heads.append(head)
            head.setFont(0, scaled(self.font(), 0.93, strong=True))
            names = [name for name, check in checks().items() if check.topic == topic]
            for name in sorted(names, key=reason_words):
                item = self.list.add(reason_words(name), head)
                item.setData(0, CHECK, name)
                plain.set_column_tip(item, 0, checks()[name].lesson.flags)
                self._items.append((item, topic_words(topic)))
        self.list.expandAll()

    def _rows(self) -> list[QTreeWidgetItem]:
        return [item for item, _ in self._items]

    def _narrow(self, text: str) -> None:
        """Only what holds every word; the first of it is at hand."""
        words = text.casefold().split()
        first: QTreeWidgetItem | None = None
        for item, topic in self._items:
            name = str(item.data(0, CHECK))
            said = f"{item.text(0)} {name} {topic}".casefold()
            fits = all(word in said for word in words)
            item.setHidden(not fits)
            first = item if fits and first is None else first
        shown = {topic for item, topic in self._items if not item.isHidden()}
        for head in self._heads:
            head.setHidden(head.text(0) not in shown)
        self.none_found.setVisible(first is None)
        self.list.setVisible(first is not None)
        if first is not None:
            self.list.setCurrentIndex(QModelIndex())
            if words:
                self.list.setCurrentItem(first)
            self.list.scrollToItem(first)

    def _activated(self, item: QTreeWidgetItem) -> None:
        if item.data(0, CHECK):
            self.taken.emit(str(item.data(0, CHECK)))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """From the field the keys walk through the list; Enter takes the reason at hand."""
        if watched is self.edit and event.type() is QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            steps = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}
            if event.key() in steps:
                self._step(steps[Qt.Key(event.key())])
                return True
            if event.key() in ENTER:
                if self.current:
                    self.taken.emit(self.current)
                return True
        return super().eventFilter(watched, event)

    def _step(self, by: int) -> None:
        rows = [item for item in self._rows() if not item.isHidden()]
        item = self.list.currentItem()
        if rows:
            place = rows.index(item) + by if item in rows else 0
            self.list.setCurrentItem(rows[max(0, min(place, len(rows) - 1))])
