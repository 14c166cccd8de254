"""A hand on the real window: it works the widgets by events of mouse and keyboard only, and counts its gestures."""

from __future__ import annotations

import networkx as nx
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QWidget

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.window import MainWindow

SQUARE_PX = 16
NO_KEYS = Qt.KeyboardModifier.NoModifier
CONTROL, SHIFT = Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier
LEFT = Qt.MouseButton.LeftButton


class CountedHand:
    """A gesture is one press-drag-release, a click, or a key chord; finding a part by typing is one.

    Moving the pointer without a button is none: it goes to where the next gesture is made.
    """

    def __init__(self, window: MainWindow) -> None:
        self.window = window
        self.gestures = 0

    @property
    def drawing(self) -> Drawing:
        return self.window.document.drawing

    def at(self, x: float, y: float) -> QPoint:
        """A place in squares as px of the view."""
        return self.window.sheet.mapFromScene(QPointF(x * SQUARE_PX, y * SQUARE_PX))

    def point(self, x: float, y: float) -> None:
        self._mouse(QEvent.Type.MouseMove, x, y, Qt.MouseButton.NoButton)

    def click(self, x: float, y: float, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        self.gestures += 1
        self.point(x, y)
        QTest.mouseClick(self.window.sheet.viewport(), LEFT, keys, self.at(x, y))

    def drag(self, start: tuple[float, float], *way: tuple[float, float]) -> None:
        """One press, moves, one release."""
        self.gestures += 1
        viewport = self.window.sheet.viewport()
        self.point(*start)
        QTest.mousePress(viewport, LEFT, NO_KEYS, self.at(*start))
        for spot in way:
            self._mouse(QEvent.Type.MouseMove, *spot, LEFT)
        QTest.mouseRelease(viewport, LEFT, NO_KEYS, self.at(*way[-1]))

    def key(self, key: Qt.Key, keys: Qt.KeyboardModifier = NO_KEYS) -> None:
        """One key chord, to whatever has the keyboard."""
        self.gestures += 1
        QTest.keyClick(self._focus(), key, keys)

    def type(self, text: str) -> None:
        """Find by typing, letter by letter, each to whatever has the keyboard by then."""
        self.gestures += 1
        for letter in text:
            QTest.keyClicks(self._focus(), letter)

    def place(self, text: str, x: float, y: float, *keys: Qt.Key) -> str:
        """Find a part by typing, place it where the pointer is; `keys` then turn or mirror it."""
        before = {*self.drawing.components, *self.drawing.controls}
        self.point(x, y)
        self.type(text)
        self.key(Qt.Key.Key_Return)
        for key in keys:
            self.key(key)
        (new,) = {*self.drawing.components, *self.drawing.controls} - before
        return new

    def _focus(self) -> QWidget:
        found = QApplication.focusWidget()
        assert found is not None, "no widget of the window has the keyboard"
        return found

    def _mouse(self, type: QEvent.Type, x: float, y: float, button: Qt.MouseButton) -> None:
        viewport, place = self.window.sheet.viewport(), QPointF(self.at(x, y))
        event = QMouseEvent(
            type, place, viewport.mapToGlobal(place), Qt.MouseButton.NoButton, button, NO_KEYS
        )
        QApplication.sendEvent(viewport, event)


def joins(drawing: Drawing) -> nx.Graph[object]:
    """Kinds and joins alone: a node a part, one a port, one a pipe. The two ends of a tee's run are alike."""
    graph: nx.Graph[object] = nx.Graph()
    for id, part in drawing.components.items():
        graph.add_node(id, is_=part.kind.name)
        for port in part.kind.ports:
            run = part.kind.name == "tee" and port.name in "ab"
            graph.add_node((id, port.name), is_=f"{part.kind.name}.{'run' if run else port.name}")
            graph.add_edge(id, (id, port.name))
    for id, pipe in drawing.pipes.items():
        graph.add_node(id, is_="pipe")
        for end in pipe.ends:
            graph.add_edge(id, tuple(end))
    for id, control in drawing.controls.items():
        graph.add_node(id, is_=control.kind.name)
    return graph


def same_joins(one: Drawing, two: Drawing) -> bool:
    """Whether two drawings have the same kinds and joins."""
    return bool(
        nx.is_isomorphic(joins(one), joins(two), node_match=lambda a, b: a.get("is_") == b.get("is_"))
    )
