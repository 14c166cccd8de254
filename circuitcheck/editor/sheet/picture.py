"""A drawing as a picture, for other programs in light colours: the sheet's own marks, without the sheet."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.painting import paint
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.theme import Theme, light
from circuitcheck.picture.labels import marks_of
from circuitcheck.picture.marks import moved
from circuitcheck.picture.pipes import pipe_marks
from circuitcheck.picture.symbols import symbol

MARGIN_PX = 16.0


class Picture:
    """Lays a drawing out once, to be painted as often as wanted; symbols as strokes, not as pixels."""

    def __init__(self, drawing: Drawing, whole: Drawing, theme: Theme | None = None) -> None:
        """`whole` is the drawing it was taken from, by which its pipes tell what they carry."""
        theme = theme or light()
        self._content = Content(lambda _: service_names(whole), theme)
        self._content.show(drawing)
        box = QRectF()
        pieces = [piece for part in self._content.parts.values() for piece in part.boxes]
        pieces += [piece for pipe in self._content.pipes.values() for piece in pipe.boxes]
        for piece in pieces:
            box = box.united(piece)
        self.box = box.adjusted(-MARGIN_PX, -MARGIN_PX, MARGIN_PX, MARGIN_PX)
        self.paper: QColor = theme["paper"]

    @property
    def is_empty(self) -> bool:
        """Whether nothing of it is placed."""
        return not (self._content.parts or self._content.pipes)

    def paint(self, painter: QPainter, target: QRectF) -> None:
        """Paint it into a place of the painter. What is open where it was cut out is not marked."""
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(target, self.paper)
        painter.translate(target.topLeft())
        painter.scale(target.width() / self.box.width(), target.height() / self.box.height())
        painter.translate(-self.box.topLeft())
        for pipe in self._content.pipes.values():
            view = pipe.view
            marks = pipe_marks(view.line, view.service, hops=view.hops, gap=view.gap, text=view.text)
            paint(painter, marks, view.palette)
        for part in self._content.parts.values():
            shown, look = part.view, part.view.look
            marks = moved(symbol(look.kind, look.states, look.turn, look.mirrored), *shown.at)
            paint(painter, marks, shown.palette)
            if shown.label is not None:
                paint(painter, marks_of(shown.label), shown.text_palette or shown.palette)
        painter.restore()

    def close(self) -> None:
        """Let go of it all."""
        self._content.close()
