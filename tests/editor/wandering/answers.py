"""A user who answers every dialog by chance: presses any button, names any file, types into any form."""

from __future__ import annotations

import random
from pathlib import Path

from PySide6.QtCore import QEvent, QPoint, QRect, Qt
from PySide6.QtGui import QAction, QKeyEvent
from PySide6.QtPrintSupport import QPrintDialog
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QDialog,
    QFileDialog,
    QLineEdit,
    QMenu,
    QMessageBox,
    QPlainTextEdit,
    QWidget,
)

TEXTS = (
    "1", "22", "1,5", "0.75", "-3", "1e999", "abc", "", " ", "Larch", "<b>x</b>", "%s{0}{a}", "ü–\u202e\U0001d518",
    "A\tB\nC\tD", "9" * 400, "pump", "tee", "zone", "p1.length_m", "10 bar",
)  # fmt: skip
SILENT = frozenset({Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Tab})


class Answers:
    """Stands in for the dialogs that would wait for a person. `counts` says how many of each were answered."""

    def __init__(self, chance: random.Random, folder: Path) -> None:
        self._chance, self._folder = chance, folder
        self.counts: dict[str, int] = {}
        self.is_leaving = False

    def install(self) -> None:
        """From now on every dialog is answered."""
        answers = self

        def exec_box(box: QMessageBox) -> int:
            return answers.press(box)

        def exec_dialog(dialog: QDialog) -> int:
            return answers.fill(dialog)

        def exec_menu(menu: QMenu, *_: object) -> QAction | None:
            return answers.choose(menu)

        QMessageBox.exec = exec_box  # type: ignore[method-assign, assignment]
        QDialog.exec = exec_dialog  # type: ignore[method-assign]
        QPrintDialog.exec = lambda dialog: 0  # type: ignore[method-assign]
        QMenu.exec = exec_menu  # type: ignore[method-assign, assignment]
        QFileDialog.getOpenFileName = lambda *_: (str(answers.file_there()), "")  # type: ignore[method-assign]
        QFileDialog.getSaveFileName = lambda *_: (answers.file_to(), "")  # type: ignore[method-assign]

    def _count(self, what: str) -> None:
        self.counts[what] = self.counts.get(what, 0) + 1

    def press(self, box: QMessageBox) -> int:
        """Show the box a moment and press one of its buttons; on the way out always the one that lets go."""
        self._count("message")
        box.open()
        QApplication.processEvents()
        button = QMessageBox.StandardButton.Discard
        if self.is_leaving and box.button(button) is not None:
            pressed: QAbstractButton = box.button(button)
        else:
            pressed = self._chance.choice(box.buttons())
        answer = box.standardButton(pressed).value
        pressed.click()
        box.hide()
        return int(answer)

    def fill(self, dialog: QDialog) -> int:
        """Type into the dialog, then accept it, reject it or press anything in it."""
        self._count("dialog")
        dialog.open()
        QApplication.processEvents()
        for _ in range(self._chance.randrange(4)):
            type_somewhere(dialog, self._chance)
            QApplication.processEvents()
        if dialog.isVisible():
            self._chance.choice([dialog.accept, dialog.reject, dialog.reject])()
        dialog.hide()
        return int(dialog.result())

    def choose(self, menu: QMenu) -> QAction | None:
        """Show the menu, then trigger one of its entries or leave it."""
        self._count("menu")
        menu.popup(QPoint(200, 200))
        QApplication.processEvents()
        actions = [
            each for each in menu.actions() if each.isEnabled() and each.menu() is None and each.text()
        ]
        chosen = self._chance.choice(actions) if actions and self._chance.random() < 0.7 else None
        menu.close()
        if chosen is not None:
            chosen.trigger()
        return chosen

    def file_there(self) -> Path:
        """A file to open: mostly a drawing, at times one that is none or none at all."""
        found = sorted(self._folder.glob("*.wetcircuit"))
        odd = [self._folder / "absent.wetcircuit", self._folder / "broken.txt", self._folder]
        return self._chance.choice(odd if self._chance.random() < 0.15 else found)

    def file_to(self) -> str:
        """A file to save to: an own one, a new one, one that cannot be, or none."""
        names = ["", "one.wetcircuit", "two", f"new{self._chance.randrange(5)}", "no-folder/x", "n" * 300]
        name = self._chance.choice(names)
        return str(self._folder / name) if name else ""


def visible_in(window: QWidget, sort: type[QWidget]) -> list[QWidget]:
    """What a user could reach of a sort."""
    return [
        each
        for each in window.findChildren(sort)
        if each.isVisible() and each.isEnabled() and not each.visibleRegion().isEmpty()
    ]


def type_somewhere(window: QWidget, chance: random.Random) -> None:
    """Type a text into a field that is in view, or turn a choice."""
    fields = [
        *visible_in(window, QLineEdit),
        *visible_in(window, QPlainTextEdit),
        *visible_in(window, QComboBox),
    ]
    if not fields:
        return
    field = chance.choice(fields)
    field.setFocus()
    if isinstance(field, QComboBox):
        QTest.keyClick(field, chance.choice([Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageDown]))
        return
    text = chance.choice(TEXTS)
    if isinstance(field, QLineEdit):
        if chance.random() < 0.6:
            field.selectAll()
        if chance.random() < 0.3:
            QApplication.clipboard().setText(text)
            field.paste()
        else:
            _type(field, text[:40])
        key = chance.choice([*SILENT, Qt.Key.Key_Up, Qt.Key.Key_Down])
        QTest.keyClick(_alive_focus(field), key)
    else:
        _type(field, text[:40])


def _type(field: QWidget, text: str) -> None:
    for letter in text:
        # The synthetic keyboard has the keys of ASCII only, and ends the program at any other.
        event = QKeyEvent(QEvent.Type.KeyPress, 0, Qt.KeyboardModifier.NoModifier, letter)
        QApplication.sendEvent(_alive_focus(field), event)


def _alive_focus(field: QWidget) -> QWidget:
    """What has the keyboard by now: a field may be gone after one key."""
    return QApplication.focusWidget() or QApplication.activeWindow() or field


def within(box: QRect, chance: random.Random) -> QPoint:
    """Any place in a box."""
    return QPoint(
        box.left() + chance.randrange(max(1, box.width())), box.top() + chance.randrange(max(1, box.height()))
    )
