"""The main window: one drawing, its parts to the left, details and findings to the right."""

from __future__ import annotations

from collections.abc import Iterable
from typing import TYPE_CHECKING

# `Qt` only where it is asked: see appearance.py.
from PySide6 import QtCore
from PySide6.QtCore import QEvent, QObject, QSettings, Signal
from PySide6.QtGui import QCloseEvent, QKeyEvent
from PySide6.QtWidgets import QWidget

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.frame import Frame
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import later, tr

if TYPE_CHECKING:
    from circuitcheck.analysis import Analysis
    from circuitcheck.cures import Cure
    from circuitcheck.drawing.value import Drawing
    from circuitcheck.editor.document import Document
    from circuitcheck.editor.editing import Editing
    from circuitcheck.editor.handing_over import HandOver
    from circuitcheck.editor.learning.lessons_menu import LessonsMenu
    from circuitcheck.editor.learning.practising import Practising
    from circuitcheck.editor.live import Live
    from circuitcheck.editor.operating.mode import Operate
    from circuitcheck.editor.outline.panel import OutlinePanel
    from circuitcheck.editor.panels.details import DetailsPanel
    from circuitcheck.editor.panels.findings import FindingsPanel
    from circuitcheck.editor.reviewing import Reviewing
    from circuitcheck.editor.start.starting import Starting
    from circuitcheck.editor.tables import Tables
    from circuitcheck.finding import Finding, Grade

FIRST_PART = "heat_source"


