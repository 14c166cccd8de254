"""Opening and saving: the dialogs, the guard of unsaved changes, and what is said when a file fails."""

from __future__ import annotations

import os
from collections.abc import Callable
from enum import Enum
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QSettings, Signal
from PySide6.QtWidgets import QFileDialog, QMessageBox, QWidget

from circuitcheck.editor import plain, remembered
from circuitcheck.editor.document import ENDING, Document, FileChangedError
from circuitcheck.editor.translating import later, of_error, tr
from circuitcheck.shipped import data_path

if TYPE_CHECKING:
    from circuitcheck.storage.faults import DrawingError

FILTER = later("Drawings (*{ending})")
ANY = later("All files (*)")
_Button = QMessageBox.StandardButton


class Answer(Enum):
    """What becomes of unsaved changes."""

    SAVE = "save"
    DISCARD = "discard"
    CANCEL = "cancel"


class Files(QObject):
    """What the File menu does with a document. `opened` when another drawing is shown."""

    opened = Signal()
    recent_changed = Signal()

    def __init__(self, document: Document, window: QWidget, settings: QSettings) -> None:
        super().__init__(window)
        self._document = document
        self._window = window
        self._settings = settings
        self.may_open: Callable[[Path], bool] = lambda path: True
        """Asked before a file is opened: others may have it open."""

    def new(self) -> None:
        """Begin an empty drawing, if what is unsaved may go."""
        if self.may_leave():
            self._document.new()
            self.opened.emit()

    def open(self) -> None:
        """Ask for a file and open it."""
        if not self.may_leave():
            return
        name, _ = QFileDialog.getOpenFileName(
            self._window, tr("Open a drawing"), str(self._folder()), f"{tr(FILTER, ending=ENDING)};;{tr(ANY)}"
        )
        if name:
            self.read(Path(name))

    def open_path(self, path: Path) -> None:
        """Open a file that was dropped or chosen from the recent ones."""
        if self.may_leave():
            self.read(path)

    def open_sample(self, path: Path) -> None:
        """Open a drawing that ships with the program, as one that has no file yet."""
        if self.may_leave():
            self._read(path, as_copy=True)

    def read(self, path: Path) -> bool:
        """Open a file whatever is unsaved; returns False where it is left, or cannot be read, which is said."""
        if not self.may_open(path) or not self._read(path, as_copy=False):
            return False
        remembered.add_recent(self._settings, path)
        self.recent_changed.emit()
        return True

    def save(self) -> bool:
        """Save to the drawing's file, or ask for one. Returns whether it was saved."""
        if self._document.path is None:
            return self.save_as()
        try:
            return self._write(self._document.path)
        except FileChangedError as error:
            return self._save_over(error)

    def save_as(self) -> bool:
        """Ask for a file and save to it. Returns whether it was saved."""
        name, _ = QFileDialog.getSaveFileName(
            self._window, tr("Save the drawing"), str(self._proposal()), tr(FILTER, ending=ENDING)
        )
        if not name:
            return False
        path = Path(name)
        if not path.suffix:
            path = path.with_name(path.name + ENDING)
            # The dialog asked about the name as typed, not about the one with its ending.
            # os.path: a name that no disk takes is not there; saving will say why it cannot be.
            if os.path.exists(path) and not self.ask_replace(path):
                return False
        return self._write(path, over_changes=True)

    def may_leave(self) -> bool:
        """Whether the present drawing may be left: it is saved, or saved now, or to be discarded."""
        if not self._document.is_unsaved:
            return True
        match self.ask_unsaved():
            case Answer.SAVE:
                return self.save()
            case Answer.DISCARD:
                return True
            case _:
                return False

    def ask_unsaved(self) -> Answer:
        """Ask what becomes of unsaved changes."""
        name = self._document.drawing.title or tr("this drawing")
        box = plain.message(
            self._window,
            tr("Save the changes to {name}?", name=name),
            tr("Without saving they are lost."),
            icon=QMessageBox.Icon.Warning,
            buttons=_Button.Save | _Button.Discard | _Button.Cancel,
            default=_Button.Save,
        )
        answers = {int(_Button.Save): Answer.SAVE, int(_Button.Discard): Answer.DISCARD}
        return answers.get(box.exec(), Answer.CANCEL)

    def ask_replace(self, path: Path) -> bool:
        """Ask whether an existing file may be replaced."""
        box = plain.message(
            self._window,
            tr("{file} exists already. Replace it?", file=path.name),
            icon=QMessageBox.Icon.Warning,
            buttons=_Button.Yes | _Button.Cancel,
            default=_Button.Cancel,
        )
        return box.exec() == int(_Button.Yes)

    def ask_overwrite(self, error: FileChangedError) -> Answer:
        """Ask what to do where the file was changed meanwhile: SAVE replaces it, DISCARD saves elsewhere."""
        box = plain.message(
            self._window,
            tr(of_error(error)),
            tr("Replacing it discards what was changed there. Saving under another name keeps both."),
            icon=QMessageBox.Icon.Warning,
            buttons=_Button.Cancel,
            default=_Button.Cancel,
        )
        replace = box.addButton(tr("Replace"), QMessageBox.ButtonRole.DestructiveRole)
        elsewhere = box.addButton(tr("Save as…"), QMessageBox.ButtonRole.AcceptRole)
        box.exec()
        if box.clickedButton() is replace:
            return Answer.SAVE
        return Answer.DISCARD if box.clickedButton() is elsewhere else Answer.CANCEL

    def recent(self) -> list[tuple[str, Path]]:
        """The recent files, each with what the menu calls it."""
        return [(f"{path.stem}  ({path.parent})", path) for path in remembered.recent(self._settings)]

    def forget_all_recent(self) -> None:
        """Forget which files were opened; the files stay."""
        remembered.forget_all_recent(self._settings)
        self.recent_changed.emit()

    def samples(self) -> list[tuple[str, Path]]:
        """The drawings that ship with the program, each with what the menu calls it."""
        try:
            found = sorted(data_path("samples").glob(f"*{ENDING}"))
        except FileNotFoundError:
            return []
        return [(tr(called(path)), path) for path in found]

    def _save_over(self, error: FileChangedError) -> bool:
        match self.ask_overwrite(error):
            case Answer.SAVE:
                return self._write(error.path, over_changes=True)
            case Answer.DISCARD:
                return self.save_as()
            case _:
                return False

    def _read(self, path: Path, *, as_copy: bool) -> bool:
        from circuitcheck.storage.faults import DrawingError

        try:
            if as_copy:
                self._document.open_copy(path)
            else:
                self._document.open(path)
        except DrawingError as error:
            self._say_faults(path, error)
            return False
        except OSError as error:
            remembered.forget_recent(self._settings, path)
            self.recent_changed.emit()
            self._say(tr("{file} cannot be opened.", file=path.name), error.strerror or tr(of_error(error)))
            return False
        self.opened.emit()
        return True

    def _write(self, path: Path, *, over_changes: bool = False) -> bool:
        from circuitcheck.storage.faults import DrawingError

        try:
            self._document.save(path, over_changes=over_changes)
        except DrawingError as error:
            # Written so, the file could not be read again; the old one stands.
            self._say_faults(path, error, tr("cannot be saved."))
            return False
        except OSError as error:
            self._say(
                tr(of_error(error)), tr("The drawing here is as it was. Save it elsewhere, or try again.")
            )
            return False
        remembered.add_recent(self._settings, path)
        self.recent_changed.emit()
        return True

    def _say_faults(self, path: Path, error: DrawingError, what: str = "") -> None:
        messages = [tr(fault.message) for fault in error.faults]
        first, details = messages[0], ""
        if len(messages) > 1:
            first = tr(
                "{count} things are wrong with it. The first: {first}", count=len(messages), first=first
            )
            details = "\n".join(messages)
        self._say(f"{path.name} {what or tr('cannot be read.')}", first, details)

    def _say(self, text: str, more: str, details: str = "") -> None:
        plain.message(self._window, text, more, icon=QMessageBox.Icon.Warning, details=details).exec()

    def _folder(self) -> Path:
        if self._document.path is not None:
            return self._document.path.parent
        latest = remembered.recent(self._settings)
        return latest[0].parent if latest else Path.home()

    def _proposal(self) -> Path:
        if self._document.path is not None:
            return self._document.path
        letters = (letter if letter.isalnum() else "-" for letter in self._document.drawing.title.lower())
        name = "-".join(filter(None, "".join(letters).split("-")))[:60]
        return self._folder() / f"{name or 'drawing'}{ENDING}"


def called(sample: Path) -> str:
    """What a drawing that ships is called: by its file."""
    return sample.stem.replace("-", " ").replace("_", " ").capitalize()
