"""Computed time: play, pause, begin anew, the chart's curves and levels, and valves turned on the way."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace

import pytest
from PySide6.QtCore import QLocale, QPoint, Qt
from PySide6.QtTest import QTest
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.filling_in import set_field
from circuitcheck.editor.operating.chart import Chart, Level, Line, Pictured, clock, said_value, scale
from circuitcheck.editor.operating.live_view import LiveView
from circuitcheck.editor.operating.player import Player
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]


@pytest.fixture
def view(qtbot: QtBot) -> Iterator[LiveView]:
    made = LiveView()
    qtbot.addWidget(made)
    made.resize(1280, 860)
    made.show()
    qtbot.waitExposed(made)
    yield made
    made.close_down()


def shown(view: LiveView, qtbot: QtBot, name: str, **how: object) -> Player:
    view.show_drawing(read(data_path("samples") / f"{name}.wetcircuit"), **how)  # type: ignore[arg-type]
    settled(view, qtbot)
    assert view.player is not None
    return view.player


def settled(view: LiveView, qtbot: QtBot) -> None:
    qtbot.waitUntil(lambda: view.standing is not None and not view.is_busy, timeout=40_000)


def go(view: LiveView, seconds: float) -> None:
    assert view.player is not None
    view.player.chart.moved.emit(seconds)


def test_the_chart_tells_pressure_over_temperature_with_its_levels(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-as-proposed")
    pictured = player.chart.shown
    assert [each.name for each in pictured.pressure] == ["pressure"]
    assert [each.name for each in pictured.temperature] == ["flow", "return", "Store"]
    assert [(each.name, each.bar) for each in pictured.levels] == [
        ("safety valve 3 bar", 3.0),
        ("vessel’s charge 0.9 bar".replace(".", QLocale().decimalPoint()), 0.9),
    ]
    assert pictured.ends_s == 1800
    assert pictured.pressure[0].at(0) == pytest.approx(1.3)
    go(view, 900)
    decimal = QLocale().decimalPoint()
    row = view.timed.track.row_at(900)  # type: ignore[union-attr]
    assert row is not None
    assert said_value(row.bar[0], "bar", decimal) in player.chart.accessibleDescription()
    assert player.clock.text() == "15:00"


def test_the_gauge_and_the_store_are_read_on_the_sheet(view: LiveView, qtbot: QtBot) -> None:
    shown(view, qtbot, "terrace-as-proposed", situation="hot water only")
    timed = view.timed
    assert timed is not None
    decimal = QLocale().decimalPoint()
    assert timed.words()["store"] == "10 °C"
    cold = timed.words()["gauge"]
    go(view, 1700)
    assert int(timed.words()["store"].split()[0]) > 35
    warm = timed.words()["gauge"]
    assert float(warm.split()[0].replace(decimal, ".")) > float(cold.split()[0].replace(decimal, "."))


def test_time_runs_pauses_and_begins_anew(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-as-proposed")
    player.speed.setCurrentIndex(player.speed.findData(60))
    player.chart.setFocus()
    QTest.keyClick(player.chart, Qt.Key.Key_Space)
    assert player.is_playing and player.play.accessibleName() == "Pause"
    qtbot.waitUntil(lambda: player.at_s > 20, timeout=10_000)
    player.play.click()
    stood = player.at_s
    qtbot.wait(150)
    assert not player.is_playing and player.at_s == stood
    QTest.keyClick(player.chart, Qt.Key.Key_End)
    assert player.at_s == pytest.approx(1800)
    QTest.keyClick(player.chart, Qt.Key.Key_Left)
    assert player.at_s == pytest.approx(1782)
    plot = player.chart._plot
    QTest.mouseClick(
        player.chart,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
        QPoint(round(plot.center().x()), round(plot.center().y())),
    )
    assert player.at_s == pytest.approx(900, abs=10)
    player.reset.click()
    settled(view, qtbot)
    assert player.at_s == 0 and player.clock.text() == "0:00"


def test_time_runs_on_beyond_what_was_worked_out_first(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-as-proposed")
    player.speed.setCurrentIndex(player.speed.findData(300))
    go(view, 1600)
    player.play.click()
    qtbot.waitUntil(lambda: view.timed.track.ends_s > 3000, timeout=30_000)  # type: ignore[union-attr]
    player.pause()
    rows = [row.seconds for row in view.timed.track.rows]  # type: ignore[union-attr]
    assert rows == sorted(rows)


def test_a_valve_turned_on_the_way_goes_on_from_there(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-valve-before-vessel", situation="heating only")
    go(view, 600)
    before = view.timed.track.row_at(600)  # type: ignore[union-attr]
    view.shut(("pump", "return_valve"))
    settled(view, qtbot)
    assert player.at_s == 600
    track = view.timed.track  # type: ignore[union-attr]
    assert len(track.courses) == 2
    begins = track.courses[1].rows[0]
    assert before is not None and 594 < begins.seconds <= 600
    assert begins.flow_c == pytest.approx(before.flow_c, abs=0.3)
    assert begins.bar == pytest.approx(before.bar, abs=1e-6)
    go(view, 660)
    assert view.timed.words()["safety_valve"] == "lifts"  # type: ignore[union-attr]
    assert "The safety valve lifts" in player.said
    assert "gauge" in view.timed.words()  # type: ignore[union-attr]


def test_a_flooded_vessel_is_seen_and_a_plugged_valve_told(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "cottage-safety-valve-plugged", situation="both")
    view.press("vessel")
    settled(view, qtbot)
    go(view, 300)
    assert view.positions is not None and view.positions.flooded == {"vessel"}
    assert "passes what the heat source is made for" in player.said
    assert player.chart.shown.levels[0].name == "plugged safety valve 3 bar"
    assert view.timed.track.row_at(300).bar[0] > 8  # type: ignore[union-attr]


def test_when_a_run_on_ends_the_water_stands_still(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-as-proposed", situation="pump run-on")
    assert view.sheet.is_moving
    go(view, 600)
    assert not view.sheet.is_moving and "The run-on is over" in player.said
    go(view, 10)
    assert view.sheet.is_moving


def test_what_is_left_out_can_be_read(view: LiveView, qtbot: QtBot) -> None:
    player = shown(view, qtbot, "terrace-as-proposed")
    assert player._limits.isHidden()
    player.limits.click()
    assert player._limits.isVisible() and "Boyle" in player._limits.text() and "21.4" in player._limits.text()


def test_glycol_is_refused_in_words(view: LiveView, qtbot: QtBot) -> None:
    drawing = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    view.show_drawing(replace(drawing, design={**drawing.design, "glycol_percent": 25}))
    settled(view, qtbot)
    assert view.player is not None and "glycol" in view.player.chart._instead
    assert not view.player.play.isEnabled() and not view.player.fill_in.isVisible()


def test_no_course_is_told_where_it_is_not_known_what_flows(view: LiveView, qtbot: QtBot) -> None:
    """Water that a pump drives does not stand still because a pipe's length is missing."""
    drawing = read(data_path("samples") / "terrace-as-proposed.wetcircuit")
    pipe = next(id for id in drawing.pipes_of("zv_rooms"))
    view.show_drawing(set_field(drawing, pipe, "length_m", None))
    settled(view, qtbot)
    assert view.player is not None and view.timed is not None and view.timed.track.is_empty
    assert "The chart needs one more number: " in view.player.chart._instead
    with qtbot.waitSignal(view.fill_in_wanted) as wanted:
        view.player.fill_in.click()
    assert wanted.args == [(f"{pipe}.length_m",)]


