"""Marks on a PDF canvas: line work with the shipped font embedded, in the colours of print."""

from __future__ import annotations

from typing import Any

from reportlab.lib.colors import Color, HexColor
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from circuitcheck.picture import paths
from circuitcheck.picture.colours import printed
from circuitcheck.picture.lettering import FACES
from circuitcheck.picture.marks import Fill, Hatch, Mark, Path, Stroke, TextMark
from circuitcheck.report.document.fonts import font_path
from circuitcheck.report.document.svg_marks import halo_box
from circuitcheck.report.plain import plain
from circuitcheck.sheet.pictures import Picture

CAPS = {"flat": 0, "round": 1}
JOINS = {"mitre": 0, "round": 1}


def font_name(weight: int) -> str:
    """What a weight of the shipped font is called inside the file."""
    return f"SourceSans3-{FACES[weight]}"


def register_fonts() -> None:
    """Make the shipped font known, once for the whole run."""
    known = set(pdfmetrics.getRegisteredFontNames())
    for weight in FACES:
        if font_name(weight) not in known:
            pdfmetrics.registerFont(TTFont(font_name(weight), font_path(weight)))
    pdfmetrics.registerFontFamily(
        font_name(400),
        normal=font_name(400),
        bold=font_name(600),
        italic=font_name(400),
        boldItalic=font_name(600),
    )


def colour(role: str, opacity: float = 1.0) -> Color:
    """A role's colour in print."""
    found = HexColor(printed(role))
    return found if opacity >= 1 else Color(found.red, found.green, found.blue, alpha=opacity)


def paint(canvas: Any, picture: Picture, x: float, y: float, scale: float) -> None:
    """Paint a picture with its lower left corner at a place of the page, so many points to a px."""
    wide, high = picture.size
    canvas.saveState()
    frame = canvas.beginPath()
    frame.rect(x, y, wide * scale, high * scale)
    canvas.clipPath(frame, stroke=0, fill=0)
    painter = _Painter(canvas, picture, x, y, scale)
    for mark in picture.marks:
        painter.paint(mark)
    canvas.restoreState()


class _Painter:
    """Knows where a px of the picture lies on the page, whose y runs upwards."""

    def __init__(self, canvas: Any, picture: Picture, x: float, y: float, scale: float) -> None:
        self._canvas = canvas
        self._scale = scale
        self._left = x - picture.box[0] * scale
        self._low = y + picture.box[3] * scale

    def paint(self, mark: Mark) -> None:
        """Paint one mark."""
        if isinstance(mark, TextMark):
            self._text(mark)
        elif isinstance(mark, Fill):
            self._canvas.setFillColor(colour(mark.role, mark.opacity))
            self._canvas.drawPath(self._path(mark.path), stroke=0, fill=1)
        elif isinstance(mark, Stroke):
            self._stroke(mark)
        else:
            self._hatch(mark)

    def _x(self, x: float) -> float:
        return self._left + x * self._scale

    def _y(self, y: float) -> float:
        return self._low - y * self._scale

    def _path(self, path: Path) -> Any:
        made = self._canvas.beginPath()
        for letter, v in path:
            if letter == "M":
                made.moveTo(self._x(v[0]), self._y(v[1]))
            elif letter == "L":
                made.lineTo(self._x(v[0]), self._y(v[1]))
            elif letter == "C":
                made.curveTo(*(place(value) for place, value in zip((self._x, self._y) * 3, v, strict=True)))
            else:
                made.close()
        return made

    def _stroke(self, mark: Stroke) -> None:
        canvas = self._canvas
        canvas.setStrokeColor(colour(mark.role, mark.opacity))
        canvas.setLineWidth(mark.width * self._scale)
        canvas.setLineCap(CAPS[mark.cap])
        canvas.setLineJoin(JOINS[mark.join])
        canvas.setMiterLimit(4)
        canvas.setDash([each * self._scale for each in mark.dash], 0)
        canvas.drawPath(self._path(mark.path), stroke=1, fill=0)
        canvas.setDash([], 0)

    def _text(self, mark: TextMark) -> None:
        canvas, text = self._canvas, plain(mark.text)
        if mark.halo:
            left, top, right, low = halo_box(mark)
            canvas.setFillColor(colour("paper"))
            shape = paths.rectangle(left, top, right - left, low - top, 4)
            canvas.drawPath(self._path(shape), stroke=0, fill=1)
        canvas.setFillColor(colour(mark.role))
        canvas.setFont(font_name(mark.weight), mark.size * self._scale)
        draw = {"start": canvas.drawString, "middle": canvas.drawCentredString, "end": canvas.drawRightString}
        draw[mark.anchor](self._x(mark.x), self._y(mark.y), text)

    def _hatch(self, mark: Hatch) -> None:
        canvas = self._canvas
        canvas.saveState()
        canvas.clipPath(self._path(mark.path), stroke=0, fill=0)
        canvas.setStrokeColor(colour(mark.role, mark.opacity))
        canvas.setLineWidth(mark.width * self._scale)
        xs = [x for _, v in mark.path for x in v[::2]]
        ys = [y for _, v in mark.path for y in v[1::2]]
        high, step = max(ys) - min(ys), mark.pitch * 2**0.5
        at = min(xs) - high
        while at < max(xs):
            canvas.line(self._x(at), self._y(max(ys)), self._x(at + high), self._y(min(ys)))
            at += step
        canvas.restoreState()
