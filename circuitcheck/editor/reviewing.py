"""Review beside the drawing: what the panel asks for becomes steps of the document, and marks on the sheet."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QDockWidget, QMainWindow, QMenu, QMessageBox, QWidget

from circuitcheck.drawing.edits import EditError
from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.document import Document
from circuitcheck.editor.panels.subjects import in_order
from circuitcheck.editor.panes import Panes
from circuitcheck.editor.review.accepting import AcceptDialog
from circuitcheck.editor.review.comparing import Comparing
from circuitcheck.editor.review.panel import ReviewPanel
from circuitcheck.editor.translating import later, of_error, tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.finding import Finding
from circuitcheck.report.wording import short
from circuitcheck.review import acceptances, notes
from circuitcheck.told import worded

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.review.holding import Held

NAME = "review/name"
RECORD_PAUSE_MS = 150
DOCK_PX = 380
BROKEN = later("The review record is broken by this change: Review, Record says why.")


class Reviewing(QObject):
    """Makes the panel and its menu, and keeps both and the sheet up with the document."""

    def __init__(
        self, window: QMainWindow, menu: QMenu, document: Document, panes: Panes, settings: QSettings
    ) -> None:
        super().__init__(window)
        self._window, self._document, self._panes, self._settings = window, document, panes, settings
        self.panel = ReviewPanel()
        self.panel.author.setText(str(settings.value(NAME, "")))
        self._held_before = self._has_opened = False
        self._record_work = WorkingOut(_held_of, tr("review record"), RECORD_PAUSE_MS, self)
        self.dock = QDockWidget(tr("Review"), window)
        self.dock.setObjectName("review")
        self.dock.setWidget(self.panel)
        window.addDockWidget(Qt.DockWidgetArea.RightDockWidgetArea, self.dock)
        self.dock.hide()
        self._fill(menu)
        self.comparing = Comparing(window, document, panes.sheet, self.panel.comparison, self.stop_action)
        self._connect()
        self._drawing_changed(Drawing(), document.drawing, "")

    def _fill(self, menu: QMenu) -> None:
        shown = self.dock.toggleViewAction()
        shown.setText(tr("&Review panel"))
        shown.setStatusTip(tr("Notes, comparing, acceptances and the review record"))
        shown.setShortcut(QKeySequence("Ctrl+Shift+R"))
        shown.triggered.connect(self._opened_or_closed)
        self.note_action = self._action(tr("Pin a &note…"), "Ctrl+Shift+M", tr("A note on what is selected"))
        self.compare_action = self._action(
            tr("&Compare with a file…"), "", tr("What differs from an earlier drawing")
        )
        self.stop_action = self._action(tr("&Stop comparing"), "", tr("Leave the earlier drawing"))
        self.accept_action = self._action(
            tr("&Accept the finding…"), "", tr("Accept the finding that is open")
        )
        self.record_action = self._action(tr("Review &record…"), "", tr("Whether it holds, and to make one"))
        menu.addActions([shown, self.note_action, self.accept_action])
        menu.addSeparator()
        menu.addActions([self.compare_action, self.stop_action, self.record_action])

    def _action(self, text: str, key: str, hint: str) -> QAction:
        made = QAction(text, self._window)
        if key:
            made.setShortcut(QKeySequence(key))
        made.setStatusTip(hint)
        plain.set_tip(made, hint)
        return made

    def _connect(self) -> None:
        document, panel, sheet, findings = self._document, self.panel, self._panes.sheet, self._panes.findings
        document.changed.connect(self._drawing_changed)
        document.analysed.connect(self._analysed)
        sheet.selection_changed.connect(self._selected)
        self._record_work.found.connect(self._show_records)
        self.comparing.begun.connect(lambda: self._bring_up(panel.comparison))
        panel.author.editingFinished.connect(self._keep_name)
        panel.notes.pinned.connect(self._pin)
        panel.notes.answered.connect(self._answer)
        panel.notes.settled.connect(self._settle)
        panel.notes.reopened.connect(self._reopen)
        panel.notes.removed.connect(self._take_out)
        panel.notes.part_wanted.connect(self._show_thing)
        panel.accepted.part_wanted.connect(self._show_thing)
        panel.accepted.taken_back.connect(self._take_back)
        panel.comparison.things_wanted.connect(self._show_things)
        panel.record.signed.connect(self._sign)
        panel.record.compared.connect(self.comparing.compare_with_record)
        findings.accept_wanted.connect(self._accept)
        findings.take_back_wanted.connect(self._take_back)
        findings.chosen.connect(self._finding_chosen)
        self.note_action.triggered.connect(self._write_note)
        self.accept_action.triggered.connect(self._accept_chosen)
        self.compare_action.triggered.connect(self.comparing.choose_file)
        self.record_action.triggered.connect(lambda: self._bring_up(self.panel.record))
        self.accept_action.setEnabled(False)

    def close(self) -> None:
        """Stop; the threads have ended when this returns."""
        self._document.changed.disconnect(self._drawing_changed)
        self._document.analysed.disconnect(self._analysed)
        self._record_work.close()
        self.comparing.close()

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._record_work.is_busy or self.comparing.is_busy

    # What the document says.

    def _drawing_changed(self, before: Drawing, after: Drawing, step: str) -> None:
        if not step:
            self._held_before = False
            self.comparing.stop()
        self.panel.notes.show_drawing(after)
        self._selected(self._panes.sheet.selected_ids())
        if after.reviews:
            self._record_work.ask(after)
        else:
            self._record_work.forget()
            self.panel.record.show_records(())
        self.comparing.follow(after)

    def _analysed(self, analysis: Analysis) -> None:
        found = acceptances.standings(analysis.drawing, analysis.findings, date.today())
        self.panel.accepted.show_accepted(analysis.drawing, found)
        self.comparing.show_list()

    def _show_records(self, drawing: Drawing, found: tuple[Held, ...] | None) -> None:
        self.panel.record.show_records(found)
        holds = bool(found) and found is not None and found[-1].holds
        if self._held_before and not holds:
            self._panes.sheet.hint.emit(tr(BROKEN))
        self._held_before = holds

    def _selected(self, ids: Iterable[str]) -> None:
        drawing = self._document.drawing
        # The sheet may learn of another drawing only after this does.
        there = (id for id in ids if notes.is_there(drawing, id))
        self.panel.notes.show_selection(in_order(drawing, frozenset(there)))

    def _finding_chosen(self, finding: Finding | None) -> None:
        self.accept_action.setEnabled(finding is not None)

    # Steps.

    def _do(self, step: str, edit: Callable[[], Drawing]) -> bool:
        """Make a step; where it cannot be made its sentence is the hint."""
        try:
            drawing = edit()
        except EditError as error:
            self._panes.sheet.hint.emit(tr(of_error(error)))
            plain.message(self._window, tr(of_error(error)), icon=QMessageBox.Icon.Warning).exec()
            return False
        self._document.do(step, drawing)
        return True

    @property
    def _author(self) -> str:
        return self.panel.author.text().strip()

    def _keep_name(self) -> None:
        self._settings.setValue(NAME, self._author)

    def _named(self) -> bool:
        """Whether there is a name; where not, the box for it has the keyboard."""
        if self._author:
            return True
        self.panel.author.setFocus(Qt.FocusReason.OtherFocusReason)
        self._panes.sheet.hint.emit(tr("Give your name first: what is said and signed bears it."))
        return False

    def _pin(self, text: str) -> None:
        drawing = self._document.drawing
        on = in_order(drawing, self._panes.sheet.selected_ids())
        name = worded("Pin note on {name}", name=short(drawing.name(on[0]))) if on else later("Pin note")
        if self._named() and self._do(
            name, lambda: notes.add_note(drawing, on, self._author, date.today(), text)[0]
        ):
            self.panel.notes.written()

    def _answer(self, id: str, text: str) -> None:
        drawing = self._document.drawing
        if self._named():
            self._do(
                later("Answer note"), lambda: notes.answer_note(drawing, id, self._author, date.today(), text)
            )
        else:
            self.panel.notes.cards[id].box.setPlainText(text)

    def _settle(self, id: str) -> None:
        self._do(later("Settle note"), lambda: notes.settle_note(self._document.drawing, id))

    def _reopen(self, id: str) -> None:
        self._do(later("Open note again"), lambda: notes.reopen_note(self._document.drawing, id))

    def _take_out(self, id: str) -> None:
        self._do(later("Take out note"), lambda: notes.remove_note(self._document.drawing, id))

    def _accept_chosen(self) -> None:
        if self._panes.findings.finding is not None:
            self._accept(self._panes.findings.finding)

    def _accept(self, finding: Finding) -> None:
        drawing, today = self._document.drawing, date.today()
        asked = AcceptDialog(self._window, drawing, finding, self._author, today)
        if asked.exec():
            reason, author, until = asked.reason.toPlainText(), asked.author.text(), asked.last_day
            self._do(
                later("Accept finding"),
                lambda: acceptances.accept(drawing, finding, reason, author, today, until),
            )
            if not self._author:
                self.panel.author.setText(author.strip())
                self._keep_name()
        asked.deleteLater()

    def _take_back(self, acceptance: Acceptance) -> None:
        self._do(
            later("Take acceptance back"), lambda: acceptances.take_back(self._document.drawing, acceptance)
        )

    def _sign(self, role: str, decision: str, remarks: str) -> None:
        from circuitcheck.review.record import sign

        drawing, analysis = self._document.drawing, self._document.analysis
        if self._named() and self._do(
            later("Make review record"),
            lambda: sign(
                drawing, self._author, date.today(), decision, role=role, remarks=remarks, analysis=analysis
            ),
        ):
            self.panel.record.signed_now()

    # Going there.

    def _bring_up(self, page: QWidget) -> None:
        if self.dock.isHidden():
            self.dock.show()
            self._opened_or_closed(shown=True)
        self.dock.raise_()
        self.panel.show_page(page)

    def _opened_or_closed(self, shown: bool) -> None:
        """Open no wider than is needed: the sheet beside it is what is looked through."""
        if shown and not self._has_opened:
            self._has_opened = True
            wide = min(DOCK_PX, self._window.width() // 3)
            self._window.resizeDocks([self.dock], [wide], Qt.Orientation.Horizontal)

    def _write_note(self) -> None:
        self._bring_up(self.panel.notes)
        box = self.panel.notes.box if self._author else self.panel.author
        box.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _show_thing(self, id: str) -> None:
        self._show_things((id,))

    def _show_things(self, ids: tuple[str, ...]) -> None:
        self._panes.sheet.select(ids)
        self._panes.sheet.bring_into_view(ids)


def _held_of(drawing: Drawing) -> object:
    # Here and not at the top: the window shows before what hashes is read.
    from circuitcheck.review.holding import held

    return held(drawing)
