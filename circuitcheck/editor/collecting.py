"""Garbage is looked for in the window's thread alone.

A closed window is garbage that only a search finds, as its parts name one another. Whichever thread comes to
search deletes it: in another than the window's, Qt's timers could not be stopped, and the next that went off would
end the program.
"""

from __future__ import annotations

import gc

from PySide6.QtCore import QObject, QTimer

EVERY_MS = 500


class Collecting(QObject):
    """Searches from time to time what Python would have searched by itself, by Python's own thresholds."""

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._was_on = gc.isenabled()
        gc.disable()
        self._timer = QTimer(self, interval=EVERY_MS)
        self._timer.timeout.connect(self.look)
        self._timer.start()

    def look(self) -> None:
        """Search the oldest generation that is due, and with it the younger ones."""
        counts = zip(gc.get_count(), gc.get_threshold(), strict=True)
        due = [generation for generation, (count, most) in enumerate(counts) if count > most]
        if due:
            gc.collect(max(due))

    def stop(self) -> None:
        """Leave it to Python again."""
        self._timer.stop()
        if self._was_on:
            gc.enable()
