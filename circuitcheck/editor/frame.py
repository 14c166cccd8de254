"""What a window is before the rest of it: a bare frame in its place, then the sheet with everything about it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QSettings, QTimer
from PySide6.QtWidgets import QMainWindow

from circuitcheck.editor import remembered
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr

if TYPE_CHECKING:
    from circuitcheck.drawing.value import Drawing
    from circuitcheck.editor.actions import Actions
    from circuitcheck.editor.bar import Bar
    from circuitcheck.editor.document import Document
    from circuitcheck.editor.files import Files
    from circuitcheck.editor.menus import Menus
    from circuitcheck.editor.panels.section import Section
    from circuitcheck.editor.panels.shelf import Shelf
    from circuitcheck.editor.panes import Panes
    from circuitcheck.editor.sheet import SheetView
    from circuitcheck.editor.status import StatusLine

PROGRAM = "circuitcheck"
"""What the window is called before there is a drawing in it."""
BUSY_MS = 250
"""How long an old answer stands before the bar says that the new one is being worked out."""


class Frame(QMainWindow):
    """Shows a document's drawing on the sheet, its name and what can be undone; nothing in it judges yet.

    At first it is bare: where it was, as large as it was, in its colours. `take` gives it a document, which may read
    a file then; `begin` puts the sheet in.
    """

    document: Document
    actions_: Actions
    menus: Menus
    panes: Panes
    files: Files
    bar: Bar
    status: StatusLine
    sheet: SheetView
    shelf: Shelf
    details_section: Section
    findings_section: Section

    def __init__(self, settings: QSettings, appearances: Appearances) -> None:
        super().__init__()
        self._settings = settings
        self._appearances = appearances
        self._has_taken = self._has_begun = False
        self._busy = QTimer(self, interval=BUSY_MS, singleShot=True)
        self.setWindowTitle(PROGRAM)
        remembered.restore_place(settings, self)

    @property
    def has_taken(self) -> bool:
        """Whether there is a document."""
        return self._has_taken

    @property
    def has_begun(self) -> bool:
        """Whether the sheet is there, with the document's drawing on it."""
        return self._has_begun

    # What the next two import is read there and not at the top: the bare window stands on the screen before that.

    def take(self, document: Document) -> None:
        """Have a document, and what opens and saves it; once."""
        from circuitcheck.editor.files import Files

        self.document = document
        self.files = Files(document, self, self._settings)
        self._has_taken = True

    def begin(self) -> None:
        """Put in the sheet and the frame about it, and show the document; once."""
        from circuitcheck.drawing.value import Drawing
        from circuitcheck.editor.actions import Actions
        from circuitcheck.editor.bar import Bar
        from circuitcheck.editor.menus import Menus
        from circuitcheck.editor.panes import Panes
        from circuitcheck.editor.status import StatusLine

        self.actions_ = Actions(self)
        self.menus = Menus(self.menuBar())
        self.panes = Panes(self)
        self.bar = Bar(self.actions_.undo, self.actions_.redo)
        self.status = StatusLine(self.actions_.zoom_out, self.actions_.zoom_reset, self.actions_.zoom_in)
        self._lay_out()
        self._connect_sheet()
        self.sheet.set_theme(self.theme)
        self.bar.set_theme(self.theme)
        self.panes.restore(self._settings)
        self._has_begun = True
        self._show_on_sheet(Drawing(), self.document.drawing, "")
        if self.document.path is not None:
            self._opened_first()

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
            from circuitcheck.editor.history import new_ids

            # What undo or redo brings back is selected, as it would be had it just been made.
            self.sheet.select(new_ids(before, after))
        self.actions_.show_steps(self.document.undo_text, self.document.redo_text)
        self._busy.start()
        self._show_saved_state()

    def _show_saved_state(self) -> None:
        from circuitcheck.editor.bar import UNTITLED

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
            empty = self.document.drawing.is_empty
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
