"""Two side by side where there is room, one below the other where there is none; words that end in …."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor import plain
from circuitcheck.editor.eliding import ElidedButton, ElidedLabel
from circuitcheck.editor.side_by_side import in_line

LONG = "Sicherheitstemperaturbegrenzer"


@pytest.fixture
def pair(qtbot: QtBot) -> tuple[QWidget, QWidget, QWidget]:
    first, second = plain.label(f"{LONG} am Ort", wrap=True), plain.label("0.685 l/min")
    whole = QWidget()
    qtbot.addWidget(whole)
    column = QVBoxLayout(whole)
    column.setContentsMargins(0, 0, 0, 0)
    column.addWidget(in_line(first, second))
    column.addStretch(1)
    whole.show()
    return whole, first, second


@pytest.mark.parametrize("room", [400, 330])
def test_side_by_side_where_the_longest_word_has_room(
    pair: tuple[QWidget, QWidget, QWidget], room: int
) -> None:
    whole, first, second = pair
    whole.resize(room, 100)
    assert second.x() == first.x() + first.width() + 8 and second.y() == first.y() == 0
    assert second.x() + second.width() == room


def test_below_where_it_has_none(pair: tuple[QWidget, QWidget, QWidget]) -> None:
    whole, first, second = pair
    narrow = first.minimumSizeHint().width() + 10
    whole.resize(narrow, 200)
    assert first.width() == narrow and first.height() >= first.heightForWidth(narrow)
    assert second.y() >= first.y() + first.height() and second.x() + second.width() == narrow
    assert second.width() == second.sizeHint().width()
    # The two lines have the height they need, whatever stands below.
    line = first.parentWidget()
    assert line is not None and line.height() >= second.y() + second.height()


def test_a_label_and_a_link_end_in_dots_and_tell_the_whole(qtbot: QtBot) -> None:
    for made in (plain.label(LONG, elided=True), plain.link(LONG, lambda: None)):
        qtbot.addWidget(made)
        assert isinstance(made, ElidedLabel | ElidedButton)
        made.resize(made.sizeHint())
        made.show()
        assert not made.is_cut
        whole = made.grab().toImage()
        made.resize(made.minimumSizeHint())
        assert made.is_cut and made.width() < made.sizeHint().width() / 2
        assert made.grab().toImage() != whole.copy(made.rect()), "the … is seen"
        assert made.text() == LONG


def test_a_short_word_is_never_dots(qtbot: QtBot) -> None:
    made = plain.label("m", elided=True)
    qtbot.addWidget(made)
    assert made.minimumSizeHint() == plain.label("m").minimumSizeHint()
    assert made.textFormat() is Qt.TextFormat.PlainText


def test_what_it_needs_is_reckoned_anew_once_the_words_are_others(
    pair: tuple[QWidget, QWidget, QWidget],
) -> None:
    whole, first, second = pair
    whole.resize(330, 300)
    holder = first.parentWidget()
    assert isinstance(first, QLabel) and isinstance(second, QLabel) and holder is not None
    low = holder.heightForWidth(330)
    first.setText(" ".join(["Sicherheit am Ort"] * 20))
    high = holder.heightForWidth(330)
    assert high > 2 * low
    first.setText("am Ort")
    assert holder.heightForWidth(330) <= low
    second.setText("0.685 l/min bei 3.0 bar und 60 °C")
    second.setWordWrap(True)
    first.setText(f"{LONG} am Ort")
    assert holder.heightForWidth(200) > holder.heightForWidth(700)
