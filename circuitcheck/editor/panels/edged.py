"""Check boxes, radio buttons, choice boxes and fields for a day: edges and arrows as plain in every theme as texts."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRect, QRectF, QSize, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import (
    QAbstractButton,
    QCheckBox,
    QComboBox,
    QDateEdit,
    QRadioButton,
    QStyle,
    QStyleOptionButton,
    QStyleOptionComboBox,
    QStylePainter,
    QWidget,
)

BY_CONTENTS = (
    QComboBox.SizeAdjustPolicy.AdjustToContents,
    QComboBox.SizeAdjustPolicy.AdjustToContentsOnFirstShow,
)
ARROW_RIGHT_PX, TEXT_INSET_PX = 15.0, 2


class EdgedCheckBox(QCheckBox):
    """The platform's check box; the edge of its square has the contrast that the edge of a field has."""

    def paintEvent(self, event: QPaintEvent) -> None:
        """The platform's box, and an edge around its square."""
        super().paintEvent(event)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        square = self.style().subElementRect(QStyle.SubElement.SE_CheckBoxIndicator, option, self)
        painter = QPainter(self)
        painter.setPen(QPen(self.palette().color(QPalette.ColorRole.Dark), 1))
        painter.drawRect(QRectF(square).adjusted(0.5, 0.5, -0.5, -0.5))
        _ring(self, painter)
        painter.end()


class EdgedRadioButton(QRadioButton):
    """The platform's radio button, its ring as plain as the edge of a field, its dot in the select colour."""

    def paintEvent(self, event: QPaintEvent) -> None:
        """The platform's button, and a ring and a dot over its own."""
        super().paintEvent(event)
        option = QStyleOptionButton()
        self.initStyleOption(option)
        square = QRectF(self.style().subElementRect(QStyle.SubElement.SE_RadioButtonIndicator, option, self))
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        colours = self.palette()
        chosen = self.isChecked()
        role = QPalette.ColorRole.Highlight if chosen else QPalette.ColorRole.Dark
        painter.setPen(QPen(colours.color(role), 1.5))
        painter.setBrush(colours.color(QPalette.ColorRole.Base))
        painter.drawEllipse(square.adjusted(1, 1, -1, -1))
        if chosen:
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(colours.color(QPalette.ColorRole.Highlight))
            inset = square.width() * 0.28
            painter.drawEllipse(square.adjusted(inset, inset, -inset, -inset))
        _ring(self, painter)
        painter.end()


class ArrowedComboBox(QComboBox):
    """The platform's choice box, whose arrow the style sheet that sets its edge would take away."""

    def sizeHint(self) -> QSize:
        """As wide as the longest choice, with what the style sheet puts beside it, which the style forgets."""
        hint = super().sizeHint()
        if self.sizeAdjustPolicy() not in BY_CONTENTS:
            return hint
        texts = (self.itemText(place) for place in range(self.count()))
        return hint + QSize(max((self.wanting_px(text, hint) for text in texts), default=0), 0)

    def wanting_px(self, text: str, size: QSize) -> int:
        """How much wider than that the box must be for a text; 0 where it has room."""
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        option.rect = QRect(QPoint(0, 0), size)
        return max(0, self.fontMetrics().horizontalAdvance(text) - self._room(option))

    def _room(self, option: QStyleOptionComboBox) -> int:
        """How wide the words may be."""
        field = self.style().subControlRect(
            QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, self
        )
        return field.width() - 2 * TEXT_INSET_PX

    def paintEvent(self, event: QPaintEvent) -> None:
        """The platform's box, its words ending in … where they are too long, and an arrow in their ink."""
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        words = self.fontMetrics().elidedText(
            option.currentText, Qt.TextElideMode.ElideRight, self._room(option)
        )
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        option.currentText = words
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        _arrow(self, painter)
        painter.end()


class ArrowedDateEdit(QDateEdit):
    """The platform's field for a day, with the arrow of a choice box: it opens a calendar."""

    def paintEvent(self, event: QPaintEvent) -> None:
        """The platform's field, and an arrow in its ink."""
        super().paintEvent(event)
        painter = QPainter(self)
        _arrow(self, painter)
        painter.end()


def _arrow(field: QWidget, painter: QPainter) -> None:
    """Down, at the right end of a field."""
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    pen = QPen(field.palette().color(QPalette.ColorRole.Text), 1.5)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    painter.setPen(pen)
    x, y = field.width() - ARROW_RIGHT_PX, field.height() / 2 + 2
    painter.drawPolyline([QPointF(x - 4, y - 4), QPointF(x, y), QPointF(x + 4, y - 4)])


def _ring(button: QAbstractButton, painter: QPainter) -> None:
    """Around what has the keyboard, as around a field."""
    if button.hasFocus():
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(button.palette().color(QPalette.ColorRole.Highlight), 2))
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(QRectF(button.rect()).adjusted(1, 1, -1, -1), 5, 5)
