"""Gestures with the mouse: select, move, place, draw a pipe, shape it; each announced as one named step."""

import itertools
from types import MappingProxyType

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt
from PySide6.QtGui import QDragEnterEvent, QDragLeaveEvent, QDragMoveEvent, QDropEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from circuitcheck.drawing.layers import Over
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.dragging import mime_of
from circuitcheck.editor.sheet.painting import Tone
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds

from .conftest import Hand

SHIFT = Qt.KeyboardModifier.ShiftModifier
CONTROL = Qt.KeyboardModifier.ControlModifier


@pytest.fixture
def worked(hand: Hand, row: Drawing) -> Hand:
    hand.show(row)
    return hand


class TestSelect:
    def test_a_click_selects_a_part_and_the_next_another(self, worked: Hand) -> None:
        worked.click(10, 10)
        assert worked.view.selected_ids() == {"pump1"}
        worked.click(20, 10)
        assert worked.view.selected_ids() == {"zv1"}
        assert worked.selections == [{"pump1"}, {"zv1"}]
        assert worked.steps == []

    @pytest.mark.parametrize("keys", [SHIFT, CONTROL])
    def test_a_key_adds_and_takes_away(self, worked: Hand, keys: Qt.KeyboardModifier) -> None:
        worked.click(10, 10)
        worked.click(20, 10, keys)
        assert worked.view.selected_ids() == {"pump1", "zv1"}
        worked.click(10, 10, keys)
        assert worked.view.selected_ids() == {"zv1"}

    def test_a_click_on_one_of_many_selects_just_it(self, worked: Hand) -> None:
        worked.view.select(("pump1", "zv1"))
        worked.click(20, 10)
        assert worked.view.selected_ids() == {"zv1"}

    @pytest.mark.parametrize("off", [-0.3, 0, 0.3])
    def test_a_pipe_is_ten_px_wide_to_the_pointer(self, worked: Hand, off: float) -> None:
        worked.click(14, 10 + off)
        assert worked.view.selected_ids() == {"p1"}

    @pytest.mark.parametrize("zoom", [0.25, 0.5, 2.0])
    def test_a_pipe_is_at_least_eight_px_wide_at_any_zoom(self, worked: Hand, zoom: float) -> None:
        worked.view.zoom_to(zoom)
        worked.view.centerOn(QPointF(14 * 16, 160))
        for off_px in (-4, 4):
            worked.view.select(())
            worked.click(15, 10 + off_px / (16 * zoom))
            assert worked.view.selected_ids() == {"p1"}

    def test_an_empty_place_lets_go(self, worked: Hand) -> None:
        worked.click(10, 10)
        worked.click(15, 20)
        assert worked.view.selected_ids() == frozenset()

    def test_a_rubber_band_takes_in_what_lies_wholly_inside(self, worked: Hand) -> None:
        worked.drag((6, 5), (15, 14))
        assert worked.view.selected_ids() == {"pump1"}
        worked.drag((6, 5), (15, 14), (24, 14))
        assert worked.view.selected_ids() == {"pump1", "zv1", "p1"}

    def test_escape_in_a_rubber_band_selects_nothing(self, worked: Hand) -> None:
        worked.press(6, 5)
        worked.move(24, 14)
        worked.key(Qt.Key.Key_Escape)
        worked.release(24, 14)
        assert worked.view.selected_ids() == frozenset()

    def test_the_status_says_what_the_keys_do(self, worked: Hand) -> None:
        worked.click(10, 10)
        assert worked.hints[-1].startswith("Pump chosen.")


