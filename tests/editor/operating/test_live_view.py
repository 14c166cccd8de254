"""A drawing at work, driven as an apprentice would: by the mouse on the drawing, and by keys alone."""

from __future__ import annotations

import itertools
import json
from collections.abc import Iterator
from dataclasses import replace
from threading import Event

import pytest
from PySide6.QtCore import QLocale, QPoint, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLabel, QRadioButton
from pytestqt.qtbot import QtBot

from circuitcheck.cli import run
from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.operating.bar import Shown
from circuitcheck.editor.operating.live_view import LiveView
from circuitcheck.editor.theme import dark, high_contrast_dark
from circuitcheck.operating.positions import Positions
from circuitcheck.sheet.layout import Layout
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from circuitcheck.wanted import go_on
from tests.benchmarks.laid_out import houses
from tests.made import made

LARGE = 300

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]


def sample(name: str = "terrace-as-proposed") -> Drawing:
    return read(data_path("samples") / f"{name}.wetcircuit")


@pytest.fixture
def view(qtbot: QtBot) -> Iterator[LiveView]:
    made_view = LiveView(closable=True)
    qtbot.addWidget(made_view)
    made_view.resize(1280, 860)
    made_view.show()
    qtbot.waitExposed(made_view)
    yield made_view
    made_view.close_down()


def settled(view: LiveView, qtbot: QtBot) -> None:
    """Wait until what stands is solved, and its course is known."""
    qtbot.waitUntil(lambda: view.standing is not None and not view.is_busy, timeout=30_000)
    assert view.standing is not None and view.standing.positions == view.positions


def solved(view: LiveView, qtbot: QtBot) -> None:
    """Wait until what stands is solved; its course, which takes longest, is given up with the next standing."""
    qtbot.waitUntil(
        lambda: view.standing is not None and view.standing.positions == view.positions, timeout=30_000
    )


def where(view: LiveView, id: str) -> QPoint:
    """The middle of a part or of a pipe's longest run, in px of the view."""
    sheet = view.sheet
    line = sheet.content.layout.lines.get(id)
    if line:
        runs = sorted(
            itertools.pairwise(line), key=lambda run: -abs(run[1][0] - run[0][0]) - abs(run[1][1] - run[0][1])
        )
        (x0, y0), (x1, y1) = runs[0]
        place = QPointF((x0 + x1) / 2, (y0 + y1) / 2)
    else:
        place = sheet.content.box(id).center()
    return sheet.viewportTransform().map(place).toPoint()


def click(view: LiveView, id: str) -> None:
    QTest.mouseClick(
        view.sheet.viewport(), Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, where(view, id)
    )


def positions(view: LiveView) -> Positions:
    assert view.positions is not None
    return view.positions


def test_it_opens_in_the_first_situation_and_water_is_seen_to_move(view: LiveView, qtbot: QtBot) -> None:
    seen: list[Positions] = []
    view.positions_changed.connect(seen.append)
    view.show_drawing(sample())
    settled(view, qtbot)
    assert seen == [positions(view)] and positions(view).name == "heating only"
    assert view.sheet.is_moving
    moving = {id for id, pipe in view.standing.flows.pipes.items() if not pipe.is_still}  # type: ignore[union-attr]
    assert moving and "p1" in view.standing.flows.pipes  # type: ignore[union-attr]
    assert len(view.sheet.frames) > 0
    view.bar.moving.setChecked(False)
    assert not view.sheet.is_moving
    view.bar.moving.setChecked(True)
    assert view.sheet.is_moving
    view.hide()
    assert not view.sheet.is_moving


def test_a_click_on_a_valve_turns_it_and_the_drawing_stays_as_it_was(view: LiveView, qtbot: QtBot) -> None:
    drawing = sample()
    view.show_drawing(drawing)
    solved(view, qtbot)
    click(view, "zv_store")
    assert positions(view).shut == frozenset() and positions(view).is_own
    solved(view, qtbot)
    assert view.standing is not None and view.standing.through["store"] > 5
    click(view, "zv_rooms")
    solved(view, qtbot)
    assert positions(view).shut == {"zv_rooms"} and view.standing.through["rooms"] == 0
    click(view, "pump")
    click(view, "source")
    solved(view, qtbot)
    assert not positions(view).running and not positions(view).firing
    assert all(pipe.is_still for pipe in view.standing.flows.pipes.values()) and not view.sheet.is_moving
    assert view.drawing is drawing and view.sheet.content.drawing is drawing


