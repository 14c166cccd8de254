"""Keeps a document's unsaved work for the next start, and offers what an earlier one left behind."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QDateTime, QLocale, QObject, Signal
from PySide6.QtWidgets import QMessageBox, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.document import Document
from circuitcheck.editor.translating import of_error, tr, tr_n
from circuitcheck.storage.keeper import Keeper
from circuitcheck.storage.recovery import Left, Origin, Slot, discard, left_behind, take
from circuitcheck.told import a_word

if TYPE_CHECKING:
    from circuitcheck.storage.faults import DrawingError


class Recovering(QObject):
    """Follows a document: what is unsaved is on the disk within a second, what is saved is not kept twice.

    `failed` carries why nothing can be kept just now; an empty text when it can be again.
    """

    failed = Signal(str)

    def __init__(self, document: Document, folder: Path, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document, self._folder = document, folder
        self._keeper = Keeper(folder, self.failed.emit)
        self._is_over = False
        document.saved_state_changed.connect(self._follow)

    @property
    def keeper(self) -> Keeper:
        """What does the keeping, in its own thread."""
        return self._keeper

    def take_over(self, slot: Slot) -> None:
        """Go on in the slot of a drawing that was left behind."""
        self._keeper.close()
        self._keeper = Keeper(self._folder, self.failed.emit, slot)

    def close(self) -> None:
        """The document is left on purpose, saved or not: nothing is kept of it."""
        self._stop()
        self._keeper.close()

    def leave(self) -> Path | None:
        """The program failed: keep what is unsaved for the next start. Returns the file, None for nothing."""
        self._stop()
        return self._keeper.leave()

    def _stop(self) -> None:
        if not self._is_over:
            self._is_over = True
            self._document.saved_state_changed.disconnect(self._follow)

    def _follow(self) -> None:
        document = self._document
        if document.is_unsaved:
            self._keeper.keep(document.drawing, Origin(document.path, document.digest))
        else:
            self._keeper.forget()


Opener = Callable[[Left], None]
"""Shows one drawing that was left behind; called once for each that the user wants."""


def offer(window: QWidget, folder: Path, open_left: Opener) -> None:
    """Say what was left behind, if anything, and open it, throw it away, or leave it for later."""
    found = left_behind(folder)
    if not found:
        return
    match ask(window, found):
        case "open":
            for left in found:
                open_left(left)
        case "discard":
            for left in found:
                _discard(window, left)


def ask(window: QWidget, found: Sequence[Left]) -> str:
    """Ask what becomes of what was left behind: `open`, `discard` or `later`."""
    one = len(found) == 1
    box = plain.message(
        window,
        tr_n(
            "A drawing was not saved when the program ended.",
            "{count} drawings were not saved when the program ended.",
            len(found),
        ),
        "\n".join(map(told, found)),
        icon=QMessageBox.Icon.Question,
        buttons=QMessageBox.StandardButton.NoButton,
    )
    wanted = box.addButton(tr("Open it") if one else tr("Open them"), QMessageBox.ButtonRole.AcceptRole)
    unwanted = box.addButton(
        tr("Throw it away") if one else tr("Throw them away"), QMessageBox.ButtonRole.DestructiveRole
    )
    after = box.addButton(tr("Ask me later"), QMessageBox.ButtonRole.RejectRole)
    box.setDefaultButton(wanted)
    box.setEscapeButton(after)
    box.exec()
    clicked = box.clickedButton()
    return "open" if clicked is wanted else "discard" if clicked is unwanted else "later"


def told(left: Left) -> str:
    """One line: what the drawing is called, where its file is, and when it was kept."""
    path = left.origin.path
    name = left.title or (path.stem if path else tr("A drawing without a title"))
    where = tr("of {path}", path=path) if path else tr("never saved to a file")
    when = QLocale().toString(
        QDateTime.fromSecsSinceEpoch(round(left.kept_at.timestamp())), QLocale.FormatType.ShortFormat
    )
    return tr("{name}, {where}, as of {when}", name=name, where=where, when=when)


def recover(window: QWidget, left: Left, document: Document, recovering: Recovering) -> bool:
    """Go on with a drawing that was left behind. Says so and returns False where that cannot be."""
    from filelock import Timeout

    from circuitcheck.storage.faults import DrawingError

    try:
        slot, drawing = take(left)
    except Timeout:
        return _say(window, tr("Another window of the program has opened this drawing already."), told(left))
    except DrawingError as error:
        return _say_unreadable(window, left, error)
    except OSError as error:
        return _say(
            window, tr("The drawing that was left cannot be read."), error.strerror or tr(of_error(error))
        )
    recovering.take_over(slot)
    document.recover(drawing, left.origin.path, left.origin.digest)
    return True


def _discard(window: QWidget, left: Left) -> None:
    from filelock import Timeout

    try:
        discard(left)
    except Timeout:
        # Another program took it over meanwhile: it is not ours to throw away.
        return
    except OSError as error:
        _say(window, tr("What was left could not be thrown away."), error.strerror or tr(of_error(error)))


def _say_unreadable(window: QWidget, left: Left, error: DrawingError) -> bool:
    return _say(
        window,
        tr("The drawing that was left cannot be read."),
        tr("It stays in {file}. {message}", file=left.file, message=a_word(error.faults[0].message)),
        "\n".join(tr(fault.message) for fault in error.faults),
    )


def _say(window: QWidget, text: str, more: str, details: str = "") -> bool:
    plain.message(window, text, more, icon=QMessageBox.Icon.Warning, details=details).exec()
    return False
