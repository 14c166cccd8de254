"""The chart of pressure over temperature in computed time: what has run solid, what will come dotted."""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Callable, Sequence
from dataclasses import dataclass
from math import ceil

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPainterPath,
    QPaintEvent,
    QPen,
)
from PySide6.QtWidgets import QSizePolicy, QWidget

from circuitcheck.editor.fonts import scaled
from circuitcheck.editor.theme import Theme, light

LEFT_PX, RIGHT_PX, TOP_PX, LOW_PX, BETWEEN_PX = 62.0, 190.0, 14.0, 22.0, 14.0
LABEL_PX = 16.0
PRESSURE_SHARE = 0.5
MOST_BAR_SHOWN = 10.0
"""A pressure beyond is told in words: the scale keeps what a gauge shows."""
STEPS_S = (5, 10, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200)
TICK_APART_PX = 70.0


@dataclass(frozen=True, slots=True)
class Line:
    """One curve: what it is called, the role of its colour, its dashes, and its points in seconds and value."""

    name: str
    role: str
    dash: tuple[float, ...]
    points: tuple[tuple[float, float], ...]
    unit: str

    def at(self, seconds: float) -> float | None:
        """Its value at a time: straight between points."""
        if not self.points:
            return None
        place = bisect_right(self.points, seconds, key=lambda point: point[0])
        if place in (0, len(self.points)):
            return self.points[min(place, len(self.points) - 1)][1]
        (x0, y0), (x1, y1) = self.points[place - 1], self.points[place]
        return y0 + (seconds - x0) / (x1 - x0) * (y1 - y0) if x1 > x0 else y1


@dataclass(frozen=True, slots=True)
class Level:
    """A level to hold the pressure against: its name, value in bar, and the role of its colour."""

    name: str
    bar: float
    role: str
    dash: tuple[float, ...]


@dataclass(frozen=True, slots=True)
class Pictured:
    """All that the chart shows. `marks`: moments at which something happens."""

    pressure: tuple[Line, ...] = ()
    temperature: tuple[Line, ...] = ()
    levels: tuple[Level, ...] = ()
    marks: tuple[float, ...] = ()
    ends_s: float = 0.0


