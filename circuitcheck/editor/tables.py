"""The two tables beside the sheet: what is to be filled in, and parts and pipe counted."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QDockWidget, QMainWindow

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.document import Document
from circuitcheck.editor.fill_in.panel import FillInPanel
from circuitcheck.editor.parts_counted import PartsCounted
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

FILL_IN_LINES = 20
"""How high the table to fill in opens, in lines of text."""


class Tables(QObject):
    """Makes both and lets them follow the document; what they change goes through it."""

    def __init__(self, window: QMainWindow, document: Document, sheet: SheetView) -> None:
        super().__init__(window)
        self._window, self._document, self._sheet = window, document, sheet
        self._has_opened = False
        self.fill_in = FillInPanel()
        self.counted = PartsCounted(window)
        self.dock = QDockWidget(tr("Fill in"), window)
        self.dock.setObjectName("fill in")
        self.dock.setWidget(self.fill_in)
        window.addDockWidget(Qt.DockWidgetArea.BottomDockWidgetArea, self.dock)
        self.dock.hide()
        self.fill_in_action = self.dock.toggleViewAction()
        self.fill_in_action.setText(tr("&Fill in what is not known"))
        self.fill_in_action.setShortcut(QKeySequence("Ctrl+I"))
        _tell(self.fill_in_action, tr("One table of what is not known, the most needed first"))
        self.counted_action = QAction(tr("Parts and &pipe, counted…"), window)
        self.counted_action.setShortcut(QKeySequence("Ctrl+Shift+L"))
        _tell(self.counted_action, tr("How many of each part, and pipe by size, to copy or save as a table"))
        self._connect()
        self.fill_in.show_drawing(document.drawing, is_another=True)
        self.counted.show_drawing(document.drawing)

    def _connect(self) -> None:
        self._document.changed.connect(self._show_drawing)
        self._document.analysed.connect(self._show_analysis)
        self.fill_in.edited.connect(self._document.do)
        self.fill_in.chosen.connect(self._choose)
        self.counted.chosen.connect(self._choose)
        self.fill_in_action.triggered.connect(self._focus_fill_in)
        self.counted_action.triggered.connect(self._show_counted)

    def fill_in_first(self, names: Iterable[str]) -> None:
        """Open the table to fill in on the first of these numbers, named as `id.field`."""
        if self.dock.isHidden():
            self.fill_in_action.trigger()
        rows = (self.fill_in.model.row_of(name) for name in names)
        row = next((each for each in rows if each is not None), None)
        self.fill_in.focus_table()
        if row is not None:
            self.fill_in.table.go_to(row)

    def set_theme(self, theme: Theme) -> None:
        """Paint the marks anew."""
        self.fill_in.set_theme(theme)

    def _show_drawing(self, before: Drawing, after: Drawing, step: str) -> None:
        self.fill_in.show_drawing(after, is_another=not step)
        self.counted.show_drawing(after)

    def _show_analysis(self, analysis: Analysis) -> None:
        self.fill_in.show_analysis(analysis)

    def _choose(self, ids: frozenset[str]) -> None:
        """Show on the sheet what a row is about; a control is not on the water and may stand nowhere."""
        self._sheet.select(ids)
        if ids:
            self._sheet.bring_into_view(ids)

    def _focus_fill_in(self, shown: bool) -> None:
        if shown:
            self._open_first()
            self.fill_in.focus_table()
        else:
            self._sheet.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _open_first(self) -> None:
        """Give it its height when it is opened first; afterwards it stays as it was left."""
        if self._has_opened:
            return
        self._has_opened = True
        high = min(FILL_IN_LINES * self.fill_in.fontMetrics().lineSpacing(), self._window.height() // 2)
        self._window.resizeDocks([self.dock], [high], Qt.Orientation.Vertical)

    def _show_counted(self) -> None:
        self.counted.show()
        self.counted.raise_()
        self.counted.activateWindow()
        self.counted.tree.setFocus(Qt.FocusReason.ShortcutFocusReason)


def _tell(action: QAction, hint: str) -> None:
    action.setStatusTip(hint)
    plain.set_tip(action, hint)
