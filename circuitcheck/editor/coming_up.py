"""The first window comes up in three steps: bare, then with its sheet and file, then whole."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from circuitcheck.editor.after_painting import AfterPainting
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
        self._rest: AfterPainting | None = None
        self._sheet = AfterPainting(self._window, self._begin)
        # Once the window stands, so that what is told of the file is told over it.
        self._sheet.wait(self._read)

    def end(self) -> None:
        """Nothing is waited for any more: what ends the window asks after all of it."""
        if self._rest is not None:
            self._rest.now()

    def _begin(self) -> None:
        self._furnish_program()
        self._windows.begin(self._window)
        self._rest = AfterPainting(self._window.sheet.viewport(), lambda: self._windows.furnish(self._window))
        if self._sheet.is_hurried:
            self._rest.now()

    def _read(self) -> None:
        if self._file is not None and self._window in self._windows.open:
            self._window.files.read(self._file)
        # What is told of the file is answered before this goes on; the window may be closed by then.
        if self._windows.open and self._rest is not None:
            self._rest.wait(self._go_on)

    def _go_on(self) -> None:
        if self._windows.open:
            self._windows.offer_recovered()
        if len(self._windows.open) == 1:
            self._windows.open[0].starting.show_if_empty()
