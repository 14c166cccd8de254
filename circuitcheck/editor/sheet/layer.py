"""A layer of the sheet: one item that paints what of thousands of things lies in what is exposed."""

from __future__ import annotations

from collections.abc import Callable, Collection, Iterable, Iterator, Mapping
from typing import TypeVar, cast

from PySide6.QtCore import QRect, QRectF
from PySide6.QtGui import QPainter, QRegion, QTransform
from PySide6.QtWidgets import QGraphicsItem, QGraphicsScene, QStyleOptionGraphicsItem, QWidget

Shown = TypeVar("Shown")

EVERYWHERE = QRectF(-5e7, -5e7, 1e8, 1e8)
"""More than any sheet, in px, and at 400 % still a number of pixels that Qt can count."""

MOST_PIECES = 200
"""So many pieces of the sheet are painted anew one by one."""

Paint = Callable[[QPainter, list[QRectF]], None]


class Layer(QGraphicsItem):
    """Everything of one height. An item for each part and pipe would be walked by Qt at every frame, in view or
    not, and its whole box repainted for the sake of a line in it: who changes something says what to repaint."""

    def __init__(self, paint: Paint, z: float) -> None:
        super().__init__()
        self._paint = paint
        self.setZValue(z)
        self.setFlag(QGraphicsItem.GraphicsItemFlag.ItemUsesExtendedStyleOption)

    def boundingRect(self) -> QRectF:
        """The whole sheet."""
        return EVERYWHERE

    def paint(
        self, painter: QPainter, option: QStyleOptionGraphicsItem, widget: QWidget | None = None
    ) -> None:
        """Paint what is exposed."""
        self._paint(painter, exposed(painter, option.exposedRect))


def expose(scene: QGraphicsScene | None, boxes: Iterable[QRectF]) -> None:
    """Have what lies in these boxes painted anew; of many at once all that lies between them too: Qt puts one region
    together of them, which takes the square of their number, half a minute for thirty thousand."""
    if scene is None:
        return
    pieces = list(boxes)
    if len(pieces) > MOST_PIECES:
        whole = QRectF()
        for piece in pieces:
            whole = whole.united(piece)
        pieces = [whole]
    for piece in pieces:
        scene.update(piece)


def exposed(painter: QPainter, whole: QRectF) -> list[QRectF]:
    """What is to be painted, in px of the sheet: the pieces of the screen that are, else the whole."""
    clip = painter.paintEngine().systemClip()
    if clip.rectCount() < 2:
        return [QRectF(whole)]  # a copy: what Qt hands out here is gone after the painting
    return _told_last.pieces(clip, painter.deviceTransform(), whole)


class _Exposed:
    """What was exposed last: all layers that one frame paints ask the same, one after another."""

    def __init__(self) -> None:
        self._asked: tuple[QRegion, QTransform, QRectF] | None = None
        self._pieces: list[QRectF] = []

    def pieces(self, clip: QRegion, place: QTransform, whole: QRectF) -> list[QRectF]:
        """The pieces of a region of the screen, in px of the sheet, as far as they lie in the whole."""
        asked = (clip, place, whole)
        if asked != self._asked:
            # Copies: what Qt hands out here goes on changing.
            self._asked = (QRegion(clip), QTransform(place), QRectF(whole))
            back, _ = place.inverted()
            rects = cast(Iterable[QRect], clip)  # which the stubs do not know
            pieces = (back.mapRect(QRectF(each)) & whole for each in rects)
            self._pieces = [piece for piece in pieces if not piece.isEmpty()]
        return self._pieces


_told_last = _Exposed()


class WhenAsked(Mapping[str, Shown]):
    """What is shown of each thing by its id, made when it is first asked for."""

    def __init__(self, ids: Callable[[], Collection[str]], make: Callable[[str], Shown]) -> None:
        self._ids = ids
        self._make = make
        self._made: dict[str, Shown] = {}

    def __getitem__(self, id: str) -> Shown:
        found = self._made.get(id)
        if found is None:
            if id not in self._ids():
                raise KeyError(id)
            found = self._made[id] = self._make(id)
        return found

    def __iter__(self) -> Iterator[str]:
        return iter(self._ids())

    def __len__(self) -> int:
        return len(self._ids())

    def made(self, id: str) -> Shown | None:
        """What was made of it; None where nobody asked yet."""
        return self._made.get(id)

    def renew(self, id: str) -> Shown | None:
        """Make it anew; None where it is no more."""
        self._made.pop(id, None)
        return self.get(id)

    def forget(self) -> None:
        """Make everything anew when it is next asked for."""
        self._made.clear()
