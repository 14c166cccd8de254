"""Somebody at the window: works it by pointer and keys alone, and takes a picture where asked to."""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise
from pathlib import Path

from PySide6.QtCore import QEvent, QPoint, QPointF, Qt, QTimer
from PySide6.QtGui import QAction, QKeySequence, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDialog,
    QFileDialog,
    QLabel,
    QLineEdit,
    QMenu,
    QWidget,
)
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.window import MainWindow
from circuitcheck.finding import Finding
from circuitcheck.picture.marks import SQUARE_PX

LONG_MS = 60_000
POLL_MS = 40
_LEFT = Qt.MouseButton.LeftButton


class Person:
    """Does what a person would; asks the program only what a person could see."""

    def __init__(self, window: MainWindow, qtbot: QtBot, pictures: Path | None, name: str) -> None:
        self.window, self._qtbot = window, qtbot
        self._pictures, self._name, self._taken = pictures, name, 0

    @property
    def drawing(self) -> Drawing:
        """The drawing on the sheet."""
        return self.window.document.drawing

    @property
    def findings(self) -> tuple[Finding, ...]:
        """What the panel lists, once the drawing is judged."""
        self.wait()
        return self.window.findings.findings

    def picture(self, what: str) -> None:
        """Keep a picture of the window, where pictures are wanted."""
        if self._pictures is None:
            return
        self.wait()
        QTest.qWait(300)
        self._taken += 1
        top = QApplication.activeModalWidget() or self.window
        self._pictures.mkdir(parents=True, exist_ok=True)
        assert top.grab().save(str(self._pictures / f"{self._name}-{self._taken:02d}-{what}.png"))

    def wait(self) -> None:
        """Until nothing is being worked out any more."""
        document, reviewing = self.window.document, self.window.reviewing
        self._qtbot.waitUntil(
            lambda: document.analysis is not None and not reviewing.is_busy, timeout=LONG_MS
        )

    def until(self, holds: Callable[[], bool]) -> None:
        """Until that holds."""
        self._qtbot.waitUntil(holds, timeout=LONG_MS)

    def command(self, words: str) -> None:
        """Choose a command of the menus by its words."""
        wanted = words.lower()
        for action in self._commands():
            if action.text().replace("&", "").rstrip("…").lower() == wanted:
                assert action.isEnabled(), words
                self._focus()
                action.trigger()
                return
        raise AssertionError(f"No command is called {words}")

    def _commands(self) -> list[QAction]:
        waiting = [
            menu for action in self.window.menuBar().actions() if isinstance(menu := action.menu(), QMenu)
        ]
        found: list[QAction] = []
        while waiting:
            for action in waiting.pop().actions():
                inner = action.menu()
                if isinstance(inner, QMenu):
                    waiting.append(inner)
                else:
                    found.append(action)
        return found

    def key(self, keys: str) -> None:
        """Press a chord where the keyboard is."""
        QTest.keySequence(self._focus(), QKeySequence(keys))

    def type(self, text: str) -> None:
        """Type letter by letter, each to whatever has the keyboard by then."""
        for letter in text:
            QTest.keyClicks(self._focus(), letter)

    def _focus(self) -> QWidget:
        if QApplication.activeModalWidget() is None and not self.window.isActiveWindow():
            # A dialog was closed before.
            self.window.activateWindow()
            self._qtbot.waitUntil(self.window.isActiveWindow)
        return QApplication.focusWidget() or self.window

    def cut_in(self, text: str, pipe: str) -> str:
        """Find a part by typing and place it where the pointer is: in the middle of a pipe."""
        before = set(self.drawing.components)
        line = self.window.sheet._content.pipes[pipe].view.line
        longest = max(
            pairwise(line), key=lambda ends: abs(ends[0][0] - ends[1][0]) + abs(ends[0][1] - ends[1][1])
        )
        x, y = ((one + other) / 2 / SQUARE_PX for one, other in zip(*longest, strict=True))
        self.window.sheet.setFocus()
        self._point(x, y)
        self.type(text)
        self.picture("typing-a-part")
        QTest.keyClick(self._focus(), Qt.Key.Key_Return)
        (new,) = set(self.drawing.components) - before
        return new

    def _point(self, x: float, y: float) -> None:
        viewport, place = self.window.sheet.viewport(), QPointF(self._screen(x, y))
        none, no_keys = Qt.MouseButton.NoButton, Qt.KeyboardModifier.NoModifier
        move = QMouseEvent(QEvent.Type.MouseMove, place, viewport.mapToGlobal(place), none, none, no_keys)
        QApplication.sendEvent(viewport, move)

    def click_part(self, id: str) -> None:
        """Click a part on the sheet, brought into view if need be."""
        sheet = self.window.sheet
        sheet.fit()
        at = self.drawing.components[id].at
        assert at is not None
        QTest.mouseClick(sheet.viewport(), _LEFT, pos=self._screen(at.x, at.y))

    def _screen(self, x: float, y: float) -> QPoint:
        sheet = self.window.sheet
        return sheet.mapFromScene(QPointF(x * SQUARE_PX, y * SQUARE_PX))

    def press(self, text: str, inside: QWidget | None = None) -> None:
        """Press a button by its words, as soon as it is there."""
        root, words = inside or self.window, text.replace("&", "")

        def there() -> list[QAbstractButton]:
            found = root.findChildren(QAbstractButton)
            return [each for each in found if each.isVisible() and each.text().replace("&", "") == words]

        self.until(lambda: bool(there()))
        button = there()[0]
        assert button.isEnabled(), text
        QTest.mouseClick(button, _LEFT)

    def fill(self, name: str, text: str, inside: QWidget | None = None) -> None:
        """Type into the line that is called so, in place of what is there."""
        for line in (inside or self.window).findChildren(QLineEdit):
            if line.accessibleName() == name and line.isVisible():
                line.setFocus()
                line.selectAll()
                QTest.keyClicks(line, text)
                QTest.keyClick(line, Qt.Key.Key_Return)
                return
        raise AssertionError(f"No line is called {name}")

    def reads(self, widget: QWidget | None = None) -> str:
        """All that stands in labels there."""
        labels = (widget or self.window).findChildren(QLabel)
        return "\n".join(each.text() for each in labels if each.isVisible())

    def in_dialog(self, opens: Callable[[], object], *does: Callable[[QDialog], object]) -> None:
        """Do something in each of the dialogs that come up one after the other."""
        waiting = list(does)
        failed: list[BaseException] = []
        seen: list[QDialog] = []  # held, so that no later one is taken for one of them that is gone
        timer = QTimer(self.window)

        def look() -> None:
            dialog = QApplication.activeModalWidget()
            if not isinstance(dialog, QDialog) or any(each is dialog for each in seen) or not waiting:
                return
            seen.append(dialog)
            try:
                waiting.pop(0)(dialog)
            except BaseException as error:
                failed.append(error)
                dialog.reject()

        timer.timeout.connect(look)
        timer.start(POLL_MS)
        opens()
        timer.stop()
        timer.deleteLater()
        if failed:
            raise failed[0]
        assert not waiting, "a dialog did not come up"

    def hand_over(self, form: str, to: Path) -> None:
        """Hand over as that kind of file, through both dialogs."""

        def kind(dialog: QDialog) -> None:
            (choice,) = (
                each for each in dialog.findChildren(QComboBox) if each.accessibleName() == "Kind of file"
            )
            choice.setFocus()
            while str(choice.currentData()) != form:
                QTest.keyClick(choice, Qt.Key.Key_Down)
            self.picture(f"hand-over-{form}")
            self.press("Save…", dialog)

        self.in_dialog(lambda: self.command("Hand over"), kind, lambda dialog: name_file(dialog, to))
        self.until(lambda: not self.window.handing_over.is_busy)
        assert to.exists(), self.window.status.hint

    def save_as(self, to: Path) -> None:
        """Save under a name, through the dialog."""
        self.in_dialog(lambda: self.command("Save as"), lambda dialog: name_file(dialog, to))
        assert to.exists()

    def open(self, path: Path) -> None:
        """Open a file, through the dialog."""
        self.in_dialog(lambda: self.command("Open"), lambda dialog: name_file(dialog, path))
        assert self.window.document.path == path
        self.wait()


def name_file(dialog: QDialog, path: Path) -> None:
    """Type a name into a dialog that asks for a file, and press Enter."""
    assert isinstance(dialog, QFileDialog)
    (line,) = dialog.findChildren(QLineEdit)
    line.setText(str(path))
    QTest.keyClick(line, Qt.Key.Key_Return)
