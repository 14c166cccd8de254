"""A sheet in a view, the owner that takes its edits on, and a hand to work it with."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.edits import place
from circuitcheck.drawing.pipes import draw_pipe
from circuitcheck.drawing.value import Drawing, Joint
from circuitcheck.editor.sheet import SheetView
from circuitcheck.geometry import Point
from circuitcheck.parts.catalogue import kinds

NO_KEYS = Qt.KeyboardModifier.NoModifier


class Hand:
    """Works a sheet with mouse and keys, in squares; keeps what the sheet announced."""

    def __init__(self, view: SheetView) -> None:
        self.view = view
        self.steps: list[str] = []
        self.drawings: list[Drawing] = []
        self.hints: list[str] = []
        self.selections: list[frozenset[str]] = []
        view.edited.connect(self._on_edited)
        view.hint.connect(self.hints.append)
        view.selection_changed.connect(self.selections.append)

    @property
    def drawing(self) -> Drawing:
        """The drawing as last taken on."""
        return self.drawings[-1]

    def show(self, drawing: Drawing) -> None:
        """Show a drawing with the square 20,10 in the middle of the view."""
        self.drawings.append(drawing)
        self.view.set_drawing(drawing)
        self.view.zoom_reset()
        self.view.centerOn(QPointF(320, 160))

    def at(self, x: float, y: float) -> QPoint:
        """A place in squares as px of the view."""
        return self.view.mapFromScene(QPointF(x * 16, y * 16))

    def press(self, x: float, y: float, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        QTest.mousePress(self.view.viewport(), Qt.MouseButton.LeftButton, keys, self.at(x, y))

    def move(self, x: float, y: float, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        # QTest's own move carries no button; a drag is told by the press before it.
        place = QPointF(self.at(x, y))
        viewport = self.view.viewport()
        event = QMouseEvent(
            QEvent.Type.MouseMove,
            place,
            viewport.mapToGlobal(place),
            Qt.MouseButton.NoButton,
            Qt.MouseButton.LeftButton,
            keys,
        )
        QApplication.sendEvent(viewport, event)

    def release(self, x: float, y: float, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        QTest.mouseRelease(self.view.viewport(), Qt.MouseButton.LeftButton, keys, self.at(x, y))

    def click(self, x: float, y: float, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        self.press(x, y, keys)
        self.release(x, y, keys)

    def drag(self, start: tuple[float, float], *way: tuple[float, float]) -> None:
        self.press(*start)
        for spot in way:
            self.move(*spot)
        self.release(*way[-1])

    def key(self, key: Qt.Key, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        QTest.keyClick(self.view, key, keys)

    def _on_edited(self, step: str, drawing: Drawing) -> None:
        self.steps.append(step)
        self.drawings.append(drawing)
        self.view.set_drawing(drawing)


@pytest.fixture
def hand(qtbot: QtBot) -> Hand:
    """An empty sheet, shown, and a hand on it."""
    view = SheetView()
    qtbot.addWidget(view)
    view.resize(900, 600)
    view.show()
    view.setFocus()
    return Hand(view)


@pytest.fixture
def row() -> Drawing:
    """A pump `pump` at 10,10 and a zone valve `zv` at 20,10, joined by the pipe `p1`; a vessel `ev` apart."""
    drawing = Drawing(title="A row")
    drawing, pump = place(drawing, kinds()["pump"], Point(10, 10), label="Pump")
    drawing, valve = place(drawing, kinds()["zone_valve"], Point(20, 10))
    drawing, vessel = place(drawing, kinds()["expansion_vessel"], Point(28, 16))
    drawing, pipe = draw_pipe(drawing, Joint(pump, "out"), Joint(valve, "in"), data={"size_mm": 22})
    assert (valve, vessel, pipe) == ("zv1", "ev1", "p1")
    assert pump == "pump1"
    return drawing
