"""The page to begin with: a sound arrangement, a sample or an empty sheet, files opened last, and the tour."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import cast

from PySide6.QtCore import QEvent, QObject, QSize, Qt, Signal
from PySide6.QtGui import QFontMetrics, QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QTreeWidget,
    QTreeWidgetItem,
    QTreeWidgetItemIterator,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.nesting import emptied, nest
from circuitcheck.editor.start.offers import Offer
from circuitcheck.editor.start.preview import Preview
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.report.care import CARE
from circuitcheck.report.wording import short

LIST_PX, ROW_PX, HEADING_PX, MOST_RECENT = 264, 26, 32, 3
MOST_LIST_SHARE, BESIDE_LIST_PX = 0.42, 36
"""The most of the page that the list takes, and what edges and scroll bar take of the list."""
EDGE_PX = 32
NARROW_EDGE_PX = 12
HIDE_PREVIEW_BELOW_PX, HIDE_CARE_BELOW_PX = 620, 420
ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)
_OFFER = int(Qt.ItemDataRole.UserRole)


class StartPage(QFrame):
    """Lies over the sheet until something is begun.

    `begun` with what was chosen to begin with, `open_wanted` for a file to be asked for, `file_wanted` with
    one of the files opened last, `tour_wanted`, and `left` where it was closed without a choice.
    """

    begun = Signal(object)
    open_wanted = Signal()
    file_wanted = Signal(object)
    tour_wanted = Signal()
    left = Signal()

    def __init__(self, over: QWidget, offers: Sequence[Offer], theme: Theme) -> None:
        super().__init__(over)
        self.setObjectName("start")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAccessibleName(tr("Begin a drawing"))
        self._over, self._theme = over, theme
        self._drawings: dict[Path, Drawing | None] = {}
        self.list = self._list(offers)
        self.preview = Preview()
        self.preview.setAccessibleName(tr("Picture of the drawing"))
        self._title = plain.label("", "name")
        self._words = plain.label("", "body", wrap=True)
        self.begin_button = QPushButton()
        self.begin_button.setDefault(True)
        self.begin_button.clicked.connect(self._begin)
        self._recent = QHBoxLayout()
        self._recent.setSpacing(4)
        self._lay_out()
        self.list.currentItemChanged.connect(self._show_current)
        self.list.itemActivated.connect(self._begin)
        if (first := self._first()) is not None:
            self.list.setCurrentItem(first)
        over.installEventFilter(self)
        self.hide()

    def _list(self, offers: Sequence[Offer]) -> QTreeWidget:
        made = QTreeWidget()
        made.setHeaderHidden(True)
        made.setRootIsDecorated(False)
        made.setIndentation(12)
        made.setItemsExpandable(False)
        made.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        made.setAccessibleName(tr("What to begin with"))
        heading = None
        for offer in offers:
            if heading is None or heading.text(0) != offer.heading:
                heading = QTreeWidgetItem(made, [offer.heading])
                heading.setFlags(Qt.ItemFlag.ItemIsEnabled)
                heading.setFont(0, plain.label(role="grade").font())
                heading.setSizeHint(0, QSize(LIST_PX, HEADING_PX))
                heading.setTextAlignment(0, Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignBottom)
            item = QTreeWidgetItem(heading, [offer.title])
            item.setData(0, _OFFER, offer)
            item.setSizeHint(0, QSize(LIST_PX, ROW_PX))
        made.expandAll()
        return made

    def _first(self) -> QTreeWidgetItem | None:
        """The first sound arrangement; the empty sheet where there is none."""
        heading = self.list.topLevelItem(1) or self.list.topLevelItem(0)
        return heading.child(0) if heading is not None else None

    def _lay_out(self) -> None:
        column = QVBoxLayout(self)
        column.setContentsMargins(EDGE_PX, 24, EDGE_PX, 20)
        column.setSpacing(6)
        title = plain.label(tr("What would you like to draw?"), "name")
        title.setFont(scaled(title.font(), 1.35, strong=True))
        column.addWidget(title)
        how = tr("Arrows choose, Enter begins. Escape shows the empty sheet.")
        column.addWidget(plain.label(how, "second", wrap=True))
        column.addSpacing(10)
        row = QHBoxLayout()
        row.setSpacing(20)
        row.addWidget(self.list)
        right = QVBoxLayout()
        right.setSpacing(8)
        right.addWidget(self.preview, 1)
        right.addWidget(self._title)
        right.addWidget(self._words)
        right.addWidget(self.begin_button, 0, Qt.AlignmentFlag.AlignLeft)
        nest(row, right, 1)
        nest(column, row, 1)
        column.addSpacing(10)
        nest(column, self._below())
        column.addSpacing(4)
        self._care = plain.label(tr(CARE), "second", wrap=True)
        column.addWidget(self._care)

    def _below(self) -> QHBoxLayout:
        row = QHBoxLayout()
        row.setSpacing(8)
        opening = QPushButton(tr("Open a drawing…"))
        opening.clicked.connect(self.open_wanted)
        touring = QPushButton(tr("Take the tour"))
        plain.set_tip(touring, tr("One fault and its cure, in two minutes"))
        touring.clicked.connect(self.tour_wanted)
        self.tour_button = touring
        row.addWidget(opening)
        nest(row, self._recent)
        row.addStretch(1)
        row.addWidget(touring)
        return row

    def begin(self, recent: Sequence[Path]) -> None:
        """Show the page, with these files as those opened last, and take the keyboard."""
        for old in emptied(self._recent):
            old.deleteLater()
        for path in list(recent)[:MOST_RECENT]:
            button = plain.link(short(path.stem, 24), self._wants(path))
            plain.set_tip(button, str(path))
            button.setAccessibleName(tr("Open {name}", name=path.stem))
            self._recent.addWidget(button)
        self._fit()
        self.show()
        self.raise_()
        self._show_current()
        self.list.setFocus(Qt.FocusReason.OtherFocusReason)

    def _wants(self, path: Path) -> Callable[[], None]:
        return lambda: self.file_wanted.emit(path)

    def set_theme(self, theme: Theme) -> None:
        """Show the picture in a theme."""
        self._theme = theme
        if self.isVisible():
            self._show_current()

    @property
    def offer(self) -> Offer | None:
        """What the list stands on."""
        item = self.list.currentItem()
        offer = item.data(0, _OFFER) if item is not None else None
        return offer if isinstance(offer, Offer) else None

    def _show_current(self) -> None:
        offer = self.offer
        self.begin_button.setEnabled(offer is not None)
        if offer is None:
            return
        self._title.setText(offer.title)
        self._words.setText(offer.words)
        self.begin_button.setText(plain.action_text(offer.does))
        if not self.preview.isHidden() and not self.isHidden():
            self.preview.show_drawing(self._drawing(offer), self._theme)

    def _drawing(self, offer: Offer) -> Drawing | None:
        from circuitcheck.storage.faults import DrawingError
        from circuitcheck.storage.reading import read

        if offer.file is None:
            return None
        if offer.file not in self._drawings:
            try:
                self._drawings[offer.file] = read(offer.file)
            except (DrawingError, OSError):
                # Begun with, it is said what is wrong with it.
                self._drawings[offer.file] = None
        return self._drawings[offer.file]

    def _begin(self) -> None:
        if self.offer is not None:
            self.begun.emit(self.offer)

    def leave(self) -> None:
        """Close without a choice."""
        self.hide()
        self.left.emit()

    def close_pictures(self) -> None:
        """Let go of what is shown, before the window goes."""
        self.preview.close_picture()

    def _fit(self) -> None:
        self.setGeometry(self._over.rect())
        is_narrow = self._over.width() < HIDE_PREVIEW_BELOW_PX
        self.preview.setVisible(not is_narrow)
        most = int(MOST_LIST_SHARE * self._over.width())
        self.list.setFixedWidth(min(self._names_px() + BESIDE_LIST_PX, most))
        edge = NARROW_EDGE_PX if is_narrow else EDGE_PX
        if (column := self.layout()) is not None:
            column.setContentsMargins(edge, 16 if is_narrow else 24, edge, 12 if is_narrow else 20)
        self._care.setVisible(self._over.height() >= HIDE_CARE_BELOW_PX)

    def _names_px(self) -> int:
        """How wide the longest row of the list is."""
        rows = QTreeWidgetItemIterator(self.list)
        longest = 0
        while (item := cast("QTreeWidgetItem | None", rows.value())) is not None:
            letters = QFontMetrics(item.font(0) if item.parent() is None else self.list.font())
            indent = self.list.indentation() * (1 if item.parent() is not None else 0)
            longest = max(longest, letters.horizontalAdvance(item.text(0)) + indent)
            rows += 1
        return longest

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leaves; Enter begins."""
        if event.key() == Qt.Key.Key_Escape:
            self.leave()
        elif event.key() in ENTER:
            self._begin()
        else:
            super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Cover what lies below, however large it is."""
        if event.type() is QEvent.Type.Resize and watched is self._over and not self.isHidden():
            self._fit()
        return super().eventFilter(watched, event)
