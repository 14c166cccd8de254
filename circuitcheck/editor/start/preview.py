"""A drawing seen small, painted as the sheet paints it."""

from __future__ import annotations

from PySide6.QtCore import QRectF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.picture import Picture
from circuitcheck.editor.theme import Theme

LARGEST = 1.0
"""A small drawing is not blown up beyond the size it has on the sheet."""
EDGE_PX = 16.0


class Preview(QWidget):
    """Shows one drawing, fitted; nothing where there is none."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(QSize(160, 120))
        self._picture: Picture | None = None
        self._drawing: Drawing | None = None
        self._theme: Theme | None = None

    def show_drawing(self, drawing: Drawing | None, theme: Theme) -> None:
        """Show another drawing, or none."""
        if drawing is self._drawing and theme is self._theme:
            return
        self.close_picture()
        self._drawing, self._theme = drawing, theme
        if drawing is not None:
            picture = Picture(drawing, drawing, theme)
            self._picture = None if picture.is_empty else picture
        self.update()

    def close_picture(self) -> None:
        """Let go of what is shown."""
        if self._picture is not None:
            self._picture.close()
        self._picture = None
        self._drawing = None

    def paintEvent(self, event: QPaintEvent) -> None:
        """The drawing in the middle, as large as it fits."""
        if self._picture is None or self._theme is None:
            return
        painter = QPainter(self)
        room = QRectF(self.rect())
        painter.fillRect(room, self._theme["paper"])
        box = self._picture.box
        wide, high = room.width() - 2 * EDGE_PX, room.height() - 2 * EDGE_PX
        scale = min(LARGEST, wide / box.width(), high / box.height())
        target = QRectF(0.0, 0.0, box.width() * scale, box.height() * scale)
        target.moveCenter(room.center())
        self._picture.paint(painter, target)
        painter.setPen(self._theme["hairline"])
        painter.drawRect(room.adjusted(0.5, 0.5, -0.5, -0.5))
        painter.end()
