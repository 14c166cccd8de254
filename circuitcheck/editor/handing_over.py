"""Hand over: the document of the drawing as a file, made beside the window, and the drawing on a printer."""

from __future__ import annotations

import logging
import os
from collections.abc import Callable
from concurrent.futures import Future, ThreadPoolExecutor
from dataclasses import dataclass
from datetime import date
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtPrintSupport import QPrintDialog, QPrinter
from PySide6.QtWidgets import QDialog, QFileDialog, QMessageBox, QWidget

from circuitcheck.analysis import Analysis
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.document import Document
from circuitcheck.editor.hand_over_dialog import ENDINGS, HandOverDialog, Wanted
from circuitcheck.editor.language import document_tongue, shown_code
from circuitcheck.editor.translating import later, of_error, shown_told, tr
from circuitcheck.told import Tongue, a_word

if TYPE_CHECKING:
    from circuitcheck.report.document.content import Content

FAILED = later("The document could not be made: it failed inside the program.")
Say = Callable[[str], None]


@dataclass(frozen=True, slots=True)
class _Made:
    """What came back from the other thread: a sentence that it is done, one that it is not, or a content to print."""

    said: str = ""
    fault: str = ""
    content: Content | None = None


class HandOver(QObject):
    """The actions of the File menu. One document is made at a time; the drawing may be changed meanwhile."""

    _done = Signal(object)

    def __init__(self, window: QWidget, document: Document, say: Say) -> None:
        super().__init__(window)
        self._window, self._document, self._say = window, document, say
        self._thread = ThreadPoolExecutor(max_workers=1, thread_name_prefix="document")
        self._running: Future[None] | None = None
        self._printer: QPrinter | None = None
        self._closed = False
        hint = tr("Save the whole as a document: PDF, HTML, SVG, PNG or a table")
        self.action = _action(window, tr("&Hand over…"), "Ctrl+E", hint)
        key = QKeySequence.StandardKey.Print
        self.print_action = _action(window, tr("&Print the drawing…"), key, tr("The drawing on paper"))
        self.action.triggered.connect(self.hand_over)
        self.print_action.triggered.connect(self.print_drawing)
        self._done.connect(self._finished)

    @property
    def is_busy(self) -> bool:
        """Whether a document is being made."""
        return self._running is not None

    def hand_over(self) -> None:
        """Ask for the kind of file and where it goes, and make it."""
        wanted = self.ask()
        to = None if wanted is None else self.ask_file(wanted)
        if wanted is not None and to is not None:
            self._say(tr("Making {file}…", file=to.name))
            # Asked here: the window's language is no matter of the other thread.
            tongue = document_tongue(wanted.language)
            self._start(lambda drawing, name, analysis: _write(drawing, name, analysis, wanted, to, tongue))

    def print_drawing(self) -> None:
        """Ask for the printer and paint the drawing on a page of it, as large as it goes."""
        printer = self.ask_printer()
        if printer is not None:
            self._printer = printer
            self._say(tr("Printing…"))
            tongue = document_tongue(shown_code())
            self._start(
                lambda drawing, name, analysis: _Made(content=_content(drawing, name, analysis, tongue))
            )

    def close(self) -> None:
        """Nothing is signalled any more, and the thread has ended when this returns."""
        self._closed = True
        self._thread.shutdown(wait=True, cancel_futures=True)

    def ask(self) -> Wanted | None:
        """Which kind of file, on which paper; None where it was left."""
        dialog = HandOverDialog(self._window)
        return dialog.wanted if dialog.exec() == QDialog.DialogCode.Accepted else None

    def ask_file(self, wanted: Wanted) -> Path | None:
        """Where the file goes; None where it was left. An existing one is asked about."""
        ending = f".{wanted.form}"
        name, _ = QFileDialog.getSaveFileName(
            self._window,
            tr("Hand over"),
            str(self._proposal(ending)),
            f"{tr(ENDINGS[wanted.form])} (*{ending})",
        )
        if not name:
            return None
        path = Path(name)
        if path.suffix.lower() == ending:
            return path
        path = path.with_name(path.name + ending)
        # The dialog asked about the name as typed, not about the one with its ending.
        # os.path: a name that no disk takes is not there; writing will say why it cannot be.
        return path if not os.path.exists(path) or self.ask_replace(path) else None

    def ask_replace(self, path: Path) -> bool:
        """Ask whether an existing file may be replaced."""
        button = QMessageBox.StandardButton
        box = plain.message(
            self._window,
            tr("{file} exists already. Replace it?", file=path.name),
            icon=QMessageBox.Icon.Warning,
            buttons=button.Yes | button.Cancel,
            default=button.Cancel,
        )
        return box.exec() == int(button.Yes)

    def ask_printer(self) -> QPrinter | None:
        """The printer and its paper; None where it was left."""
        printer = QPrinter(QPrinter.PrinterMode.HighResolution)
        printer.setDocName(self._document.drawing.title or "circuitcheck")
        dialog = QPrintDialog(printer, self._window)
        return printer if dialog.exec() == QDialog.DialogCode.Accepted else None

    def _proposal(self, ending: str) -> Path:
        path = self._document.path
        return (Path.home() / "drawing" if path is None else path).with_suffix(ending)

    def _start(self, make: Callable[[Drawing, str, Analysis | None], _Made]) -> None:
        drawing, analysis = self._document.drawing, self._document.analysis
        path = self._document.path
        name = path.name if path is not None else a_word("not saved yet")
        for action in (self.action, self.print_action):
            action.setEnabled(False)
        self._running = self._thread.submit(self._work, make, drawing, name, analysis)

    def _work(
        self,
        make: Callable[[Drawing, str, Analysis | None], _Made],
        drawing: Drawing,
        name: str,
        analysis: Analysis | None,
    ) -> None:
        """In the other thread: the signal is queued and arrives in the window's."""
        try:
            made = make(drawing, name, analysis)
        except OSError as error:
            made = _Made(fault=shown_told(of_error(error)))
        except Exception:
            logging.getLogger(__name__).exception("Making the document failed")
            made = _Made(fault=tr(FAILED))
        if not self._closed:
            self._done.emit(made)

    def _finished(self, made: _Made) -> None:
        self._running = None
        for action in (self.action, self.print_action):
            action.setEnabled(True)
        if made.content is not None and self._printer is not None:
            from circuitcheck.editor.printing import print_picture
            from circuitcheck.report.document.as_svg import sheet_picture

            printed = print_picture(sheet_picture(made.content), self._printer)
            self._printer = None
            made = (
                _Made(said=tr("Printed."))
                if printed
                else _Made(fault=tr("The printer did not take the page."))
            )
        self._say(made.said)
        if made.fault:
            self._window.activateWindow()
            plain.message(self._window, made.fault, icon=QMessageBox.Icon.Warning).exec()


def _content(drawing: Drawing, name: str, analysis: Analysis | None, tongue: Tongue) -> Content:
    from circuitcheck.report.document.gathering import gather

    return gather(drawing, name, date.today(), analysis, tongue)


def _write(
    drawing: Drawing, name: str, analysis: Analysis | None, wanted: Wanted, to: Path, tongue: Tongue
) -> _Made:
    from circuitcheck.report.document.paper import Orientation, Paper
    from circuitcheck.report.document.writing import Form, write

    write(
        drawing,
        name,
        to,
        Form(wanted.form),
        date.today(),
        paper=Paper(wanted.paper),
        orientation=Orientation(wanted.orientation) if wanted.orientation else None,
        analysis=analysis,
        tongue=tongue,
    )
    return _Made(said=tr("{file} is written.", file=to.name))


def _action(owner: QWidget, text: str, key: str | QKeySequence.StandardKey, hint: str) -> QAction:
    action = QAction(text, owner)
    action.setShortcut(QKeySequence(key))
    action.setStatusTip(hint)
    plain.set_tip(action, hint)
    return action