def test_a_chart_holds_its_scale_and_its_words() -> None:
    line = Line("pressure", "ink", (), ((0, 1.0), (10, 2.0), (20, 40.0)), "bar")
    assert line.at(5) == 1.5 and line.at(-1) == 1.0 and line.at(99) == 40.0
    assert Line("none", "ink", (), (), "bar").at(3) is None
    assert scale([line], [], "bar") == (0.0, 10.0, 2.0)
    assert scale(
        [Line("p", "ink", (), ((0, -0.5), (1, 1.0)), "bar")], [Level("sv", 3, "danger", ())], "bar"
    ) == (-1.0, 4.0, 1.0)
    assert scale([Line("t", "flow", (), ((0, 10), (1, 75)), "°C")], [], "°C") == (0.0, 80.0, 20.0)
    assert (clock(0), clock(100), clock(3725)) == ("0:00", "1:40", "1:02:05")
    assert (said_value(1.284, "bar", ","), said_value(12.4, "bar", "."), said_value(73.6, "°C", ".")) == (
        "1,28 bar",
        "12 bar",
        "74 °C",
    )


def test_an_empty_chart_says_why(qtbot: QtBot) -> None:
    chart = Chart(".")
    qtbot.addWidget(chart)
    chart.resize(400, 200)
    chart.show_instead("Nothing to show.")
    chart.show()
    assert not chart.grab().isNull()
    moved: list[float] = []
    chart.moved.connect(moved.append)
    QTest.keyClick(chart, Qt.Key.Key_End)
    QTest.mouseClick(chart, Qt.MouseButton.LeftButton)
    assert not moved
    chart.show_picture(Pictured((), (), (), (), 100.0), 0.0)
    QTest.keyClick(chart, Qt.Key.Key_Right)
    assert moved == [1.0]
