"""A section of the panels: a heading that folds and unfolds what is below it."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QSizePolicy, QToolButton, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.translating import tr

HEAD_PX = 40
NO_BOUND_PX = 16_777_215
"""Qt's own bound of a widget's size: none at all."""


class Section(QWidget):
    """A heading with a note beside it, and a body, empty until it is put in.

    `folded_changed` tells whether the body is hidden.
    """

    folded_changed = Signal(bool)

    def __init__(self, title: str, *, note_right: bool = False) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._body = QWidget()
        self._arrow = QToolButton()
        self._arrow.setFixedSize(32, 32)
        self._arrow.setAccessibleName(tr("{title}: fold or unfold", title=title))
        self._arrow.clicked.connect(self._toggle)
        self._title = plain.label(title, "heading")
        self._note = plain.label("", "second", elided=True)
        head = QWidget()
        head.setFixedHeight(HEAD_PX)
        line = QHBoxLayout(head)
        line.setContentsMargins(4, 0, 16, 0)
        line.setSpacing(2)
        line.addWidget(self._arrow)
        line.addWidget(self._title)
        line.addSpacing(6)
        line.addWidget(self._note, 1)
        if note_right:
            self._note.setAlignment(Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter)
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(0, 0, 0, 0)
        self._column.setSpacing(0)
        self._column.addWidget(head)
        self._column.addWidget(self._body, 1)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Expanding)
        self._show_arrow()

    def put_in(self, body: QWidget) -> None:
        """Put the body in; folded or not, the section stays as it is."""
        empty, folded = self._body, self.is_folded
        self._column.replaceWidget(empty, body)
        empty.deleteLater()
        self._body = body
        body.setVisible(not folded)

    @property
    def is_folded(self) -> bool:
        """Whether the body is hidden."""
        return self._body.isHidden()

    def set_folded(self, folded: bool) -> None:
        """Hide or show the body."""
        if folded == self.is_folded:
            return
        self._body.setVisible(not folded)
        self.setMaximumHeight(HEAD_PX if folded else NO_BOUND_PX)
        self._show_arrow()
        self.folded_changed.emit(folded)

    def set_note(self, text: str) -> None:
        """The words beside the heading."""
        self._note.setText(text)

    def _toggle(self) -> None:
        self.set_folded(not self.is_folded)

    def _show_arrow(self) -> None:
        folded = self.is_folded
        self._arrow.setArrowType(Qt.ArrowType.RightArrow if folded else Qt.ArrowType.DownArrow)
        self._arrow.setAccessibleDescription(tr("folded") if folded else tr("unfolded"))