class TestMove:
    def test_a_part_goes_by_whole_squares_and_its_pipe_follows(self, worked: Hand) -> None:
        worked.drag((10, 10), (10.4, 11), (12.3, 13.4))
        assert worked.steps == ["Move pump"]
        assert worked.drawing.components["pump1"].at == Point(12, 13)
        assert worked.drawing.pipes["p1"].ends == (Joint("pump1", "out"), Joint("zv1", "in"))
        assert worked.view.selected_ids() == {"pump1"}

    def test_while_it_is_dragged_the_pipe_is_shown_and_nothing_is_announced(self, worked: Hand) -> None:
        before = worked.drawing
        worked.press(10, 10)
        worked.move(10, 14)
        assert worked.steps == []
        assert worked.view._content.layout.lines["p1"][0] == (11 * 16, 14 * 16)
        worked.move(10, 10)
        worked.release(10, 10)
        assert worked.steps == []
        assert worked.drawing is before
        assert worked.view._content.layout.lines["p1"][0] == (11 * 16, 10 * 16)

    def test_what_is_announced_lies_over_nothing(self, worked: Hand) -> None:
        """A preview is gone at once; who goes over all parts of a drawing that stays should not take longer."""
        worked.press(10, 10)
        worked.move(10, 14)
        assert isinstance(worked.view._content.drawing.components, Over)
        worked.release(10, 14)
        assert worked.steps == ["Move pump"]
        assert isinstance(worked.drawing.components, MappingProxyType)

    def test_many_move_as_one_step(self, worked: Hand) -> None:
        worked.view.select(("pump1", "zv1", "ev1"))
        worked.drag((20, 10), (20, 12))
        assert worked.steps == ["Move 3 parts"]
        assert [part.at for part in worked.drawing.components.values()] == [(10, 12), (20, 12), (28, 18)]

    def test_a_hand_that_shakes_does_not_move(self, worked: Hand) -> None:
        worked.drag((10, 10), (10.1, 10.1))
        assert worked.steps == []

    def test_escape_puts_everything_back(self, worked: Hand) -> None:
        worked.press(10, 10)
        worked.move(10, 14)
        worked.key(Qt.Key.Key_Escape)
        worked.release(10, 14)
        assert worked.steps == []
        assert worked.view._content.parts["pump1"].view.at == (160, 160)

    def test_another_drawing_underneath_leaves_the_gesture(self, worked: Hand, row: Drawing) -> None:
        worked.press(10, 10)
        worked.move(10, 14)
        worked.view.set_drawing(Drawing(components={"pump1": row.components["pump1"]}))
        worked.move(10, 16)
        worked.release(10, 16)
        assert worked.steps == []

    def test_without_an_owner_the_sheet_shows_what_it_had(self, worked: Hand) -> None:
        worked.view.edited.disconnect()
        worked.drag((10, 10), (10, 14))
        assert worked.view._content.parts["pump1"].view.at == (160, 160)

    def test_a_valve_that_stands_free_is_dropped_into_a_pipe(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["check_valve"])
        worked.click(14, 16)
        worked.drag((14, 16), (14, 13), (15, 10))
        assert worked.steps == ["Place check valve", "Cut in check valve"]
        valve = worked.drawing.components["cv1"]
        assert valve.at == Point(15, 10)
        joined = worked.drawing.joined
        assert joined[Joint("pump1", "out")] == joined[Joint("cv1", "in")]
        assert joined[Joint("zv1", "in")] == joined[Joint("cv1", "out")]
        assert worked.view.selected_ids() == {"cv1"}

    def test_dragged_on_past_the_pipe_it_is_whole(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["check_valve"])
        worked.click(14, 16)
        worked.drag((14, 16), (14, 10), (16, 10), (14, 5))
        assert worked.steps == ["Place check valve", "Move check valve"]
        assert worked.drawing.pipes.keys() == {"p1"}

    def test_a_part_moved_onto_a_free_end_takes_it_up(self, worked: Hand) -> None:
        worked.drag((21, 10), (26, 10))
        worked.view.begin_placing(kinds()["strainer"])
        worked.click(14, 18)
        worked.drag((14, 18), (20, 14), (27, 10))
        assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Joint("strainer1", "in"))


