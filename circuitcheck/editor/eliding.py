"""Labels and buttons that grow narrower than their words: these end in … then, and the tooltip has them whole."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtGui import QHelpEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QLabel,
    QSizePolicy,
    QStyle,
    QStyleOptionToolButton,
    QStylePainter,
    QToolButton,
    QToolTip,
    QWidget,
)

from circuitcheck.editor.tips import tip_text

LEAST_LETTERS = 4
"""How many letters stay at the least, before the …."""


def least_width(widget: QWidget, text: str) -> int:
    """How wide the shortest form of a text is."""
    metrics = widget.fontMetrics()
    whole = metrics.horizontalAdvance(text)
    return min(whole, metrics.horizontalAdvance(f"{text[:LEAST_LETTERS]}…"))


class ElidedButton(QToolButton):
    """A button with words."""

    def __init__(self) -> None:
        super().__init__()
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)

    def sizeHint(self) -> QSize:
        """As wide as its words: without the spaces beside them that Qt adds, it stands in line with what is above."""
        return super().sizeHint() - QSize(2 * self.fontMetrics().horizontalAdvance(" "), 0)

    def minimumSizeHint(self) -> QSize:
        """As wide as a few letters."""
        whole = self.sizeHint()
        words = self.fontMetrics().horizontalAdvance(self._words())
        return QSize(whole.width() - words + least_width(self, self._words()), whole.height())

    def event(self, event: QEvent) -> bool:
        """Words that are cut are told whole, where there is no other tooltip."""
        return _told_whole(event, self, self._words() if self.is_cut else "") or super().event(event)

    @property
    def is_cut(self) -> bool:
        """Whether not all of its words are seen."""
        return self.width() < self.sizeHint().width()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint as any other, with as much of the words as there is room for."""
        option = QStyleOptionToolButton()
        self.initStyleOption(option)
        if self.is_cut:
            around = self.sizeHint().width() - self.fontMetrics().horizontalAdvance(self._words())
            room = max(0, self.width() - around)
            option.text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room)
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ToolButton, option)
        painter.end()

    def _words(self) -> str:
        return self.text().replace("&&", "\0").replace("&", "").replace("\0", "&")


class ElidedLabel(QLabel):
    """A label of one line."""

    def minimumSizeHint(self) -> QSize:
        """As wide as a few letters."""
        whole = super().minimumSizeHint()
        words = self.fontMetrics().horizontalAdvance(self.text())
        return QSize(whole.width() - words + least_width(self, self.text()), whole.height())

    def event(self, event: QEvent) -> bool:
        """Words that are cut are told whole, where there is no other tooltip."""
        return _told_whole(event, self, self.text() if self.is_cut else "") or super().event(event)

    @property
    def is_cut(self) -> bool:
        """Whether not all of its words are seen."""
        return self.fontMetrics().horizontalAdvance(self.text()) > self.contentsRect().width()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint as any other, with as much of the words as there is room for."""
        if not self.is_cut:
            super().paintEvent(event)
            return
        room = self.contentsRect()
        text = self.fontMetrics().elidedText(self.text(), Qt.TextElideMode.ElideRight, room.width())
        painter = QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        painter.drawText(room, int(self.alignment()) | int(Qt.TextFlag.TextSingleLine), text)
        painter.end()


def _told_whole(event: QEvent, widget: QWidget, cut: str) -> bool:
    """Whether the event asks for a tooltip and the widget has none of its own: then `cut` is told, if anything is."""
    if not isinstance(event, QHelpEvent) or event.type() is not QEvent.Type.ToolTip or widget.toolTip():
        return False
    if cut:
        QToolTip.showText(event.globalPos(), tip_text(cut), widget)
    return True
