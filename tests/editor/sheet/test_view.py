"""The view: zoom, scrolling, the empty sheet, themes, and what it must never do."""

import gc
import weakref

import pytest
import shiboken6
from PySide6.QtCore import QAbstractAnimation, QPoint, QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QImage, QPainter, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import move, remove
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor import theme as themes
from circuitcheck.editor.sheet import SheetView, zooming
from circuitcheck.editor.sheet.layer import Layer
from circuitcheck.editor.sheet.marks_item import MarksItem

from .conftest import Hand


@pytest.fixture
def worked(hand: Hand, row: Drawing) -> Hand:
    hand.show(row)
    return hand


def turn_wheel(hand: Hand, at: QPoint, notches: float, keys: Qt.KeyboardModifier) -> None:
    viewport = hand.view.viewport()
    event = QWheelEvent(
        QPointF(at),
        QPointF(viewport.mapToGlobal(at)),
        QPoint(),
        QPoint(0, round(120 * notches)),
        Qt.MouseButton.NoButton,
        keys,
        Qt.ScrollPhase.NoScrollPhase,
        False,
    )
    QApplication.sendEvent(viewport, event)


class TestZoom:
    @pytest.mark.parametrize("zoom", zooming.STEPS)
    def test_every_step_makes_a_square_whole_pixels(self, zoom: float) -> None:
        assert (16 * zoom).is_integer()

    def test_steps_go_up_and_down_and_stop_at_the_ends(self) -> None:
        assert zooming.step_up(1.0) == 1.25
        assert zooming.step_down(1.0) == 0.875
        assert zooming.step_up(0.8125) == 0.875
        assert zooming.step_down(0.8125) == 0.75
        assert zooming.step_up(4.0) == 4.0
        assert zooming.step_down(0.125) == 0.125

    def test_what_is_under_the_pointer_stays_there(self, worked: Hand) -> None:
        at = worked.at(20, 10)
        for _ in range(4):
            turn_wheel(worked, at, 1, Qt.KeyboardModifier.ControlModifier)
        assert worked.view.zoom == 2.0
        off = worked.at(20, 10) - at
        assert max(abs(off.x()), abs(off.y())) <= 2

    def test_half_notches_add_up(self, worked: Hand) -> None:
        at = worked.at(20, 10)
        turn_wheel(worked, at, 0.5, Qt.KeyboardModifier.ControlModifier)
        assert worked.view.zoom == 1.0
        turn_wheel(worked, at, 0.5, Qt.KeyboardModifier.ControlModifier)
        assert worked.view.zoom == 1.25

    def test_turning_back_begins_anew(self) -> None:
        notches = zooming.Notches(120)
        assert [notches.add(90), notches.add(-90), notches.add(-30)] == [0, 0, -1]

    def test_zoom_is_told(self, worked: Hand) -> None:
        told: list[float] = []
        worked.view.zoom_changed.connect(told.append)
        worked.view.zoom_in()
        worked.view.zoom_out()
        worked.view.zoom_out()
        worked.view.zoom_reset()
        assert told == [1.25, 1.0, 0.875, 1.0]

    def test_fit_shows_all(self, worked: Hand) -> None:
        worked.view.resize(500, 400)
        worked.view.fit()
        seen = worked.view._scroller.seen()
        assert seen.contains(worked.view._content.bounds())

    def test_what_was_fitted_stays_so_when_the_room_changes(self, worked: Hand) -> None:
        view = worked.view
        view.resize(900, 700)
        view.fit()
        large = view.zoom
        for width, height in ((500, 400), (420, 500), (900, 700)):
            view.resize(width, height)
            assert view._scroller.seen().contains(view._content.bounds())
            assert view.zoom == zooming.fitting(view._content.bounds(), view.contentsRect().size())
        assert view.zoom == large

    @pytest.mark.parametrize("leave", ["zoom", "scroll", "back and forth"])
    def test_what_was_looked_at_since_stays_where_it_is(self, worked: Hand, leave: str) -> None:
        view = worked.view
        view.resize(900, 700)
        view.fit()
        if leave == "scroll":
            turn_wheel(worked, QPoint(100, 100), 1, Qt.KeyboardModifier.NoModifier)
        else:
            view.zoom_in()
        zoom, corner = view.zoom, worked.at(0, 0)
        view.resize(500, 400)
        assert (view.zoom, worked.at(0, 0)) == (zoom, corner)
        if leave == "back and forth":
            view.fit()
            view.resize(900, 700)
            assert view._scroller.seen().contains(view._content.bounds()) and view.zoom > 0.5

    def test_what_fits_is_the_largest_sixteenth(self) -> None:
        assert zooming.fitting(QRectF(0, 0, 960, 100), QSize(1000, 1000)) == 1.0
        assert zooming.fitting(QRectF(0, 0, 970, 100), QSize(1000, 1000)) == 0.9375
        assert zooming.fitting(QRectF(0, 0, 1e6, 1e6), QSize(1000, 1000)) == 1 / 16
        assert zooming.fitting(QRectF(0, 0, 10, 10), QSize(1000, 1000)) == 1.5

    def test_crisp_some_time_after_the_last_step(self, worked: Hand, qtbot: QtBot) -> None:
        worked.view.zoom_in()
        assert not worked.view._content.lens.settled
        qtbot.waitUntil(lambda: worked.view._content.lens.settled, timeout=2000)

    def test_from_far_off_one_item_paints_all(self, worked: Hand) -> None:
        worked.view.select(("pump1",))
        worked.view.zoom_to(0.25)
        far = worked.view.scene()
        assert far is worked.view._content.far_scene
        assert len([item for item in far.items() if not isinstance(item, MarksItem | Layer)]) == 1
        assert not {layer for layer in worked.view._content._layers if layer.scene() is far}
        assert painted(worked.view) != painted_empty(worked.view)
        worked.view.zoom_to(0.375)
        assert worked.view.scene() is worked.view._content.scene

    def test_gestures_go_on_from_far_off(self, worked: Hand) -> None:
        worked.view.zoom_to(0.25)
        worked.view.centerOn(QPointF(320, 160))
        worked.drag((10, 10), (10, 20))
        assert worked.steps == ["Move pump"]


