"""The window of the parts list: what a drawing is made of, counted, to read, copy and save as a table."""

from __future__ import annotations

from collections.abc import Callable
from itertools import groupby
from pathlib import Path

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import (
    QGuiApplication,
    QKeyEvent,
    QKeySequence,
    QPainter,
    QPalette,
    QPen,
    QResizeEvent,
    QShowEvent,
    QStandardItem,
    QStandardItemModel,
)
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QDialogButtonBox,
    QFileDialog,
    QFrame,
    QPushButton,
    QStyleOptionViewItem,
    QTreeView,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.translating import decimal_sign, later, tr, tr_n
from circuitcheck.figures.parts_list import PartsList, parts_list
from circuitcheck.report.parts import Row, as_csv, notes, rows
from circuitcheck.report.plain import cell

HEADINGS = (later("How much"), later("What"), later("Size"), later("Details"), later("Not known"))
IDS = Qt.ItemDataRole.UserRole
DETAILS = 3
LETTERS = (14, 30, 24, 0, 24)
MOST_SHARE = (0.14, 0.22, 0.18, 0.0, 0.2)
"""The most that each column takes of what its texts need, in letters of the font and as a share of the table; details
take the rest."""
LEAST_PART, LEAST_DETAILS = 0.75, 30
MOST_NAMED = 12
FIRST_LETTERS, MOST_OF_SCREEN = (170, 44), 0.9
LEAST_ROW_PX, HEAD_PAD_PX = 28, 8
AskPath = Callable[[QWidget, str], str]


class PartsCounted(QDialog):
    """Stays beside the window and goes along with the drawing; `chosen` carries the ids of a line."""

    chosen = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Parts and pipe, counted"))
        self.setModal(False)
        self._drawing = Drawing()
        self._found: PartsList | None = None
        self.ask_path: AskPath = _ask_path
        self.model = QStandardItemModel(0, len(HEADINGS), self)
        self.tree = _Tree()
        self.tree.setModel(self.model)
        self._notes = plain.label("", "second", wrap=True, selectable=True)
        self._notes.setAccessibleName(tr("What the sums rest on"))
        self._fault = plain.label("", "fault", wrap=True)
        self._fault.hide()
        self.buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        # Enter belongs to the table; no button is the one that is meant.
        self.buttons.button(QDialogButtonBox.StandardButton.Close).setAutoDefault(False)
        self.copy_button = QPushButton(tr("&Copy"))
        self.save_button = QPushButton(tr("&Save as CSV…"))
        for button in (self.copy_button, self.save_button):
            button.setAutoDefault(False)
            self.buttons.addButton(button, QDialogButtonBox.ButtonRole.ActionRole)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 12)
        column.setSpacing(10)
        column.addWidget(self.tree, 1)
        column.addWidget(self._notes)
        column.addWidget(self._fault)
        column.addWidget(self.buttons)
        self.resize(self._first_size())
        self.buttons.rejected.connect(self.reject)
        self.copy_button.clicked.connect(self.copy)
        self.save_button.clicked.connect(self.save)
        self.tree.copy_wanted.connect(self.copy)
        self.tree.selectionModel().currentChanged.connect(self._current_changed)

    def _first_size(self) -> QSize:
        """Wide enough for the details in this font, and never larger than the screen."""
        wide, high = FIRST_LETTERS
        wanted = QSize(wide * self.fontMetrics().averageCharWidth(), high * self.fontMetrics().height())
        return wanted.boundedTo(self.screen().availableSize() * MOST_OF_SCREEN)

    @property
    def found(self) -> PartsList:
        """The list that is shown."""
        if self._found is None:
            self._found = parts_list(self._drawing)
        return self._found

    @property
    def notes_text(self) -> str:
        """What the sums rest on, as it stands below the table."""
        return self._notes.text()

    @property
    def fault_text(self) -> str:
        """Why the list could not be saved; empty where it could."""
        return self._fault.text()

    def show_drawing(self, drawing: Drawing) -> None:
        """Count another drawing; put off as long as nobody sees it."""
        self._drawing, self._found = drawing, None
        if self.isVisible():
            self._fill()

    def showEvent(self, event: QShowEvent) -> None:
        """Count what was drawn while it was not seen."""
        super().showEvent(event)
        self._fill()

    def _fill(self) -> None:
        top, at_line = self.tree.verticalScrollBar().value(), self.tree.currentIndex()
        section_row, row = max(at_line.parent().row(), 0), max(at_line.row(), 0)
        self.model.clear()
        self.model.setHorizontalHeaderLabels([tr(each) for each in HEADINGS])
        for section, members in groupby(rows(self.found), key=lambda row: row.section):
            self.model.appendRow(self._section(section, list(members)))
        for at in range(self.model.rowCount()):
            self.tree.setFirstColumnSpanned(at, QModelIndex(), True)
        self.tree.expandAll()
        self.tree.use_widths()
        said = notes(self.found, MOST_NAMED)
        self._notes.setText("\n".join(tr(each) for each in said))
        self._notes.setVisible(bool(said))
        head = self.model.item(min(section_row, self.model.rowCount() - 1)) if self.model.rowCount() else None
        if head is not None:
            # The line one was on, as near as there is one. Nobody has chosen it: the sheet stays as it is.
            with QSignalBlocker(self):
                self.tree.setCurrentIndex(head.child(min(row, head.rowCount() - 1), 0).index())
        self.tree.verticalScrollBar().setValue(top)

    def _section(self, title: str, members: list[Row]) -> QStandardItem:
        head = QStandardItem(tr(title))
        head.setFlags(Qt.ItemFlag.ItemIsEnabled)
        head.setFont(scaled(self.font(), 1.0, strong=True))
        height = max(LEAST_ROW_PX, self.fontMetrics().height() + 10)
        head.setSizeHint(QSize(0, height))
        for row in members:
            items = [_item(text, row) for text in _texts(row)]
            items[0].setTextAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
            items[0].setSizeHint(QSize(0, height))
            head.appendRow(items)
        return head

    def _current_changed(self, current: QModelIndex) -> None:
        ids = current.siblingAtColumn(0).data(IDS)
        # A model gives back a list where a tuple was put in.
        if isinstance(ids, list | tuple):
            self.chosen.emit(frozenset(ids))

    # Copying and saving.

    def copy(self) -> None:
        """Put the whole list on the clipboard, as a spreadsheet takes it."""
        lines = ["\t".join((tr("Section"), *map(tr, HEADINGS), tr("Ids")))]
        for row in rows(self.found):
            much, *texts = _texts(row)
            cells = (cell(row.section), much, *(cell(text) for text in texts), cell(" ".join(row.ids)))
            lines.append("\t".join(" ".join(text.split()) for text in cells))
        QGuiApplication.clipboard().setText("\n".join(lines) + "\n")

    def save(self) -> None:
        """Ask where, and save the list as a table with its cells parted by commas."""
        path = self.ask_path(self, self._drawing.title or "parts")
        if not path:
            return
        from circuitcheck.storage.saver import save_bytes

        target = Path(path)
        if not target.suffix:
            target = target.with_suffix(".csv")
        try:
            # With its mark of the encoding, so that a spreadsheet reads m³ and × as they are.
            save_bytes(target, as_csv(self.found).encode("utf-8-sig"))
        except OSError as error:
            self._say(
                tr("{file} could not be saved: {reason}", file=target.name, reason=error.strerror or error)
            )
            return
        self._say("")

    def _say(self, sentence: str) -> None:
        self._fault.setText(sentence)
        self._fault.setVisible(bool(sentence))


