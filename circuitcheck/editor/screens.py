"""How dense the screens are: what is prepared in pixels is prepared for the densest of them."""

from __future__ import annotations

from math import ceil

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QGuiApplication, QScreen


def densest() -> int:
    """The most device pixels to a px, rounded up, of all screens there are."""
    return ceil(max((screen.devicePixelRatio() for screen in QGuiApplication.screens()), default=1.0))


class Screens(QObject):
    """Tells `denser` when a screen is denser than all were before: one is plugged in, or set to another scale."""

    denser = Signal()

    def __init__(self, application: QGuiApplication, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._most = densest()
        application.screenAdded.connect(self._watch)
        for screen in QGuiApplication.screens():
            self._watch(screen)

    def _watch(self, screen: QScreen) -> None:
        # Another scale is another size in px.
        screen.geometryChanged.connect(self.look)
        self.look()

    def look(self) -> None:
        """Tell, if one is denser by now."""
        most = densest()
        if most > self._most:
            self._most = most
            self.denser.emit()