def painted(view: SheetView) -> QImage:
    return view.viewport().grab().toImage()


def painted_empty(view: SheetView) -> QImage:
    drawing = view._stage.drawing
    view.set_drawing(Drawing())
    view._invitation.hide()
    image = painted(view)
    view.set_drawing(drawing)
    return image


class TestScrolling:
    def test_the_wheel_scrolls_and_with_shift_sideways(self, worked: Hand) -> None:
        before = worked.at(0, 0)
        turn_wheel(worked, QPoint(100, 100), 1, Qt.KeyboardModifier.NoModifier)
        turn_wheel(worked, QPoint(100, 100), 1, Qt.KeyboardModifier.ShiftModifier)
        off = worked.at(0, 0) - before
        assert off.x() > 0 and off.y() > 0

    def test_bars_are_shown_only_where_something_is_out_of_view(self, worked: Hand) -> None:
        worked.view.fit()
        on = Qt.ScrollBarPolicy.ScrollBarAlwaysOn
        assert worked.view.horizontalScrollBarPolicy() != on
        worked.view.zoom_to(4.0)
        assert worked.view.horizontalScrollBarPolicy() == on
        assert worked.view.verticalScrollBarPolicy() == on

    def test_what_is_in_view_is_not_brought(self, worked: Hand) -> None:
        before = worked.at(0, 0)
        worked.view.bring_into_view(("pump1", "zv1"))
        worked.view._scroller.finish()
        assert worked.at(0, 0) == before

    def test_what_is_far_off_is_brought(self, worked: Hand) -> None:
        worked.view.centerOn(QPointF(20000, 20000))
        worked.view.bring_into_view(("zv1",))
        worked.view._scroller.finish()
        assert worked.view.viewport().rect().contains(worked.at(20, 10))

    def test_showing_all_stops_what_was_being_brought(self, worked: Hand) -> None:
        worked.view.fit()
        fitted = worked.view.zoom, worked.at(10, 10)
        worked.view.centerOn(QPointF(20000, 20000))
        worked.view.bring_into_view(("zv1",))
        worked.view.fit()
        worked.view._scroller.finish()
        assert (worked.view.zoom, worked.at(10, 10)) == fitted

    def test_what_is_on_its_way_is_there_at_once_where_the_view_goes(self, worked: Hand) -> None:
        scroller = worked.view._scroller
        scroller._from, scroller._to = QPointF(0, 0), QPointF(900, 700)
        scroller._animation.setDuration(10_000)
        scroller._animation.start()
        worked.view.hide()
        assert scroller._animation.state() == QAbstractAnimation.State.Stopped
        assert abs(scroller.seen().center().x() - 900) < 1.5

    def test_bars_that_make_one_another_come_and_go_come_to_an_end(
        self, worked: Hand, monkeypatch: pytest.MonkeyPatch
    ) -> None:
        scroller, asked = worked.view._scroller, list[bool]()

        def bar_comes() -> None:
            asked.append(True)
            if len(asked) < 50:
                # As a view does that is resized by it and keeps something in view.
                scroller.show_bars()

        monkeypatch.setattr(scroller, "_set_policies", bar_comes)
        scroller.show_bars()
        assert len(asked) == 1
        scroller.show_bars()
        assert len(asked) == 2

    def test_bringing_what_is_not_there_does_nothing(self, worked: Hand) -> None:
        before = worked.at(0, 0)
        worked.view.bring_into_view(("nothing",))
        assert worked.at(0, 0) == before


