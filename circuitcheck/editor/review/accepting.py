"""Accepting a finding: the dialog that asks for a reason, a name and a last day; the page of what is accepted."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from functools import partial

from PySide6.QtCore import QDate, Qt, Signal
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLineEdit,
    QVBoxLayout,
    QWidget,
)

from circuitcheck.drawing.value import Acceptance, Drawing
from circuitcheck.editor import plain
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.edged import ArrowedDateEdit, EdgedCheckBox
from circuitcheck.editor.review.notes_page import said_by
from circuitcheck.editor.review.page import Card, Page, button, clear, link, text_box
from circuitcheck.editor.translating import later, tr
from circuitcheck.finding import Finding, Grade
from circuitcheck.report.finding_text import message, title
from circuitcheck.review.acceptances import Accepted, Standing
from circuitcheck.review.notes import pinned_name

STILL_COUNTS = later(
    "This is a danger. Accepted it stays in every list and still counts: accepting says that somebody has "
    "seen it and why it stands, not that it is safe."
)
NOTHING = later("No finding of this drawing is accepted. A finding's card has a button for it.")
_WORDS = {
    Standing.HOLDS: later("Accepted"),
    Standing.RUN_OUT: later("Run out: the finding counts again"),
    Standing.NO_FINDING: later("Nothing like it is found any more"),
}


class AcceptDialog(QDialog):
    """Asks for a reason, a name and until when; it can be confirmed once reason and name are given."""

    def __init__(
        self, parent: QWidget | None, drawing: Drawing, finding: Finding, author: str, today: date
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(tr("Accept a finding"))
        self.setMinimumWidth(420)
        self.reason = text_box(tr("Why it may stand"))
        self.author = QLineEdit(author)
        self.author.setAccessibleName(tr("Name"))
        self.limited = EdgedCheckBox(tr("Only until"))
        self.until = ArrowedDateEdit(QDate(today.year + 1, today.month, min(today.day, 28)))
        self.until.setAccessibleName(tr("Last day on which it holds"))
        self.until.setCalendarPopup(True)
        self.until.setDisplayFormat("yyyy-MM-dd")
        self.until.setMinimumDate(QDate(today.year, today.month, today.day))
        self.until.setEnabled(False)
        self.limited.toggled.connect(self.until.setEnabled)
        column = QVBoxLayout(self)
        column.setSpacing(10)
        column.addWidget(plain.label(title(finding), "finding", wrap=True))
        column.addWidget(plain.passage(message(drawing, finding)))
        if Grade.DANGER in (finding.grade, finding.would_be):
            column.addWidget(plain.label(tr(STILL_COUNTS), "fault", wrap=True))
        form = QFormLayout()
        form.addRow(tr("Reason"), self.reason)
        form.addRow(tr("Name"), self.author)
        form.addRow(self.limited, self.until)
        nest(column, form)
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Cancel)
        self.confirm = buttons.addButton(tr("Accept the finding"), QDialogButtonBox.ButtonRole.AcceptRole)
        buttons.accepted.connect(self.accept)
        buttons.rejected.connect(self.reject)
        column.addWidget(buttons)
        self.reason.textChanged.connect(self._enable)
        self.author.textChanged.connect(self._enable)
        self._enable()
        # And not a box above it, where the finding's sentence is very long.
        self.reason.setFocus()

    @property
    def last_day(self) -> date | None:
        """Until when; None: for good."""
        if not self.limited.isChecked():
            return None
        day = self.until.date()
        return date(day.year(), day.month(), day.day())

    def _enable(self) -> None:
        self.confirm.setEnabled(bool(self.reason.toPlainText().strip() and self.author.text().strip()))


class AcceptedPage(Page):
    """Signals `taken_back` with an acceptance, `part_wanted` with the id of a thing on the sheet."""

    taken_back = Signal(object)
    part_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__(tr("Accepted findings"))
        self.cards: list[Card] = []
        self.column.setAlignment(Qt.AlignmentFlag.AlignTop)

    def show_accepted(self, drawing: Drawing, accepted: Sequence[Accepted]) -> None:
        """Show what is accepted and how each stands."""
        clear(self.column)
        self.cards = [self._card(drawing, each) for each in accepted]
        for card in self.cards:
            self.column.addWidget(card)
        if not accepted:
            self.column.addWidget(plain.label(tr(NOTHING), "second", wrap=True))

    def _card(self, drawing: Drawing, each: Accepted) -> Card:
        acceptance = each.acceptance
        name = tr(title(each.finding)) if each.finding else acceptance.check.replace("-", " ")
        card = Card(f"{tr(_WORDS[each.standing])}: {name}")
        card.column.addWidget(plain.label(tr(_WORDS[each.standing]), "grade", wrap=True))
        card.say(name, "strong")
        if each.finding is not None:
            card.say(tr(message(drawing, each.finding)), "second")
        elif acceptance.on:
            card.say(tr("On: ") + ", ".join(pinned_name(drawing, id) for id in acceptance.on), "second")
        card.say(acceptance.reason or tr("No reason given"))
        card.say(said_by(acceptance.author, acceptance.date) + until_words(acceptance), "second")
        take = button(
            tr("Take it back"),
            lambda: self.taken_back.emit(acceptance),
            spoken=tr("Take it back: {name}", name=name),
        )
        shown = [id for id in acceptance.on if id in drawing.components or id in drawing.pipes][:1]
        show = [
            link(tr("Show"), partial(self.part_wanted.emit, id), tr("Show {name} on the sheet", name=name))
            for id in shown
        ]
        card.row(take, *show)
        return card


def until_words(acceptance: Acceptance) -> str:
    """`, until 2031-05-01`; nothing where it holds for good."""
    return tr(", until {until}", until=acceptance.until) if acceptance.until else ""
