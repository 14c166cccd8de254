"""The outline beside the sheet: its entry in the menu, where the keyboard goes, and one selection for both."""

from __future__ import annotations

from PySide6.QtCore import QObject, Qt
from PySide6.QtWidgets import QMainWindow

from circuitcheck.editor.panes import Panes
from circuitcheck.editor.translating import tr


class Outlining(QObject):
    """Joins the outline's dock to the window; `action` shows and hides it."""

    def __init__(self, window: QMainWindow, panes: Panes) -> None:
        super().__init__(window)
        self._panes = panes
        self.action = panes.dock.toggleViewAction()
        self.action.setText(tr("Out&line"))
        self.action.setShortcut("Ctrl+L")
        self.action.setStatusTip(tr("Every part, pipe and finding by its name, as a tree to walk along"))
        self.action.triggered.connect(self._focus)
        panes.outline.selected.connect(self._select)
        panes.outline.finding_wanted.connect(panes.findings.choose)

    def _focus(self, shown: bool) -> None:
        """The keyboard goes along: into the outline when it opens, back to the sheet when it closes."""
        if shown:
            self._panes.widen_outline()
        into = self._panes.outline.tree if shown else self._panes.sheet
        into.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _select(self, ids: frozenset[str]) -> None:
        sheet = self._panes.sheet
        if ids != sheet.selected_ids():
            sheet.select(ids)
            sheet.bring_into_view(ids)
