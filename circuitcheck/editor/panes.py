"""The panes of the window: parts to the left, the sheet, details over findings to the right."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QDockWidget, QMainWindow, QSplitter, QVBoxLayout, QWidget

from circuitcheck.editor import remembered
from circuitcheck.editor.panels.section import HEAD_PX, Section
from circuitcheck.editor.panels.shelf import STRIP_PX, Shelf
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.editor.figures.panel import FiguresPanel
    from circuitcheck.editor.flow_bar import FlowBar
    from circuitcheck.editor.outline.panel import OutlinePanel
    from circuitcheck.editor.panels.details import DetailsPanel
    from circuitcheck.editor.panels.findings import FindingsPanel

SHELF_PX, SIDE_PX = 224, 320
FIRST_WIDE_PX = 1440
LEAST_SIDE_PX = 318
OUTLINE_PX = 300
DETAILS_PX, FINDINGS_PX = 430, 380
FOLD_BELOW_PX = 1200


class _Centre(QWidget):
    """What the docks leave of the window; tells how wide that is."""

    def __init__(self, fit_to: Callable[[int], None]) -> None:
        super().__init__()
        self._fit_to = fit_to

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width may fold the parts."""
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self._fit_to(event.size().width())


class Panes:
    """Makes the panes and keeps how wide they are; what they say to one another is the window's.

    At first there are the sheet and the frame about it, everything in its place; `furnish` puts the rest in.
    """

    details: DetailsPanel
    findings: FindingsPanel
    figures: FiguresPanel
    outline: OutlinePanel
    flow_bar: FlowBar
    dock: QDockWidget

    def __init__(self, window: QMainWindow) -> None:
        self._window = window
        self.sheet = SheetView()
        self.shelf = Shelf()
        self.details_section = Section(tr("Details"))
        self.findings_section = Section(tr("Findings"), note_right=True)
        self.figures_section = Section(tr("Figures"), note_right=True)
        self.figures_section.set_folded(True)
        self._side = QSplitter(Qt.Orientation.Vertical)
        self._across = QSplitter(Qt.Orientation.Horizontal)
        self._middle = QVBoxLayout()
        self._before_sheet = QWidget()
        """Holds the place before the sheet for Tab: the sheet cannot come after anything without leaving behind
        what lies on it, and Qt's focus chain is not asked (`areas.py`)."""
        self._split()

    def furnish(self) -> None:
        """Put in what is not there from the first moment."""
        # Here and not at the top: the sheet is painted before these are read.
        from circuitcheck.editor.figures.panel import FiguresPanel
        from circuitcheck.editor.flow_bar import FlowBar
        from circuitcheck.editor.outline.panel import OutlinePanel
        from circuitcheck.editor.panels.details import DetailsPanel
        from circuitcheck.editor.panels.findings import FindingsPanel

        self.details = DetailsPanel()
        self.findings = FindingsPanel()
        self.outline = OutlinePanel()
        self.figures = FiguresPanel()
        self.flow_bar = FlowBar()
        self.details.heading_changed.connect(self.details_section.set_note)
        self.findings.note_changed.connect(self.findings_section.set_note)
        self.details_section.put_in(self.details)
        self.findings_section.put_in(self.findings)
        self.figures_section.put_in(self.figures)
        self.flow_bar.hide()
        self._middle.insertWidget(0, self.flow_bar)
        self.dock = QDockWidget(tr("Outline"), self._window)
        self.dock.setObjectName("outline")
        self.dock.setWidget(self.outline)
        self._window.addDockWidget(Qt.DockWidgetArea.LeftDockWidgetArea, self.dock)
        self.dock.hide()
        self._order_stops()

    def widen_outline(self) -> None:
        """Give the outline the room that its names need, where it was not yet given any by hand."""
        if self.dock.width() < OUTLINE_PX:
            self._window.resizeDocks([self.dock], [OUTLINE_PX], Qt.Orientation.Horizontal)

    def below(self, bar: QWidget) -> QWidget:
        """The window's centre: the bar, and the panes below it."""
        centre = _Centre(self.fit_to)
        column = QVBoxLayout(centre)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(bar)
        column.addWidget(self._across, 1)
        _in_this_order(self.sheet, self.shelf.find_box, self.shelf.tree)
        return centre

    def _order_stops(self) -> None:
        """What was put in stands in its place for Tab too; the sheet stays where it is, before what lies on it."""
        flows = self.flow_bar
        _in_this_order(self._before_sheet, flows.situation, flows.by, flows.fill_in, flows.close_button)
        _in_this_order(self.shelf.tree, self.details, self.findings, self.figures.find_box, self.figures.list)

    def set_theme(self, theme: Theme) -> None:
        """Paint all of them in a theme."""
        self.sheet.set_theme(theme)
        self.shelf.set_theme(theme)
        self.findings.set_theme(theme)

    def fold_shelf(self, *, strip: bool) -> None:
        """Show the parts as a strip of symbols, or with their names."""
        if self.shelf.is_strip == strip:
            return
        self.shelf.set_strip(strip)
        sizes = self._across.sizes()
        left, right = STRIP_PX if strip else self._shelf_px, sizes[2]
        self._across.setSizes([left, sum(sizes) - left - right, right])

    def operate(self, view: QWidget, *, on: bool) -> None:
        """Put a drawing at work in the place of the sheet, the parts and the details, or those back."""
        if view.parentWidget() is None:
            self._middle.addWidget(view, 1)
        view.setVisible(on)
        for widget in (self.sheet, self.shelf, self.details_section):
            widget.setVisible(not on)

    def fit_to(self, width: int) -> None:
        """Fold the parts where the panes have little room, in a narrow window or beside docks; else unfold them."""
        self.fold_shelf(strip=width < FOLD_BELOW_PX)

    def share_side(self) -> None:
        """Let the sections that are unfolded have as much room as one another."""
        self._side.setSizes([HEAD_PX if each.is_folded else self._side.height() for each in self._sections])

    @property
    def _sections(self) -> tuple[Section, ...]:
        return self.details_section, self.findings_section, self.figures_section

    def remember(self, settings: QSettings) -> None:
        """Keep the window's place and the widths of the panes."""
        remembered.save_geometry(settings, self._window, self._splitters)

    def restore(self, settings: QSettings) -> None:
        """Give the panes the widths they had; the window is in its place by then."""
        remembered.restore_splitters(settings, self._splitters)

    @property
    def _splitters(self) -> dict[str, QSplitter]:
        # Folded to a strip the parts have no width of their own to remember.
        return {"side": self._side} if self.shelf.is_strip else {"across": self._across, "side": self._side}

    @property
    def _shelf_px(self) -> int:
        """As wide as the parts' names need in language and font of the window, where that is more than usual."""
        return max(SHELF_PX, self.shelf.names_px())

    def _split(self) -> None:
        self._side.addWidget(self.details_section)
        self._side.addWidget(self.findings_section)
        self._side.addWidget(self.figures_section)
        self._side.setSizes([DETAILS_PX, FINDINGS_PX, HEAD_PX])
        self._side.setMinimumWidth(LEAST_SIDE_PX)
        middle = QWidget()
        column = self._middle = QVBoxLayout(middle)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._before_sheet)
        self._before_sheet.hide()
        column.addWidget(self.sheet, 1)
        for widget in (self.shelf, middle, self._side):
            self._across.addWidget(widget)
        self._across.setStretchFactor(1, 1)
        self._across.setSizes([self._shelf_px, FIRST_WIDE_PX - self._shelf_px - SIDE_PX - 2, SIDE_PX])
        for splitter in (self._side, self._across):
            splitter.setHandleWidth(1)
            splitter.setChildrenCollapsible(False)


def _in_this_order(*stops: QWidget | None) -> None:
    for first, second in pairwise(filter(None, stops)):
        QWidget.setTabOrder(first, second)