class TestPlace:
    def test_a_click_places_one_and_the_hand_is_empty(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["drain"])
        worked.move(14.3, 16.4)
        worked.click(14.3, 16.4)
        worked.click(5, 16)
        assert worked.steps == ["Place drain"]
        assert worked.drawing.components["drain1"].at == Point(14, 16)
        assert worked.view.selected_ids() == frozenset()

    def test_what_was_placed_is_selected(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["drain"])
        worked.click(14, 16)
        assert worked.view.selected_ids() == {"drain1"}

    def test_until_it_is_placed_it_is_only_shown(self, worked: Hand) -> None:
        before = worked.drawing
        worked.view.begin_placing(kinds()["drain"])
        worked.move(14, 16)
        assert worked.drawing is before
        assert worked.view._content.parts["drain1"].view.palette.tone is Tone.CHOSEN
        worked.key(Qt.Key.Key_Escape)
        assert "drain1" not in worked.view._content.parts
        assert worked.steps == []

    def test_r_turns_and_m_mirrors_what_is_in_hand(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["safety_valve"])
        worked.move(14, 16)
        worked.key(Qt.Key.Key_R)
        worked.key(Qt.Key.Key_M)
        worked.click(14, 16)
        valve = worked.drawing.components["sv1"]
        assert (valve.turn, valve.mirrored) == (90, True)

    def test_the_menu_turns_what_is_in_hand_too(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["safety_valve"])
        worked.view.turn_selection()
        worked.view.mirror_selection()
        worked.view.remove_selection()
        worked.click(14, 16)
        valve = worked.drawing.components["sv1"]
        assert (valve.turn, valve.mirrored) == (90, True)

    def test_shift_places_one_more(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["drain"])
        worked.click(14, 16, SHIFT)
        worked.click(16, 16)
        worked.click(5, 16)
        assert worked.steps == ["Place drain", "Place drain"]

    def test_a_setting_keeps_the_kind_in_hand(self, worked: Hand) -> None:
        worked.view.keep_placing = True
        worked.view.begin_placing(kinds()["drain"])
        for x in (12, 14, 16):
            worked.click(x, 16)
        worked.key(Qt.Key.Key_Escape)
        worked.click(18, 16)
        assert len(worked.steps) == 3

    def test_on_a_pipe_it_is_cut_in(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["isolating_valve"])
        worked.move(15, 10.2)
        assert len(worked.view._content.pipes) == 2
        worked.click(15, 10.2)
        assert worked.steps == ["Cut in isolating valve"]
        valve = worked.drawing.components["iv1"]
        assert valve.at == Point(15, 10)
        joined = worked.drawing.joined
        assert {Joint("iv1", "a"), Joint("iv1", "b")} <= joined.keys()
        assert joined[Joint("pump1", "out")] == joined[Joint("iv1", "a")]

    @pytest.mark.parametrize("key", [Qt.Key.Key_R, Qt.Key.Key_M])
    def test_on_a_pipe_r_and_m_turn_it_round(self, worked: Hand, key: Qt.Key) -> None:
        worked.view.begin_placing(kinds()["check_valve"])
        worked.move(15, 10)
        worked.key(key)
        worked.click(15, 10)
        joined = worked.drawing.joined
        assert joined[Joint("pump1", "out")] == joined[Joint("cv1", "out")]
        assert joined[Joint("zv1", "in")] == joined[Joint("cv1", "in")]
        worked.key(key)
        assert worked.steps == ["Cut in check valve", "Turn round check valve"]
        joined = worked.drawing.joined
        assert joined[Joint("pump1", "out")] == joined[Joint("cv1", "in")]
        assert worked.drawing.components["cv1"].at == Point(15, 10)

    def test_a_pipe_shown_as_cut_is_whole_again_when_the_hand_moves_on(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["isolating_valve"])
        for x in (13, 14, 15, 16):
            worked.move(x, 10.1)
        worked.move(15, 16)
        assert worked.view._content.pipes.keys() == {"p1"}

    def test_a_part_without_a_way_through_is_not_cut_in(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["expansion_vessel"])
        worked.click(15, 10)
        assert worked.steps == ["Place expansion vessel"]

    def test_a_free_end_is_taken_up(self, worked: Hand) -> None:
        worked.drag((21, 10), (26, 10))
        worked.view.begin_placing(kinds()["strainer"])
        worked.click(27, 10)
        assert worked.steps == ["Draw pipe", "Place strainer"]
        assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Joint("strainer1", "in"))

    def test_a_control_is_placed_like_a_part(self, worked: Hand) -> None:
        worked.view.begin_placing(kinds()["room_thermostat"])
        worked.click(14, 4)
        (control,) = worked.drawing.controls.values()
        assert control.at == Point(14, 4)
        assert worked.view.selected_ids() == {control.id}


