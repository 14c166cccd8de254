"""Comparing with an earlier drawing: worked out beside the window, drawn on the sheet, listed in the panel."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QFileDialog, QMainWindow

from circuitcheck.drawing.routing import routes
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.document import ENDING, Document
from circuitcheck.editor.files import ANY, FILTER
from circuitcheck.editor.review.compare_page import ComparePage
from circuitcheck.editor.sheet import SheetView
from circuitcheck.editor.translating import of_error, tr
from circuitcheck.editor.working_out import WorkingOut
from circuitcheck.finding import Finding
from circuitcheck.review.comparing import Comparison, compare
from circuitcheck.review.findings_between import findings_between
from circuitcheck.review.work_lists import WorkLists, work_lists

if TYPE_CHECKING:
    from circuitcheck.geometry import Point
    from circuitcheck.review.holding import Held

PAUSE_MS = 60


class Comparing(QObject):
    """Follows the document while an earlier drawing is compared with; signals `begun` when one is."""

    begun = Signal()

    def __init__(
        self, window: QMainWindow, document: Document, sheet: SheetView, page: ComparePage, stop: QAction
    ) -> None:
        super().__init__(window)
        self._window, self._document, self._sheet, self._page = window, document, sheet, page
        self.stop_action = stop
        self._earlier: Earlier | None = None
        self._compared: tuple[Comparison, WorkLists] | None = None
        self._work = WorkingOut(self._compare, "comparison", PAUSE_MS, self)
        self._work.found.connect(self._show_comparison)
        page.file_wanted.connect(self.choose_file)
        page.left.connect(self.stop)
        stop.triggered.connect(self.stop)
        self.stop()

    @property
    def is_busy(self) -> bool:
        """Whether an answer is still to come."""
        return self._work.is_busy

    def close(self) -> None:
        """Stop; the thread has ended when this returns."""
        self._work.close()

    def follow(self, drawing: Drawing) -> None:
        """The document has another drawing."""
        if self._earlier is not None:
            self._work.ask(drawing)

    def choose_file(self) -> None:
        """Ask for an earlier drawing and compare with it."""
        folder = self._document.path.parent if self._document.path else Path()
        name, _ = QFileDialog.getOpenFileName(
            self._window,
            tr("Compare with an earlier drawing"),
            str(folder),
            f"{tr(FILTER, ending=ENDING)};;{tr(ANY)}",
        )
        if name:
            self.compare_with(Path(name))

    def compare_with(self, path: Path) -> bool:
        """Compare with the drawing in a file; says so and returns False where it cannot be read."""
        from circuitcheck.storage.reading import DrawingError, read

        try:
            old = read(path)
        except DrawingError as error:
            details = "\n".join(tr(fault.message) for fault in error.faults)
            plain.message(
                self._window, tr("{file} cannot be read as a drawing.", file=path.name), details=details
            ).exec()
            return False
        except OSError as error:
            plain.message(
                self._window,
                tr("{file} cannot be read.", file=path.name),
                error.strerror or tr(of_error(error)),
            ).exec()
            return False
        self._begin(path.name, old)
        return True

    def compare_with_record(self, held: Held) -> None:
        """Compare with the drawing as a record saw it."""
        if held.since is not None:
            self._begin(tr("the drawing as it was reviewed"), held.since.old)

    def _begin(self, name: str, old: Drawing) -> None:
        self._earlier = Earlier(name, old)
        self.stop_action.setEnabled(True)
        self.begun.emit()
        self._work.ask(self._document.drawing)

    def stop(self) -> None:
        """Leave the earlier drawing."""
        self._work.forget()
        self._earlier, self._compared = None, None
        self.stop_action.setEnabled(False)
        self._sheet.set_comparison(None, {})
        self._page.show_nothing()

    def _compare(self, drawing: Drawing) -> object:
        """In the other thread."""
        earlier = self._earlier
        if earlier is None:
            return None
        earlier.work_out()
        found = compare(earlier.drawing, drawing)
        return earlier, found, work_lists(found)

    def _show_comparison(self, drawing: Drawing, told: tuple[Earlier, Comparison, WorkLists] | None) -> None:
        if told is None or told[0] is not self._earlier:
            return
        earlier, found, work = told
        self._compared = found, work
        self._sheet.set_comparison(found, earlier.lines)
        self.show_list()

    def show_list(self) -> None:
        """Show the list; its findings once both drawings are judged."""
        if self._compared is None or self._earlier is None:
            return
        found, work = self._compared
        analysis, old = self._document.analysis, self._earlier.findings
        is_judged = analysis is not None and analysis.drawing is found.new and old is not None
        between = (
            findings_between(found, old, analysis.findings)
            if is_judged and analysis and old is not None
            else None
        )
        self._page.show_comparison(self._earlier.name, found, work, between)


class Earlier:
    """The drawing that is compared with, and what is worked out of it once."""

    def __init__(self, name: str, drawing: Drawing) -> None:
        self.name, self.drawing = name, drawing
        self.lines: dict[str, tuple[Point, ...]] = {}
        self.findings: tuple[Finding, ...] | None = None

    def work_out(self) -> None:
        """Its lines and findings, the first time."""
        if self.findings is None:
            from circuitcheck.analysis import analyse

            self.lines = dict(routes(self.drawing))
            self.findings = analyse(self.drawing).findings
