"""Computed time below the sheet in operation: play, pause, begin anew, how fast, and the chart."""

from __future__ import annotations

from collections.abc import Sequence
from time import perf_counter

from PySide6.QtCore import QLocale, QSize, Qt, QTimer, Signal
from PySide6.QtGui import QIcon
from PySide6.QtWidgets import QToolButton, QVBoxLayout, QWidget

from circuitcheck.editor import plain
from circuitcheck.editor.icons import icon
from circuitcheck.editor.operating.chart import Chart, Level, Line, Pictured, clock, said_value
from circuitcheck.editor.panels.edged import ArrowedComboBox
from circuitcheck.editor.said_line import SaidLine
from circuitcheck.editor.theme import Theme, light
from circuitcheck.editor.translating import tr
from circuitcheck.operating.course import Event, Happens
from circuitcheck.operating.running import Row
from circuitcheck.operating.track import Track
from circuitcheck.picture import paths
from circuitcheck.picture.marks import Fill, Mark

SPEEDS = (1, 10, 60, 300)
FIRST_SPEED = 60
TICK_MS = 50
AHEAD_S = 300.0
"""So much before its end a course is carried on."""
ICON_PX = 20


class Player(QWidget):
    """Signals `moved` with the time at hand, `reset_wanted`, `more_wanted` when what is known nears its end,
    `fill_in_wanted` and `limits_wanted`."""

    moved = Signal(float)
    reset_wanted = Signal()
    more_wanted = Signal()
    fill_in_wanted = Signal()

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("panel")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._decimal = QLocale().decimalPoint()
        self._theme = light()
        self._track = Track()
        self._levels: tuple[Level, ...] = ()
        self._names: tuple[str, ...] = ()
        self._stores: tuple[str, ...] = ()
        self._at_s = 0.0
        self._source = 0
        self._asked_for_more = False
        self._ticked = perf_counter()
        self._timer = QTimer(self, interval=TICK_MS)
        self._timer.timeout.connect(self._tick)
        self.play = self._button(tr("Play"), tr("Let the time run (Space on the chart)"))
        self.play.setCheckable(True)
        self.reset = self._button(
            tr("Begin anew"), tr("From the beginning: cold where heat is called, else hot")
        )
        self.speed = ArrowedComboBox()
        self.speed.setAccessibleName(tr("How fast the time runs"))
        for each in SPEEDS:
            self.speed.addItem(tr("{times} × time", times=each), each)
        self.speed.setCurrentIndex(SPEEDS.index(FIRST_SPEED))
        self.source = ArrowedComboBox()
        self.source.setAccessibleName(tr("Heat source whose water the chart shows"))
        self.clock = plain.label("0:00", "strong")
        self.fill_in = plain.link(tr("Fill in"), self.fill_in_wanted.emit)
        self.fill_in.hide()
        self.limits = plain.link(tr("What this leaves out"), self._show_limits)
        self.chart = Chart(self._decimal)
        self.chart.setAccessibleName(tr("Pressure and temperature in time"))
        self._limits = plain.label("", "second", wrap=True)
        self._limits.setContentsMargins(16, 0, 16, 6)
        self._limits.hide()
        choices = (self.play, self.reset, self.speed, self.source, self.clock)
        self.line = SaidLine(choices, (self.fill_in, self.limits), margins=(12, 12))
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 4)
        column.setSpacing(2)
        column.addWidget(self.line)
        column.addWidget(self._limits)
        column.addWidget(self.chart, 1)
        self.source.hide()
        self.play.toggled.connect(self._play_or_pause)
        self.reset.clicked.connect(self._reset)
        self.source.activated.connect(self._choose_source)
        self.chart.moved.connect(self._go)
        self.chart.play_wanted.connect(self.play.toggle)
        self._paint_icons()

    def _button(self, name: str, tip: str) -> QToolButton:
        made = QToolButton()
        made.setFixedSize(34, 32)
        made.setIconSize(QSize(ICON_PX, ICON_PX))
        made.setAccessibleName(name)
        plain.set_tip(made, tip)
        return made

    # What others may ask.

    @property
    def at_s(self) -> float:
        """The time at hand."""
        return self._at_s

    @property
    def is_playing(self) -> bool:
        """Whether time runs."""
        return self.play.isChecked()

    @property
    def said(self) -> str:
        """What is said beside the clock."""
        return self.line.said

    @property
    def chosen_source(self) -> int:
        """The place of the heat source that is shown, among those the rows tell of."""
        return self._source

    def set_theme(self, theme: Theme) -> None:
        """Paint in other colours."""
        self._theme = theme
        self.chart.set_theme(theme)
        self._paint_icons()

    def show_track(
        self, track: Track, levels: Sequence[Level], names: Sequence[str], stores: Sequence[str], limits: str
    ) -> None:
        """Show a track: the heat sources and stores by name, and what the model leaves out."""
        self._track, self._levels = track, tuple(levels)
        self._names, self._stores = tuple(names), tuple(stores)
        self._asked_for_more = False
        self._limits.setText(limits)
        self._offer_sources()
        self.fill_in.hide()
        for widget in (self.play, self.reset, self.speed, self.limits):
            widget.setEnabled(True)
        self._at_s = min(self._at_s, track.ends_s)
        self._picture()
        self._tell()

    def show_none(self, why: str, *, asks: bool) -> None:
        """Say why there is no chart; `asks`: with the way to what is to be filled in."""
        self.pause()
        self._track, self._at_s = Track(), 0.0
        self.chart.show_instead(why)
        self.fill_in.setVisible(asks)
        self.line.show_sentence("")
        self.clock.setText(clock(0))
        for widget in (self.play, self.reset, self.speed, self.limits):
            widget.setEnabled(False)

    def choose_source(self, part: str) -> None:
        """Show the water of this heat source, if the rows tell of it."""
        if part in self._track.sources and self._track.sources.index(part) != self._source:
            self.source.setCurrentIndex(self._track.sources.index(part))
            self._choose_source(self._track.sources.index(part))

    def begin(self) -> None:
        """Stand at the beginning, not running."""
        self.pause()
        self._at_s = 0.0
        self._tell()

    def pause(self) -> None:
        """Let the time stand."""
        self.play.setChecked(False)

    # Time.

    def _play_or_pause(self, plays: bool) -> None:
        if plays:
            if self._track.is_over and self._at_s >= self._track.ends_s - 1e-6:
                self._reset()
                self.play.setChecked(True)
                return
            self._ticked = perf_counter()
            self._timer.start()
        else:
            self._timer.stop()
        self.play.setAccessibleName(tr("Pause") if plays else tr("Play"))
        self._paint_icons()

    def _tick(self) -> None:
        now = perf_counter()
        passed = min(0.25, now - self._ticked) * float(self.speed.currentData())
        self._ticked = now
        if self._track.is_empty:
            return
        self._go(min(self._track.ends_s, self._at_s + passed))
        if self._at_s >= self._track.ends_s - 1e-6 and self._track.is_over:
            self.pause()

    def _go(self, seconds: float) -> None:
        if self._track.is_empty:
            return
        self._at_s = seconds
        nearly = seconds > self._track.ends_s - AHEAD_S
        if nearly and not self._track.is_over and not self._asked_for_more and self.is_playing:
            self._asked_for_more = True
            self.more_wanted.emit()
        self.chart.move_to(seconds)
        self._tell()
        self.moved.emit(seconds)

    def _reset(self) -> None:
        self.begin()
        self.reset_wanted.emit()

    # What is shown.

    def _offer_sources(self) -> None:
        several = len(self._names) > 1
        if [self.source.itemText(place) for place in range(self.source.count())] != list(self._names):
            self.source.clear()
            self.source.addItems([plain.action_text(name) for name in self._names])
            self._source = 0
        self.source.setVisible(several)

    def _choose_source(self, place: int) -> None:
        self._source = max(0, place)
        self._picture()
        self._tell()

    def _picture(self) -> None:
        rows, place = self._track.rows, self._source
        if not rows or not self._names:
            return
        pressure = (Line(tr("pressure"), "ink", (), _points(rows, "bar", place), "bar"),)
        temperature = [
            Line(tr("flow"), "flow", (), _points(rows, "flow_c", place), "°C"),
            Line(tr("return"), "return_", (4, 2), _points(rows, "return_c", place), "°C"),
        ]
        temperature += [
            Line(name, "hot", (6, 2, 1.5, 2), _points(rows, "store_c", number), "°C")
            for number, name in enumerate(self._stores)
        ]
        marks = tuple(each.seconds for each in self._track.events)
        self.chart.show_picture(
            Pictured(pressure, tuple(temperature), self._levels, marks, self._track.ends_s), self._at_s
        )

    def _tell(self) -> None:
        self.clock.setText(clock(self._at_s))
        row = self._track.row_at(self._at_s)
        if row is None:
            return
        event = self._track.event_at(self._at_s)
        said = [event_words(event, self._name)] if event is not None else []
        if row.let_out_l > 0.0005:
            litres = f"{row.let_out_l:.2f}".replace(".", self._decimal)
            said.append(tr("Let out so far: {litres} l", litres=litres))
        self.line.show_sentence(". ".join(said))
        self.chart.setAccessibleDescription(self._reading(row))

    def _reading(self, row: Row) -> str:
        """The row at hand in words, for who cannot see the chart."""
        place = self._source
        if place >= len(row.bar):
            return ""
        said = [
            tr("at {time}", time=clock(self._at_s)),
            said_value(row.bar[place], "bar", self._decimal),
            tr("flow {celsius}", celsius=said_value(row.flow_c[place], "°C", self._decimal)),
            tr("return {celsius}", celsius=said_value(row.return_c[place], "°C", self._decimal)),
        ]
        said += [
            f"{name} {said_value(celsius, '°C', self._decimal)}"
            for name, celsius in zip(self._stores, row.store_c, strict=False)
        ]
        return ", ".join(said)

    def _name(self, part: str) -> str:
        known = dict(zip(self._track.sources, self._names, strict=False))
        known |= dict(zip(self._track.stores, self._stores, strict=False))
        return known.get(part, part)

    def _show_limits(self) -> None:
        self._limits.setVisible(self._limits.isHidden())

    def _paint_icons(self) -> None:
        self.play.setIcon(_play_icon(self._theme, pauses=self.is_playing))
        self.reset.setIcon(_reset_icon(self._theme))


