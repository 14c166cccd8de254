"""What the pages of the review panel are made of: a column that scrolls, cards, links and buttons."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLayout,
    QPlainTextEdit,
    QPushButton,
    QScrollArea,
    QToolButton,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.editor import plain
from circuitcheck.editor.nesting import emptied, nest

TEXT_PX = 74
Does = Callable[[], object]


class Page(QScrollArea):
    """A column of widgets that scrolls up and down only."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setAccessibleName(name)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        inside = QWidget()
        inside.setObjectName("panel")
        self.column = QVBoxLayout(inside)
        self.column.setContentsMargins(16, 12, 16, 16)
        self.column.setSpacing(8)
        self.setWidget(inside)


class Card(QFrame):
    """One thing of a list, on its own ground."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setAccessibleName(name)
        self.column = QVBoxLayout(self)
        self.column.setContentsMargins(12, 10, 12, 10)
        self.column.setSpacing(4)

    def say(self, text: str, role: str = "body") -> None:
        """Add a text; it can be selected and copied."""
        self.column.addWidget(plain.passage(text, role))

    def row(self, *widgets: QWidget) -> None:
        """Add widgets side by side, to the left."""
        nest(self.column, side_by_side(*widgets))


def side_by_side(*widgets: QWidget) -> QHBoxLayout:
    """Widgets in a row, to the left."""
    line = QHBoxLayout()
    line.setSpacing(8)
    for widget in widgets:
        line.addWidget(widget)
    line.addStretch(1)
    return line


def heading(text: str) -> QWidget:
    """The heading of a group."""
    return plain.label(text, "heading", wrap=True)


def button(text: str, does: Does, tip: str = "", spoken: str = "") -> QPushButton:
    """A button; `spoken` is what a screen reader says where the text alone says too little."""
    made = QPushButton(plain.action_text(text))
    made.setAccessibleName(spoken or text)
    if tip:
        plain.set_tip(made, tip)
    made.clicked.connect(lambda: does())
    made.setAutoDefault(False)
    return made


def link(text: str, does: Does, spoken: str = "") -> QToolButton:
    """A link that a screen reader calls by what it does where its text alone would not say it."""
    made = plain.link(text, lambda: does())
    made.setAccessibleName(spoken or text)
    return made


def text_box(hint: str) -> QPlainTextEdit:
    """A box for a few lines of plain text; the tab key leaves it."""
    made = QPlainTextEdit()
    made.setPlaceholderText(hint)
    made.setAccessibleName(hint)
    made.setTabChangesFocus(True)
    made.setFixedHeight(TEXT_PX)
    return made


def clear(layout: QLayout) -> None:
    """Take everything out of a layout, rows inside it too."""
    for widget in emptied(layout):
        # Hidden at once: deleted it is only once the event that led here has ended.
        widget.hide()
        widget.deleteLater()