class TestDrop:
    def drop(self, hand: Hand, x: float, y: float, carried: QMimeData, *, leave: bool = False) -> bool:
        viewport, place = hand.view.viewport(), hand.at(x, y)
        action, button = Qt.DropAction.CopyAction, Qt.MouseButton.LeftButton
        keys = Qt.KeyboardModifier.NoModifier
        enter = QDragEnterEvent(place, action, carried, button, keys)
        QApplication.sendEvent(viewport, enter)
        QApplication.sendEvent(viewport, QDragMoveEvent(place, action, carried, button, keys))
        if leave:
            QApplication.sendEvent(viewport, QDragLeaveEvent())
        else:
            QApplication.sendEvent(viewport, QDropEvent(QPointF(place), action, carried, button, keys))
        return enter.isAccepted()

    def test_a_part_is_placed_where_it_is_dropped(self, worked: Hand) -> None:
        assert self.drop(worked, 14, 16, mime_of(kinds()["drain"]))
        assert worked.steps == ["Place drain"]
        assert worked.drawing.components["drain1"].at == Point(14, 16)

    def test_a_valve_dropped_on_a_pipe_is_cut_in(self, worked: Hand) -> None:
        self.drop(worked, 15, 10, mime_of(kinds()["isolating_valve"]))
        assert worked.steps == ["Cut in isolating valve"]

    def test_what_leaves_again_is_not_placed(self, worked: Hand) -> None:
        self.drop(worked, 14, 16, mime_of(kinds()["drain"]), leave=True)
        assert worked.steps == []
        assert "drain1" not in worked.view._content.parts

    def test_anything_else_is_not_taken(self, worked: Hand) -> None:
        text = QMimeData()
        text.setText("drain")
        assert not self.drop(worked, 14, 16, text)
        unknown = QMimeData()
        unknown.setData("application/x-circuitcheck-kind", b"steam_engine")
        assert not self.drop(worked, 14, 16, unknown)
        assert worked.steps == []


class TestDrawPipe:
    def test_from_port_to_port_with_one_press_move_release(self, worked: Hand) -> None:
        worked.drag((21, 10), (24, 12), (28.2, 14.1))
        assert worked.steps == ["Draw pipe"]
        assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Joint("ev1", "connection"))
        assert worked.view.selected_ids() == {"p2"}

    def test_the_rubber_line_is_routed_square(self, worked: Hand) -> None:
        worked.press(21, 10)
        worked.move(26, 20)
        line = worked.view._content.layout.routed("p2")
        assert line[0] == Point(21, 10) and line[-1] == Point(26, 20)
        assert all(a.x == b.x or a.y == b.y for a, b in itertools.pairwise(line))
        assert worked.steps == []
        worked.release(26, 20)

    def test_into_the_open_its_end_is_free(self, worked: Hand) -> None:
        worked.drag((21, 10), (26.2, 20.3))
        assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Point(26, 20))
        assert worked.view._content.pipes["p2"].view.free == (False, True)

    def test_onto_a_pipe_it_makes_the_tee(self, worked: Hand) -> None:
        worked.drag((28, 14), (28, 8), (15.2, 8), (15.1, 10.1))
        assert worked.steps == ["Draw pipe"]
        (tee,) = [part for part in worked.drawing.components.values() if part.kind.name == "tee"]
        assert tee.at == Point(15, 10)
        assert {port for part, port in worked.drawing.joined if part == tee.id} == {"a", "b", "branch"}

    def test_along_a_pipe_the_tee_goes_with_the_pointer(self, worked: Hand) -> None:
        worked.press(28, 14)
        seen = []
        for x in (13, 14, 15, 16, 17):
            worked.move(x, 10.1)
            parts = worked.view._content.drawing.components.values()
            seen.append([part.at for part in parts if part.kind.name == "tee"])
        worked.release(17, 10.1)
        assert seen == [[Point(x, 10)] for x in (13, 14, 15, 16, 17)]

    def test_a_free_end_is_drawn_on_to_a_port(self, worked: Hand) -> None:
        worked.drag((21, 10), (24, 10))
        worked.drag((24, 10), (28, 14))
        assert worked.steps == ["Draw pipe", "Join pipe"]
        assert worked.drawing.pipes["p2"].ends == (Joint("zv1", "out"), Joint("ev1", "connection"))

    def test_from_a_port_to_a_free_end_there_is_one_pipe(self, worked: Hand) -> None:
        worked.drag((21, 10), (24, 10))
        worked.drag((28, 14), (24, 10))
        assert worked.drawing.pipes.keys() == {"p1", "p2"}
        assert worked.drawing.pipes["p2"].joints == (Joint("zv1", "out"), Joint("ev1", "connection"))

    def test_two_free_ends_make_one_pipe(self, worked: Hand) -> None:
        worked.drag((21, 10), (24, 10))
        worked.drag((28, 14), (28, 12))
        worked.drag((28, 12), (24, 10))
        assert len(worked.drawing.pipes) == 2
        assert worked.drawing.joined[Joint("zv1", "out")] == worked.drawing.joined[Joint("ev1", "connection")]

    def test_back_where_it_began_there_is_no_pipe(self, worked: Hand) -> None:
        worked.drag((21, 10), (24, 10), (21, 10))
        assert worked.steps == []
        assert worked.view._content.pipes.keys() == {"p1"}

    def test_escape_leaves_the_drawing_as_it_is(self, worked: Hand) -> None:
        worked.press(21, 10)
        worked.move(26, 20)
        worked.key(Qt.Key.Key_Escape)
        worked.release(26, 20)
        assert worked.steps == []
        assert worked.view._content.pipes.keys() == {"p1"}

    def test_a_click_on_a_port_selects_its_part(self, worked: Hand) -> None:
        worked.click(21, 10)
        assert worked.view.selected_ids() == {"zv1"}

    def test_a_port_that_has_a_pipe_begins_none(self, worked: Hand) -> None:
        worked.drag((19, 10), (19, 14))
        assert worked.steps == ["Move zone valve"]


