"""What a hand does by chance in a real window, each act by events of mouse and keyboard or by a menu's action."""

from __future__ import annotations

import random
from collections.abc import Callable

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QAction, QContextMenuEvent, QMouseEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QApplication,
    QHeaderView,
    QMenu,
    QTabBar,
    QWidget,
)

from circuitcheck.drawing.value import Joint
from circuitcheck.editor.window import MainWindow
from tests.editor.wandering.answers import Answers, type_somewhere, visible_in, within

PX = 16
KEYS = Qt.KeyboardModifier
HELD = (KEYS.NoModifier,) * 6 + (KEYS.ShiftModifier, KEYS.ControlModifier, KEYS.AltModifier)
PLACED = (
    "tee",
    "pump",
    "vessel",
    "zone valve",
    "store",
    "heat source",
    "isolating",
    "relief",
    "tundish",
    "x",
)
CHORDS = (
    "RMPpxy", "Delete", "Escape", "Return", "Tab", "Left", "Right", "Up", "Down", "Space", "Backspace",
    "Home", "End", "PageDown", "F2", "F3", "F8", "Insert",
)  # fmt: skip
CONTROLLED = "ZZZYYCXVDA09FKLG"


class Acts:
    """One window, worked by chance. `act` does one thing and returns what it was."""

    def __init__(self, window: MainWindow, chance: random.Random, answers: Answers) -> None:
        self.window, self.chance, self.answers = window, chance, answers
        weighed: list[tuple[int, Callable[[], str]]] = [
            (14, self.drag), (10, self.click), (4, self.right_click), (3, self.wheel), (2, self.double_click),
            (10, self.place_by_typing), (14, self.key), (12, self.chord), (8, self.pipe), (6, self.band),
            (10, self.action), (8, self.button), (8, self.type_in), (6, self.rows), (2, self.tab),
            (4, self.finding), (1, self.resize), (2, self.file), (1, self.shelf), (2, self.half_a_drag),
        ]  # fmt: skip
        if not window.is_furnished:
            # What a hand does comes to the window by events, and the rest of it is there by then.
            by_call = (self.action, self.finding, self.file, self.half_a_drag)
            weighed = [(weight, act) for weight, act in weighed if act not in by_call]
        self._acts = [act for _, act in weighed]
        self._weights = [weight for weight, _ in weighed]

    def act(self) -> str:
        """Do one thing."""
        (does,) = self.chance.choices(self._acts, self._weights)
        return f"{does.__name__}: {does()}"

    # Where.

    def spot(self) -> QPoint:
        """A place on the sheet: mostly near a port, a part or a pipe."""
        view, drawing = self.window.sheet, self.window.document.drawing
        ends = [Joint(part.id, port.name) for part in drawing.components.values() for port in part.kind.ports]
        roll = self.chance.random()
        at = drawing.end_at(self.chance.choice(ends)) if ends and roll < 0.5 else None
        if at is None and drawing.components and roll < 0.75:
            at = self.chance.choice(list(drawing.components.values())).at
        box = view.viewport().rect()
        if at is not None:
            found = view.mapFromScene(QPointF(at.x * PX, at.y * PX)) + QPoint(*self._slip())
            if box.contains(found):
                return found
        return within(box, self.chance)

    def _slip(self) -> tuple[int, int]:
        return self.chance.randrange(-6, 7), self.chance.randrange(-6, 7)

    def _mouse(self, type: QEvent.Type, spot: QPoint, button: Qt.MouseButton, held: KEYS) -> None:
        viewport = self.window.sheet.viewport()
        place = QPointF(spot)
        cause = Qt.MouseButton.NoButton if type is QEvent.Type.MouseMove else button
        buttons = Qt.MouseButton.NoButton if type is QEvent.Type.MouseButtonRelease else button
        QApplication.sendEvent(
            viewport, QMouseEvent(type, place, viewport.mapToGlobal(place), cause, buttons, held)
        )

    def _dragged(self, start: QPoint, *way: QPoint, button: Qt.MouseButton, held: KEYS) -> None:
        self._mouse(QEvent.Type.MouseMove, start, Qt.MouseButton.NoButton, held)
        self._mouse(QEvent.Type.MouseButtonPress, start, button, held)
        for spot in way:
            self._mouse(QEvent.Type.MouseMove, spot, button, held)
            if self.chance.random() < 0.05:
                self._press(Qt.Key.Key_Escape)
        self._mouse(QEvent.Type.MouseButtonRelease, way[-1], button, held)

    # On the sheet.

    def drag(self) -> str:
        """From anywhere to anywhere."""
        buttons = [Qt.MouseButton.LeftButton] * 8 + [Qt.MouseButton.MiddleButton, Qt.MouseButton.RightButton]
        way = [self.spot() for _ in range(self.chance.randrange(1, 4))]
        start = self.spot()
        self._dragged(start, *way, button=self.chance.choice(buttons), held=self.chance.choice(HELD))
        return f"{start} {way}"

    def pipe(self) -> str:
        """From a port towards another."""
        start, finish = self.spot(), self.spot()
        middle = (start + finish) / 2
        self._dragged(start, middle, finish, button=Qt.MouseButton.LeftButton, held=KEYS.NoModifier)
        return f"{start} {finish}"

    def half_a_drag(self) -> str:
        """A press that something else gets in the way of, released at some later time or never."""
        spot = self.spot()
        self._mouse(QEvent.Type.MouseButtonPress, spot, Qt.MouseButton.LeftButton, KEYS.NoModifier)
        self._mouse(QEvent.Type.MouseMove, self.spot(), Qt.MouseButton.LeftButton, KEYS.NoModifier)
        return f"{spot} then {self.chance.choice([self.action, self.key, self.finding, self.chord])()}"

    def band(self) -> str:
        """A rectangle over much of the sheet."""
        box = self.window.sheet.viewport().rect()
        start, finish = within(box, self.chance), within(box, self.chance)
        self._dragged(start, finish, button=Qt.MouseButton.LeftButton, held=self.chance.choice(HELD))
        return f"{start} {finish}"

    def click(self) -> str:
        """A press and release."""
        spot = self.spot()
        self._mouse(QEvent.Type.MouseMove, spot, Qt.MouseButton.NoButton, KEYS.NoModifier)
        QTest.mouseClick(
            self.window.sheet.viewport(), Qt.MouseButton.LeftButton, self.chance.choice(HELD), spot
        )
        return str(spot)

    def double_click(self) -> str:
        """Two of them."""
        spot = self.spot()
        QTest.mouseDClick(self.window.sheet.viewport(), Qt.MouseButton.LeftButton, KEYS.NoModifier, spot)
        return str(spot)

    def right_click(self) -> str:
        """The menu under the pointer, and one of its entries."""
        spot, viewport = self.spot(), self.window.sheet.viewport()
        reason = QContextMenuEvent.Reason.Mouse
        QApplication.sendEvent(viewport, QContextMenuEvent(reason, spot, viewport.mapToGlobal(spot)))
        menu = QApplication.activePopupWidget()
        return str(self.answers.choose(menu)) if isinstance(menu, QMenu) else "no menu"

    def wheel(self) -> str:
        """Zoom or scroll."""
        viewport, place = self.window.sheet.viewport(), QPointF(self.spot())
        turn = QPoint(0, self.chance.choice([-240, -120, 120, 240]))
        phase = Qt.ScrollPhase.NoScrollPhase
        held = self.chance.choice([KEYS.ControlModifier, KEYS.NoModifier, KEYS.ShiftModifier])
        event = QWheelEvent(
            place, viewport.mapToGlobal(place), QPoint(), turn, Qt.MouseButton.NoButton, held, phase, False
        )
        QApplication.sendEvent(viewport, event)
        return f"{turn} {held}"

    # By keys.

    def _press(self, key: Qt.Key, held: KEYS = KEYS.NoModifier) -> None:
        QTest.keyClick(QApplication.focusWidget() or self.window, key, held)

    def place_by_typing(self) -> str:
        """Find a part by its name and place it where the pointer is."""
        name = self.chance.choice(PLACED)
        self.window.sheet.setFocus()
        self._mouse(QEvent.Type.MouseMove, self.spot(), Qt.MouseButton.NoButton, KEYS.NoModifier)
        for letter in name:
            QTest.keyClicks(QApplication.focusWidget() or self.window, letter)
        self._press(Qt.Key.Key_Return)
        if self.chance.random() < 0.8:
            self._press(self.chance.choice([Qt.Key.Key_Return, Qt.Key.Key_R, Qt.Key.Key_Escape]))
            self._press(self.chance.choice([Qt.Key.Key_Return, Qt.Key.Key_Escape]))
        return name

    def key(self) -> str:
        """One key on the sheet, or on whatever has the keyboard."""
        if self.chance.random() < 0.7:
            self.window.sheet.setFocus()
        name = self.chance.choice(CHORDS)
        name = self.chance.choice(name) if name == CHORDS[0] else name
        held = self.chance.choice((KEYS.NoModifier, KEYS.NoModifier, KEYS.ShiftModifier))
        self._press(getattr(Qt.Key, f"Key_{name.upper() if len(name) == 1 else name}"), held)
        return f"{name} {held}"

    def chord(self) -> str:
        """Undo, redo, the clipboard and the like."""
        letter = self.chance.choice(CONTROLLED)
        if self.chance.random() < 0.8:
            self.window.sheet.setFocus()
        self._press(getattr(Qt.Key, f"Key_{letter}"), KEYS.ControlModifier)
        return letter

    def action(self) -> str:
        """Any entry of any menu."""
        left_out = {
            self.window.actions_.quit,
            self.window.actions_.close_window,
            self.window.handing_over.print_action,
        }
        found = [
            each
            for each in self.window.findChildren(QAction)
            if each.isEnabled() and each.text() and each.menu() is None and each not in left_out
        ]
        chosen = self.chance.choice(found)
        text = chosen.text()
        chosen.trigger()
        return text

    # In the panels.

    def button(self) -> str:
        """Any button in view."""
        found = visible_in(self.window, QAbstractButton)
        if not found:
            return "none"
        chosen = self.chance.choice(found)
        told = f"{type(chosen).__name__} {chosen.accessibleName()} {chosen.text()}"  # type: ignore[attr-defined]
        QTest.mouseClick(chosen, Qt.MouseButton.LeftButton)
        menu = QApplication.activePopupWidget()
        if isinstance(menu, QMenu):
            told += f" {self.answers.choose(menu)}"
        return told

    def type_in(self) -> str:
        """Into a field in view."""
        type_somewhere(self.window, self.chance)
        return ""

    def rows(self) -> str:
        """A row of a list, tree or table: press it, walk from it, at times edit it."""
        views = visible_in(self.window, QAbstractItemView)
        found = [each for each in views if not isinstance(each, QHeaderView)]
        if not found:
            return "none"
        view = self.chance.choice(found)
        assert isinstance(view, QAbstractItemView)
        spot = within(view.viewport().rect(), self.chance)
        told = f"{type(view).__name__} {spot}"
        press = self.chance.choice([QTest.mouseClick, QTest.mouseClick, QTest.mouseDClick])
        press(view.viewport(), Qt.MouseButton.LeftButton, self.chance.choice(HELD), spot)
        for _ in range(self.chance.randrange(3)):
            keys = [
                Qt.Key.Key_Down,
                Qt.Key.Key_Up,
                Qt.Key.Key_Return,
                Qt.Key.Key_5,
                Qt.Key.Key_Escape,
                Qt.Key.Key_Tab,
            ]
            self._press(self.chance.choice(keys))
        return told

    def tab(self) -> str:
        """A tab of a panel."""
        bars = visible_in(self.window, QTabBar)
        if not bars:
            return "none"
        bar = self.chance.choice(bars)
        assert isinstance(bar, QTabBar)
        bar.setCurrentIndex(self.chance.randrange(max(1, bar.count())))
        return bar.tabText(bar.currentIndex())

    def finding(self) -> str:
        """Choose a finding, let its cures be looked for, leave it."""
        self.chance.choice(
            [
                self.window.findings.choose_next,
                self.window.findings.choose_previous,
                self.window.findings.leave,
            ]
        )()
        return ""

    def shelf(self) -> str:
        """A part from the shelf, dropped where the pointer goes next."""
        widgets = visible_in(self.window.shelf, QWidget)
        chosen = self.chance.choice(widgets) if widgets else self.window.shelf
        QTest.mouseClick(chosen, Qt.MouseButton.LeftButton)
        return type(chosen).__name__

    # The window and its files.

    def resize(self) -> str:
        """Narrow, wide, tiny."""
        size = self.chance.choice([(1440, 900), (1000, 700), (640, 480), (320, 240), (1900, 1100)])
        self.window.resize(*size)
        return str(size)

    def file(self) -> str:
        """Open, begin, save."""
        files = self.window.files
        path = self.answers.file_there()
        does: Callable[[], object] = self.chance.choice(
            [
                files.new,
                files.save,
                files.save_as,
                lambda: files.open_path(path),
                lambda: files.open_sample(path),
            ]
        )
        does()
        return f"{does.__name__} {path.name}"
