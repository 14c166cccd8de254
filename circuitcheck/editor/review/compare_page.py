"""The comparison with an earlier drawing: what differs, what to strip out and fit, findings that came and went."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QSize, Qt, Signal
from PySide6.QtGui import QFont, QFontMetrics
from PySide6.QtWidgets import (
    QAbstractItemView,
    QStyledItemDelegate,
    QStyleOptionViewItem,
    QTreeWidget,
    QTreeWidgetItem,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain, translating
from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.review.page import button
from circuitcheck.editor.said_line import SaidLine
from circuitcheck.editor.sheet.review_marks import SIGNS
from circuitcheck.editor.translating import decimal_sign, later, shown_told, tr
from circuitcheck.figures.parts_list import PartsList
from circuitcheck.report.as_text import MARKS
from circuitcheck.report.compared import altered_words
from circuitcheck.report.parts import Row, rows
from circuitcheck.review.comparing import Comparison
from circuitcheck.review.findings_between import FindingsBetween
from circuitcheck.review.words import called, change_words, remark_lines, repiped_words
from circuitcheck.review.work_lists import WorkLists

NOT_COMPARED = later(
    "Choose an earlier file, and what was removed, fitted, moved and changed since is drawn on the sheet and "
    "listed here, with what to strip out and what to fit."
)
SAME = later("The two drawings hold the same.")
IDS = Qt.ItemDataRole.UserRole
PAD_PX, EDGE_PX, BUTTONS_PX = 3, 16, 40
Index = QModelIndex | QPersistentModelIndex
Entry = tuple[str, tuple[str, ...]]
"""A line of the list, and what it is about on the sheet."""


class Wrapping(QStyledItemDelegate):
    """Gives each line of the list the height its text needs at the list's width."""

    def __init__(self, tree: QTreeWidget) -> None:
        super().__init__(tree)
        self._tree = tree
        tree.header().sectionResized.connect(lambda: tree.scheduleDelayedItemsLayout())

    def sizeHint(self, option: QStyleOptionViewItem, index: Index) -> QSize:
        """As high as the text is, wrapped."""
        depth = 2 if index.parent().isValid() else 1
        width = self._tree.viewport().width() - depth * self._tree.indentation() - 2 * PAD_PX
        font = index.data(Qt.ItemDataRole.FontRole)
        metrics = QFontMetrics(font) if isinstance(font, QFont) else self._tree.fontMetrics()
        text = str(index.data(Qt.ItemDataRole.DisplayRole))
        box = metrics.boundingRect(0, 0, max(width, 40), 10_000, int(Qt.TextFlag.TextWordWrap), text)
        return QSize(width, box.height() + 2 * PAD_PX)


class ComparePage(QWidget):
    """Signals `file_wanted`, `left`, and `things_wanted` with the ids a line is about."""

    file_wanted = Signal()
    left = Signal()
    things_wanted = Signal(tuple)

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.choose = button(
            tr("Compare with a file…"), self.file_wanted.emit, tr("Choose an earlier drawing")
        )
        self.stop = button(tr("Stop comparing"), self.left.emit)
        self._said = plain.label(tr(NOT_COMPARED), "second", wrap=True)
        self.tree = QTreeWidget()
        self.tree.setAccessibleName(tr("What differs"))
        self.tree.setHeaderHidden(True)
        self.tree.setWordWrap(True)
        self.tree.setTextElideMode(Qt.TextElideMode.ElideNone)
        self.tree.setItemDelegate(Wrapping(self.tree))
        self.tree.setIndentation(14)
        self.tree.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.tree.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.tree.itemActivated.connect(self._show)
        self.tree.itemClicked.connect(self._show)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 0, 0)
        column.setSpacing(8)
        column.addWidget(SaidLine((self.choose, self.stop), margins=(0, EDGE_PX), high=BUTTONS_PX))
        self._said.setContentsMargins(0, 0, EDGE_PX, 0)
        column.addWidget(self._said)
        column.addWidget(self.tree, 1)
        column.addStretch(0)
        self.show_nothing()

    @property
    def said(self) -> str:
        """The sentence over the list."""
        return self._said.text()

    def show_nothing(self) -> None:
        """No comparison."""
        self._said.setText(tr(NOT_COMPARED))
        self.tree.clear()
        self.tree.hide()
        self.stop.hide()

    def show_comparison(
        self, name: str, found: Comparison, work: WorkLists, between: FindingsBetween | None
    ) -> None:
        """Show a comparison with the drawing of that name; `between` None: findings are being judged."""
        folded = {
            item.data(0, IDS + 1)
            for item in (self.tree.topLevelItem(row) for row in range(self.tree.topLevelItemCount()))
            if item is not None and not item.isExpanded()
        }
        self._said.setText(
            tr("From {name} to the drawing as it stands.", name=name) if not found.is_nothing else tr(SAME)
        )
        bar = self.tree.verticalScrollBar()
        place = bar.value()
        self.tree.clear()
        for title, entries in sections(found, work, between):
            self._section(title, entries, folded)
        self.tree.show()
        self.stop.show()
        bar.setValue(place)

    def _section(self, title: str, entries: list[Entry], folded: set[str]) -> None:
        if not entries:
            return
        top = QTreeWidgetItem([f"{title} ({len(entries)})"])
        top.setData(0, IDS + 1, title)
        top.setFont(0, scaled(self.tree.font(), 1.0, strong=True))
        for text, ids in entries:
            line = QTreeWidgetItem([text])
            line.setData(0, IDS, ids)
            top.addChild(line)
        self.tree.addTopLevelItem(top)
        top.setExpanded(title not in folded)

    def _show(self, item: QTreeWidgetItem) -> None:
        ids = item.data(0, IDS)
        if ids:
            self.things_wanted.emit(tuple(ids))


