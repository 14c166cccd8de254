"""The symbols as pixmaps, shared by all parts that look alike."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPixmap

from circuitcheck.editor.sheet.painting import Palette, Prepared, Tone
from circuitcheck.picture.marks import extent
from circuitcheck.picture.symbols import symbol

MARGIN_PX = 2.0
MOST_KEPT = 1500


@dataclass(frozen=True)
class Look:
    """All that makes the picture of a symbol: what is not in here two parts may differ in."""

    kind: str
    states: frozenset[str]
    turn: int
    mirrored: bool
    colours: tuple[str, Tone, str]
    """The key of its palette."""


@dataclass(frozen=True)
class Picture:
    """A pixmap, and where its top left corner lies from the symbol's centre, in px at 100 %."""

    pixmap: QPixmap
    origin: QPointF
    scale: float
    whole: QRectF
    """All of the pixmap, in its own pixels."""

    @property
    def size_px(self) -> tuple[float, float]:
        """How wide and high it is, in px at 100 %."""
        return self.pixmap.width() / self.scale, self.pixmap.height() / self.scale

    def target(self, x: float, y: float, zoom: float) -> QRectF:
        """Where it is painted so that the symbol's centre lies there, in px of the view."""
        across, down = self.size_px
        return QRectF(x + self.origin.x() * zoom, y + self.origin.y() * zoom, across * zoom, down * zoom)


class Pixmaps:
    """Each look once for each scale; the scale is the zoom times the screen's pixels per px."""

    def __init__(self) -> None:
        self._made: dict[tuple[Look, float], Picture] = {}
        self._last: dict[Look, Picture] = {}

    def get(self, look: Look, palette: Palette, scale: float, *, settled: bool = True) -> Picture:
        """The look's picture at a scale; while the zoom is not settled, the last one made serves."""
        known = self._made.get((look, scale))
        if known is not None:
            return known
        if not settled and look in self._last:
            return self._last[look]
        if len(self._made) >= MOST_KEPT:
            self._made.clear()
        made = _paint(look, palette, scale)
        self._made[(look, scale)] = self._last[look] = made
        return made

    def clear(self) -> None:
        """Forget all, for another theme."""
        self._made.clear()
        self._last.clear()

    def __len__(self) -> int:
        return len(self._made)


def _paint(look: Look, palette: Palette, scale: float) -> Picture:
    marks = symbol(look.kind, look.states, look.turn, look.mirrored)
    left, top, right, low = extent(marks)
    # Whole device pixels from the centre, so that the centre falls on a pixel's corner in each.
    west, north = _pixels(left, scale), _pixels(top, scale)
    east, south = -_pixels(-right, scale), -_pixels(-low, scale)
    pixmap = QPixmap(max(1, east - west), max(1, south - north))
    pixmap.fill(Qt.GlobalColor.transparent)
    painter = QPainter(pixmap)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.translate(-west, -north)
    painter.scale(scale, scale)
    Prepared(marks, palette).paint(painter)
    painter.end()
    return Picture(pixmap, QPointF(west / scale, north / scale), scale, QRectF(pixmap.rect()))


def _pixels(edge: float, scale: float) -> int:
    """The device pixel outside an edge that lies left of, or above, the centre."""
    return int((edge - MARGIN_PX) * scale // 1)