def test_a_press_on_what_cannot_be_turned_and_a_drag_turn_nothing(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    before = positions(view)
    click(view, "filter")
    sheet = view.sheet.viewport()
    start = where(view, "zv_store")
    QTest.mousePress(sheet, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start)
    QTest.mouseMove(sheet, start + QPoint(40, 10))
    QTest.mouseRelease(
        sheet, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier, start + QPoint(40, 10)
    )
    assert positions(view) is before


def test_a_pipe_that_is_pressed_is_told_in_full(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    pipe = next(id for id, each in view.standing.flows.pipes.items() if each.flow_lpm > 10)  # type: ignore[union-attr]
    click(view, pipe)
    assert view.sheet.chosen_id == pipe and "l/min towards" in view.bar.said and "m/s" in view.bar.said


def test_by_keys_alone_a_valve_is_reached_turned_and_left(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    left: list[bool] = []
    view.left.connect(lambda: left.append(True))
    sheet = view.sheet
    sheet.setFocus()
    seen = set()
    for _ in range(30):
        QTest.keyClick(sheet, Qt.Key.Key_Tab)
        if sheet.here is None:
            break
        seen.add(sheet.here)
    assert {"source", "pump", "zv_rooms", "zv_store", "stop", "vessel"} <= seen and "filter" not in seen
    sheet.setFocus()
    while sheet.here != "zv_store":
        QTest.keyClick(sheet, Qt.Key.Key_Tab)
    assert "Store valve" in sheet.accessibleDescription()
    QTest.keyClick(sheet, Qt.Key.Key_Space)
    assert "zv_store" not in positions(view).shut
    QTest.keyClick(sheet, Qt.Key.Key_Return)
    assert "zv_store" in positions(view).shut
    QTest.keyClick(sheet, Qt.Key.Key_Left)
    assert sheet.here not in (None, "zv_store")
    QTest.keyClick(sheet, Qt.Key.Key_Escape)
    assert sheet.here is None and not left
    QTest.keyClick(sheet, Qt.Key.Key_Escape)
    assert left == [True]


def test_the_lists_do_the_same_and_say_how_everything_stands(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    solved(view, qtbot)
    radios = [each for each in view.side.situations.findChildren(QRadioButton) if not each.isHidden()]
    assert [each.text() for each in radios][:3] == ["Heating only", "Hot water only", "Heating and hot water"]
    assert radios[-1].text() == "Your own" and radios[0].isChecked()
    radios[3].click()
    assert positions(view).name == "pump run-on"
    solved(view, qtbot)
    tree = view.side.valves
    items = (tree.topLevelItem(place) for place in range(tree.topLevelItemCount()))
    rows = {item.text(0): item for item in items if item is not None}
    assert rows["Pump"].text(1) == "runs" and rows["Heat source"].text(1) == "off"
    assert rows["Rooms valve"].text(1) == "shut" and rows["Pump: its valves"].text(1) == "open"
    assert "Store vessel" not in rows, "the store's vessel has no part in the heating"
    tree.setCurrentItem(rows["Pump: its valves"])
    tree.setFocus()
    QTest.keyClick(tree, Qt.Key.Key_Space)
    assert "pump" in positions(view).shut and radios[-1].isChecked()
    solved(view, qtbot)
    assert rows["Pump: its valves"].data(0, Qt.ItemDataRole.AccessibleTextRole) == "Pump: its valves, shut"


def test_numbers_on_the_screen_are_those_of_the_figures(
    view: LiveView, qtbot: QtBot, capsys: pytest.CaptureFixture[str]
) -> None:
    """Read off the sheet beside the pipes, against `circuitcheck sizes`, in every situation that is pumped."""
    drawing = sample()
    run(["sizes", "--as", "json", str(data_path("samples") / "terrace-as-proposed.wetcircuit")])
    (figure,) = [each for each in json.loads(capsys.readouterr().out)["figures"] if each["figure"] == "flows"]
    known = {each["name"]: each["value"] for each in figure["results"]}
    view.show_drawing(drawing)
    solved(view, qtbot)
    decimal = QLocale().decimalPoint()
    for name, said in (
        ("heating only", "heating only"),
        ("hot water only", "hot water only"),
        ("both", "heating and hot water together"),
        ("pump run-on", "pump run-on"),
    ):
        view.choose(name)
        solved(view, qtbot)
        told = float(known[f"{said}: Heat source"])
        source_pipe = drawing.joined[next(j for j in drawing.joined if j == ("source", "flow"))]
        texts = set(view.sheet.marks.figures.values())
        assert f"{told:.1f} l/min".replace(".", decimal) in texts
        assert view.standing is not None
        assert abs(view.standing.flows.pipes[source_pipe].flow_lpm) == pytest.approx(told, rel=1e-5)


@pytest.mark.parametrize(
    "shown", [Shown.TEMPERATURE, Shown.PRESSURE, Shown.VELOCITY, Shown.LOSS, Shown.NOTHING]
)
def test_what_stands_by_the_pipes_can_be_chosen(view: LiveView, qtbot: QtBot, shown: Shown) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    view.bar.shown.setCurrentIndex(view.bar.shown.findData(shown))
    texts = set(view.sheet.marks.figures.values())
    unit = {Shown.TEMPERATURE: "°C", Shown.PRESSURE: "bar", Shown.VELOCITY: "m/s", Shown.LOSS: "Pa"}.get(
        shown
    )
    assert all(unit in text for text in texts) if unit else not texts
    assert bool(texts) is (unit is not None)


def test_what_valves_cut_off_is_tinted_and_said(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample("terrace-valve-before-vessel"), shut=("pump", "return_valve"))
    solved(view, qtbot)
    assert positions(view).shut == {"pump", "return_valve"} and positions(view).firing == {"source"}
    assert view.bar.said.startswith("Heat source is cut off from its expansion vessel.")
    assert view.sheet.marks.below_is_shown
    view.turn("return_valve")
    solved(view, qtbot)
    assert not view.sheet.marks.below_is_shown and "cut off" not in view.bar.said


def test_missing_numbers_are_said_with_a_way_to_fill_them_in(view: LiveView, qtbot: QtBot) -> None:
    drawing = made(
        {"hs": "heat_source", "p": "pump", "r": "radiator"},
        "hs.flow - p.in\n p.out - r.flow\n r.return - hs.return",
        at={"hs": (0, 0), "p": (8, 0), "r": (14, 4)},
    )
    view.show_drawing(drawing)
    settled(view, qtbot)
    wanted: list[object] = []
    view.fill_in_wanted.connect(wanted.append)
    assert "missing" in view.bar.said and view.bar.fill_in.isVisible()
    view.bar.fill_in.click()
    assert wanted and "p.shut_off_head_m" in wanted[0]  # type: ignore[operator]
    assert view.player is not None and view.player.fill_in.isVisible() and not view.player.play.isEnabled()
    view.player.fill_in.click()
    assert "hs.output_kw" in wanted[1]  # type: ignore[operator]


def test_an_empty_drawing_and_one_without_heat_are_harmless(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(Drawing())
    settled(view, qtbot)
    assert positions(view).name == "as drawn" and view.player is not None
    QTest.keyClick(view.sheet, Qt.Key.Key_Tab)
    view.show_drawing(made({"iv": "isolating_valve"}, "", at={"iv": (0, 0)}))
    settled(view, qtbot)
    click(view, "iv")
    assert positions(view).shut == {"iv"}


def test_an_edit_is_followed_with_everything_as_it_stands(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    solved(view, qtbot)
    view.press("zv_store")
    solved(view, qtbot)
    stands = positions(view)
    view.follow(sample())
    solved(view, qtbot)
    assert positions(view) == stands


def test_every_theme_is_shown_and_a_compact_view_has_its_own_choice(view: LiveView, qtbot: QtBot) -> None:
    for theme in (dark(), high_contrast_dark()):
        view.set_theme(theme)
    view.show_drawing(sample(), situation="both", shut=("rooms",))
    settled(view, qtbot)
    assert positions(view).shut == {"rooms"} and not view.grab().isNull()
    small = LiveView(compact=True, chart=False)
    qtbot.addWidget(small)
    small.resize(600, 400)
    small.show()
    small.show_drawing(sample())
    settled(small, qtbot)
    assert small.side.isHidden() and small.bar.situation.isVisible() and small.player is None
    small.bar.situation.setCurrentIndex(2)
    small.bar.situation.activated.emit(2)
    assert positions(small).name == "both"
    small.close_down()


def test_a_frame_paints_the_sheet_from_the_picture_there_is(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    sheet = view.sheet
    sheet.viewport().repaint()
    picture, seen = sheet._picture, len(sheet.frames)
    for _ in range(5):
        sheet._next_frame()
        sheet.viewport().repaint()
    assert sheet.is_moving and len(sheet.frames) >= seen + 5
    assert picture is not None and sheet._picture is picture
    sheet.zoom_in()
    assert sheet._picture is not picture


def test_what_is_read_stays_in_its_place_while_time_runs(view: LiveView, qtbot: QtBot) -> None:
    view.show_drawing(sample())
    settled(view, qtbot)
    view.bar.shown.setCurrentIndex(list(Shown).index(Shown.TEMPERATURE))
    assert view.player is not None
    marks = view.sheet.marks
    places: list[dict[tuple[str, ...], object]] = []
    for at_s in (1200.0, 1205.0):
        view.player.chart.moved.emit(at_s)
        places.append({ids: stands for (_, ids), stands in marks._places._stand.items()})
    first, then = places
    assert len(first) > 5 and {first[ids] == then[ids] for ids in first.keys() & then.keys()} == {True}


class TestLargeDrawing:
    """It is laid out beside the window, as on the sheet that it is drawn on."""

    @pytest.fixture
    def gate(self, monkeypatch: pytest.MonkeyPatch) -> Iterator[Event]:
        """Holds up what is laid out beside the window until it is set, or no longer wanted."""
        opened = Event()
        update = Layout.update

        def waits(
            layout: Layout, drawing: Drawing, *, passing: bool = False, hurried: bool = False
        ) -> object:
            while len(drawing.components) > LARGE / 2 and not opened.wait(0.001):
                go_on()
            return update(layout, drawing, passing=passing, hurried=hurried)

        monkeypatch.setattr(Layout, "update", waits)
        yield opened
        opened.set()

    def words(self, view: LiveView) -> list[str]:
        return [label.text() for label in view.sheet.viewport().findChildren(QLabel) if not label.isHidden()]

    def test_it_is_shown_once_it_lies_there_with_all_that_stands_on_it(
        self, view: LiveView, gate: Event, qtbot: QtBot
    ) -> None:
        large = replace(houses(LARGE))
        view.show_drawing(sample())
        settled(view, qtbot)
        assert view.sheet.marks.runs
        view.show_drawing(large)
        assert "The drawing is being laid out…" in self.words(view)
        assert not view.sheet.content.parts and not view.sheet.marks.runs
        qtbot.waitUntil(lambda: view.standing is not None, timeout=60_000)
        view.sheet.fit()
        QTest.mouseClick(view.sheet.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(200, 200))
        assert view.sheet.is_laying_out
        assert not view.sheet.marks.runs
        gate.set()
        qtbot.waitUntil(lambda: not view.sheet.is_laying_out, timeout=60_000)
        assert self.words(view) == []
        assert view.sheet.content.drawing is large and view.sheet.marks.runs
        assert view.sheet._scroller.seen().contains(view.sheet.content.bounds())

    def test_leaving_does_not_wait_for_it(self, view: LiveView, gate: Event, qtbot: QtBot) -> None:
        view.show_drawing(replace(houses(LARGE)))
        qtbot.wait(30)
        assert self.words(view) != []
        view.close_down()
        assert not view.sheet.is_laying_out
        assert not gate.is_set()

    def test_another_drawing_is_shown_at_once(self, view: LiveView, gate: Event, qtbot: QtBot) -> None:
        view.show_drawing(replace(houses(LARGE)))
        qtbot.wait(30)
        small = sample()
        view.show_drawing(small)
        assert view.sheet.content.drawing is small and self.words(view) == []
        settled(view, qtbot)
        assert view.sheet.marks.runs