def sections(
    found: Comparison, work: WorkLists, between: FindingsBetween | None
) -> Iterator[tuple[str, list[Entry]]]:
    """The headings of the list and what stands under each."""
    yield _signed("removed", tr("Removed")), [(shown_told(called(found.old, id)), ()) for id in found.removed]
    yield _signed("fitted", tr("Fitted")), [(shown_told(called(found.new, id)), (id,)) for id in found.fitted]
    yield (
        _signed("re-piped", tr("Re-piped")),
        [
            (_about(called(found.new, each.new_id), repiped_words(found, each)), (each.new_id,))
            for each in found.repiped
        ],
    )
    yield (
        _signed("changed", tr("Changed")),
        [
            (
                _about(
                    called(found.new, each.new_id) if each.new_id else tr("The drawing"),
                    change_words(found, each),
                ),
                (each.new_id,) if each.new_id else (),
            )
            for each in found.changed
        ],
    )
    yield (
        _signed("moved", tr("Moved on the sheet")),
        [(shown_told(called(found.new, its)), (its,)) for _, its in found.moved],
    )
    yield (
        tr("Called by another id"),
        [(tr("{mine} is now {its}", mine=mine, its=its), (its,)) for mine, its in found.renumbered],
    )
    yield tr("Said of the drawing"), [(tr(line), ()) for line in remark_lines(found)]
    yield tr("Strip out"), _listed(work.strip_out, on_sheet=False)
    yield tr("Fit"), _listed(work.fit, on_sheet=True)
    yield (
        tr("Pipe cut shorter or made longer"),
        [(tr(altered_words(each)), (each.new_id,)) for each in work.altered],
    )
    if between is None:
        yield tr("Findings"), [(tr("Being judged…"), ())]
        return
    yield (
        tr("Findings that went"),
        [(f"{MARKS[each.grade]} {tr(each.grade.value)}: {tr(each.message)}", ()) for each in between.went],
    )
    yield (
        tr("Findings that came"),
        [
            (
                f"{MARKS[each.grade]} {tr(each.grade.value)}: {tr(each.message)}",
                (*each.components[:1], *each.pipes[:1]),
            )
            for each in between.came
        ],
    )
    yield (
        tr("Findings that weigh otherwise"),
        [
            (
                tr(
                    "{before}, now {now}: {message}",
                    before=tr(old.grade.value),
                    now=tr(new.grade.value),
                    message=tr(new.message),
                ),
                (*new.components[:1], *new.pipes[:1]),
            )
            for old, new in between.regraded
        ],
    )


def _signed(change: str, title: str) -> str:
    return f"{SIGNS[change]}  {title}"


def _about(name: str, words: str) -> str:
    return f"{shown_told(name)}: {tr(words)}"


def _listed(counted: PartsList, *, on_sheet: bool) -> list[Entry]:
    return [(_row_words(row), row.ids if on_sheet else ()) for row in rows(counted)]


def _row_words(row: Row) -> str:
    item = translating.lower(tr(row.item))
    if row.count is not None:
        named = f"{row.count} × {item} {tr(row.size)}".rstrip()
    else:
        much = f"{row.length_m or 0:.2f}".replace(".", decimal_sign())
        named = tr("{metres} m of {item} {size}", metres=much, item=item, size=tr(row.size)).rstrip()
    lacking = tr("not known: {what}", what=tr(row.lacking)) if row.lacking else ""
    words: Iterable[str] = (tr(row.details), lacking, tr(row.short_of))
    more = "; ".join(each for each in words if each)
    return f"{named} ({more})" if more else named
