"""Marks on a QPainter: roles become a theme's colours, paths become Qt's, once for many repaints."""

from __future__ import annotations

from collections.abc import Hashable, Iterable
from dataclasses import dataclass
from enum import Enum
from functools import cache, lru_cache

from PySide6.QtCore import QLineF, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFont,
    QFontMetricsF,
    QPainter,
    QPainterPath,
    QPen,
)

from circuitcheck.editor.fonts import sheet_family
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import shown_told
from circuitcheck.picture.marks import Fill, Hatch, Mark, Path, Stroke, TextMark

CAPS = {"flat": Qt.PenCapStyle.FlatCap, "round": Qt.PenCapStyle.RoundCap}
JOINS = {"mitre": Qt.PenJoinStyle.MiterJoin, "round": Qt.PenJoinStyle.RoundJoin}

TINTS = frozenset({"water_tint", "flame_tint", "gas_tint"})
"""Decoration inside symbols; out of focus it goes."""

GROUNDS = frozenset({"paper", "body", "grid"})
"""Roles that lie under marks and keep their colour in every tone."""


class Tone(Enum):
    """How the colours of a thing are changed as a whole."""

    PLAIN = "as they are"
    QUIET = "out of focus: one grey"
    WITNESS = "a valve that proves a finding: danger"
    CHOSEN = "about to be placed: select"
    STILL = "no flow in it: its own colours, pale"


STILL_SHARE = 0.72
"""How much of its colour a pipe without flow keeps; less, and its line would fall below 3 to 1."""

_ONE_COLOUR = {Tone.QUIET: "quiet", Tone.WITNESS: "danger", Tone.CHOSEN: "select"}


class Palette:
    """The colours of a theme in one tone. `ink` names the role that stands in for ink, for a joint's dot."""

    def __init__(self, theme: Theme, tone: Tone = Tone.PLAIN, ink: str = "ink") -> None:
        self.theme = theme
        self.tone = tone
        self.ink = ink
        self.pens: dict[Hashable, QPen] = {}
        """Those of `pen_for`: a sheet has a handful of kinds of stroke, and a step of a drag strokes ten lines."""

    @property
    def key(self) -> tuple[str, Tone, str]:
        """What tells one palette from another."""
        return self.theme.name, self.tone, self.ink

    def colour(self, role: str) -> QColor:
        """The colour of a role in this tone."""
        if role in GROUNDS:
            return self.theme[role]
        if self.tone is Tone.STILL:
            return self._pale(self.theme[self.ink if role == "ink" else role])
        if self.tone is not Tone.PLAIN:
            return self.theme["body" if role in TINTS else _ONE_COLOUR[self.tone]]
        return self.theme[self.ink if role == "ink" else role]

    def _pale(self, colour: QColor) -> QColor:
        """The colour thinned with paper; in high contrast the grey that holds 7 to 1."""
        if self.theme.high_contrast:
            return self.theme["quiet"]
        paper, kept, left = self.theme["paper"], STILL_SHARE, 1 - STILL_SHARE
        return QColor(
            round(kept * colour.red() + left * paper.red()),
            round(kept * colour.green() + left * paper.green()),
            round(kept * colour.blue() + left * paper.blue()),
        )

    @property
    def extra_px(self) -> float:
        """What high contrast adds to every stroke."""
        return 1.0 if self.theme.high_contrast else 0.0


def washed(colour: QColor, share: float) -> QColor:
    """The colour let through in part, for a wash over what lies below."""
    if share >= 1:
        return colour
    wash = QColor(colour)
    wash.setAlphaF(share)
    return wash


@cache
def font(size: float, weight: int) -> QFont:
    """The sheet's font at a size in px; figures as wide as one another."""
    made = QFont(sheet_family())
    made.setPixelSize(round(size))
    made.setWeight(QFont.Weight(weight))
    made.setHintingPreference(QFont.HintingPreference.PreferNoHinting)
    made.setStyleStrategy(QFont.StyleStrategy.PreferAntialias)
    made.setFeature(QFont.Tag("tnum"), 1)
    return made


def qt_path(path: Path) -> QPainterPath:
    """The path as Qt's."""
    made = QPainterPath()
    for letter, v in path:
        if letter == "M":
            made.moveTo(v[0], v[1])
        elif letter == "L":
            made.lineTo(v[0], v[1])
        elif letter == "C":
            made.cubicTo(*v)
        else:
            made.closeSubpath()
    return made


def pen_for(stroke: Stroke, palette: Palette) -> QPen:
    """The pen of a stroke, made once for all that are stroked alike."""
    alike = (stroke.role, stroke.width, stroke.dash, stroke.cap, stroke.join, stroke.opacity)
    pen = palette.pens.get(alike)
    if pen is None:
        pen = palette.pens[alike] = _pen(stroke, palette)
    return pen