def event_words(event: Event, name: object) -> str:
    """What has happened, as a sentence without its full stop."""
    said = {
        Happens.LIFTS: tr("The safety valve lifts"),
        Happens.TRIPS: tr("The overheat cut-out trips"),
        Happens.STOPS: tr("The run-on is over: the pump stops"),
        Happens.WARM: tr("The store is as warm as its thermostat is set"),
        Happens.OVER: tr("The pressure passes what the heat source is made for"),
        Happens.EMPTY: tr("The pressure is gone: the top can draw in air"),
        Happens.TOO_HOT: tr("Hotter than the formulas reach: it is about to boil"),
        Happens.BURSTS: tr("Past 100 bar: something has burst long before"),
    }
    return tr("{time} {what}", time=clock(event.seconds), what=said[event.what])


def _points(rows: Sequence[Row], field: str, place: int) -> tuple[tuple[float, float], ...]:
    return tuple((row.seconds, values[place]) for row in rows if place < len(values := getattr(row, field)))


def _play_icon(theme: Theme, *, pauses: bool) -> QIcon:
    if pauses:
        marks: list[Mark] = [Fill(paths.rectangle(x, -6, 4, 12, 1), "ink") for x in (-5.5, 1.5)]
    else:
        marks = [Fill(paths.polygon([(-4.5, -7), (7, 0), (-4.5, 7)]), "ink")]
    return icon(marks, (-10, -10, 20, 20), ICON_PX, theme)


def _reset_icon(theme: Theme) -> QIcon:
    bar = paths.rectangle(-7, -6.5, 2.6, 13, 1)
    marks: list[Mark] = [Fill(bar, "ink"), Fill(paths.polygon([(7, -6.5), (-3, 0), (7, 6.5)]), "ink")]
    return icon(marks, (-10, -10, 20, 20), ICON_PX, theme)
