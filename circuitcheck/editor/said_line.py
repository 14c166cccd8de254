"""A line of choices and a sentence: beside them where it fits, else on lines of its own below, never cut."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QRect, QSize, Qt
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QFrame, QSizePolicy, QWidget

from circuitcheck.editor import plain

GAP_PX, BELOW_PX = 8, 4
LINE_PX = 44
"""How high a line of choices is."""


class SaidLine(QFrame):
    """Lays out `before`, the sentence and `after` from left to right; those that are hidden take no room.

    Choices that have no room beside one another go on another line, and so does the sentence.
    """

    def __init__(
        self,
        before: Sequence[QWidget],
        after: Sequence[QWidget] = (),
        *,
        margins: tuple[int, int] = (12, 8),
        high: int = LINE_PX,
    ) -> None:
        super().__init__()
        self._before, self._after = tuple(before), tuple(after)
        self._margins, self._high = margins, high
        for widget in (*before, *after):
            widget.setParent(self)
        self.sentence = plain.label("", "second", wrap=True)
        self.sentence.setParent(self)
        self.sentence.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)
        self.sentence.hide()
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self.setFixedHeight(high)

    @property
    def said(self) -> str:
        """The sentence."""
        return self.sentence.text()

    def show_sentence(self, text: str) -> None:
        """Show another sentence; empty: none."""
        self.sentence.setText(text)
        self.sentence.setAccessibleName(text)
        self.sentence.setVisible(bool(text))
        self._arrange()

    def minimumSizeHint(self) -> QSize:
        """As narrow as the widest of the choices."""
        shown = [each for each in (*self._before, *self._after) if not each.isHidden()]
        return QSize(sum(self._margins) + max((_wide(each) for each in shown), default=0), self.height())

    def sizeHint(self) -> QSize:
        """As high as it stands."""
        return self.minimumSizeHint()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Another width is another arrangement."""
        super().resizeEvent(event)
        self._arrange()

    def event(self, event: QEvent) -> bool:
        """What is shown, hidden or otherwise filled is another arrangement too."""
        if event.type() is QEvent.Type.LayoutRequest:
            self._arrange()
        return super().event(event)

    def _arrange(self) -> None:
        left, right_edge = self._margins[0], self.width() - self._margins[1]
        ends = right_edge
        for each in reversed([each for each in self._after if not each.isHidden()]):
            ends -= _wide(each)
            self._put(each, ends, 0)
            ends -= GAP_PX
        x, top = left, 0
        for each in (each for each in self._before if not each.isHidden()):
            if x > left and x + _wide(each) > ends:
                x, top, ends = left, top + self._high - BELOW_PX, right_edge
            self._put(each, x, top)
            x += _wide(each) + GAP_PX
        high = top + self._high
        text = self.sentence.text()
        if text:
            x += BELOW_PX
            if self.sentence.fontMetrics().horizontalAdvance(text) + 2 <= ends - x:
                self.sentence.setGeometry(QRect(x, top, ends - x, self._high))
            else:
                wide = max(1, right_edge - left)
                need = self.sentence.heightForWidth(wide)
                self.sentence.setGeometry(left, high - BELOW_PX, wide, need)
                high += need + BELOW_PX
        if high != self.height():
            self.setFixedHeight(high)

    def _put(self, widget: QWidget, x: int, top: int) -> None:
        high = max(widget.sizeHint().height(), widget.minimumHeight())
        widget.setGeometry(x, top + (self._high - high) // 2, _wide(widget), high)


def _wide(widget: QWidget) -> int:
    liked = max(widget.sizeHint().width(), widget.minimumWidth())
    return min(liked, widget.maximumWidth())