class MainWindow(Frame):
    """Joins the document to what shows it; holds no state of the drawing itself.

    `left` when it was closed, and what was unsaved was saved or given up. `another_wanted` when a further
    window is to open: with a file's path, or None for an empty drawing.

    With a `document` all of it is there at once. Without one it is bare until it is to `take` one, `begin`
    puts in the sheet, and `furnish` the rest: something stands on the screen after a third of the time then, and
    the sheet is painted in half of it.
    """

    left = Signal()
    another_wanted = Signal(object)

    details: DetailsPanel
    findings: FindingsPanel
    outline: OutlinePanel
    tables: Tables
    live: Live
    operate: Operate
    handing_over: HandOver
    starting: Starting
    reviewing: Reviewing
    lessons: LessonsMenu
    practising: Practising
    editing: Editing

    def __init__(self, document: Document | None, settings: QSettings, appearances: Appearances) -> None:
        super().__init__(settings, appearances)
        self._is_closed = self._is_furnished = False
        if document is not None:
            self.take(document)
            self.begin()
            self.furnish()

    def furnish(self) -> None:
        """Put in all that is not there from the first moment; once."""
        # Here and not at the top: the sheet is painted before these are read.
        from circuitcheck.drawing.value import Drawing
        from circuitcheck.editor.areas import Areas
        from circuitcheck.editor.choices import Choices
        from circuitcheck.editor.dropping import Dropping
        from circuitcheck.editor.editing import Editing
        from circuitcheck.editor.handing_over import HandOver
        from circuitcheck.editor.learning.lessons_menu import LessonsMenu
        from circuitcheck.editor.learning.practising import Practising
        from circuitcheck.editor.live import Live
        from circuitcheck.editor.operating.mode import Operate
        from circuitcheck.editor.reviewing import Reviewing
        from circuitcheck.editor.start.starting import Starting
        from circuitcheck.editor.tables import Tables

        document, settings, panes, actions = self.document, self._settings, self.panes, self.actions_
        panes.furnish()
        self.details, self.findings, self.outline = panes.details, panes.findings, panes.outline
        self.tables = Tables(self, document, self.sheet)
        self.live = Live(self, document, panes, self.tables)
        self.operate = Operate(self, document, panes, self.tables, self.live, actions)
        self.handing_over = HandOver(self, document, self.status.show_hint)
        self.starting = Starting(self)
        self._fill_menus()
        self.reviewing = Reviewing(self, self.menus.review, document, panes, settings)
        self.lessons = LessonsMenu(self, self.menus.learn, settings)
        self.practising = Practising(self, self.menus.learn)
        self.editing = Editing(self, document, panes, actions, self.status, self.theme)
        self._areas = Areas(self, self._in_order, actions.next_area, actions.previous_area)
        self._connect_document()
        self._connect_panels()
        self._connect_actions()
        self._choices = Choices(self, actions, settings, self._appearances, self.status.show_hint)
        self._dropping = Dropping(self)
        self.sheet.installEventFilter(self)
        self._show_theme(self.theme)
        self._show_drawing(Drawing(), document.drawing, "")
        if document.analysis is not None:
            self._show_analysis(document.analysis)
        self._is_furnished = True

    @property
    def is_furnished(self) -> bool:
        """Whether everything is there."""
        return self._is_furnished

    def _fill_menus(self) -> None:
        from circuitcheck.editor.file_menus import FileMenus
        from circuitcheck.editor.outlining import Outlining
        from circuitcheck.editor.window_menu import WindowMenu

        files = FileMenus(self.files, self)
        WindowMenu(self, self.menus.windows, [self.actions_.new_window, self.actions_.close_window])
        self._outlining = Outlining(self, self.panes)
        self.actions_.fill(
            self.menus,
            recent=files.recent,
            samples=files.samples,
            outline=self._outlining.action,
            fill_in=self.tables.fill_in_action,
            counted=self.tables.counted_action,
            figures=self.live.figures_action,
            flows=self.live.menu,
            operate=self.operate.action,
            start=self.starting.action,
            tour=self.starting.tour_action,
            hand_over=(self.handing_over.action, self.handing_over.print_action),
        )

    def _connect_document(self) -> None:
        # After what was made before this: each of them learns of another drawing before the sheet does.
        self.document.changed.disconnect(self._show_on_sheet)
        self.document.changed.connect(self._show_drawing)
        self.document.analysed.connect(self._show_analysis)
        self.files.opened.disconnect(self._opened_first)
        self.files.opened.connect(self._opened)

    def _connect_panels(self) -> None:
        self.sheet.selection_changed.connect(self._selected_on_sheet)
        self.operate.hint.connect(self.status.show_hint)
        self.operate.zoom_changed.connect(self.status.show_zoom)
        self.sheet.place_heat_source.connect(self._place_first)
        self.sheet.open_drawing.connect(self.files.open)
        self.sheet.arrangement_wanted.connect(self.starting.show_page)
        self.sheet.tour_wanted.connect(self.starting.begin_tour)
        self.shelf.placing.connect(self.sheet.begin_placing)
        self.details.edited.connect(self.document.do)
        self.tables.fill_in.field_wanted.connect(self._show_field)
        self.findings.chosen.connect(self._finding_chosen)
        self.findings.part_wanted.connect(self._show_part)
        self.panes.figures.part_wanted.connect(self._show_part)
        self.panes.figures.field_wanted.connect(self._show_field)
        self.findings.field_wanted.connect(self._show_field)
        self.findings.cures_wanted.connect(self.document.find_cures)
        self.findings.cure_wanted.connect(self._cure)
        self.findings.lesson_wanted.connect(self.lessons.open)
        self.document.cured.connect(self.findings.show_cures)
        self.bar.grade_wanted.connect(self._choose_first_of)
        self._appearances.theme_changed.connect(self._show_theme)

    def _connect_actions(self) -> None:
        actions = self.actions_
        actions.new.triggered.connect(self.files.new)
        actions.open.triggered.connect(self.files.open)
        actions.save.triggered.connect(self.files.save)
        actions.save_as.triggered.connect(self.files.save_as)
        actions.new_window.triggered.connect(self._want_window)
        actions.close_window.triggered.connect(self.close)
        actions.quit.triggered.connect(self._quit)
        actions.undo.triggered.connect(self.document.undo)
        actions.redo.triggered.connect(self.document.redo)
        actions.delete.triggered.connect(self.sheet.remove_selection)
        actions.select_all.triggered.connect(self.sheet.select_all)
        actions.turn.triggered.connect(self.sheet.turn_selection)
        actions.mirror.triggered.connect(self.sheet.mirror_selection)
        actions.shelf.triggered.connect(self._find_on_shelf)
        actions.zoom_in.triggered.connect(lambda: self.operate.shown_sheet.zoom_in())
        actions.zoom_out.triggered.connect(lambda: self.operate.shown_sheet.zoom_out())
        actions.zoom_reset.triggered.connect(lambda: self.operate.shown_sheet.zoom_reset())
        actions.fit.triggered.connect(lambda: self.operate.shown_sheet.fit())
        actions.next_finding.triggered.connect(self.findings.choose_next)
        actions.previous_finding.triggered.connect(self.findings.choose_previous)
        actions.leave_finding.triggered.connect(self.findings.leave)
        actions.about.triggered.connect(self._about)
        actions.noted.triggered.connect(self._show_noted)
        actions.give_to_sheet(self.sheet)
        for action in (actions.next_finding, actions.previous_finding, actions.leave_finding):
            action.setEnabled(False)

    def _in_order(self) -> list[QWidget]:
        """The areas that the keyboard goes to one after another."""
        panes = self.panes
        view = [self.operate.view] if self.operate.is_on else [panes.flow_bar, self.sheet, self.shelf]
        sections = [panes.details_section, panes.findings_section, panes.figures_section]
        docks = [panes.dock, self.tables.dock, self.reviewing.dock]
        return [self.bar, *view, *sections, *docks, self.status]

    # The document.

    def _show_drawing(self, before: Drawing, after: Drawing, step: str) -> None:
        """Another drawing is the present one."""
        self._show_on_sheet(before, after, step)
        self.details.show_selection(after, self._selection())
        self.outline.show_drawing(after)
        self.editing.show_selection()

    def _show_analysis(self, analysis: Analysis) -> None:
        self._busy.stop()
        self.bar.show_analysis(analysis)
        self.findings.show_analysis(analysis)
        self.sheet.set_findings(analysis.findings)
        self.outline.show_findings(analysis.findings)
        has_findings = bool(analysis.findings)
        self.actions_.next_finding.setEnabled(has_findings)
        self.actions_.previous_finding.setEnabled(has_findings)

    def _cure(self, cure: Cure) -> None:
        """Make the edit that puts a finding right: one step, which undo takes back."""
        if self.document.analysis is not None:
            self.document.do(later("put it right"), cure.drawing)

    def _opened(self) -> None:
        self.findings.choose(None)
        self.sheet.select(())
        self.sheet.fit()

    # The selection.

    def _selection(self) -> tuple[str, ...]:
        from circuitcheck.editor.panels.subjects import in_order

        return in_order(self.document.drawing, self.sheet.selected_ids())

    def _selected_on_sheet(self, ids: Iterable[str]) -> None:
        chosen = self._selection()
        self.details.show_selection(self.document.drawing, chosen)
        self.outline.show_selection(chosen)
        if chosen:
            self.details_section.set_folded(False)

    def _show_part(self, id: str) -> None:
        self.sheet.select((id,))
        self.sheet.bring_into_view((id,))

    def _show_field(self, id: str, field: str) -> None:
        """Bring up the field whose number a finding misses, with the caret in it."""
        self.sheet.select(() if id in ("design", "sheet") else (id,))
        self.details_section.set_folded(False)
        self.details.show_selection(self.document.drawing, self._selection())
        self.details.focus_field(field)

    # Findings.

    def _finding_chosen(self, finding: Finding | None) -> None:
        self.sheet.set_finding(finding)
        self.outline.show_finding(finding)
        self.actions_.leave_finding.setEnabled(finding is not None)
        if finding is None:
            self.status.show_hint("")
            return
        self.details_section.set_folded(True)
        self.findings_section.set_folded(False)
        found = self.findings.findings
        self.status.show_hint(
            tr(
                "Finding {index} of {count}.  F8 next, Shift F8 back, Escape leaves it.",
                index=found.index(finding) + 1,
                count=len(found),
            )
        )

    def _choose_first_of(self, grade: Grade) -> None:
        self.findings.choose(next((each for each in self.findings.findings if each.grade is grade), None))

    # The rest.

    def _place_first(self) -> None:
        from circuitcheck.parts.catalogue import kinds

        self.sheet.begin_placing(kinds()[FIRST_PART])

    def _want_window(self) -> None:
        self.another_wanted.emit(None)

    def _quit(self) -> None:
        """Close every window, until one is kept; this one last."""
        from circuitcheck.editor.window_menu import main_windows

        for window in (*(each for each in main_windows() if each is not self), self):
            if not window.close():
                return

    def _find_on_shelf(self) -> None:
        self.panes.fold_shelf(strip=False)
        self.shelf.find_box.setFocus(QtCore.Qt.FocusReason.ShortcutFocusReason)
        self.shelf.find_box.selectAll()

    def _show_theme(self, theme: Theme) -> None:
        self.panes.set_theme(theme)
        self.tables.set_theme(theme)
        self.live.set_theme(theme)
        self.operate.set_theme(theme)
        self.editing.set_theme(theme)
        self.lessons.set_theme(theme)
        self.practising.set_theme(theme)
        self.bar.set_theme(theme)
        self.starting.set_theme(theme)

    def _about(self) -> None:
        from circuitcheck.editor.about import about_box

        about_box(self).exec()

    def _show_noted(self) -> None:
        from circuitcheck.editor.failing.noted import show_noted

        show_noted(self)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape, where nothing else took it, leaves the finding."""
        if event.key() == QtCore.Qt.Key.Key_Escape and self.findings.finding is not None:
            self.findings.leave()
        else:
            super().keyPressEvent(event)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """On the sheet Escape first leaves what is in hand, then the selection, then the finding."""
        if watched is self.sheet and event.type() is QEvent.Type.KeyPress and isinstance(event, QKeyEvent):
            free = self.sheet.is_at_rest and not self.sheet.selected_ids()
            idle = free and self.findings.finding is not None
            if idle and event.key() == QtCore.Qt.Key.Key_Escape:
                self.findings.leave()
                return True
        return super().eventFilter(watched, event)

    def closeEvent(self, event: QCloseEvent) -> None:
        """Ask about unsaved changes; then stop what runs beside the window before anything goes."""
        if self._is_closed:
            event.accept()
            return
        # A window that failed while something of it was made has nothing else to stop.
        if self._has_taken and not self.files.may_leave():
            event.ignore()
            return
        if self._has_begun:
            self.panes.remember(self._settings)
        self._is_closed = True
        self._busy.stop()
        if self._is_furnished:
            self._stop_rest()
        if self._has_begun:
            self.sheet.stop()
        if self._has_taken:
            self.document.close()
        event.accept()
        self.left.emit()

    def _stop_rest(self) -> None:
        """Stop what `furnish` put in."""
        self.document.changed.disconnect(self._show_drawing)
        self.document.analysed.disconnect(self._show_analysis)
        self.editing.close()
        self.live.close()
        self.operate.close()
        self.reviewing.close()
        self.lessons.close()
        self.practising.close()
        self.handing_over.close()
        self.starting.close()
