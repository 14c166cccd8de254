"""What a window is from its first moment: the sheet, and the frame about it with everything in its place."""

from __future__ import annotations

from PySide6.QtCore import QSettings, QTimer
from PySide6.QtWidgets import QMainWindow

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.actions import Actions
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.bar import UNTITLED, Bar
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Files
from circuitcheck.editor.history import new_ids
from circuitcheck.editor.menus import Menus
from circuitcheck.editor.panes import Panes
from circuitcheck.editor.status import StatusLine
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.report.finding_text import is_empty

BUSY_MS = 250
"""How long an old answer stands before the bar says that the new one is being worked out."""


class Frame(QMainWindow):
    """Shows a document's drawing on the sheet, its name and what can be undone; nothing in it judges yet."""

    def __init__(self, document: Document, settings: QSettings, appearances: Appearances) -> None:
        super().__init__()
        self.document = document
        self._settings = settings
        self._appearances = appearances
        self.actions_ = Actions(self)
        self.menus = Menus(self.menuBar())
        self.panes = Panes(self)
        self.files = Files(document, self, settings)
        self.bar = Bar(self.actions_.undo, self.actions_.redo)
        self.status = StatusLine(self.actions_.zoom_out, self.actions_.zoom_reset, self.actions_.zoom_in)
        self._busy = QTimer(self, interval=BUSY_MS, singleShot=True)
        self._lay_out()
        self._connect_sheet()
        self._show_on_sheet(Drawing(), document.drawing, "")
        self.sheet.set_theme(appearances.theme)
        self.bar.set_theme(appearances.theme)
        self.panes.restore(settings)

    def _lay_out(self) -> None:
        panes = self.panes
        self.sheet, self.shelf = panes.sheet, panes.shelf
        self.details_section, self.findings_section = panes.details_section, panes.findings_section
        self.setCentralWidget(panes.below(self.bar))
        self.setStatusBar(self.status)

    def _connect_sheet(self) -> None:
        self.document.changed.connect(self._show_on_sheet)
        self.document.saved_state_changed.connect(self._show_saved_state)
        self.files.opened.connect(self._opened_first)
        self._busy.timeout.connect(self._show_busy)
        self.sheet.edited.connect(self.document.do)
        self.sheet.hint.connect(self.status.show_hint)
        self.sheet.zoom_changed.connect(self.status.show_zoom)
        self.sheet.pointer_at.connect(self.status.show_place)

    @property
    def theme(self) -> Theme:
        """The colours the window is painted in."""
        return self._appearances.theme

    def _show_on_sheet(self, before: Drawing, after: Drawing, step: str) -> None:
        self.sheet.set_drawing(after)
        if step and not self.sheet.selected_ids():
            # What undo or redo brings back is selected, as it would be had it just been made.
            self.sheet.select(new_ids(before, after))
        self.actions_.show_steps(self.document.undo_text, self.document.redo_text)
        self._busy.start()
        self._show_saved_state()

    def _show_saved_state(self) -> None:
        path, unsaved = self.document.path, self.document.is_unsaved
        title = self.document.drawing.title or (path.stem if path else "")
        state = tr("unsaved changes") if unsaved else tr("saved") if path else ""
        self.bar.show_name(title, state)
        # A name of the file is no place for the mark of what is unsaved.
        name = (title or tr(UNTITLED)).replace("[*]", "[*][*]")
        self.setWindowTitle(tr("{name}[*] – circuitcheck", name=name))
        self.setWindowModified(unsaved)
        if path is not None:
            self.setWindowFilePath(str(path))

    def _show_busy(self) -> None:
        if self.document.analysis is None:
            empty = is_empty(self.document.drawing)
            self.bar.show_busy(empty=empty)
            self.findings_section.set_note("" if empty else tr("judging…"))

    def _opened_first(self) -> None:
        """Before the window is whole: while the rest of it is made nobody says that nothing is drawn."""
        self.sheet.fit()
        self._show_busy()

    def show_not_kept(self, reason: str) -> None:
        """Unsaved work cannot be kept safe for `reason`; empty: it is again."""
        self.status.show_warning(
            tr("Unsaved work is not kept safe: {reason}.", reason=reason) if reason else ""
        )