class TestEmptySheet:
    def test_it_invites_with_real_buttons_and_the_care_words(self, hand: Hand) -> None:
        invitation = hand.view._invitation
        assert invitation.isVisible()
        texts = [label.text() for label in invitation.findChildren(QLabel)]
        assert "Place the heat source first" in texts
        assert any("not a certificate" in text for text in texts)
        said: list[str] = []
        hand.view.place_heat_source.connect(lambda: said.append("place"))
        hand.view.open_drawing.connect(lambda: said.append("open"))
        hand.view.arrangement_wanted.connect(lambda: said.append("arrangement"))
        hand.view.tour_wanted.connect(lambda: said.append("tour"))
        for button in invitation.findChildren(QPushButton):
            button.click()
        assert said == ["place", "arrangement", "open", "tour"]

    def test_enter_places_the_heat_source(self, hand: Hand) -> None:
        said: list[bool] = []
        hand.view.place_heat_source.connect(lambda: said.append(True))
        hand.key(Qt.Key.Key_Return)
        assert said == [True]

    def test_it_goes_when_something_is_drawn_and_comes_back(self, hand: Hand, row: Drawing) -> None:
        hand.show(row)
        assert not hand.view._invitation.isVisible()
        hand.view.select_all()
        hand.view.remove_selection()
        assert hand.steps == ["Remove 3 parts and 1 pipe"]
        assert hand.view._invitation.isVisible()

    def test_it_stands_in_the_middle(self, hand: Hand) -> None:
        middle = hand.view._invitation.geometry().center() - hand.view.viewport().rect().center()
        assert abs(middle.x()) <= 1 and abs(middle.y()) <= 1


