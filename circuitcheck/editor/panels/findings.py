"""The findings panel: the list beside the sheet, the chosen one opened in place, the verdict below."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QModelIndex, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractItemView, QFrame, QListView, QWidget

from circuitcheck.editor.panels.finding_card import FindingCard, height_at
from circuitcheck.editor.panels.finding_rows import FINDING, FindingDelegate, FindingsModel
from circuitcheck.editor.panels.verdict import Verdict
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr, tr_n
from circuitcheck.finding import Finding

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.cures import Cure

Key = tuple[str, tuple[str, ...]]


def key(finding: Finding) -> Key:
    """What makes a finding of a new analysis the same as one of an earlier one: its check and what it judges."""
    return finding.check, (finding.components or finding.pipes)[:1]


class FindingsPanel(QListView):
    """Signals `chosen` with a finding or None. A new analysis keeps the chosen one if it is still there.
    `cures_wanted` asks for the cures of the opened one, `cure_wanted` for one of them to be made;
    `accept_wanted` carries the finding to accept, `take_back_wanted` an acceptance, `operate_wanted` the
    finding whose valves are to be set.

    Nothing here takes the focus by itself.
    """

    chosen = Signal(object)
    part_wanted = Signal(str)
    field_wanted = Signal(str, str)
    cure_wanted = Signal(object)
    cures_wanted = Signal(object)
    accept_wanted = Signal(object)
    take_back_wanted = Signal(object)
    operate_wanted = Signal(object)
    lesson_wanted = Signal(str)
    note_changed = Signal(str)

    def __init__(self) -> None:
        super().__init__()
        self.setAccessibleName(tr("Findings"))
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setSelectionMode(QAbstractItemView.SelectionMode.NoSelection)
        self.setVerticalScrollMode(QAbstractItemView.ScrollMode.ScrollPerPixel)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setResizeMode(QListView.ResizeMode.Adjust)
        self.setMouseTracking(True)
        self._theme = light()
        self._rows = FindingsModel()
        self._delegate = FindingDelegate()
        self._rows.setParent(self)
        self._delegate.setParent(self)
        self._rows.set_theme(self._theme)
        self.setModel(self._rows)
        self.setItemDelegate(self._delegate)
        self._analysis: Analysis | None = None
        self._chosen: Finding | None = None
        self._verdict: Verdict | None = None
        self._card: FindingCard | None = None
        self.clicked.connect(self._clicked)

    @property
    def finding(self) -> Finding | None:
        """The chosen finding."""
        return self._chosen

    @property
    def findings(self) -> tuple[Finding, ...]:
        """All findings, in the order of the list."""
        return self._rows.findings

    def set_theme(self, theme: Theme) -> None:
        """Paint in another theme."""
        self._theme = theme
        self._delegate.theme = theme
        self._rows.set_theme(theme)
        self._rebuild()

    def show_analysis(self, analysis: Analysis) -> None:
        """Show what the checks say now."""
        was = self._chosen
        self._analysis = analysis
        if was is not None:
            same = [each for each in analysis.findings if key(each) == key(was)]
            self._chosen = same[0] if same else None
        self._rebuild()
        self.note_changed.emit(_note(analysis))
        if self._chosen is not was:
            self.chosen.emit(self._chosen)

    def choose(self, finding: Finding | None) -> None:
        """Open a finding in place and signal it; None closes the open one."""
        if finding is self._chosen:
            return
        self._chosen = finding
        self._rebuild()
        if finding is not None and finding in self.findings:
            index = self._rows.index(self.findings.index(finding))
            self.setCurrentIndex(index)
            # Once the list knows how high the card is.
            QTimer.singleShot(0, self, self._show_chosen)
        self.chosen.emit(finding)

    def leave(self) -> None:
        """Close the open finding."""
        self.choose(None)

    def choose_next(self) -> None:
        """Choose the next finding."""
        self.step(1)

    def choose_previous(self) -> None:
        """Choose the finding before."""
        self.step(-1)

    def step(self, by: int) -> None:
        """Choose the next (1) or the previous (-1) finding; beyond the last comes the first."""
        found = self.findings
        if not found:
            return
        first = 0 if by > 0 else -1
        at = found.index(self._chosen) + by if self._chosen in found else first
        self.choose(found[at % len(found)])

    def _rebuild(self) -> None:
        """The rows anew, the card in the chosen one's, the verdict in the last."""
        if self._analysis is None:
            return
        bar = self.verticalScrollBar()
        place = bar.value()
        is_open = self._verdict.open_folds if self._verdict is not None else frozenset()
        self._delegate.heights = {}
        self._rows.show_findings(self._analysis.drawing, self._analysis.findings)
        self._card = None
        if self._chosen is not None and self._chosen in self.findings:
            self._card = FindingCard(self._analysis.drawing, self._chosen, self._theme)
            self._card.left.connect(self.leave)
            self._card.part_wanted.connect(self.part_wanted)
            self._card.field_wanted.connect(self.field_wanted)
            self._card.cure_wanted.connect(self.cure_wanted)
            self._card.accept_wanted.connect(self._accept)
            self._card.operate_wanted.connect(self._operate)
            self._card.lesson_wanted.connect(self.lesson_wanted)
            self._card.take_back_wanted.connect(self.take_back_wanted)
            self.setIndexWidget(self._rows.index(self.findings.index(self._chosen)), self._card)
        self._verdict = Verdict(self._analysis, self._theme, is_open=is_open)
        self._verdict.resized.connect(self._measure)
        self.setIndexWidget(self._rows.index(len(self.findings)), self._verdict)
        self._measure()
        bar.setValue(place)
        self.cures_wanted.emit(self._chosen if self._card is not None else None)

    def show_cures(self, finding: Finding, cures: tuple[Cure, ...]) -> None:
        """Offer the cures of a finding, if it is still the open one."""
        if self._card is not None and finding is self._chosen and cures:
            self._card.show_cures(cures)
            self._measure()

    def _operate(self) -> None:
        self.operate_wanted.emit(self._chosen)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A finding that valves prove is put to work."""
        finding = self.indexAt(event.position().toPoint()).data(FINDING)
        if isinstance(finding, Finding) and finding.witness is not None and finding.witness.shut:
            self.choose(finding)
            self.operate_wanted.emit(finding)
        else:
            super().mouseDoubleClickEvent(event)

    def _accept(self) -> None:
        self.accept_wanted.emit(self._chosen)

    def _measure(self) -> None:
        """Give the card and the verdict the height they need at the list's width."""
        width = self.viewport().width()
        self._delegate.width = width
        heights: dict[int, int] = {}
        if self._card is not None and self._chosen is not None:
            heights[self.findings.index(self._chosen)] = height_at(self._card, width)
        if self._verdict is not None:
            heights[len(self.findings)] = height_at(self._verdict, width)
        self._delegate.heights = heights
        self.doItemsLayout()

    def _show_chosen(self) -> None:
        if self._chosen in self.findings and self._chosen is not None:
            index = self._rows.index(self.findings.index(self._chosen))
            self.scrollTo(index, QAbstractItemView.ScrollHint.PositionAtTop)

    def _clicked(self, index: QModelIndex) -> None:
        finding = index.data(FINDING)
        if isinstance(finding, Finding):
            self.choose(finding)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter opens the row at the caret, Escape closes the open one."""
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Space):
            self._clicked(self.currentIndex())
        elif event.key() == Qt.Key.Key_Escape and self._chosen is not None:
            self.choose(None)
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Wrap the texts anew."""
        super().resizeEvent(event)
        self._measure()

    def sizeHint(self) -> QSize:
        """A few rows."""
        return QSize(320, 360)

    @property
    def card(self) -> QWidget | None:
        """The open finding's card."""
        return self._card

    @property
    def verdict(self) -> Verdict | None:
        """What stands below the findings."""
        return self._verdict


def _note(analysis: Analysis) -> str:
    total = len(analysis.judged) + len(analysis.not_judged)
    if not total:
        return ""
    speaking = len({finding.check for finding in analysis.findings})
    checks = tr_n("1 check", "{count} checks", total)
    return tr("{speaking} of {checks}", speaking=speaking, checks=checks) if speaking else checks
