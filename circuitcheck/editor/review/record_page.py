"""The review record: what it covers and cannot prove, each record and whether it holds, and signing one."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QLineEdit, QVBoxLayout

from circuitcheck.editor import plain
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.review.page import Card, Page, button, clear, heading, text_box
from circuitcheck.editor.translating import later, tr
from circuitcheck.review.holding import Held
from circuitcheck.review.record import CANNOT_PROVE, COVERS
from circuitcheck.review.words import held_lines, record_title

DECISIONS = (later("accepted"), later("accepted with remarks"), later("returned for changes"))
MOST_LINES = 30
STATES = {"holds": later("✓ Holds"), "broken": later("✕ Broken"), "incomplete": later("? Incomplete")}
NONE_YET = later("No review record has been made of this drawing.")


class RecordPage(Page):
    """Signals `signed` with role, decision and remarks, and `compared` with a broken record, to draw on
    the sheet what changed since it was made."""

    signed = Signal(str, str, str)
    compared = Signal(object)

    def __init__(self) -> None:
        super().__init__(tr("Review record"))
        self.role = QLineEdit()
        self.role.setPlaceholderText(tr("Your role, such as supervisor"))
        self.role.setAccessibleName(tr("Your role"))
        self.decision = ArrowedComboBox()
        for each in DECISIONS:
            # The file keeps the word in English, whatever language the window speaks.
            self.decision.addItem(tr(each), each)
        self.decision.setAccessibleName(tr("Decision"))
        self.remarks = text_box(tr("Remarks"))
        self.sign = button(
            tr("Make the review record"), self._sign, tr("A record of the drawing as it stands now")
        )
        self.cards: list[Card] = []
        self._list = QVBoxLayout()
        self._list.setSpacing(8)
        nest(self.column, self._list)
        self.column.addSpacing(8)
        self.column.addWidget(heading(tr("Make a record")))
        for widget in (self.role, self.decision, self.remarks, self.sign):
            self.column.addWidget(widget)
        self.column.addSpacing(8)
        for title, text in ((tr("What it covers"), COVERS), (tr("What it cannot prove"), CANNOT_PROVE)):
            self.column.addWidget(heading(title))
            self.column.addWidget(plain.label(text, "second", wrap=True))
        self.column.addStretch(1)
        self.show_records(())

    def show_records(self, records: Sequence[Held] | None) -> None:
        """Show the records, the newest first; None: they could not be held against the drawing."""
        clear(self._list)
        self.cards = [self._card(each) for each in reversed(records or ())]
        for card in self.cards:
            self._list.addWidget(card)
        if records is None:
            said = tr("The records failed to be held against the drawing inside the program.")
            self._list.addWidget(plain.label(said, "fault", wrap=True))
        elif not records:
            self._list.addWidget(plain.label(tr(NONE_YET), "second", wrap=True))

    def signed_now(self) -> None:
        """A record was made: its remarks are not those of the next."""
        self.remarks.clear()

    def _card(self, held: Held) -> Card:
        card = Card(f"{STATES[held.state]}: {record_title(held)}")
        card.setProperty("grade", "danger" if held.state == "broken" else "")
        state = plain.label(tr(STATES[held.state]), "grade")
        state.setProperty("grade", "danger" if held.state == "broken" else "")
        card.column.addWidget(state)
        card.say(tr(record_title(held)), "strong")
        if held.review.remarks:
            card.say(held.review.remarks)
        for line in held_lines(held, MOST_LINES):
            card.say(tr(line), "second")
        if held.since is not None and not held.since.is_nothing:
            card.row(button(tr("Show what changed"), lambda: self.compared.emit(held)))
        return card

    def _sign(self) -> None:
        self.signed.emit(self.role.text(), str(self.decision.currentData()), self.remarks.toPlainText())
