"""The notes: a box to pin one, and each with its thread, to answer, settle, open again or take out."""

from __future__ import annotations

from collections.abc import Iterable
from functools import partial

from PySide6.QtCore import Signal
from PySide6.QtWidgets import QPlainTextEdit, QVBoxLayout, QWidget

from circuitcheck.drawing.value import Drawing, Note
from circuitcheck.editor import plain
from circuitcheck.editor.nesting import nest
from circuitcheck.editor.review.page import Card, Page, button, clear, link, text_box
from circuitcheck.editor.shortening import in_short
from circuitcheck.editor.translating import later, shown_told, tr
from circuitcheck.report.wording import upper
from circuitcheck.review.notes import pinned_name

MOST_NAMES = 4
"""So many of the parts that a note would be pinned to are named."""
NOBODY = later("No note is pinned to this drawing.")


class NotesPage(Page):
    """Signals what is asked for: `pinned` with a text, `answered` with id and text, `settled`, `reopened`
    and `removed` with an id, `part_wanted` with the id of a thing on the sheet."""

    pinned = Signal(str)
    answered = Signal(str, str)
    settled = Signal(str)
    reopened = Signal(str)
    removed = Signal(str)
    part_wanted = Signal(str)

    def __init__(self) -> None:
        super().__init__(tr("Notes"))
        self._drawing = Drawing()
        self._notes: tuple[Note, ...] | None = None
        self._on = plain.label("", "second", wrap=True)
        self.box = text_box(tr("Write a note"))
        self.pin = button(tr("Pin the note"), self._pin, tr("Pin it to what is selected on the sheet"))
        self.cards: dict[str, NoteCard] = {}
        self._list = QVBoxLayout()
        self._list.setSpacing(8)
        self.column.addWidget(self._on)
        self.column.addWidget(self.box)
        self.column.addWidget(self.pin)
        self.column.addSpacing(8)
        nest(self.column, self._list)
        self.column.addStretch(1)
        self.box.textChanged.connect(self._enable)
        self._enable()
        self.show_selection(())

    def show_drawing(self, drawing: Drawing) -> None:
        """Show the notes of a drawing; what is typed stays."""
        same = self._notes is drawing.notes and _names(self._drawing) == _names(drawing)
        self._drawing = drawing
        if same:
            return
        drafts = {id: card.box.toPlainText() for id, card in self.cards.items() if card.box.toPlainText()}
        self._notes = drawing.notes
        clear(self._list)
        self.cards = {}
        for note in sorted(drawing.notes, key=lambda each: not each.is_open):
            card = NoteCard(drawing, note)
            card.answered.connect(self.answered)
            card.settled.connect(self.settled)
            card.reopened.connect(self.reopened)
            card.removed.connect(self.removed)
            card.part_wanted.connect(self.part_wanted)
            card.box.setPlainText(drafts.get(note.id, ""))
            self.cards[note.id] = card
            self._list.addWidget(card)
        if not drawing.notes:
            self._list.addWidget(plain.label(tr(NOBODY), "second", wrap=True))

    def show_selection(self, ids: Iterable[str]) -> None:
        """Say what a note would be pinned to, and bring up the first that is pinned to it."""
        on = tuple(ids)
        drawing = self._drawing
        shown = ", ".join(shown_told(drawing.name(id)) for id in on[:MOST_NAMES])
        if len(on) > MOST_NAMES:
            shown = tr("{names} and {count} more", names=shown, count=len(on) - MOST_NAMES)
        whole = tr("On: the whole drawing. Select parts to pin it to them.")
        self._on.setText(tr("On: {names}", names=shown) if on else whole)
        card = next((self.cards[note.id] for note in drawing.notes if set(note.on) & set(on)), None)
        if card is not None:
            self.ensureWidgetVisible(card)

    def written(self) -> None:
        """The note was pinned: the box is empty again."""
        self.box.clear()

    def _enable(self) -> None:
        self.pin.setEnabled(bool(self.box.toPlainText().strip()))

    def _pin(self) -> None:
        self.pinned.emit(self.box.toPlainText())


class NoteCard(Card):
    """A note with its thread."""

    answered = Signal(str, str)
    settled = Signal(str)
    reopened = Signal(str)
    removed = Signal(str)
    part_wanted = Signal(str)

    def __init__(self, drawing: Drawing, note: Note) -> None:
        super().__init__(
            tr(
                "Note by {author}, {state}",
                author=note.author or tr("no name"),
                state=tr("open") if note.is_open else tr("settled"),
            )
        )
        self.box: QPlainTextEdit = text_box(tr("Answer"))
        self._id = note.id
        is_open, short = note.is_open, in_short(note.text)
        self.column.addWidget(plain.label(tr("Open") if is_open else tr("Settled"), "grade"))
        self._pins(drawing, note)
        self.say(note.text)
        self.say(said_by(note.author, note.date), "second")
        for reply in note.replies:
            self.say(f"↳ {reply.text}")
            self.say(said_by(reply.author, reply.date), "second")
        self.box.setFixedHeight(48)
        self.column.addWidget(self.box)
        self.answer = button(tr("Answer"), self._answer, spoken=tr("Answer the note: {text}", text=short))
        turn = tr("Settle") if is_open else tr("Open again")
        self.turn = button(turn, self._settle if is_open else self._reopen, spoken=f"{turn}: {short}")
        self.take_out = button(
            tr("Take out"), lambda: self.removed.emit(self._id), spoken=tr("Take out: {text}", text=short)
        )
        self.row(self.answer, self.turn, self.take_out)
        self.box.textChanged.connect(self._enable)
        self._enable()

    def _pins(self, drawing: Drawing, note: Note) -> None:
        if not note.on:
            self.say(tr("On the whole drawing"), "second")
        for id in note.on:
            name = upper(pinned_name(drawing, id))
            if name.endswith("(gone)"):
                self.say(shown_told(name), "second")
            else:
                pin: QWidget = link(
                    name, partial(self.part_wanted.emit, id), tr("Show {name} on the sheet", name=name)
                )
                self.row(pin)

    def _enable(self) -> None:
        self.answer.setEnabled(bool(self.box.toPlainText().strip()))

    def _answer(self) -> None:
        text = self.box.toPlainText()
        # Said, it is no draft any more.
        self.box.clear()
        self.answered.emit(self._id, text)

    def _settle(self) -> None:
        self.settled.emit(self._id)

    def _reopen(self) -> None:
        self.reopened.emit(self._id)


def said_by(author: str, date: str) -> str:
    """Who said it and when."""
    return ", ".join(each for each in (author or tr("no name"), date) if each)


def _names(drawing: Drawing) -> list[tuple[str, str]]:
    """What the things are called that notes are pinned to; a note may outlive its part."""
    ids = (id for note in drawing.notes for id in note.on)
    return [(id, pinned_name(drawing, id)) for id in ids]
