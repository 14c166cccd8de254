"""A sheet on which nothing can be changed: looked at, pulled about, and walked from thing to thing."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from PySide6.QtCore import QEvent, QPoint, QPointF, QRectF, Qt, QTimer
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent
from PySide6.QtWidgets import QGraphicsScene, QWidget

from circuitcheck.editor.sheet import hits, zooming
from circuitcheck.editor.sheet.canvas import Canvas
from circuitcheck.editor.sheet.content import Content
from circuitcheck.editor.sheet.hits import OnPart, OnPipe
from circuitcheck.editor.sheet.keyboard import ARROWS
from circuitcheck.editor.sheet.overlay import Overlay
from circuitcheck.editor.sheet.services import service_names
from circuitcheck.editor.theme import light

SETTLE_MS = 100
DRAG_PX = 5


class Layer(Protocol):
    """Something that is drawn over the content, in whichever scene is looked at."""

    def adopt(self, scene: QGraphicsScene) -> None:
        """Move to a scene."""


class ReadOnlySheet(Canvas):
    """What a press, the keys and a change of zoom mean beyond looking is for whoever derives from it to say."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._content = Content(service_names, light())
        self._overlay = Overlay(self._content)
        self._pressed_at: QPoint | None = None
        self._last = QPoint()
        self._dragged = False
        self._settling = QTimer(self, interval=SETTLE_MS, singleShot=True)
        self._settling.timeout.connect(self._settle)
        self.setScene(self._content.scene)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.viewport().setMouseTracking(True)

    @property
    def content(self) -> Content:
        """What lies on the sheet."""
        return self._content

    # What a derived sheet says.

    @property
    def here(self) -> str | None:
        """Where the keyboard is; None for nowhere."""
        return None

    def _layers(self) -> tuple[Layer, ...]:
        """What is drawn over the content beside the overlay."""
        return ()

    def _order(self) -> Sequence[str]:
        """What Tab walks through."""
        return ()

    def _stand(self, id: str) -> None:
        """Let the keyboard be at a thing."""

    def _walked_off(self) -> None:
        """Tab left the sheet."""

    def _go(self, dx: int, dy: int) -> None:
        """Let the keyboard go to the next thing that way."""

    def _hovers(self, hit: OnPart | OnPipe | None) -> None:
        """Show what is under the pointer."""
        self._overlay.show_hover(None if hit is None else hit.id)

    def _clicked(self, hit: OnPart | OnPipe | None) -> None:
        """Something, or the paper, was pressed without being pulled."""

    def _looked_away(self) -> None:
        """Another part of the drawing is looked at than the whole."""

    def _key(self, event: QKeyEvent) -> bool:
        """Do what a key means here; whether it means anything."""
        return False

    def _fitted_box(self) -> QRectF:
        """The box that is wholly in view when the drawing is fitted."""
        return self._content.bounds()

    def _show_anew(self) -> None:
        """Paint what has changed."""
        self.viewport().update()

    # Looking.

    def fit(self) -> None:
        """Show the whole drawing."""
        box = self._fitted_box()
        if box.isNull():
            return
        self.zoom_to(zooming.fitting(box, self.contentsRect().size()))
        self._scroller.widen(box)
        self._scroller.look_at(box.center())

    def bring(self, id: str) -> None:
        """Scroll until a thing is in view."""
        box = self._content.box(id)
        if not box.isNull():
            self._scroller.bring(box)

    def zoomed(self, zoom: float) -> None:
        """From far off show the overview; paint crisp some time after the last step."""
        self._looked_away()
        self._content.lens.settled = False
        self._settling.start()
        scene = self._content.seen_from(zoom)
        if self.scene() is not scene:
            for layer in (self._overlay, *self._layers()):
                layer.adopt(scene)
            self.setScene(scene)

    def _settle(self) -> None:
        self._content.lens.settled = True
        self._show_anew()

    # The pointer.

    def _hit(self, at: QPointF) -> OnPart | OnPipe | None:
        place = self.viewportTransform().inverted()[0].map(at)
        part = hits.part_at(self._content, place)
        return part or hits.pipe_at(self._content, self._content.layout.routes, place, self.zoom)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of what is there, or of the paper."""
        if event.button() in (Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton):
            self._pressed_at = self._last = event.position().toPoint()
            self._dragged = event.button() == Qt.MouseButton.MiddleButton
        event.accept()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Pull the paper, else show what is under the pointer."""
        at = event.position().toPoint()
        if self._pressed_at is None:
            self._hovers(self._hit(event.position()))
        elif self._dragged or (at - self._pressed_at).manhattanLength() > DRAG_PX:
            self._dragged = True
            self._looked_away()
            self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)
            self._scroller.by(self._last - at)
            self._last = at
        event.accept()

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """A press that pulled nothing is a click."""
        begun, dragged = self._pressed_at, self._dragged
        self._pressed_at, self._dragged = None, False
        self.viewport().setCursor(Qt.CursorShape.ArrowCursor)
        event.accept()
        if begun is not None and not dragged:
            self._clicked(self._hit(event.position()))

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        """A second press is a press."""
        self.mousePressEvent(event)

    def leaveEvent(self, event: QEvent) -> None:
        """Nothing is under the pointer any more."""
        self._overlay.show_hover(None)
        super().leaveEvent(event)

    # The keyboard.

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows go to the next thing that way; + and - zoom, 0 shows the whole."""
        if self._key(event):
            return
        if event.key() in ARROWS:
            self._go(*ARROWS[Qt.Key(event.key())])
        elif event.text() == "+":
            self.zoom_in()
        elif event.text() == "-":
            self.zoom_out()
        elif event.text() == "0":
            self.fit()
        else:
            super().keyPressEvent(event)

    def focusNextPrevChild(self, next: bool) -> bool:
        """Tab walks from thing to thing; past the last it leaves the sheet."""
        order = self._order() if self.hasFocus() else ()
        if not order:
            return super().focusNextPrevChild(next)
        if self.here in order:
            place = order.index(self.here) + (1 if next else -1)
        else:
            place = 0 if next else len(order) - 1
        if not 0 <= place < len(order):
            self._walked_off()
            return super().focusNextPrevChild(next)
        self._stand(order[place])
        return True

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Without the keyboard there is no ring."""
        self._overlay.show_focus(None)
        super().focusOutEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """The ring comes back where it was."""
        self._overlay.show_focus(self.here)
        super().focusInEvent(event)