def _pen(stroke: Stroke, palette: Palette) -> QPen:
    width = stroke.width + palette.extra_px
    pen = QPen(washed(palette.colour(stroke.role), stroke.opacity), width)
    pen.setCapStyle(CAPS[stroke.cap])
    pen.setJoinStyle(JOINS[stroke.join])
    if stroke.join == "mitre":
        pen.setMiterLimit(4)
    if stroke.dash:
        # Qt counts dashes in widths of the pen.
        pen.setDashPattern([length / width for length in stroke.dash])
    return pen


@dataclass
class _Letters:
    """A text ready to paint: the paper kept clear around it, its origin, its colours."""

    text: str
    font: QFont
    origin: QPointF
    colour: QColor
    halo: QPainterPath | None
    paper: QColor


@dataclass
class _Stripes:
    """A hatch ready to paint."""

    area: QPainterPath
    lines: list[QLineF]
    pen: QPen


_Shape = tuple[QPainterPath, QPen, QBrush]

NO_PEN, NO_BRUSH = QPen(Qt.PenStyle.NoPen), QBrush(Qt.BrushStyle.NoBrush)


class Prepared:
    """Marks made ready for Qt once, when first painted, to be painted many times."""

    def __init__(self, marks: Iterable[Mark], palette: Palette) -> None:
        self._marks = tuple(marks)
        self._palette = palette
        self._steps: list[_Shape | _Letters | _Stripes] | None = None

    def _ready(self) -> list[_Shape | _Letters | _Stripes]:
        steps: list[_Shape | _Letters | _Stripes] = []
        palette = self._palette
        for mark in self._marks:
            if isinstance(mark, TextMark):
                steps.append(_letters(mark, palette))
            elif isinstance(mark, Fill):
                brush = QBrush(washed(palette.colour(mark.role), mark.opacity))
                steps.append((qt_path(mark.path), NO_PEN, brush))
            elif isinstance(mark, Hatch):
                steps.append(_stripes(mark, palette))
            else:
                steps.append((qt_path(mark.path), pen_for(mark, palette), NO_BRUSH))
        return steps

    def paint(self, painter: QPainter) -> None:
        """Paint the marks where the painter stands."""
        if self._steps is None:
            self._steps = self._ready()
        for step in self._steps:
            if isinstance(step, _Letters):
                if step.halo is not None:
                    painter.fillPath(step.halo, step.paper)
                painter.setFont(step.font)
                painter.setPen(step.colour)
                painter.drawText(step.origin, step.text)
                continue
            if isinstance(step, _Stripes):
                painter.save()
                painter.setClipPath(step.area, Qt.ClipOperation.IntersectClip)
                painter.setPen(step.pen)
                painter.drawLines(step.lines)
                painter.restore()
                continue
            path, pen, brush = step
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(path)


def paint(painter: QPainter, marks: Iterable[Mark], palette: Palette) -> None:
    """Paint marks once."""
    Prepared(marks, palette).paint(painter)


def _stripes(mark: Hatch, palette: Palette) -> _Stripes:
    """The lines of a hatch across the box of its area; painting clips them to it."""
    area = qt_path(mark.path)
    box = area.boundingRect()
    step = mark.pitch * 2**0.5
    lines = []
    # Counted from the sheet's corner, so that the stripes of two areas fall in with each other.
    offset = (box.left() - box.bottom()) // step * step
    while offset < box.right() - box.top():
        lines.append(QLineF(box.top() + offset, box.top(), box.bottom() + offset, box.bottom()))
        offset += step
    return _Stripes(area, lines, QPen(washed(palette.colour(mark.role), mark.opacity), mark.width))


@lru_cache(maxsize=4_096)
def _wide(text: str, size: float, weight: int) -> float:
    """How wide a text is in the sheet's font, in px: sizes of pipes are the same few over and over."""
    return QFontMetricsF(font(size, weight)).horizontalAdvance(text)


def _letters(mark: TextMark, palette: Palette) -> _Letters:
    text, face = shown_told(mark.text), font(mark.size, mark.weight)
    wide = _wide(text, mark.size, mark.weight)
    left = mark.x - {"start": 0.0, "middle": wide / 2, "end": wide}[mark.anchor]
    origin = QPointF(left, mark.y)
    halo = None
    if mark.halo:
        # A plain box: outlining the letters looks the same on paper and costs fifty times as much.
        box = QRectF(left, mark.y - 0.75 * mark.size, wide, mark.size)
        halo = QPainterPath()
        halo.addRoundedRect(box.adjusted(-mark.halo, -mark.halo / 2, mark.halo, mark.halo / 2), 4, 4)
    return _Letters(text, face, origin, palette.colour(mark.role), halo, palette.colour("paper"))
