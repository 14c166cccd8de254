"""The sheet by keyboard alone."""

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QPushButton, QVBoxLayout, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.sheet import SheetView
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds

from .conftest import Hand

SHIFT = Qt.KeyboardModifier.ShiftModifier


@pytest.fixture
def worked(hand: Hand, row: Drawing) -> Hand:
    hand.show(row)
    return hand


@pytest.mark.parametrize(
    ("key", "at"),
    [
        (Qt.Key.Key_Left, (9, 10)),
        (Qt.Key.Key_Right, (11, 10)),
        (Qt.Key.Key_Up, (10, 9)),
        (Qt.Key.Key_Down, (10, 11)),
    ],
)
def test_arrows_move_the_selection_by_a_square(worked: Hand, key: Qt.Key, at: tuple[int, int]) -> None:
    worked.view.select(("pump1",))
    worked.key(key)
    assert worked.drawing.components["pump1"].at == at
    assert worked.steps == ["Move pump"]
    assert worked.view.selected_ids() == {"pump1"}


def test_with_shift_by_five(worked: Hand) -> None:
    worked.view.select(("pump1",))
    worked.key(Qt.Key.Key_Right, SHIFT)
    assert worked.drawing.components["pump1"].at == Point(15, 10)


def test_r_m_and_delete(worked: Hand) -> None:
    worked.view.select(("zv1",))
    worked.key(Qt.Key.Key_R)
    worked.key(Qt.Key.Key_M)
    worked.key(Qt.Key.Key_Delete)
    assert worked.steps == ["Turn zone valve", "Mirror zone valve", "Remove zone valve"]
    assert "zv1" not in worked.drawing.components
    assert worked.view.selected_ids() == frozenset()


def test_a_joined_pipe_does_not_move_by_itself(worked: Hand) -> None:
    worked.view.select(("p1",))
    worked.key(Qt.Key.Key_Right)
    assert worked.steps == []
    assert "Drag" in worked.hints[-1] or "drag" in worked.hints[-1]


def test_with_nothing_selected_the_caret_goes(worked: Hand) -> None:
    places: list[Point] = []
    worked.view.pointer_at.connect(places.append)
    worked.key(Qt.Key.Key_Right)
    worked.key(Qt.Key.Key_Down)
    assert worked.steps == []
    assert places[-1] == Point(places[0].x, places[0].y + 1)
    assert worked.view._hands.keyboard.caret == places[-1]


def caret_to(hand: Hand, at: Point) -> None:
    hand.key(Qt.Key.Key_Right)
    caret = hand.view._hands.keyboard.caret
    assert caret is not None
    for off, forth, back in (
        (at.x - caret.x, Qt.Key.Key_Right, Qt.Key.Key_Left),
        (at.y - caret.y, Qt.Key.Key_Down, Qt.Key.Key_Up),
    ):
        for _ in range(int(abs(off))):
            hand.key(forth if off > 0 else back)


def test_enter_selects_at_the_caret(worked: Hand) -> None:
    caret_to(worked, Point(20, 10))
    worked.key(Qt.Key.Key_Return)
    assert worked.view.selected_ids() == {"zv1"}


def test_a_part_is_placed_at_the_caret(worked: Hand) -> None:
    caret_to(worked, Point(14, 16))
    worked.view.begin_placing(kinds()["drain"])
    worked.key(Qt.Key.Key_Left)
    worked.key(Qt.Key.Key_R)
    worked.key(Qt.Key.Key_Return)
    assert worked.steps == ["Place drain"]
    assert worked.drawing.components["drain1"].at == Point(13, 16)
    assert worked.drawing.components["drain1"].turn == 90


def test_without_a_caret_it_is_placed_in_the_middle(worked: Hand) -> None:
    worked.view.begin_placing(kinds()["drain"])
    worked.key(Qt.Key.Key_Enter)
    at = worked.drawing.components["drain1"].at
    assert at is not None
    assert abs(at.x - 20) <= 1 and abs(at.y - 10) <= 1


