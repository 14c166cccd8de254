"""Figures live beside the drawing: the panel of worked figures, and the flows on the sheet."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QAction, QActionGroup, QKeySequence
from PySide6.QtWidgets import QMainWindow, QMenu

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.document import Document
from circuitcheck.editor.figures.heights import MANY_ROWS, Asked, FoundRows, rows_of
from circuitcheck.editor.panels.findings import key
from circuitcheck.editor.panes import Panes
from circuitcheck.editor.tables import Tables
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import decimal_sign, later, tr, tr_n
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.figures.figure import Figure
from circuitcheck.finding import Finding
from circuitcheck.report.flows import By, Flows, SituationFlows, pipe_words, position_words

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis

FIGURES_PAUSE_MS, FLOWS_PAUSE_MS = 120, 0
"""How long the drawing must rest first: flows follow at once, figures once nothing is dragged."""
BUSY_MS = 250
"""How long old flows stand before the bar says that the new ones are being worked out."""
WORKING = later("Working out the flows…")
FAILED = later("The flows failed inside the program; none is shown.")


class Live(QObject):
    """Works both out beside the window, and only while they are seen."""

    def __init__(self, window: QMainWindow, document: Document, panes: Panes, tables: Tables) -> None:
        super().__init__(window)
        self._document, self._panes, self._tables = document, panes, tables
        self._flows: Flows | None = None
        self._unfolds: list[bool] = []
        self._figures_work = WorkingOut(_figures_of, "figures", FIGURES_PAUSE_MS, self)
        self._flows_work = WorkingOut(_flows_of, "flows", FLOWS_PAUSE_MS, self)
        self._busy = QTimer(self)
        self._busy.setSingleShot(True)
        self._busy.setInterval(BUSY_MS)
        self.figures_action = _action(
            window, tr("Fi&gures"), "Ctrl+G", tr("Every figure worked out of the drawing, with its working")
        )
        self.figures_action.setCheckable(True)
        self.flows_action = _action(
            window, tr("Show the &flows"), "F9", tr("Which way water flows in each situation, and how fast")
        )
        self.flows_action.setCheckable(True)
        self.next_situation = _action(
            window, tr("&Next situation"), "Shift+F9", tr("Flows in the next situation")
        )
        self.by_actions = self._by_actions(window)
        self.menu = QMenu(tr("F&lows on the sheet"), window)
        self.menu.addActions([self.flows_action, self.next_situation])
        self.menu.addSeparator()
        self.menu.addActions(list(self.by_actions.values()))
        self._connect()
        # The drawing may be there before this: nothing has been worked out of it yet.
        panes.figures.outdate()
        self._enable()

    def _by_actions(self, window: QMainWindow) -> dict[By, QAction]:
        group = QActionGroup(self)
        found = {}
        for by in By:
            action = _action(window, tr(by.value), "", tr("By the pipes: {what}", what=tr(by.value)))
            action.setCheckable(True)
            action.setData(by)
            group.addAction(action)
            found[by] = action
        found[By.FLOW].setChecked(True)
        group.triggered.connect(self._choose_by)
        return found

    def _connect(self) -> None:
        panel, section, bar = self._panes.figures, self._panes.figures_section, self._panes.flow_bar
        self._document.changed.connect(self._drawing_changed)
        self._figures_work.found.connect(self._show_figures)
        self._flows_work.found.connect(self._show_flows)
        self._busy.timeout.connect(self._show_busy)
        panel.wanted.connect(self._want_figures)
        panel.unwanted.connect(self._unwant_figures)
        table = self._tables.fill_in
        table.figures_wanted.connect(self._want_figures)
        table.figures_unwanted.connect(self._unwant_figures)
        panel.note_changed.connect(section.set_note)
        panel.finding_wanted.connect(self._show_finding)
        self._document.analysed.connect(self._show_findings)
        section.folded_changed.connect(self._folded)
        for other in (self._panes.details_section, self._panes.findings_section):
            other.folded_changed.connect(self._share)
        self.figures_action.triggered.connect(self._toggle_figures)
        self.flows_action.toggled.connect(self._toggle_flows)
        self.next_situation.triggered.connect(self._step)
        bar.changed.connect(self._choice_changed)
        bar.left.connect(self._leave_flows)
        bar.fill_in_wanted.connect(self._fill_in)
        self._panes.sheet.selection_changed.connect(self._say_selected)

    def set_theme(self, theme: Theme) -> None:
        """Paint the panel in a theme."""
        self._panes.figures.set_theme(theme)

    def close(self) -> None:
        """Stop; the threads have ended when this returns."""
        self._busy.stop()
        self._document.changed.disconnect(self._drawing_changed)
        self._document.analysed.disconnect(self._show_findings)
        # Taken apart, a window hides one widget after the other: the last would ask after the first.
        panel, table = self._panes.figures, self._tables.fill_in
        panel.wanted.disconnect(self._want_figures)
        panel.unwanted.disconnect(self._unwant_figures)
        table.figures_wanted.disconnect(self._want_figures)
        table.figures_unwanted.disconnect(self._unwant_figures)
        self._figures_work.close()
        self._flows_work.close()

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._figures_work.is_busy or self._flows_work.is_busy

    @property
    def flows(self) -> Flows | None:
        """The flows of the present drawing; None while they are worked out, not shown, or failed."""
        return self._flows

    def _drawing_changed(self, before: Drawing, after: Drawing, step: str) -> None:
        if self._panes.figures.isVisible():
            self._panes.figures.expect()
        else:
            self._panes.figures.outdate()
        if self._figures_seen:
            self._figures_work.ask(_Wanted(after, self._panes.figures.asked()))
        if self.flows_action.isChecked():
            self._ask_flows(after)

    # The panel.

    def _toggle_figures(self, shown: bool) -> None:
        self._panes.figures_section.set_folded(not shown)
        if shown:
            self._panes.figures.focus_list()
        else:
            self._panes.sheet.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _folded(self, folded: bool) -> None:
        """Give the figures the room of the sections above, and give it back."""
        self.figures_action.setChecked(not folded)
        others = (self._panes.details_section, self._panes.findings_section)
        if folded:
            for section, was_open in zip(others, self._unfolds, strict=False):
                if was_open:
                    section.set_folded(False)
            self._unfolds = []
        else:
            self._unfolds = [not section.is_folded for section in others]
            for section in others:
                section.set_folded(True)

    def _share(self, folded: bool) -> None:
        """A section that is unfolded above the open figures does not take all their room."""
        if not folded and not self._panes.figures_section.is_folded:
            self._panes.share_side()

    @property
    def _figures_seen(self) -> bool:
        """Whether anything in view shows figures, or what they need."""
        return self._panes.figures.isVisible() or self._tables.fill_in.isVisible()

    def _unwant_figures(self) -> None:
        if not self._figures_seen:
            self._figures_work.forget()

    def _want_figures(self) -> None:
        if self._panes.figures.isVisible() and self._panes.figures.is_stale:
            self._panes.figures.expect()
        self._figures_work.ask(_Wanted(self._document.drawing, self._panes.figures.asked()))

    def _show_figures(self, wanted: _Wanted, found: _Found | None) -> None:
        figures, rows = (None, None) if found is None else (found.figures, found.rows)
        self._panes.figures.show_figures(wanted.drawing, figures, rows)
        self._tables.fill_in.show_figures(figures)

    def _show_findings(self, analysis: Analysis) -> None:
        self._panes.figures.show_findings(analysis.findings)

    def _show_finding(self, finding: Finding) -> None:
        """Open a finding where it stands, unless it is gone by now."""
        panel, section = self._panes.findings, self._panes.findings_section
        same = next((each for each in panel.findings if key(each) == key(finding)), None)
        if same is not None:
            section.set_folded(False)
            panel.choose(same)
            panel.setFocus(Qt.FocusReason.OtherFocusReason)

    # The flows.

    def _toggle_flows(self, shown: bool) -> None:
        self._panes.flow_bar.setVisible(shown)
        self._enable()
        if shown:
            self._ask_flows(self._document.drawing)
            return
        self._flows_work.forget()
        self._busy.stop()
        self._flows = None
        self._panes.sheet.set_flows(None, self._panes.flow_bar.chosen_by)

    def _enable(self) -> None:
        self.next_situation.setEnabled(self.flows_action.isChecked())

    def _leave_flows(self) -> None:
        self.flows_action.setChecked(False)
        self._panes.sheet.setFocus(Qt.FocusReason.OtherFocusReason)

    def _ask_flows(self, drawing: Drawing) -> None:
        self._flows = None
        self._flows_work.ask(drawing)
        self._busy.start()

    def _show_busy(self) -> None:
        """An old answer stands no longer than one would take it for the new one."""
        self._panes.sheet.set_flows(None, self._panes.flow_bar.chosen_by)
        self._panes.flow_bar.say(tr(WORKING), asks=False)

    def _show_flows(self, drawing: Drawing, found: Flows | None) -> None:
        self._busy.stop()
        self._flows = found
        self._panes.flow_bar.offer([each.name for each in found.situations] if found else ())
        if found is None:
            self._panes.flow_bar.say(tr(FAILED), asks=False)
        self._show_situation()

    def _choice_changed(self) -> None:
        self.by_actions[self._panes.flow_bar.chosen_by].setChecked(True)
        self._show_situation()

    def _choose_by(self, action: QAction) -> None:
        by = next(by for by, each in self.by_actions.items() if each is action)
        self._panes.flow_bar.choose_by(by)
        self.flows_action.setChecked(True)

    def _step(self) -> None:
        self._panes.flow_bar.step(1)

    def _situation(self) -> SituationFlows | None:
        return self._flows.named(self._panes.flow_bar.chosen) if self._flows else None

    def _show_situation(self) -> None:
        self._panes.sheet.set_flows(self._situation(), self._panes.flow_bar.chosen_by)
        self._say()

    def _say_selected(self, ids: Iterable[str]) -> None:
        self._say()

    def _say(self) -> None:
        """One line: what is missing or failed, else the pipe that is selected, else how the valves stand."""
        flows, situation = self._flows, self._situation()
        if flows is None:
            return
        bar, sheet = self._panes.flow_bar, self._panes.sheet
        sentences = [tr(flows.fault), missing_sentence(flows), tr(situation.fault) if situation else ""]
        if situation is not None and not any(sentences):
            pipes = [id for id in sheet.selected_ids() if id in flows.drawing.pipes]
            if len(pipes) == 1:
                sentences.append(tr(pipe_words(flows.drawing, pipes[0], situation, decimal_sign())))
            else:
                sentences += [_no_room(sheet.flows.left_out), tr(position_words(flows.drawing, situation))]
        bar.say(" ".join(each for each in sentences if each), asks=bool(flows.missing))

    def _fill_in(self) -> None:
        self._tables.fill_in_first(self._flows.missing if self._flows else ())


def missing_sentence(flows: Flows) -> str:
    """How many numbers are missing; empty for none."""
    count = len(flows.missing)
    if not count:
        return ""
    if any(each.pipes for each in flows.situations):
        return tr_n(
            "1 number is missing: some flows are not known.",
            "{count} numbers are missing: some flows are not known.",
            count,
        )
    return tr_n(
        "1 number is missing to work out the flows.",
        "{count} numbers are missing to work out the flows.",
        count,
    )


def _no_room(count: int) -> str:
    if not count:
        return ""
    return tr_n(
        "1 figure has no room: choose a pipe to read it.",
        "{count} figures have no room: choose a pipe to read it.",
        count,
    )


@dataclass(frozen=True, slots=True)
class _Wanted:
    """A drawing, and how the list lies that shows its figures."""

    drawing: Drawing
    asked: Asked


@dataclass(frozen=True, slots=True)
class _Found:
    """Its figures, and where there are many what their rows say."""

    figures: tuple[Figure, ...]
    rows: FoundRows | None


def _figures_of(wanted: _Wanted) -> _Found:
    # Here and not at the top: the window shows before the figures are read.
    from circuitcheck.figures.catalogue import all_figures
    from circuitcheck.figures.plant import Plant

    with Plant(wanted.drawing) as plant:
        figures = all_figures(plant)
    rows = rows_of(wanted.drawing, figures, wanted.asked) if len(figures) > MANY_ROWS else None
    return _Found(figures, rows)


def _flows_of(drawing: Drawing) -> object:
    from circuitcheck.report.flows import flows

    return flows(drawing)


def _action(window: QMainWindow, text: str, key: str, hint: str) -> QAction:
    made = QAction(text, window)
    if key:
        made.setShortcut(QKeySequence(key))
    made.setStatusTip(hint)
    plain.set_tip(made, hint)
    return made
