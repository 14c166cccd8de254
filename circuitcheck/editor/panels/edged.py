"""A check box, a radio button and a choice box whose edges and arrow are as plain in every theme as their texts."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QPainter, QPaintEvent, QPalette, QPen
from PySide6.QtWidgets import QCheckBox, QComboBox, QRadioButton, QStyle, QStyleOptionButton

ARROW_RIGHT_PX = 15.0


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
        painter.end()


class ArrowedComboBox(QComboBox):
    """The platform's choice box, whose arrow the style sheet that sets its edge would take away."""

    def paintEvent(self, event: QPaintEvent) -> None:
        """The platform's box, and an arrow in the ink of its text."""
        super().paintEvent(event)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        pen = QPen(self.palette().color(QPalette.ColorRole.Text), 1.5)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        x, y = self.width() - ARROW_RIGHT_PX, self.height() / 2 + 2
        painter.drawPolyline([QPointF(x - 4, y - 4), QPointF(x, y), QPointF(x + 4, y - 4)])
        painter.end()
