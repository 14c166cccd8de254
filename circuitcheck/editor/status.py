"""The status line: what the keys do now, where the pointer is, and the zoom."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QHBoxLayout, QStatusBar, QToolButton, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.translating import later, tr

REST = later("Type a part’s name to place it.  Press on a port and drag to draw a pipe.")


class StatusLine(QStatusBar):
    """A hint to the left; place and zoom to the right."""

    def __init__(self, zoom_out: QAction, zoom_reset: QAction, zoom_in: QAction) -> None:
        super().__init__()
        self.setSizeGripEnabled(False)
        self._hint = plain.label(tr(REST), "second", elided=True)
        self._hint.setContentsMargins(12, 0, 0, 0)
        self._warning = plain.label("", "strong", elided=True)
        self._warning.hide()
        self._place = plain.label("", "second")
        self._place.setMinimumWidth(88)
        self._place.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        right = QWidget()
        line = QHBoxLayout(right)
        line.setContentsMargins(0, 0, 8, 0)
        line.setSpacing(2)
        line.addWidget(self._place)
        line.addSpacing(12)
        line.addWidget(_button(zoom_out, "−", tr("Zoom out")))
        self._zoom = _button(zoom_reset, "100 %", tr("Zoom"))
        self._zoom.setMinimumWidth(62)
        line.addWidget(self._zoom)
        line.addWidget(_button(zoom_in, "+", tr("Zoom in")))
        self.addWidget(self._hint, 1)
        self.addPermanentWidget(self._warning)
        self.addPermanentWidget(right)

    def show_hint(self, text: str) -> None:
        """What the keys and the pointer do now; empty: what they do at rest."""
        self._hint.setText(text or tr(REST))

    def show_warning(self, text: str) -> None:
        """What stands until it is mended, whatever the hint says; empty: nothing does."""
        self._warning.setText(text)
        self._warning.setVisible(bool(text))

    def show_place(self, place: object) -> None:
        """Where the pointer is, in squares; None: not on the sheet."""
        if isinstance(place, tuple) and len(place) == 2:
            self._place.setText(f"x {place[0]:.0f}   y {place[1]:.0f}")
        else:
            self._place.setText("")

    def show_zoom(self, factor: float) -> None:
        """How large the sheet is shown."""
        self._zoom.setText(f"{factor * 100:.0f} %")
        self._zoom.setAccessibleName(tr("Zoom {factor:.0f} percent; press for 100", factor=factor * 100))

    @property
    def hint(self) -> str:
        """What is shown to the left."""
        return self._hint.text()

    @property
    def warning(self) -> str:
        """What stands until it is mended; empty for nothing."""
        return self._warning.text()

    @property
    def zoom(self) -> str:
        """The zoom as it is shown."""
        return self._zoom.text()


def _button(action: QAction, text: str, name: str) -> QToolButton:
    button = QToolButton()
    button.setText(text)
    button.setAccessibleName(name)
    button.setMinimumWidth(32)
    button.clicked.connect(action.trigger)
    return button
