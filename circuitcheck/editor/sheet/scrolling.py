"""Moving the paper under the view: by hand, and gently to bring something into view."""

from __future__ import annotations

from PySide6.QtCore import QEasingCurve, QPoint, QPointF, QRectF, QSizeF, Qt, QVariantAnimation
from PySide6.QtWidgets import QGraphicsView, QScrollBar, QStyle

BRING_MS = 220
MARGIN_PX = 48.0


class Scroller:
    """Scrolls a view whose paper ends one screen beyond all that is drawn."""

    def __init__(self, view: QGraphicsView) -> None:
        self._view = view
        self._from = QPointF()
        self._to = QPointF()
        self._box = QRectF()
        self._is_showing = False
        self._animation = QVariantAnimation(view, startValue=0.0, endValue=1.0)
        self._animation.setEasingCurve(QEasingCurve.Type.OutCubic)
        self._animation.valueChanged.connect(self._go)
        for bar in self._bars:
            bar.valueChanged.connect(self._scrolled)

    @property
    def _bars(self) -> tuple[QScrollBar, QScrollBar]:
        # Asked for each time: a name kept for one is of no more use once anybody has held what Qt puts about it,
        # though the bar itself is still there.
        return self._view.horizontalScrollBar(), self._view.verticalScrollBar()

    def show_bars(self) -> None:
        """Show a scroll bar only where something drawn lies out of view."""
        # A bar that comes or goes resizes the view, and who keeps something in view then asks for this again: without
        # end, in a view in which the one makes the other come and go.
        if self._is_showing:
            return
        self._is_showing = True
        try:
            self._set_policies()
        finally:
            self._is_showing = False

    def _set_policies(self) -> None:
        seen = self.seen()
        for hidden, set_policy in (
            (
                self._box.left() < seen.left() or self._box.right() > seen.right(),
                self._view.setHorizontalScrollBarPolicy,
            ),
            (
                self._box.top() < seen.top() or self._box.bottom() > seen.bottom(),
                self._view.setVerticalScrollBarPolicy,
            ),
        ):
            set_policy(
                Qt.ScrollBarPolicy.ScrollBarAlwaysOn
                if hidden and not self._box.isNull()
                else Qt.ScrollBarPolicy.ScrollBarAlwaysOff
            )

    def by(self, off: QPoint) -> None:
        """Scroll by px of the screen."""
        self.stop()
        across, down = self._bars
        across.setValue(across.value() + off.x())
        down.setValue(down.value() + off.y())

    def widen(self, drawn: QRectF | None = None) -> None:
        """Let the paper reach one screen beyond what is drawn, and never end within the view."""
        if drawn is not None:
            self._box = drawn
        seen = self.seen()
        about = self._box.united(seen) if not self._box.isNull() else seen.united(QRectF(-1, -1, 2, 2))
        self._view.setSceneRect(about.adjusted(-seen.width(), -seen.height(), seen.width(), seen.height()))
        self.show_bars()

    def seen(self) -> QRectF:
        """What of the sheet is in view, in px of the sheet."""
        place, _ = self._view.viewportTransform().inverted()
        # As if there were no bars, so that a bar that comes never makes another come or go.
        return place.mapRect(QRectF(QPointF(0, 0), QSizeF(self._view.contentsRect().size())))

    def _scrolled(self) -> None:
        # Not while a bar is dragged: its range would change under the hand.
        if not any(bar.isSliderDown() for bar in self._bars):
            self.widen()

    def bring(self, box: QRectF) -> None:
        """Scroll just so far that the box is in view, never more than one screen's way is shown."""
        seen = self.seen()
        margin = MARGIN_PX / max(self._view.transform().m11(), 0.01)
        wanted = box.adjusted(-margin, -margin, margin, margin)
        if seen.contains(wanted):
            return
        x = _shift(seen.left(), seen.right(), wanted.left(), wanted.right())
        y = _shift(seen.top(), seen.bottom(), wanted.top(), wanted.bottom())
        self._to = seen.center() + QPointF(x, y)
        far = QPointF(max(-seen.width(), min(seen.width(), x)), max(-seen.height(), min(seen.height(), y)))
        self._from = self._to - far
        self._animation.stop()
        duration = self._view.style().styleHint(
            QStyle.StyleHint.SH_Widget_Animation_Duration, None, self._view
        )
        if duration <= 0 or not self._view.isVisible():
            self._go(1.0)
            return
        self._animation.setDuration(BRING_MS)
        self._animation.start()

    def look_at(self, middle: QPointF) -> None:
        """Scroll so that a place comes to the middle, whether or not there are bars."""
        self._view.centerOn(middle)
        # A bar that went with this left the view larger: what is off by that is made good.
        off = (middle - self.seen().center()) * self._view.transform().m11()
        across, down = self._bars
        across.setValue(across.value() + round(off.x()))
        down.setValue(down.value() + round(off.y()))

    def stop(self) -> None:
        """Somebody else moves the paper now: bring nothing any further."""
        self._animation.stop()

    def finish(self) -> None:
        """Be there at once."""
        if self._animation.state() == QVariantAnimation.State.Running:
            self._animation.stop()
            self._go(1.0)

    def _go(self, share: float) -> None:
        self.look_at(self._from + (self._to - self._from) * share)


def _shift(low: float, high: float, least: float, most: float) -> float:
    """How far a window must go to hold a stretch, or the start of one that is longer."""
    if most - least > high - low:
        return (least + most) / 2 - (low + high) / 2
    if least < low:
        return least - low
    return max(0.0, most - high)