class _Tree(QTreeView):
    """Sections, with a line for what is ordered alike."""

    copy_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Parts and pipe, counted"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setUniformRowHeights(True)
        self.setRootIsDecorated(False)
        self.setItemsExpandable(False)
        self.setIndentation(0)
        self.setObjectName("counted")
        self.setEditTriggers(QAbstractItemView.EditTrigger.NoEditTriggers)
        self.setHorizontalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.header().setStretchLastSection(False)

    def use_widths(self) -> None:
        """Details take what the other columns leave."""
        letter, room = self.fontMetrics().averageCharWidth(), self.viewport().width()
        taken = 0
        for place, (letters, share) in enumerate(zip(LETTERS, MOST_SHARE, strict=True)):
            if place != DETAILS:
                most = min(letters * letter, max(int(share * room), int(LEAST_PART * letters * letter)))
                needs = max(self.sizeHintForColumn(place), self.header().sectionSizeHint(place))
                width = min(needs + HEAD_PAD_PX, most)
                self.setColumnWidth(place, width)
                taken += width
        # On a small screen with large letters one scrolls sideways rather than reads three dots.
        self.setColumnWidth(DETAILS, max(room - taken, LEAST_DETAILS * letter))

    def drawRow(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """The row at hand has one ring round all of it."""
        super().drawRow(painter, option, index)
        here = self.currentIndex()
        if not self.hasFocus() or index.row() != here.row() or index.parent() != here.parent():
            return
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Highlight), 2))
        painter.drawRoundedRect(option.rect.toRectF().adjusted(1, 1, -1, -1), 5, 5)
        painter.restore()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Columns keep their share."""
        super().resizeEvent(event)
        if self.model().columnCount():
            self.use_widths()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Copy takes the whole list."""
        if event.matches(QKeySequence.StandardKey.Copy):
            self.copy_wanted.emit()
        else:
            super().keyPressEvent(event)


def _texts(row: Row) -> tuple[str, ...]:
    much = str(row.count)
    if row.length_m is not None:
        much = f"{row.length_m:.2f} m".replace(".", decimal_sign())
    turns = [tr_n("1 bend", "{count} bends", row.bends)] if row.bends is not None else []
    details = ", ".join([*turns, *([tr(row.details)] if row.details else [])])
    lacking = ", ".join(tr(each) for each in (row.lacking, row.not_summed) if each)
    return (much, tr(row.item), tr(row.size), details, lacking)


def _item(text: str, row: Row) -> QStandardItem:
    made = QStandardItem(text)
    made.setEditable(False)
    made.setData(row.ids, IDS)
    made.setData(plain.tip_text(text), Qt.ItemDataRole.ToolTipRole)
    return made


def _ask_path(parent: QWidget, name: str) -> str:
    path, _ = QFileDialog.getSaveFileName(
        parent, tr("Save the parts list"), f"{_file_name(name)}.csv", tr("Tables (*.csv)")
    )
    return path


def _file_name(title: str) -> str:
    """A title as the name of a file: without what no file system takes."""
    return "".join(letter for letter in title if letter.isalnum() or letter in " -_,.").strip(" .") or "parts"
