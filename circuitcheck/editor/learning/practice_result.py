"""The page that scores an answer: each fault with what came of it, and why it matters."""

from __future__ import annotations

from PySide6.QtCore import QSize, Qt, QTimer, Signal
from PySide6.QtGui import QIcon, QPainter, QPixmap, QResizeEvent, QShowEvent
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.checks.catalogue import lesson
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.learning.practice_marks import FALSE, OUTCOMES, Look
from circuitcheck.editor.learning.practice_words import (
    outcome_words,
    place_words,
    points_words,
    reason_words,
    score_words,
)
from circuitcheck.editor.learning.rows import Rows
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.sheet.painting import Palette, paint
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.lessons.catalogue import faults
from circuitcheck.lessons.scoring import Mark, Outcome, Score, Told
from circuitcheck.picture import paths
from circuitcheck.picture.marks import Fill, Path, Stroke
from circuitcheck.picture.marks import Mark as Painted
from circuitcheck.report.finding_text import message

ICON_PX = 22
LEAST_LIST_PX = 150


class ResultPage(QWidget):
    """Signals `told_chosen` with a `Told`, `false_chosen` with a `Mark`, `another`, `again` and `left`."""

    told_chosen = Signal(object)
    false_chosen = Signal(object)
    another = Signal()
    again = Signal()
    left = Signal()

    def __init__(self) -> None:
        super().__init__()
        self._drawing = Drawing()
        self._score: Score | None = None
        self._theme = light()
        self.points = plain.label("", "name")
        self.said = plain.label("", wrap=True)
        self.kept = plain.label("", "fault", wrap=True)
        self.list = Rows(tr("The faults and what came of them"), beside=ICON_PX + 6)
        self.list.setIconSize(QSize(ICON_PX, ICON_PX))
        self.card = QScrollArea()
        self.card.setWidgetResizable(True)
        self.card.setFrameShape(QFrame.Shape.NoFrame)
        self.card.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.card.setAccessibleName(tr("Explanation"))
        self.another_button = QPushButton(tr("&Next exercise"))
        self.again_button = QPushButton(tr("The same &again"))
        self.leave = QPushButton(tr("&Choose…"))
        column = QVBoxLayout(self)
        column.setContentsMargins(16, 12, 16, 16)
        column.setSpacing(6)
        column.addWidget(self.points)
        column.addWidget(self.said)
        column.addWidget(self.kept)
        column.addSpacing(4)
        column.addWidget(self.list)
        column.addWidget(self.card, 1)
        end = QHBoxLayout()
        end.addWidget(self.leave)
        end.addWidget(self.again_button)
        end.addStretch(1)
        end.addWidget(self.another_button)
        nest(column, end)
        self.list.currentItemChanged.connect(lambda: self._row_changed(self.list.row))
        self.another_button.clicked.connect(self.another)
        self.again_button.clicked.connect(self.again)
        self.leave.clicked.connect(self.left)

    def set_theme(self, theme: Theme) -> None:
        """Paint the signs anew."""
        self._theme = theme
        if self._score is not None:
            looks = [
                *(OUTCOMES[each.outcome] for each in self._score.told),
                *(FALSE for _ in self._score.false),
            ]
            for row, look in enumerate(looks):
                item = self.list.topLevelItem(row)
                if item is not None:
                    item.setIcon(0, _icon(look, theme))

    def show_score(self, drawing: Drawing, score: Score) -> None:
        """Show how an answer came out; the first fault is opened."""
        self._drawing, self._score = drawing, None
        self.points.setText(points_words(score))
        self.said.setText(score_words(score))
        self.list.clear()
        self._score = score
        for told in score.told:
            words = tr(
                "{outcome}: {reason}",
                outcome=outcome_words(told.outcome),
                reason=reason_words(told.planted.check),
            )
            self.list.add(words[:1].upper() + words[1:])
        for mark in score.false:
            said = tr(
                "Accused wrongly: {place}, {reason}",
                place=place_words(drawing, mark.place),
                reason=reason_words(mark.reason),
            )
            self.list.add(said)
        self.set_theme(self._theme)
        self.fit_list()
        self.list.choose_row(0)

    def fit_list(self) -> None:
        """As high as its rows, up to a third of the page."""
        self.list.measure()
        self.list.setFixedHeight(min(self.list.height_of_all + 8, max(LEAST_LIST_PX, self.height() // 3)))

    def resizeEvent(self, event: QResizeEvent) -> None:
        """The list keeps its share."""
        super().resizeEvent(event)
        self.fit_list()

    def showEvent(self, event: QShowEvent) -> None:
        """Only what is seen knows how wide it is."""
        super().showEvent(event)
        QTimer.singleShot(0, self, self.fit_list)

    def say_not_kept(self, sentence: str) -> None:
        """Say that the result is not kept; empty: it is."""
        self.kept.setText(sentence)
        self.kept.setVisible(bool(sentence))

    def _row_changed(self, row: int) -> None:
        if self._score is None or row < 0:
            return
        if row < len(self._score.told):
            told = self._score.told[row]
            self._explain(self._of_fault(told))
            self.told_chosen.emit(told)
        else:
            mark = self._score.false[row - len(self._score.told)]
            self._explain(self._of_false(mark))
            self.false_chosen.emit(mark)

    def _of_fault(self, told: Told) -> list[tuple[str, str]]:
        planted, known = told.planted, told.lesson
        found = [("", tr(planted.says.told))]
        yours = [reason_words(mark.reason) for mark in told.marks if mark.reason not in planted.checks]
        if told.outcome is Outcome.WRONG_REASON:
            found.append((tr("You said"), ". ".join(yours)))
        told_by = "\n".join(message(self._drawing, each) for each in told.findings)
        return [
            *found,
            (tr("What the checks say"), told_by),
            (tr("How it happens"), faults()[planted.check].happens),
            (tr("Why it matters"), known.why),
            (tr("What puts it right"), known.remedy),
            (tr("Source"), known.source),
        ]

    def _of_false(self, mark: Mark) -> list[tuple[str, str]]:
        known = lesson(mark.reason)
        return [
            ("", tr("{place} is sound in this.", place=place_words(self._drawing, mark.place))),
            (tr("When one would say so"), known.flags),
            (tr("Source"), known.source),
        ]

    def _explain(self, parts: list[tuple[str, str]]) -> None:
        body = QWidget()
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 6, 8, 8)
        column.setSpacing(4)
        for place, (head, text) in enumerate(parts):
            if head:
                column.addSpacing(4)
                column.addWidget(plain.label(head, "heading"))
            column.addWidget(
                plain.label(text, "finding" if place == 0 else "body", wrap=True, selectable=True)
            )
        column.addStretch(1)
        self.card.setWidget(body)


def _icon(look: Look, theme: Theme) -> QIcon:
    """A sign that is told by its shape: a tick, a half disc, a cross in a ring, a bar in a dotted ring."""
    picture = QPixmap(4 * ICON_PX, 4 * ICON_PX)
    picture.fill(Qt.GlobalColor.transparent)
    painter = QPainter(picture)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.scale(4, 4)
    paint(painter, _sign(look), Palette(theme))
    painter.end()
    return QIcon(picture)


def _sign(look: Look) -> list[Painted]:
    middle, reach = ICON_PX / 2, 9.0
    disc = paths.circle(middle, middle, reach)
    if look is OUTCOMES[Outcome.FOUND]:
        tick: Path = (
            ("M", (middle - 4, middle)),
            ("L", (middle - 1, middle + 3.5)),
            ("L", (middle + 4.5, middle - 3.5)),
        )
        return [Fill(disc, look.role), Stroke(tick, look.text_role, 2, cap="round")]
    if look is OUTCOMES[Outcome.WRONG_REASON]:
        half: Path = (("M", (middle, middle - reach)), ("L", (middle, middle + reach)))
        return [Stroke(disc, look.role, 2), Stroke(half, look.role, 6)]
    if look is OUTCOMES[Outcome.MISSED]:
        cross: Path = (
            ("M", (middle - 3.5, middle - 3.5)),
            ("L", (middle + 3.5, middle + 3.5)),
            ("M", (middle + 3.5, middle - 3.5)),
            ("L", (middle - 3.5, middle + 3.5)),
        )
        return [Stroke(disc, look.role, 2), Stroke(cross, look.role, 2, cap="round")]
    bar: Path = (("M", (middle - 4, middle)), ("L", (middle + 4, middle)))
    return [Stroke(disc, look.role, 1.75, (2, 2)), Stroke(bar, look.role, 2.25, cap="round")]
