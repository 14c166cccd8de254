"""Operating in the main window: the sheet's place taken by the drawing at work, and given back."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QMainWindow

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.actions import Actions
from circuitcheck.editor.document import Document
from circuitcheck.editor.live import Live
from circuitcheck.editor.panes import Panes
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.tables import Tables
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding

if TYPE_CHECKING:
    from circuitcheck.editor.operating.live_view import LiveView
    from circuitcheck.editor.operating.sheet import OperatedSheet


class Operate(QObject):
    """The toggle, and what it does. Signals `hint` with what the keys do now, `zoom_changed`."""

    hint = Signal(str)
    zoom_changed = Signal(float)

    def __init__(
        self,
        window: QMainWindow,
        document: Document,
        panes: Panes,
        tables: Tables,
        live: Live,
        actions: Actions,
    ) -> None:
        super().__init__(window)
        self._document, self._panes, self._tables = document, panes, tables
        self._live, self._actions = live, actions
        self._view: LiveView | None = None
        self._theme: Theme | None = None
        self._off: list[QAction] = []
        self.action = QAction(tr("&Operate"), window)
        self.action.setCheckable(True)
        self.action.setShortcut(QKeySequence("F7"))
        said = tr("The drawing at work: turn its valves, see its water flow and warm")
        self.action.setStatusTip(said)
        plain.set_tip(self.action, said)
        self.action.toggled.connect(self._toggle)
        document.changed.connect(self._follow)
        panes.findings.operate_wanted.connect(self.operate_finding)
        panes.findings.chosen.connect(self._finding_chosen)

    @property
    def view(self) -> LiveView:
        """The drawing at work; made when first asked for."""
        if self._view is None:
            # Here and not at the top: the window is up in a fifth less time.
            from circuitcheck.editor.operating.live_view import LiveView

            self._view = LiveView(closable=True)
            self._view.left.connect(self.leave)
            self._view.fill_in_wanted.connect(self._fill_in)
            self._view.sheet.zoom_changed.connect(self.zoom_changed)
            if self._theme is not None:
                self._view.set_theme(self._theme)
        return self._view

    @property
    def is_on(self) -> bool:
        """Whether the drawing is at work."""
        return self.action.isChecked()

    @property
    def shown_sheet(self) -> SheetView | OperatedSheet:
        """The sheet that is in view."""
        return self.view.sheet if self.is_on else self._panes.sheet

    def operate_finding(self, finding: Finding) -> None:
        """Put the drawing to work with the valves set that prove a finding."""
        if self.is_on:
            self._show(finding)
        else:
            self.action.setChecked(True)
        self.view.sheet.setFocus(Qt.FocusReason.OtherFocusReason)

    def leave(self) -> None:
        """Back to drawing."""
        self.action.setChecked(False)

    def set_theme(self, theme: Theme) -> None:
        """Show it in other colours."""
        self._theme = theme
        if self._view is not None:
            self._view.set_theme(theme)

    def close(self) -> None:
        """Stop; the thread has ended when this returns."""
        self._document.changed.disconnect(self._follow)
        if self._view is not None:
            self._view.close_down()

    def _toggle(self, on: bool) -> None:
        view, sheet = self.view, self._panes.sheet
        if on:
            sheet.cancel_gesture_or_selection()
            sheet.select(())
            self._live.flows_action.setChecked(False)
            self._show(self._panes.findings.finding)
        self._panes.operate(view, on=on)
        self._hold(on)
        view.sheet.set_moving(on and view.bar.moving.isChecked())
        (view.sheet if on else sheet).setFocus(Qt.FocusReason.OtherFocusReason)
        self.zoom_changed.emit(self.shown_sheet.zoom)
        self.hint.emit(
            tr(
                "Click a valve to turn it; Tab and Space do the same. The drawing is not changed. Escape leaves."
            )
            if on
            else ""
        )

    def _show(self, finding: Finding | None) -> None:
        shut = finding.witness.shut if finding is not None and finding.witness is not None else ()
        view, drawing = self.view, self._document.drawing
        if not shut and view.drawing is drawing and view.positions is not None:
            return
        view.show_drawing(drawing, shut=shut)

    def _hold(self, on: bool) -> None:
        """What draws has nothing to draw on meanwhile."""
        actions = self._actions
        if on:
            drawing = (actions.place, actions.place_again, actions.keep_placing, actions.pipe, actions.shelf)
            others = (actions.select_all, actions.find, actions.find_next, actions.find_previous)
            self._off = [
                each for each in (*drawing, *others, self._live.menu.menuAction()) if each.isEnabled()
            ]
            self._off += [each for each in self._live.menu.actions() if each.isEnabled()]
        for each in self._off:
            each.setEnabled(not on)

    def _follow(self, before: Drawing, after: Drawing, step: str) -> None:
        """An edit is followed with everything as it stands; another drawing begins anew."""
        if self.is_on:
            if step:
                self.view.follow(after)
            else:
                self.view.show_drawing(after)

    def _finding_chosen(self, finding: Finding | None) -> None:
        if self.is_on and finding is not None and finding.witness is not None and finding.witness.shut:
            self._show(finding)

    def _fill_in(self, names: Iterable[str]) -> None:
        self.leave()
        self._tables.fill_in_first(names)
