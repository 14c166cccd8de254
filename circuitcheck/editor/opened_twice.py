"""Says so before a file is opened that another window, or another running program, has open already."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer
from PySide6.QtWidgets import QMessageBox

from circuitcheck.editor import plain
from circuitcheck.editor.translating import tr
from circuitcheck.storage.claims import Claim, same_file

if TYPE_CHECKING:
    from circuitcheck.editor.window import MainWindow

FOLDER = "open"
"""Inside the program's own folder on the user's machine."""


class OpenedTwice(QObject):
    """Asks about a file that others claim; and, once it is to `follow`, claims that of a window's document itself."""

    def __init__(self, window: MainWindow, folder: Path, windows: Callable[[], Iterable[MainWindow]]) -> None:
        super().__init__(window)
        self._window, self._windows = window, windows
        self._claim = Claim(folder)
        self._asked: set[Path] = set()
        self._soon = QTimer(self, interval=0, singleShot=True)
        self._soon.timeout.connect(self._look_again)
        window.files.may_open = self.may_open

    def follow(self) -> None:
        """Claim the file that is open, and from now on each that is opened after it."""
        self._window.document.saved_state_changed.connect(self._follow)
        self._follow()
        if self._window.document.path is not None:
            # It was read before it was claimed: another program that was started with it just then saw no claim.
            self._soon.start()

    def close(self) -> None:
        """The window is closed: its file is free."""
        self._soon.stop()
        self._claim.close()

    def may_open(self, path: Path) -> bool:
        """Whether the window goes on to open a file; where another has it open, as its user says."""
        own = self._window.document.path
        if own is not None and same_file(own, path):
            return True
        others = (each for each in self._windows() if each is not self._window)
        other = next(filter(lambda each: shows(each, path), others), None)
        if other is None and not self._claim.is_shared(path):
            return True
        return self.ask(path, other)

    def ask(self, path: Path, other: MainWindow | None) -> bool:
        """Ask whether a file that is open already is opened here too; `other`: the window that has it."""
        if other is not None:
            text = tr("{name} is open in another window already.", name=path.name)
        else:
            text = tr("{name} is open already: the program runs twice.", name=path.name)
        box = plain.message(
            self._window,
            text,
            tr(
                "Opened twice it can be changed in both. Whoever saves second is asked first: nothing that was saved "
                "is replaced unasked."
            ),
            icon=QMessageBox.Icon.Question,
            buttons=QMessageBox.StandardButton.Cancel,
            default=QMessageBox.StandardButton.Cancel,
        )
        twice = box.addButton(tr("Open it here too"), QMessageBox.ButtonRole.AcceptRole)
        there = None
        if other is not None:
            there = box.addButton(tr("Go to that window"), QMessageBox.ButtonRole.AcceptRole)
            box.setDefaultButton(there)
        self._asked.add(path)
        box.exec()
        from circuitcheck.editor.window_menu import bring

        if there is not None and other is not None and box.clickedButton() is there:
            bring(other)
        return box.clickedButton() is twice

    def _look_again(self) -> None:
        path = self._window.document.path
        if path is None or path in self._asked or not self._claim.is_shared(path):
            return
        # What the windows of this program show, they asked about themselves.
        if any(shows(each, path) for each in self._windows() if each is not self._window):
            return
        if not self.ask(path, None):
            self._window.files.new()

    def _follow(self) -> None:
        self._claim.follow(self._window.document.path)


def shows(window: MainWindow, path: Path) -> bool:
    """Whether a window shows the drawing of that file."""
    shown = window.document.path
    return shown is not None and same_file(shown, path)