def test_kept_in_hand_enter_places_again_and_again(worked: Hand) -> None:
    worked.view.keep_placing = True
    worked.view.begin_placing(kinds()["drain"])
    for _ in range(3):
        worked.key(Qt.Key.Key_Down)
        worked.key(Qt.Key.Key_Return)
    worked.key(Qt.Key.Key_Escape)
    assert worked.steps == ["Place drain"] * 3


def test_a_pipe_is_drawn_from_the_part_chosen(worked: Hand) -> None:
    worked.view.select(("zv1",))
    worked.key(Qt.Key.Key_P)
    for _ in range(7):
        worked.key(Qt.Key.Key_Right)
    for _ in range(4):
        worked.key(Qt.Key.Key_Down)
    worked.key(Qt.Key.Key_Return)
    assert worked.steps == ["Draw pipe"]
    assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Joint("ev1", "connection"))


def test_a_pipe_is_drawn_from_the_caret_onto_a_pipe(worked: Hand) -> None:
    caret_to(worked, Point(28, 14))
    worked.key(Qt.Key.Key_P)
    for _ in range(4):
        worked.key(Qt.Key.Key_Up)
    for _ in range(13):
        worked.key(Qt.Key.Key_Left)
    worked.key(Qt.Key.Key_Return)
    assert worked.steps == ["Draw pipe"]
    assert [part.at for part in worked.drawing.components.values() if part.kind.name == "tee"] == [(15, 10)]


def test_where_no_pipe_can_begin_the_menu_says_so(worked: Hand) -> None:
    worked.view.begin_pipe()
    assert "begins at a port" in worked.hints[-1]
    assert worked.steps == []


def test_escape_leaves_the_gesture_first_and_then_the_selection(worked: Hand) -> None:
    worked.view.select(("zv1",))
    worked.key(Qt.Key.Key_P)
    worked.key(Qt.Key.Key_Right)
    worked.key(Qt.Key.Key_Escape)
    assert worked.steps == [] and worked.view._content.pipes.keys() == {"p1"}
    worked.view.select(("zv1",))
    worked.key(Qt.Key.Key_Escape)
    assert worked.view.selected_ids() == frozenset()


def test_tab_walks_through_the_parts_and_then_leaves_the_sheet(qtbot: QtBot, row: Drawing) -> None:
    window = QWidget()
    qtbot.addWidget(window)
    column = QVBoxLayout(window)
    before, sheet, after = QPushButton("before"), SheetView(), QPushButton("after")
    for widget in (before, sheet, after):
        column.addWidget(widget)
    window.resize(900, 600)
    with qtbot.waitActive(window):
        window.show()
        window.activateWindow()
    sheet.set_drawing(row)
    sheet.setFocus()
    walked = []
    for _ in range(3):
        QTest.keyClick(sheet, Qt.Key.Key_Tab)
        walked.append((sorted(sheet.selected_ids()), sheet._stage.overlay._focused))
    assert walked == [(["pump1"], "pump1"), (["zv1"], "zv1"), (["ev1"], "ev1")]
    QTest.keyClick(sheet, Qt.Key.Key_Backtab)
    assert sheet.selected_ids() == {"zv1"}
    QTest.keyClick(sheet, Qt.Key.Key_Tab)
    QTest.keyClick(sheet, Qt.Key.Key_Tab)
    assert window.focusWidget() is after
    assert sheet._stage.overlay._focused is None


def test_a_part_walked_to_is_brought_into_view(worked: Hand) -> None:
    worked.view.centerOn(QPointF(-3000, -3000))
    worked.key(Qt.Key.Key_Tab)
    worked.view._scroller.finish()
    assert worked.view.viewport().rect().contains(worked.at(10, 10))


def test_the_pointer_takes_caret_and_ring_away(worked: Hand) -> None:
    worked.key(Qt.Key.Key_Tab)
    worked.click(15, 16)
    assert worked.view._stage.overlay._focused is None
    worked.key(Qt.Key.Key_Right)
    worked.click(15, 16)
    assert worked.view._hands.keyboard.caret is None