class TestShowing:
    def test_only_what_changed_is_made_anew(self, worked: Hand) -> None:
        content = worked.view._content
        before = {**content.parts, **content.pipes}
        worked.view.set_drawing(move(worked.drawing, ["ev1"], 2, 0))
        after = {**content.parts, **content.pipes}
        assert [id for id, shown in after.items() if shown is not before[id]] == ["ev1"]

    def test_the_same_drawing_again_makes_nothing_anew(self, worked: Hand) -> None:
        items = dict(worked.view._content.parts)
        worked.view.set_drawing(worked.drawing)
        assert worked.view._content.parts == items

    def test_what_is_gone_is_no_longer_selected(self, worked: Hand) -> None:
        worked.view.select(("pump1", "zv1"))
        worked.view.set_drawing(remove(worked.drawing, ["pump1"]))
        assert worked.view.selected_ids() == {"zv1"}
        assert worked.selections[-1] == {"zv1"}

    @pytest.mark.parametrize(
        "theme",
        [themes.light, themes.dark, themes.high_contrast_light, themes.high_contrast_dark],
        ids=lambda made: made.__name__,
    )
    def test_every_theme_paints_paper_and_ink(self, worked: Hand, theme: object) -> None:
        made = theme()  # type: ignore[operator]  # one of the four above
        worked.view.set_theme(made)
        worked.view.zoom_reset()
        image = painted(worked.view)
        colours = {image.pixelColor(x, y).name() for x in range(0, 900, 3) for y in range(100, 400, 3)}
        assert made.hex("paper") in colours
        assert made.hex("ink") in colours

    def test_texts_of_a_file_are_never_markup(self, worked: Hand) -> None:
        plain = painted_with_label(worked, "bPump/b")
        marked_up = painted_with_label(worked, "<b>Pump</b>")
        assert marked_up.size() == plain.size()
        (label,) = [worked.view._content.layout.labels["pump1"].lines]
        assert label[0] == "<b>Pump</b>"

    def test_parts_that_look_alike_share_one_pixmap(self, worked: Hand) -> None:
        painted(worked.view)
        made = len(worked.view._content.lens.pixmaps)
        worked.view.set_drawing(move(worked.drawing, ["zv1", "pump1", "ev1"], 3, 3))
        painted(worked.view)
        assert len(worked.view._content.lens.pixmaps) == made

    def test_a_dense_screen_gets_pixmaps_of_its_own(self, worked: Hand) -> None:
        painted(worked.view)
        made = len(worked.view._content.lens.pixmaps)
        image = QImage(1800, 1200, QImage.Format.Format_ARGB32_Premultiplied)
        image.setDevicePixelRatio(2.0)
        painter = QPainter(image)
        worked.view.render(painter)
        painter.end()
        assert len(worked.view._content.lens.pixmaps) == 2 * made


def painted_with_label(hand: Hand, label: str) -> QImage:
    from circuitcheck.drawing.edits import relabel

    hand.view.set_drawing(relabel(hand.drawing, "pump1", label))
    return painted(hand.view)


def test_a_screen_reader_finds_a_name_and_a_description(hand: Hand) -> None:
    assert hand.view.accessibleName() == "Sheet"
    assert "Tab" in hand.view.accessibleDescription()


def test_a_screen_reader_hears_the_part_that_the_walk_is_at(hand: Hand, row: Drawing) -> None:
    hand.show(row)
    hand.view.setFocus()
    heard = []
    for _ in range(2):
        QTest.keyClick(hand.view, Qt.Key.Key_Tab)
        (id,) = hand.view.selected_ids()
        heard.append(hand.view.accessibleDescription().partition(". ")[0])
        assert heard[-1].casefold() == row.name(id).casefold()
    assert heard[0] != heard[1]
    hand.view.select(())
    assert hand.view.accessibleDescription().startswith("The drawing.")


def test_twenty_sheets_open_and_close_and_leave_nothing(qtbot: QtBot, row: Drawing) -> None:
    left = []
    for _ in range(20):
        view = SheetView()
        view.resize(400, 300)
        view.show()
        view.set_drawing(row)
        view.select(("pump1",))
        view.grab()
        left.append((weakref.ref(view._content), view))
        view.close()
        view.deleteLater()
    QApplication.sendPostedEvents(None, 52)
    QApplication.processEvents()
    assert all(not shiboken6.isValid(view) for _, view in left)
    contents = [ref for ref, _ in left]
    left.clear()
    del view
    gc.collect()
    assert not [ref for ref in contents if ref() is not None]