class TestShapePipe:
    def test_a_run_is_dragged_across(self, worked: Hand) -> None:
        worked.drag((15, 10), (15, 11), (15, 13))
        assert worked.steps == ["Shape pipe"]
        assert worked.drawing.pipes["p1"].via == (Point(11, 13), Point(19, 13))

    def test_dragged_back_it_is_as_it_was(self, worked: Hand) -> None:
        worked.drag((15, 10), (15, 13), (15, 10))
        assert worked.steps == []

    def test_a_run_between_corners_keeps_its_neighbours(self, worked: Hand) -> None:
        worked.drag((15, 10), (15, 13))
        worked.drag((15, 13), (15, 15))
        assert worked.drawing.pipes["p1"].via == (Point(11, 15), Point(19, 15))

    def test_a_pipe_dragged_straight_has_no_corners(self, worked: Hand) -> None:
        worked.drag((15, 10), (15, 13))
        worked.drag((15, 13), (15, 10))
        assert worked.drawing.pipes["p1"].via == ()


class TestPan:
    def test_the_middle_button_takes_hold_of_the_paper(self, worked: Hand) -> None:
        viewport = worked.view.viewport()
        before = worked.at(0, 0)
        QTest.mousePress(viewport, Qt.MouseButton.MiddleButton, pos=QPoint(300, 300))
        worked_at = worked.view.mapToScene(QPoint(340, 320))
        worked.move(worked_at.x() / 16, worked_at.y() / 16)
        QTest.mouseRelease(viewport, Qt.MouseButton.MiddleButton, pos=QPoint(340, 320))
        assert worked.at(0, 0) - before == QPoint(40, 20)
        assert worked.steps == []

    def test_so_does_the_space_bar(self, worked: Hand) -> None:
        before = worked.at(0, 0)
        QTest.keyPress(worked.view, Qt.Key.Key_Space)
        worked.press(10, 10)
        worked.move(12, 11)
        worked.release(12, 11)
        QTest.keyRelease(worked.view, Qt.Key.Key_Space)
        assert worked.at(0, 0) - before == QPoint(32, 16)
        assert worked.steps == []

    def test_the_paper_has_no_end(self, worked: Hand) -> None:
        for _ in range(20):
            QTest.mousePress(worked.view.viewport(), Qt.MouseButton.MiddleButton, pos=QPoint(100, 300))
            place = worked.view.mapToScene(QPoint(700, 300))
            worked.move(place.x() / 16, place.y() / 16)
            QTest.mouseRelease(worked.view.viewport(), Qt.MouseButton.MiddleButton, pos=QPoint(700, 300))
        assert worked.at(10, 10).x() > 8000


class TestHover:
    def test_a_part_under_the_pointer_shows_its_ports(self, worked: Hand) -> None:
        QTest.mouseMove(worked.view.viewport(), worked.at(10, 10))
        assert worked.view._stage.overlay._hovered == "pump1"
        QTest.mouseMove(worked.view.viewport(), worked.at(15, 16))
        assert worked.view._stage.overlay._hovered is None

    def test_the_place_of_the_pointer_is_told_in_squares(self, worked: Hand) -> None:
        told: list[Point] = []
        worked.view.pointer_at.connect(told.append)
        QTest.mouseMove(worked.view.viewport(), worked.at(14.3, 16.4))
        assert told[-1] == Point(14, 16)