class Chart(QWidget):
    """Shows a `Pictured`; signals `moved` with the time that was chosen on it, `play_wanted` for Space."""

    moved = Signal(float)
    play_wanted = Signal()

    def __init__(self, decimal: str) -> None:
        super().__init__()
        self._theme = light()
        self._decimal = decimal
        self._shown = Pictured()
        self._at_s = 0.0
        self._instead = ""
        self._paths: dict[tuple[int, float, float], QPainterPath] = {}
        self.setMinimumHeight(150)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)

    def sizeHint(self) -> QSize:
        """Room for both strips."""
        return QSize(640, 190)

    def set_theme(self, theme: Theme) -> None:
        """Paint in other colours."""
        self._theme = theme
        self.update()

    def show_picture(self, pictured: Pictured, at_s: float) -> None:
        """Show these curves, the time at hand at `at_s`."""
        self._shown, self._at_s, self._instead = pictured, at_s, ""
        self._paths = {}
        self.update()

    def show_instead(self, text: str) -> None:
        """Say why there are none."""
        self._shown, self._instead = Pictured(), text
        self.update()

    def move_to(self, at_s: float) -> None:
        """The time at hand is another."""
        self._at_s = at_s
        self.update()

    @property
    def shown(self) -> Pictured:
        """What is shown."""
        return self._shown

    # The pointer and the keys.

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Choose a time."""
        self._choose(event.position().x())

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Go on choosing it."""
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._choose(event.position().x())

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Arrows move the time by a step, Home and End to its ends; Space lets it run or stand."""
        if event.key() == Qt.Key.Key_Space and self._shown.ends_s:
            if not event.isAutoRepeat():
                self.play_wanted.emit()
            return
        step = self._shown.ends_s / 100
        ways = {
            Qt.Key.Key_Left: self._at_s - step,
            Qt.Key.Key_Right: self._at_s + step,
            Qt.Key.Key_Home: 0.0,
            Qt.Key.Key_End: self._shown.ends_s,
        }
        wanted = ways.get(Qt.Key(event.key())) if self._shown.ends_s else None
        if wanted is None:
            super().keyPressEvent(event)
        else:
            self.moved.emit(min(self._shown.ends_s, max(0.0, wanted)))

    def _choose(self, x: float) -> None:
        box = self._plot
        if self._shown.ends_s and box.width() > 0:
            share = (x - box.left()) / box.width()
            self.moved.emit(self._shown.ends_s * min(1.0, max(0.0, share)))

    # Painting.

    @property
    def _plot(self) -> QRectF:
        return QRectF(self.rect()).adjusted(LEFT_PX, TOP_PX, -RIGHT_PX, -LOW_PX)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Both strips, their labels, and the time at hand."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setFont(self._font())
        if not self._shown.ends_s:
            painter.setPen(self._theme["ink_2"])
            flags = Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap
            painter.drawText(QRectF(self.rect()).adjusted(24, 8, -24, -8), flags, self._instead)
            painter.end()
            return
        plot = self._plot
        high = (plot.height() - BETWEEN_PX) * PRESSURE_SHARE
        upper = QRectF(plot.left(), plot.top(), plot.width(), high)
        lower = QRectF(
            plot.left(),
            upper.bottom() + BETWEEN_PX,
            plot.width(),
            plot.bottom() - upper.bottom() - BETWEEN_PX,
        )
        self._times(painter, plot)
        self._strip(painter, upper, self._shown.pressure, self._shown.levels, "bar")
        self._strip(painter, lower, self._shown.temperature, (), "°C")
        self._now(painter, plot)
        if self.hasFocus():
            painter.setPen(QPen(self._theme["select"], 2, Qt.PenStyle.DashLine))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(2, 2, -2, -2), 6, 6)
        painter.end()

    def _font(self, *, strong: bool = False) -> QFont:
        return scaled(self.font(), 0.9, strong=strong)

    @property
    def _grid(self) -> QColor:
        """The lines of the scale: fainter than any curve in every theme."""
        return self._theme["quiet" if self._theme.high_contrast else "hairline"]

    def _x(self, seconds: float, box: QRectF) -> float:
        return box.left() + box.width() * seconds / self._shown.ends_s

    def _times(self, painter: QPainter, plot: QRectF) -> None:
        """The clock below, a mark above where something happens."""
        ends = self._shown.ends_s
        fits = max(1.0, plot.width() / TICK_APART_PX)
        step = next((each for each in STEPS_S if ends / each <= fits), 3600 * ceil(ends / 3600 / fits))
        at = 0.0
        while at <= ends + 1e-6:
            x = self._x(at, plot)
            painter.setPen(QPen(self._grid, 1))
            painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()))
            painter.setPen(self._theme["ink_2"])
            painter.drawText(
                QRectF(x - 40, plot.bottom() + 4, 80, LOW_PX - 4), Qt.AlignmentFlag.AlignHCenter, clock(at)
            )
            at += step
        for seconds in self._shown.marks:
            x = self._x(seconds, plot)
            head = QPainterPath(QPointF(x, plot.top() - 2))
            head.lineTo(x - 5, plot.top() - 10)
            head.lineTo(x + 5, plot.top() - 10)
            head.closeSubpath()
            painter.fillPath(head, self._theme["danger"])

    def _strip(
        self, painter: QPainter, box: QRectF, lines: Sequence[Line], levels: Sequence[Level], unit: str
    ) -> None:
        low, high, step = scale(lines, levels, unit)

        def y(value: float) -> float:
            return box.bottom() - box.height() * (min(value, high) - low) / (high - low)

        at = low
        while at <= high + 1e-9:
            painter.setPen(QPen(self._grid, 1))
            painter.drawLine(QPointF(box.left(), y(at)), QPointF(box.right(), y(at)))
            painter.setPen(self._theme["ink_2"])
            painter.drawText(
                QRectF(0, y(at) - 8, LEFT_PX - 6, 16),
                Qt.AlignmentFlag.AlignRight | Qt.AlignmentFlag.AlignVCenter,
                f"{at:g} {unit if at + step > high + 1e-9 else ''}".strip().replace(".", self._decimal),
            )
            at += step
        labels: list[tuple[float, str, str, QColor, bool]] = []
        for level in levels:
            if level.bar <= high:
                painter.setPen(self._pen(level.role, level.dash, 1.5))
                painter.drawLine(QPointF(box.left(), y(level.bar)), QPointF(box.right(), y(level.bar)))
                labels.append((y(level.bar), level.name, "", self._theme[level.role], False))
        for line in lines:
            self._curve(painter, box, line, y)
            value = line.at(self._at_s)
            if value is not None:
                said = said_value(value, unit, self._decimal)
                labels.append((y(value), line.name, said, self._theme[line.role], True))
        self._labels(painter, box, labels)

    def _curve(self, painter: QPainter, box: QRectF, line: Line, y: Callable[[float], float]) -> None:
        """What has run solid, what comes dotted: one path, of which each has its side of the time at hand."""
        now = line.at(self._at_s)
        if now is None:
            return
        here = QPointF(self._x(self._at_s, box), y(now))
        path = self._paths.get((id(line), box.width(), box.height()))
        if path is None:
            path = QPainterPath()
            for place, (seconds, value) in enumerate(line.points):
                at = QPointF(self._x(seconds, box), y(value))
                path.lineTo(at) if place else path.moveTo(at)
            self._paths[id(line), box.width(), box.height()] = path
        painter.setBrush(Qt.BrushStyle.NoBrush)
        sides = (
            (QRectF(here.x(), box.top() - 3, box.right() - here.x(), box.height() + 6), (1.2, 3.2), 1.6),
            (
                QRectF(box.left() - 2, box.top() - 3, here.x() - box.left() + 2, box.height() + 6),
                line.dash,
                2.2,
            ),
        )
        for side, dash, width in sides:
            painter.save()
            painter.setClipRect(side)
            painter.setPen(self._pen(line.role, dash, width))
            painter.drawPath(path)
            painter.restore()
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(self._theme[line.role])
        painter.drawEllipse(here, 3.5, 3.5)

    def _labels(
        self, painter: QPainter, box: QRectF, labels: list[tuple[float, str, str, QColor, bool]]
    ) -> None:
        """Names and values to the right, none on another."""
        least = -1e9
        metrics = QFontMetricsF(self._font())
        rows = sorted(labels, key=lambda each: each[0])
        places = []
        for y, *_ in rows:
            least = max(y, least + LABEL_PX - 1)
            places.append(least)
        over = places[-1] - (box.bottom() - 4) if places else 0
        if over > 0:
            places = [place - over for place in places]
        for place, (_, name, value, colour, strong) in zip(places, rows, strict=True):
            left = box.right() + 10
            painter.setPen(colour)
            painter.setFont(self._font())
            wide = RIGHT_PX - 14 - (metrics.horizontalAdvance(value) + 14 if value else 0)
            shown = metrics.elidedText(name, Qt.TextElideMode.ElideRight, wide)
            painter.drawText(QPointF(left, place + 4), shown)
            if value:
                painter.setFont(self._font(strong=strong))
                painter.setPen(self._theme["ink"])
                painter.drawText(QPointF(left + metrics.horizontalAdvance(shown) + 6, place + 4), value)
        painter.setFont(self._font())

    def _now(self, painter: QPainter, plot: QRectF) -> None:
        x = self._x(self._at_s, plot)
        painter.setPen(QPen(self._theme["select"], 1.5))
        painter.drawLine(QPointF(x, plot.top() - 4), QPointF(x, plot.bottom()))

    def _pen(self, role: str, dash: tuple[float, ...], width: float) -> QPen:
        wide = width + (1.0 if self._theme.high_contrast else 0.0)
        pen = QPen(self._theme[role], wide)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        if dash:
            pen.setDashPattern(list(dash))
        return pen


def scale(lines: Sequence[Line], levels: Sequence[Level], unit: str) -> tuple[float, float, float]:
    """The least and the most of a strip, and the step between its lines."""
    values = [value for line in lines for _, value in line.points]
    if unit == "bar":
        most = max([*values, *(level.bar for level in levels), 1.0])
        low = -1.0 if min(values, default=0.0) < -0.05 else 0.0
        high = min(MOST_BAR_SHOWN, float(ceil(most * 1.05)))
        return low, high, 1.0 if high <= 4 else 2.0
    low = min(60.0, 20.0 * (min(values, default=0.0) // 20))
    high = 20.0 * ceil(max([*values, low + 20]) / 20)
    return low, high, 20.0


def said_value(value: float, unit: str, decimal: str) -> str:
    """A value as it stands beside its curve: `1.28 bar`, `74 °C`."""
    said = f"{value:.2f}" if unit == "bar" and value < 9.95 else f"{value:.0f}"
    return f"{said} {unit}".replace(".", decimal)


def clock(seconds: float) -> str:
    """A time as minutes and seconds, from an hour on with hours: `1:40`, `1:02:00`."""
    whole = round(seconds)
    hours, minutes, left = whole // 3600, whole // 60 % 60, whole % 60
    return f"{hours}:{minutes:02}:{left:02}" if hours else f"{minutes}:{left:02}"
