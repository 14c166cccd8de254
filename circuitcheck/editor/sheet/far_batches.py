"""What lies about one square of the sheet, seen from far off: its lines by colour, its symbols by look."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from itertools import pairwise
from typing import NamedTuple, TypeVar

from PySide6.QtCore import QLineF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from circuitcheck.editor.sheet.painting import Palette, Tone
from circuitcheck.editor.sheet.pixmaps import Look, Picture
from circuitcheck.editor.sheet.shown_part import Lens, rect_of
from circuitcheck.picture.labels import Rect
from circuitcheck.picture.pipes import LINES, Place

TONES = (Tone.STILL, Tone.QUIET, Tone.PLAIN, Tone.WITNESS, Tone.CHOSEN)
"""What stands out lies over what does not."""

ROLES = tuple(dict.fromkeys(line.role for line in reversed(tuple(LINES.values()))))
"""The colours of lines, each over those before it."""

Alike = TypeVar("Alike")
Height = tuple[int, int]
"""How high what is of one colour lies over the rest."""


class FarPart(NamedTuple):
    """What is seen of a part from far off, in px of the sheet."""

    id: str
    at: Place
    palette: Palette
    box: Rect


class FarPipe(NamedTuple):
    """What is seen of a pipe from far off: its line in px, and the service that gives its colour."""

    line: tuple[Place, ...]
    service: str
    palette: Palette


class FarLines:
    """Lines of one colour.

    Qt has a short way for a path whose pen is no wider than a pixel of the screen, and for single runs with any
    pen; each is several times as fast there as the other.
    """

    def __init__(self, colour: QColor) -> None:
        self.colour = colour
        self.lines: list[tuple[Place, ...]] = []

    @cached_property
    def path(self) -> QPainterPath:
        """All of them."""
        path = QPainterPath()
        for line in self.lines:
            path.moveTo(*line[0])
            for x, y in line[1:]:
                path.lineTo(x, y)
        return path

    @cached_property
    def runs(self) -> list[QLineF]:
        """Each straight run of them."""
        return [QLineF(*a, *b) for line in self.lines for a, b in pairwise(line)]


def lines_by_height(pipes: Iterable[FarPipe]) -> dict[Height, FarLines]:
    """The lines of pipes, put together by colour."""
    found: dict[Height, FarLines] = {}
    for line, service, palette in pipes:
        role = LINES[service].role
        height = TONES.index(palette.tone), ROLES.index(role)
        if height not in found:
            found[height] = FarLines(palette.colour(role))
        found[height].lines.append(line)
    return found


class FarBoxes(NamedTuple):
    """Boxes of one colour, and of one ground."""

    colour: QColor
    body: QColor
    boxes: list[QRectF]


class _Placed(NamedTuple):
    """A picture, and where it is painted at one zoom, in px of the view from the sheet's corner."""

    picture: Picture
    zoom: float
    targets: list[QRectF]


class _Alike:
    """Symbols that look alike.

    Where each is painted is kept for the last zoom: working it out anew costs as much as painting, and at one zoom
    a sheet is painted often.
    """

    def __init__(self, look: Look, palette: Palette) -> None:
        self._look = look
        self._palette = palette
        self.places: list[Place] = []
        """Their centres, in px of the sheet."""
        self._placed: _Placed | None = None

    def paint(self, painter: QPainter, zoom: float, lens: Lens) -> None:
        """Paint the shared pixmap at each place, on a painter in px of the view from the sheet's corner."""
        scale = zoom * painter.device().devicePixelRatioF()
        picture = lens.pixmaps.get(self._look, self._palette, scale, settled=lens.settled)
        placed = self._placed
        if placed is None or placed.picture is not picture or placed.zoom != zoom:
            targets = [picture.target(x * zoom, y * zoom, zoom) for x, y in self.places]
            placed = self._placed = _Placed(picture, zoom, targets)
        for target in placed.targets:
            painter.drawPixmap(target, picture.pixmap, picture.whole)


class FarSymbols:
    """The symbols of parts; `look` is asked only where more of them is seen than a box."""

    def __init__(self, parts: Iterable[FarPart], look: Callable[[str], Look]) -> None:
        self._parts = list(parts)
        self._look = look

    def paint(self, painter: QPainter, zoom: float, lens: Lens) -> None:
        """Paint the symbol of each, on a painter in px of the view from the sheet's corner."""
        for alike in self._alike:
            alike.paint(painter, zoom, lens)

    @cached_property
    def boxes(self) -> Mapping[Height, FarBoxes]:
        """The box of each, put together by colour: what is seen from very far off."""
        found: dict[Height, FarBoxes] = {}
        for part in self._parts:
            palette = part.palette
            height = TONES.index(palette.tone), ROLES.index(palette.ink)
            if height not in found:
                found[height] = FarBoxes(palette.colour("ink"), palette.colour("body"), [])
            found[height].boxes.append(rect_of(part.box))
        return found

    @cached_property
    def _alike(self) -> list[_Alike]:
        by_look: dict[Look, _Alike] = {}
        for part in self._parts:
            look = self._look(part.id)
            if look not in by_look:
                by_look[look] = _Alike(look, part.palette)
            by_look[look].places.append(part.at)
        return list(by_look.values())


def paint_lines(
    painter: QPainter, batches: Sequence[Mapping[Height, FarLines]], width: float, *, thin: bool
) -> None:
    """Paint lines colour by colour, so wide in px of the sheet; `thin`: no wider than a pixel of the screen."""
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for alike in _from_below(batches):
        painter.setPen(QPen(alike[0].colour, width))
        for lines in alike:
            if thin:
                painter.drawPath(lines.path)
            else:
                painter.drawLines(lines.runs)


def paint_boxes(painter: QPainter, symbols: Iterable[FarSymbols]) -> None:
    """Paint a box for each symbol."""
    for alike in _from_below([each.boxes for each in symbols]):
        painter.setPen(QPen(alike[0].colour, 0))
        painter.setBrush(alike[0].body)
        for boxes in alike:
            painter.drawRects(boxes.boxes)


def _from_below(batches: Sequence[Mapping[Height, Alike]]) -> Iterator[list[Alike]]:
    """What is of one colour in all batches, the lowest first: a pen is changed seldom, and what lies on top is
    the same however much of the sheet is painted."""
    for height in sorted({height for batch in batches for height in batch}):
        yield [batch[height] for batch in batches if height in batch]
