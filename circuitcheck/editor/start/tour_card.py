"""The card of a tour, and the frame round what it speaks of."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QRect, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QPushButton, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.translating import tr

WIDE_PX, SIDE_PX, EDGE_PX, FRAME_PX, CORNER_PX = 400, 18, 16, 3, 8


class TourCard(QFrame):
    """Lies over a corner of the window; `next_wanted` and `left`."""

    next_wanted = Signal()
    left = Signal()

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.setObjectName("find")
        self.setFixedWidth(WIDE_PX)
        column = QVBoxLayout(self)
        column.setContentsMargins(SIDE_PX, 14, SIDE_PX, 14)
        column.setSpacing(6)
        self._step = plain.label("", "second")
        self.title = plain.label("", "name", wrap=True)
        self.words = plain.label("", "body", wrap=True)
        self.next_button = QPushButton()
        self.next_button.setDefault(True)
        self.next_button.clicked.connect(self.next_wanted)
        self.leave_button = QPushButton(tr("Leave the tour"))
        self.leave_button.clicked.connect(self.left)
        row = QHBoxLayout()
        row.addWidget(self.leave_button)
        row.addStretch(1)
        row.addWidget(self.next_button)
        for label in (self._step, self.title, self.words):
            column.addWidget(label)
        column.addSpacing(6)
        nest(column, row)
        self.hide()

    def show_step(self, at: int, of: int, title: str, words: str, button: str) -> None:
        """Show a step, and take the keyboard."""
        self._step.setText(tr("Step {at} of {of}", at=at, of=of))
        self.title.setText(title)
        self.words.setText(words)
        self.setAccessibleName(f"{title}. {words}")
        self.next_button.setText(plain.action_text(button))
        self.show()
        self.raise_()
        self.next_button.setFocus(Qt.FocusReason.OtherFocusReason)

    def stand_in(self, room: QRect) -> None:
        """Stand in the lower left corner of a part of the window."""
        # Without its edge: the words wrap at what is left, and ask for their height by it.
        inner = self.contentsRect().width() - 2 * SIDE_PX
        for label in (self.title, self.words):
            label.setFixedHeight(label.heightForWidth(inner))
        self.adjustSize()
        height = self.height()
        self.move(room.left() + EDGE_PX, max(room.top() + EDGE_PX, room.bottom() - height - EDGE_PX))

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Escape leaves the tour."""
        if event.key() == Qt.Key.Key_Escape:
            self.left.emit()
        else:
            super().keyPressEvent(event)


class Frame(QWidget):
    """A frame round a widget of the window, which lets the pointer through."""

    def __init__(self, window: QWidget) -> None:
        super().__init__(window)
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self._colour = QColor()
        self._target: QWidget | None = None
        self.hide()

    def surround(self, target: QWidget | None, colour: QColor) -> None:
        """Stand round that widget; round none where it is None."""
        if self._target is not None:
            self._target.removeEventFilter(self)
        self._target, self._colour = target, colour
        self.setVisible(target is not None)
        if target is not None:
            target.installEventFilter(self)
            self._fit()
            self.raise_()

    def _fit(self) -> None:
        target, window = self._target, self.parentWidget()
        if target is not None and window is not None:
            self.setGeometry(QRect(target.mapTo(window, target.rect().topLeft()), target.size()))
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The frame alone."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(self._colour, FRAME_PX))
        half = FRAME_PX // 2 + 1
        painter.drawRoundedRect(self.rect().adjusted(half, half, -half, -half), CORNER_PX, CORNER_PX)
        painter.end()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Stay round it however it moves."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move):
            self._fit()
        return super().eventFilter(watched, event)
