"""A view on paper that zooms in fixed steps and scrolls, whatever is drawn on it."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QRectF, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QHideEvent,
    QNativeGestureEvent,
    QPainter,
    QResizeEvent,
    QTransform,
    QWheelEvent,
)
from PySide6.QtWidgets import QFrame, QGraphicsView, QWidget

from circuitcheck.editor.sheet import zooming
from circuitcheck.editor.sheet.paper import Paper
from circuitcheck.editor.sheet.scrolling import Scroller
from circuitcheck.editor.theme import light

BY_KEYS = (
    Qt.FocusReason.TabFocusReason,
    Qt.FocusReason.BacktabFocusReason,
    Qt.FocusReason.ShortcutFocusReason,
)
PINCH = 0.2
"""How much a pinch grows before it is one step of zoom."""


class Canvas(QGraphicsView):
    """Paper, zoom and scrolling; `zoomed` is called with the new zoom before it is shown."""

    zoom_changed = Signal(float)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._zoom = 1.0
        self._theme = light()
        self._paper = Paper()
        self._wheel = zooming.Notches(zooming.NOTCH)
        self._pinch = zooming.Notches(PINCH)
        self._scroller = Scroller(self)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setRenderHints(QPainter.RenderHint.Antialiasing | QPainter.RenderHint.TextAntialiasing)
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.MinimalViewportUpdate)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setResizeAnchor(QGraphicsView.ViewportAnchor.NoAnchor)

    @property
    def zoom(self) -> float:
        """How large it is shown; 1.0 is 16 px to a square."""
        return self._zoom

    def zoom_in(self) -> None:
        """One step larger, about the middle of the view."""
        self.zoom_to(zooming.step_up(self.zoom))

    def zoom_out(self) -> None:
        """One step smaller, about the middle of the view."""
        self.zoom_to(zooming.step_down(self.zoom))

    def zoom_reset(self) -> None:
        """To 100 %, about the middle of the view."""
        self.zoom_to(1.0)

    def zoom_to(self, zoom: float, about: QPointF | None = None) -> None:
        """Zoom so that what lies at a place of the view stays there; None: at its middle."""
        self._scroller.stop()
        if zoom == self.zoom:
            return
        fixed = QRectF(self.viewport().rect()).center() if about is None else about
        place = self.viewportTransform().inverted()[0].map(fixed)
        self._zoom = zoom
        self.zoomed(zoom)
        self.setTransform(QTransform.fromScale(zoom, zoom))
        self._scroller.widen()
        self._scroller.by((self.viewportTransform().map(place) - fixed).toPoint())
        self.zoom_changed.emit(zoom)

    def zoomed(self, zoom: float) -> None:
        """What else a change of zoom asks for."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """With Ctrl zoom about the pointer, with Shift scroll sideways, else scroll."""
        turned = event.pixelDelta() if not event.pixelDelta().isNull() else event.angleDelta() / 2
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self._zoom_steps(self._wheel.add(event.angleDelta().y()), event.position())
        elif event.modifiers() & Qt.KeyboardModifier.ShiftModifier:
            self._scroller.by(QPoint(-turned.x() - turned.y(), 0))
        else:
            self._scroller.by(-turned)
        event.accept()

    def viewportEvent(self, event: QEvent) -> bool:
        """Pinching zooms about the fingers."""
        if (
            isinstance(event, QNativeGestureEvent)
            and event.gestureType() == Qt.NativeGestureType.ZoomNativeGesture
        ):
            self._zoom_steps(self._pinch.add(event.value()), event.position())
            return True
        return super().viewportEvent(event)

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show that the keys go here, where keys brought them here: who presses the paper knows."""
        super().focusInEvent(event)
        self._show_keys(event.reason() in BY_KEYS)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """The keys go elsewhere."""
        super().focusOutEvent(event)
        if event.reason() is not Qt.FocusReason.PopupFocusReason:
            self._show_keys(False)

    def _show_keys(self, shown: bool) -> None:
        if bool(self.property("keys")) is not shown:
            self.setProperty("keys", shown)
            self.style().unpolish(self)
            self.style().polish(self)
            self.update()

    def drawBackground(self, painter: QPainter, rect: QRectF | QRect) -> None:
        """Paint the paper."""
        self._paper.paint(painter, QRectF(rect), self._theme)

    def hideEvent(self, event: QHideEvent) -> None:
        """What is on its way into view is there at once: a window that closes has no scroll bars for it any more."""
        self._scroller.finish()
        super().hideEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the paper wide enough."""
        super().resizeEvent(event)
        self._scroller.widen()

    def _zoom_steps(self, steps: int, about: QPointF) -> None:
        zoom = self.zoom
        for _ in range(abs(steps)):
            zoom = zooming.step_up(zoom) if steps > 0 else zooming.step_down(zoom)
        self.zoom_to(zoom, about)
