"""What an empty sheet says: how to begin, in four buttons, and the care words."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QPushButton, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.sheet.painting import font
from circuitcheck.editor.translating import tr
from circuitcheck.report.care import CARE

WIDE_PX = 640


class Invitation(QWidget):
    """Stands in the middle of the sheet as long as nothing is drawn."""

    place_heat_source = Signal()
    open_drawing = Signal()
    arrangement_wanted = Signal()
    tour_wanted = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.setObjectName("invitation")
        column = QVBoxLayout(self)
        column.setSpacing(8)
        title = plain.label(tr("Place the heat source first"), "name", wrap=True)
        title.setFont(font(22, 600))
        first = plain.label(
            tr("Press Enter, type the name of any part, or drag it from the parts"), wrap=True
        )
        first.setFont(font(14, 400))
        self._buttons = QGridLayout()
        self._buttons.setSpacing(8)
        self._row: list[QPushButton] = []
        for text, signal in (
            (tr("Place heat source"), self.place_heat_source),
            (tr("Start from an arrangement"), self.arrangement_wanted),
            (tr("Open a drawing"), self.open_drawing),
            (tr("Take the tour"), self.tour_wanted),
        ):
            button = QPushButton(text)
            button.setMinimumHeight(32)
            button.clicked.connect(signal)
            self._row.append(button)
        care = plain.label(tr(CARE), "second", wrap=True)
        care.setFont(font(13, 400))
        care.setAlignment(Qt.AlignmentFlag.AlignHCenter)
        for label in (title, first):
            label.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            column.addWidget(label)
        column.addSpacing(8)
        nest(column, self._buttons)
        column.addSpacing(16)
        column.addWidget(care)

    def centre(self) -> None:
        """Stand in the middle of what it lies on."""
        parent = self.parentWidget()
        if parent is None:
            return
        wide = min(WIDE_PX, max(200, parent.width() - 32))
        self.setFixedWidth(wide)
        widest = max(button.sizeHint().width() for button in self._row) + self._buttons.spacing()
        room = wide - self.contentsMargins().left() - self.contentsMargins().right()
        # Four, two or one: three would leave one alone.
        in_row = next((count for count in (4, 2) if count * widest <= room), 1)
        for at, button in enumerate(self._row):
            self._buttons.addWidget(button, at // in_row, at % in_row)
        self.adjustSize()
        self.move((parent.width() - wide) // 2, max(8, (parent.height() - self.height()) // 2))
