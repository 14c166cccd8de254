"""The first window comes up in three steps: bare, then with its sheet and file, then whole."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QTimer

from circuitcheck.editor.after_painting import AfterPainting
from circuitcheck.editor.frame import PROGRAM
from circuitcheck.editor.windows import Windows


class ComingUp:
    """Each step follows once the one before was painted, or as soon as a hand or a dialog comes to the window.

    `furnish_program` is called once the bare window is painted, before the first text is made: what of the program
    costs time and is not seen before.
    """

    def __init__(
        self, windows: Windows, furnish_program: Callable[[], object], file: Path | None = None
    ) -> None:
        self._windows, self._furnish_program, self._file = windows, furnish_program, file
        self._window = windows.first()
        if file is not None:
            # From a disk that is slow to wake, what is to come takes seconds.
            self._window.setWindowTitle(f"{file.stem.replace('[*]', '[*][*]')} – {PROGRAM}")
        self._rest: AfterPainting | None = None
        self._sheet = AfterPainting(self._window, self._begin)
        self._sheet.wait()

    def end(self) -> None:
        """Nothing is waited for any more: what ends the window asks after all of it."""
        if self._rest is not None:
            self._rest.now()

    def _begin(self) -> None:
        self._furnish_program()
        # Nothing may be asked about a file while what a hand did goes on its way to the window.
        later = self._sheet.is_hurried
        self._windows.begin(self._window, None if later else self._file)
        # What was told of the file is answered; the window may be closed by then.
        if self._window not in self._windows.open:
            return
        self._rest = rest = AfterPainting(
            self._window.sheet.viewport(), lambda: self._windows.furnish(self._window)
        )
        if later:
            rest.now()
            QTimer.singleShot(0, self._window, self._read)
        else:
            rest.wait(self._go_on)

    def _read(self) -> None:
        if self._file is not None and self._window in self._windows.open:
            self._window.files.read(self._file)
        self._go_on()

    def _go_on(self) -> None:
        if self._windows.open:
            self._windows.offer_recovered()
        if len(self._windows.open) == 1:
            self._windows.open[0].starting.show_if_empty()
