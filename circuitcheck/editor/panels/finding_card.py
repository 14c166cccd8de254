"""A finding opened in place: its proof, why it matters, what puts it right, and from which source."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtGui import QMouseEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QToolButton, QVBoxLayout, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.icons import GRADE_PX, WITNESS_PX, grade_icon, witness_icon
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.theme import Theme
from circuitcheck.editor.translating import tr
from circuitcheck.finding import Finding
from circuitcheck.report.finding_text import alone, grade_words, lesson, message, title, witness
from circuitcheck.report.wording import missing_words
from circuitcheck.review.acceptances import acceptance_of
from circuitcheck.told import a_word

if TYPE_CHECKING:
    from circuitcheck.cures import Cure


class FindingCard(QFrame):
    """Signals `left` when it is closed, `part_wanted` for a part, `field_wanted` for a missing number,
    `cure_wanted` for an edit that puts it right, `accept_wanted` to accept it, `take_back_wanted` with the
    acceptance that holds, `operate_wanted` to see it at work and `lesson_wanted` with its check."""

    left = Signal()
    part_wanted = Signal(str)
    field_wanted = Signal(str, str)
    cure_wanted = Signal(object)
    accept_wanted = Signal()
    take_back_wanted = Signal(object)
    operate_wanted = Signal()
    lesson_wanted = Signal(str)

    def __init__(self, drawing: Drawing, finding: Finding, theme: Theme) -> None:
        super().__init__()
        self.setObjectName("card")
        self.setProperty("grade", str(finding.grade))
        self.setAccessibleName(f"{tr(title(finding))}, {tr(grade_words(finding))}")
        self._drawing, self._theme = drawing, theme
        self._column = QVBoxLayout(self)
        self._column.setContentsMargins(12, 12, 16, 14)
        self._column.setSpacing(4)
        self._head(finding)
        self._text(message(drawing, finding))
        self._proof(finding)
        self._missing(finding)
        if known := lesson(finding):
            self._part(tr("Why it matters"), known.why)
            self._part(tr("What puts it right"), known.remedy)
        # Cures come later, and Tab is to come by them where they stand.
        self._before_cures: QWidget = self.findChildren(QToolButton)[-1]
        self._cures = QVBoxLayout()
        self._cures.setContentsMargins(0, 4, 0, 0)
        self._cures.setSpacing(6)
        nest(self._column, self._cures)
        if known:
            self._part(tr("Source"), known.source, small=True)
            learn = plain.link(tr("Open the lesson"), lambda: self.lesson_wanted.emit(finding.check))
            plain.set_tip(learn, tr("This fault on a small drawing to operate, and its remedy"))
            self._column.addWidget(learn, 0, Qt.AlignmentFlag.AlignLeft)
            self._acceptance(finding)

    def _acceptance(self, finding: Finding) -> None:
        """Who accepted it and why, or the way to accept it."""
        holds = acceptance_of(finding, self._drawing, date.today())
        if holds is None:
            link = plain.link(tr("Accept this finding…"), self.accept_wanted.emit)
            plain.set_tip(link, tr("With a reason, a name and until when"))
            self._column.addSpacing(6)
            self._column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)
            return
        until = tr("until {day}", day=holds.until) if holds.until else ""
        when = f"{holds.date} {until}".rstrip()
        self._part(tr("Accepted"), f"{holds.reason} ({holds.author or tr('no name')}, {when})")
        link = plain.link(tr("Take the acceptance back"), lambda: self.take_back_wanted.emit(holds))
        self._column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)

    def show_cures(self, cures: tuple[Cure, ...]) -> None:
        """Offer edits that put the finding right, each with a button that makes it."""
        for cure in cures:
            line = QHBoxLayout()
            line.setSpacing(8)
            said = plain.passage(cure.message)
            line.addWidget(said, 1)
            does = QToolButton()
            does.setText(tr("Do it"))
            does.setProperty("link", True)
            does.setMinimumHeight(30)
            does.setAccessibleName(tr("Do it: {cure}", cure=a_word(cure.message)))
            plain.set_tip(does, tr("Make this edit; Undo takes it back"))
            does.clicked.connect(self._wants_cure(cure))
            line.addWidget(does, 0, Qt.AlignmentFlag.AlignTop)
            nest(self._cures, line)
            # A layout leaves room only for what is shown, and a late child is shown by itself too late.
            said.show()
            does.show()
            QWidget.setTabOrder(self._before_cures, does)
            self._before_cures = does

    def _head(self, finding: Finding) -> None:
        mark = plain.label()
        mark.setPixmap(grade_icon(finding.grade, self._theme).pixmap(QSize(GRADE_PX, GRADE_PX)))
        mark.setAlignment(Qt.AlignmentFlag.AlignTop)
        words = QVBoxLayout()
        words.setSpacing(0)
        words.addWidget(plain.label(title(finding), "finding", wrap=True))
        grade = plain.label(grade_words(finding), "grade", wrap=True)
        grade.setProperty("grade", str(finding.grade))
        words.addWidget(grade)
        close = QToolButton()
        close.setText("×")
        close.setFixedSize(32, 32)
        close.setAccessibleName(tr("Leave this finding"))
        plain.set_tip(close, tr("Leave this finding (Escape)"))
        close.clicked.connect(self.left)
        line = QHBoxLayout()
        line.setSpacing(10)
        line.addWidget(mark, 0, Qt.AlignmentFlag.AlignTop)
        nest(line, words, 1)
        line.addWidget(close, 0, Qt.AlignmentFlag.AlignTop)
        nest(self._column, line)

    def _proof(self, finding: Finding) -> None:
        shut = witness(self._drawing, finding)
        if not shut:
            return
        self._heading(tr("Proved by shutting"))
        for each in shut:
            line = QHBoxLayout()
            line.setSpacing(6)
            mark = plain.label()
            kind = self._drawing.components[each.id].kind.name
            mark.setPixmap(witness_icon(kind, self._theme).pixmap(QSize(WITNESS_PX, WITNESS_PX)))
            line.addWidget(mark)
            name = plain.link(each.name, self._wants_part(each.id))
            line.addWidget(name)
            line.addStretch(1)
            line.addWidget(plain.label(each.how, "second"))
            nest(self._column, line)
        link = plain.link(tr("Operate this"), self.operate_wanted.emit)
        plain.set_tip(link, tr("See the drawing at work with these valves shut (F7)"))
        self._column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)
        # Many messages say it themselves.
        if "alone" not in finding.message and (said := alone(self._drawing, finding)):
            self._text(said, "second")

    def _missing(self, finding: Finding) -> None:
        if not finding.missing:
            return
        self._heading(tr("Missing"))
        for name in finding.missing:
            id, _, field = name.rpartition(".")
            link = plain.link(missing_words(self._drawing, name), self._wants_field(id, field))
            self._column.addWidget(link, 0, Qt.AlignmentFlag.AlignLeft)

    def _part(self, heading: str, text: str, *, small: bool = False) -> None:
        self._heading(heading)
        self._text(text, "second" if small else "body")

    def _heading(self, text: str) -> None:
        self._column.addSpacing(6)
        made = plain.label(text, "grade", wrap=True)
        made.setProperty("role", "second")
        self._column.addWidget(made)

    def _text(self, text: str, role: str = "body") -> None:
        self._column.addWidget(plain.passage(text, role))

    def _wants_part(self, id: str) -> Callable[[], None]:
        return lambda: self.part_wanted.emit(id)

    def _wants_field(self, id: str, field: str) -> Callable[[], None]:
        return lambda: self.field_wanted.emit(id, field)

    def _wants_cure(self, cure: Cure) -> Callable[[], None]:
        return lambda: self.cure_wanted.emit(cure)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """A press on the card is its own and not the list's."""
        event.accept()


def height_at(card: QWidget, width: int) -> int:
    """How high a widget with wrapped labels is at a width."""
    layout = card.layout()
    if layout is None:
        return card.sizeHint().height()
    high = (
        layout.totalHeightForWidth(width) if layout.hasHeightForWidth() else layout.totalSizeHint().height()
    )
    return max(high, layout.totalMinimumSize().height())
