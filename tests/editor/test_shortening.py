"""Very long texts of a file: labels and tooltips show how they begin, a note's card has all of it in a box."""

from __future__ import annotations

from dataclasses import replace
from datetime import date

import pytest
from PySide6.QtGui import QTextOption
from PySide6.QtWidgets import QLabel, QPlainTextEdit
from pytestqt.qtbot import QtBot

from circuitcheck.analysis import analyse
from circuitcheck.drawing.value import Drawing, Note, Reply
from circuitcheck.editor import plain
from circuitcheck.editor.failing.dialog import noted_dialog
from circuitcheck.editor.panels.finding_card import FindingCard
from circuitcheck.editor.review.accepting import AcceptDialog
from circuitcheck.editor.review.notes_page import NoteCard
from circuitcheck.editor.shortening import MOST_LETTERS, MOST_LINES, has_long_word, in_short, is_long
from circuitcheck.editor.theme import light
from circuitcheck.report.finding_text import message
from circuitcheck.shipped import data_path
from circuitcheck.storage.limits import LONGEST_TEXT
from circuitcheck.storage.reading import read

LONG = {
    "lines": "a\n" * (LONGEST_TEXT // 2),
    "one word": "W" * LONGEST_TEXT,
    "words": "ab " * (LONGEST_TEXT // 3),
}


def test_what_is_not_long_stays_as_it_is() -> None:
    for text in ("", "a", "x" * MOST_LETTERS, "\n".join("a" * MOST_LINES)):
        assert not is_long(text) and in_short(text) == text


@pytest.mark.parametrize("text", LONG.values(), ids=LONG)
def test_what_is_long_shows_how_it_begins(text: str, qtbot: QtBot) -> None:
    short = in_short(text)
    assert is_long(text) and text.startswith(short.removesuffix("…")) and short.endswith("…")
    assert len(short) <= MOST_LETTERS + 1 and len(short.splitlines()) <= MOST_LINES
    label = plain.label(text, wrap=True)
    qtbot.addWidget(label)
    assert label.text() == short
    assert len(plain.tip_text(text)) < MOST_LETTERS + 20


@pytest.mark.parametrize("text", LONG.values(), ids=LONG)
def test_a_note_and_its_replies_can_be_read_to_the_end(text: str, qtbot: QtBot) -> None:
    card = NoteCard(Drawing(), Note("n", (), "A. Other", "2030-01-31", text, replies=(Reply("B", "", text),)))
    qtbot.addWidget(card)
    note, reply = (box for box in card.findChildren(QPlainTextEdit) if box.isReadOnly())
    assert (note.toPlainText(), reply.toPlainText()) == (text, f"↳ {text}")
    assert note.tabChangesFocus() and note.accessibleName() == in_short(text)
    assert all(
        len(each.accessibleName()) < 2 * MOST_LETTERS for each in (card.answer, card.turn, card.take_out)
    )


@pytest.mark.parametrize(
    ("text", "has"),
    [
        (LONG["one word"], True),
        ("\u00a0a" * 1_200, True),
        # A separator: to Python it ends a line, to Qt it is a letter.
        ("a\x1c" * 1_200, True),
        (LONG["words"], False),
        (LONG["lines"], False),
        ("", False),
    ],
)
def test_a_box_breaks_its_text_anywhere_only_where_a_word_is_very_long(
    text: str, has: bool, qtbot: QtBot
) -> None:
    assert has_long_word(text) is has
    if is_long(text):
        box = plain.passage(text)
        qtbot.addWidget(box)
        assert isinstance(box, QPlainTextEdit) and box.toPlainText() == text.replace("\u00a0", " ")
        assert (box.wordWrapMode() is QTextOption.WrapMode.WrapAnywhere) is has


@pytest.mark.parametrize("letters", [8, 900])
def test_a_finding_is_told_to_its_end_however_long_its_names_are(letters: int, qtbot: QtBot) -> None:
    drawing = read(data_path("samples") / "terrace-valve-before-vessel.wetcircuit")
    parts = {id: replace(part, label=f"{id} " * letters) for id, part in drawing.components.items()}
    drawing = replace(drawing, components={id: replace(p, label=p.label[:1000]) for id, p in parts.items()})
    finding = next(each for each in analyse(drawing).findings if each.check == "vessel-can-be-cut-off")
    said = message(drawing, finding)
    assert is_long(said) is (letters > 8)
    asks = AcceptDialog(None, drawing, finding, "", date.today())
    for widget in (FindingCard(drawing, finding, light()), asks):
        qtbot.addWidget(widget)
        told = [each.text() for each in widget.findChildren(QLabel)]
        told += [each.toPlainText() for each in widget.findChildren(QPlainTextEdit)]
        assert said in told
    asks.show()
    qtbot.waitUntil(asks.isActiveWindow)
    assert asks.focusWidget() is asks.reason


def test_what_is_noted_of_failures_may_have_a_long_word_too(qtbot: QtBot) -> None:
    dialog = noted_dialog(None, LONG["one word"], is_anything=True)
    qtbot.addWidget(dialog)
    (box,) = dialog.findChildren(QPlainTextEdit)
    assert box.toPlainText() == LONG["one word"] and box.tabChangesFocus()
    assert box.wordWrapMode() is QTextOption.WrapMode.WrapAnywhere
