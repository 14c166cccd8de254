"""The page on which an exercise is answered: what is at hand, what is wrong with it, and what was marked so far."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.learning.practice_reasons import Reasons
from circuitcheck.editor.learning.practice_words import (
    asked_words,
    facts,
    place_words,
    reason_words,
    remark_words,
)
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.translating import tr
from circuitcheck.lessons.scoring import WHOLE, Mark

MARKS_PX, FACTS_PX = 130, 200


class AnswerPage(QWidget):
    """Signals `marked` with a `Mark`, `taken_back` with one, `mark_chosen` with the place of one that is at
    hand, `whole_wanted`, `shown` when the answer is wanted and `left` to choose another exercise."""

    marked = Signal(object)
    taken_back = Signal(object)
    mark_chosen = Signal(str)
    shown = Signal()
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._drawing = Drawing()
        self._place: str | None = None
        self._marks: tuple[Mark, ...] = ()
        self.title = plain.label("", "name", wrap=True)
        self.seed = plain.label("", "second", wrap=True, selectable=True)
        self.at_hand = plain.label("", "finding", wrap=True)
        self.remark = plain.label("", "second", wrap=True)
        self.facts = QScrollArea()
        self.facts.setAccessibleName(tr("What is written of it"))
        self.reasons = Reasons()
        self.whole = QPushButton(tr("Something is &missing…"))
        plain.set_tip(self.whole, tr("Say that something is nowhere in the drawing"))
        self.marks = Rows(tr("Your marks"))
        self.take_back = QPushButton(tr("&Take back"))
        self.show_button = QPushButton(tr("&Show the answer"))
        self.leave = QPushButton(tr("&Give up"))
        self.said = plain.label("", "second", wrap=True)
        self._lay_out()
        self.reasons.taken.connect(self._taken)
        self.whole.clicked.connect(lambda: self.show_place(WHOLE, looks=True))
        self.take_back.clicked.connect(self._take_back)
        self.show_button.clicked.connect(self.shown)
        self.leave.clicked.connect(self.left)
        self.marks.currentItemChanged.connect(lambda: self._mark_changed())
        self.marks.installEventFilter(self)

    def _lay_out(self) -> None:
        self.facts.setWidgetResizable(True)
        self.facts.setFrameShape(QFrame.Shape.NoFrame)
        self.facts.setMaximumHeight(FACTS_PX)
        self.facts.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(6)
        column.addWidget(self.title)
        column.addWidget(self.seed)
        column.addSpacing(4)
        column.addWidget(self.at_hand)
        column.addWidget(self.remark)
        column.addWidget(self.facts)
        column.addWidget(self.whole, 0, Qt.AlignmentFlag.AlignLeft)
        head = plain.label(tr("What is &wrong here?"), "heading")
        head.setBuddy(self.reasons.edit)
        column.addWidget(head)
        column.addWidget(self.reasons, 1)
        column.addWidget(plain.label(tr("Your marks"), "heading"))
        column.addWidget(self.marks)
        column.addWidget(self.said)
        end = QHBoxLayout()
        for button in (self.leave, self.take_back):
            end.addWidget(button)
        end.addStretch(1)
        end.addWidget(self.show_button)
        nest(column, end)

    # What others may ask.

    def begin(self, drawing: Drawing, count: int, seed: int) -> None:
        """Ask for so many faults in a drawing."""
        self._drawing = drawing
        self.title.setText(asked_words(count))
        self.seed.setText(tr("{title}. Seed {seed}.", title=drawing.title, seed=seed))
        self.reasons.edit.clear()
        self.show_marks(())
        self.show_place(None)

    def show_place(self, place: str | None, *, looks: bool = False) -> None:
        """Show what is at hand; `looks`: and let a reason be looked for."""
        self._place = place
        if place is None:
            self.at_hand.setText(tr("Choose what is wrong"))
            self.remark.setText(
                tr("Press a part, a pipe or a control in the drawing. Of the drawing as a whole is written:")
            )
        elif place == WHOLE:
            self.at_hand.setText(place_words(self._drawing, WHOLE))
            self.remark.setText(tr("Say below what the drawing lacks."))
        else:
            self.at_hand.setText(place_words(self._drawing, place))
            self.remark.setText(remark_words(self._drawing, place))
        self._show_facts([] if place == WHOLE else facts(self._drawing, place))
        self.reasons.setEnabled(place is not None)
        if looks and place is not None:
            self.reasons.begin()

    @property
    def place(self) -> str | None:
        """What is at hand; None: nothing."""
        return self._place

    def show_marks(self, marks: tuple[Mark, ...]) -> None:
        """List the marks, numbered as on the sheet."""
        self._marks = ()
        self.marks.clear()
        for number, mark in enumerate(marks, 1):
            said = tr(
                "{number}  {place}: {reason}",
                number=number,
                place=place_words(self._drawing, mark.place),
                reason=reason_words(mark.reason),
            )
            self.marks.add(said)
        self._marks = marks
        self.marks.setFixedHeight(min(MARKS_PX, self.marks.height_of_all + 4))
        self.take_back.setEnabled(bool(marks))
        self.said.setText("" if marks else tr("None yet. A false accusation costs half a point."))
        self.said.setVisible(not marks)
        self.marks.setVisible(bool(marks))

    # Within.

    def _show_facts(self, rows: list[tuple[str, str]]) -> None:
        body = QWidget()
        grid = QGridLayout(body)
        grid.setContentsMargins(0, 0, 8, 0)
        grid.setVerticalSpacing(2)
        grid.setColumnStretch(1, 1)
        for place, (name, value) in enumerate(rows):
            grid.addWidget(_top(plain.label(name, "second", wrap=True)), place, 0)
            grid.addWidget(_top(plain.label(value, wrap=True, selectable=True)), place, 1)
        self.facts.setWidget(body)
        self.facts.setVisible(bool(rows))
        self.facts.setFixedHeight(min(FACTS_PX, body.sizeHint().height() + 2))

    def _taken(self, reason: str) -> None:
        if self._place is not None:
            self.marked.emit(Mark(self._place, reason))
            self.reasons.edit.clear()

    def _mark_at_hand(self) -> Mark | None:
        """The mark the keys are on, else the last one."""
        return self._marks[self.marks.row] if self._marks else None

    def _take_back(self) -> None:
        mark = self._mark_at_hand()
        if mark is not None:
            self.taken_back.emit(mark)

    def _mark_changed(self) -> None:
        if 0 <= self.marks.row < len(self._marks):
            self.mark_chosen.emit(self._marks[self.marks.row].place)

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Delete takes the mark at hand back."""
        pressed = watched is self.marks and event.type() is QEvent.Type.KeyPress
        deletes = (Qt.Key.Key_Delete, Qt.Key.Key_Backspace)
        if pressed and isinstance(event, QKeyEvent) and event.key() in deletes:
            self._take_back()
            return True
        return super().eventFilter(watched, event)


def _top(label: QLabel) -> QLabel:
    label.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
    return label
