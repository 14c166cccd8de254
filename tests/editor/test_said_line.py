"""The line of choices and a sentence: all of it is read at any width."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QPushButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.said_line import LINE_PX, SaidLine
from circuitcheck.editor.styling import style_sheet
from circuitcheck.editor.theme import light

LONG = "Heat source is cut off from its expansion vessel and its safety valve. 2 numbers are missing."


def made(qtbot: QtBot, width: int, sentence: str) -> tuple[SaidLine, list[QPushButton], QPushButton]:
    before = [QPushButton(each) for each in ("Heating only", "Flow, l/min", "Arrows move")]
    after = QPushButton("Leave")
    line = SaidLine(before, (after,))
    qtbot.addWidget(line)
    line.resize(width, LINE_PX)
    line.show()
    line.show_sentence(sentence)
    return line, before, after


def test_where_there_is_room_all_stands_in_one_line(qtbot: QtBot) -> None:
    line, before, after = made(qtbot, 1400, LONG)
    assert line.height() == LINE_PX and line.said == LONG
    lefts = [each.x() for each in (*before, line.sentence, after)]
    assert lefts == sorted(lefts)
    assert after.geometry().right() == line.width() - 9


@pytest.mark.parametrize("width", [260, 400, 620, 900])
def test_with_less_room_nothing_is_cut_and_nothing_lies_on_another(qtbot: QtBot, width: int) -> None:
    line, before, after = made(qtbot, width, LONG)
    placed: list[QWidget] = [*before, after, line.sentence]
    for each in placed:
        assert line.rect().contains(each.geometry())
    for place, one in enumerate(placed):
        assert not any(one.geometry().intersects(other.geometry()) for other in placed[place + 1 :])
    for each in (*before, after):
        assert each.width() >= each.sizeHint().width()
    assert line.sentence.height() >= line.sentence.heightForWidth(line.sentence.width())


def test_it_is_one_line_again_when_there_is_less_to_say(qtbot: QtBot) -> None:
    line, before, _ = made(qtbot, 620, LONG)
    assert line.height() > LINE_PX
    line.show_sentence("Pump runs.")
    assert line.height() == LINE_PX
    before[0].hide()
    qtbot.waitUntil(lambda: before[1].x() == 12)


@pytest.mark.parametrize("policy", ["AdjustToContents", "AdjustToContentsOnFirstShow"])
def test_a_choice_box_has_room_for_its_longest_choice(qtbot: QtBot, policy: str) -> None:
    box = ArrowedComboBox()
    box.setStyleSheet(style_sheet(light()))
    qtbot.addWidget(box)
    box.setSizeAdjustPolicy(getattr(ArrowedComboBox.SizeAdjustPolicy, policy))
    box.addItems(["short", "HTML, the whole document as one page for a browser or a phone"])
    assert box.wanting_px(box.itemText(1), box.sizeHint()) == 0
