"""The paper: its colour and the faint dots at the corners of the squares."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QPainter, QPixmap, QTransform

from circuitcheck.editor.theme import Theme
from circuitcheck.picture.marks import SQUARE_PX

TILE_SQUARES = 8
LEAST_PITCH_PX = 10.0
"""Dots nearer than this on the screen would be a tint: then only every fourth, or none, is shown."""


class Paper:
    """Paints the ground of the sheet from one tile of dots, made for the zoom at hand."""

    def __init__(self) -> None:
        self._key: tuple[str, float] | None = None
        self._brush = QBrush()

    def paint(self, painter: QPainter, exposed: QRectF, theme: Theme) -> None:
        """Fill what is exposed."""
        zoom = painter.worldTransform().m11()
        every = next((n for n in (1, 2, 4) if SQUARE_PX * zoom * n >= LEAST_PITCH_PX), 0)
        if theme.high_contrast or every == 0:
            painter.fillRect(exposed, theme["paper"])
            return
        scale = zoom * painter.device().devicePixelRatioF()
        if self._key != (theme.name, scale):
            self._key = (theme.name, scale)
            self._brush = _tile(theme, scale, every)
        painter.fillRect(exposed, self._brush)


def _tile(theme: Theme, scale: float, every: int) -> QBrush:
    """A tile of whole squares, in device pixels, as a brush in px of the sheet. It lets nothing through: to
    fill with it once takes half of what paper and dots one over the other take."""
    side = TILE_SQUARES * SQUARE_PX * scale
    pixmap = QPixmap(round(side), round(side))
    pixmap.fill(theme["paper"])
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(theme["grid"])
    radius = max(0.6, 0.75 * scale)
    step = SQUARE_PX * scale * every
    # Half a square in, so that no dot lies on the tile's edge; the brush is shifted back by as much.
    half = SQUARE_PX * scale / 2
    for row in range(TILE_SQUARES // every):
        for column in range(TILE_SQUARES // every):
            painter.drawEllipse(QPointF(half + column * step, half + row * step), radius, radius)
    painter.end()
    brush = QBrush(pixmap)
    place = QTransform.fromScale(1 / scale, 1 / scale)
    place.translate(-half, -half)
    brush.setTransform(place)
    return brush
