"""The list of lessons: by topic, to be searched, with those that were read marked."""

from __future__ import annotations

from collections.abc import Collection, Iterator

from PySide6.QtCore import QEvent, QObject, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QIcon, QKeyEvent, QPixmap
from PySide6.QtWidgets import QLineEdit, QTreeWidgetItem, QVBoxLayout, QWidget

from circuitcheck.checks.catalogue import checks
from circuitcheck.editor import plain
from circuitcheck.editor.icons import grade_icon
from circuitcheck.editor.learning.practice_words import reason_words, topic_words
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr, tr_n
from circuitcheck.lessons.lesson import subjects

CHECK = Qt.ItemDataRole.UserRole
TICK_PX = 18
GOES_ON = (Qt.Key.Key_Down, Qt.Key.Key_Return, Qt.Key.Key_Enter)


class LessonsList(QWidget):
    """Signals `chosen` with a check when its row is taken in hand."""

    chosen = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("start")
        self._theme: Theme | None = None
        self._read: frozenset[str] = frozenset()
        self.search = QLineEdit()
        self.search.setPlaceholderText(tr("Search the lessons"))
        self.search.setAccessibleName(tr("Search the lessons"))
        self.search.setClearButtonEnabled(True)
        self.search.setMinimumHeight(32)
        self.said = plain.label("", "second", wrap=True)
        self.rows = Rows(tr("Lessons"), indent=14, beside=TICK_PX + 8)
        self.rows.setIconSize(QSize(TICK_PX, TICK_PX))
        self._items: dict[str, QTreeWidgetItem] = {}
        self._fill()
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 12, 4, 8)
        column.setSpacing(6)
        column.addWidget(plain.label(tr("Lessons"), "name"))
        column.addWidget(self.search)
        column.addWidget(self.said)
        column.addWidget(self.rows, 1)
        self.search.textChanged.connect(self._filter)
        self.search.installEventFilter(self)
        self.rows.currentItemChanged.connect(self._moved)

    def _fill(self) -> None:
        heads: dict[str, QTreeWidgetItem] = {}
        for live in (True, False):
            for check in subjects(live=live):
                heading = topic_words(checks()[check].topic) if live else tr("More checks: their text alone")
                if heading not in heads:
                    heads[heading] = self.rows.add(heading)
                    heads[heading].setFlags(Qt.ItemFlag.ItemIsEnabled)
                item = self.rows.add(reason_words(check), heads[heading])
                item.setData(0, CHECK, check)
                self._items[check] = item
        self.rows.expandAll()

    @property
    def checks(self) -> tuple[str, ...]:
        """The checks in the order of the list, as far as the search leaves them."""
        return tuple(check for check, item in self._items.items() if not item.isHidden())

    @property
    def check(self) -> str:
        """The check whose row is in hand; empty for none."""
        item = self.rows.currentItem()
        return "" if item is None else str(item.data(0, CHECK) or "")

    def choose(self, check: str) -> None:
        """Take a check's row in hand, whatever is searched for; `chosen` is not signalled."""
        item = self._items[check]
        if item.isHidden():
            self.search.clear()
        with QSignalBlocker(self.rows):
            self.rows.setCurrentItem(item)
        self.rows.scrollToItem(item)

    def beside(self, check: str, step: int) -> str:
        """The check so many rows further on; empty beyond the ends."""
        known = self.checks
        place = known.index(check) + step if check in known else 0
        return known[place] if 0 <= place < len(known) else ""

    def show_read(self, read: Collection[str]) -> None:
        """Mark the lessons that were read."""
        self._read = frozenset(read) & frozenset(self._items)
        for check, item in self._items.items():
            self._mark(check, item)
        live = [check for check in subjects(live=True) if check in self._read]
        self.said.setText(
            tr_n(
                "{count} of {all} lessons read",
                "{count} of {all} lessons read",
                len(live),
                all=len(subjects(live=True)),
            )
        )

    def set_theme(self, theme: Theme) -> None:
        """Paint the marks in other colours."""
        self._theme = theme
        self.show_read(self._read)

    def _mark(self, check: str, item: QTreeWidgetItem) -> None:
        is_read = check in self._read
        if self._theme is not None:
            # No mark is an icon too, so that the titles stand in one line.
            item.setIcon(0, grade_icon(None, self._theme) if is_read else _nothing())
        title = reason_words(check)
        item.setData(
            0, Qt.ItemDataRole.AccessibleTextRole, tr("{title}, read", title=title) if is_read else title
        )

    def _filter(self, text: str) -> None:
        words = text.casefold().split()
        for check, item in self._items.items():
            known = checks()[check].lesson
            told = (
                f"{check} {tr(known.title)} {tr(known.flags)} {topic_words(checks()[check].topic)}".casefold()
            )
            item.setHidden(not all(word in told for word in words))
        for head in self._heads():
            below = (head.child(place) for place in range(head.childCount()))
            head.setHidden(all(child is None or child.isHidden() for child in below))

    def _heads(self) -> Iterator[QTreeWidgetItem]:
        for place in range(self.rows.topLevelItemCount()):
            item = self.rows.topLevelItem(place)
            if item is not None:
                yield item

    def _moved(self, item: QTreeWidgetItem | None) -> None:
        if item is not None and item.data(0, CHECK):
            self.chosen.emit(item.data(0, CHECK))

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """From the search, the arrow down and Enter go to the first lesson found."""
        pressed = event.key() if isinstance(event, QKeyEvent) else None
        if event.type() == QEvent.Type.KeyPress and pressed in GOES_ON and self.checks:
            first = self.checks[0]
            self.choose(first)
            self.chosen.emit(first)
            self.rows.setFocus(Qt.FocusReason.TabFocusReason)
            return True
        return super().eventFilter(watched, event)


def _nothing() -> QIcon:
    blank = QPixmap(TICK_PX, TICK_PX)
    blank.fill(Qt.GlobalColor.transparent)
    return QIcon(blank)
