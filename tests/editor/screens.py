"""Every screen of the program one after another, for whatever is to be seen to on each of them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QDialog, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.about import about_box
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.failing.dialog import noted_dialog
from circuitcheck.editor.files import Answer
from circuitcheck.editor.hand_over_dialog import HandOverDialog
from circuitcheck.editor.learning.lessons_window import LessonsWindow
from circuitcheck.editor.learning.practice_window import PracticeWindow
from circuitcheck.editor.review.accepting import AcceptDialog
from circuitcheck.editor.translating import tr
from circuitcheck.editor.window import MainWindow
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read

Seen = Callable[[str, QWidget], None]
NARROW, USUAL = (1024, 640), (1280, 800)
"""Sizes in px of a screen at 250 % and at 100 %."""
SAMPLE = "terrace-valve-before-vessel"
LONG_MS = 60_000


class Screens:
    """Shows one screen after another and calls `see` with each screen's name and window."""

    def __init__(self, qtbot: QtBot, folder: Path, monkeypatch: pytest.MonkeyPatch, see: Seen) -> None:
        self.qtbot, self.folder, self.monkeypatch, self._see = qtbot, folder, monkeypatch, see
        self.settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        self.appearances = Appearances(self.settings)

    def window(self, size: tuple[int, int]) -> MainWindow:
        """A main window that lets go of what is not saved."""
        made = MainWindow(Document(), self.settings, self.appearances)
        self.monkeypatch.setattr(made.files, "ask_unsaved", lambda: Answer.DISCARD)
        made.resize(*size)
        made.show()
        self.qtbot.waitExposed(made)
        return made

    def draw(self, window: MainWindow) -> None:
        """Show a sample, and wait for what the checks say."""
        window.document.do("Draw", read(data_path("samples") / f"{SAMPLE}.wetcircuit"))
        self.qtbot.waitUntil(lambda: bool(window.findings.findings), timeout=LONG_MS)
        window.sheet.select(())
        window.sheet.fit()

    def main(self, size: tuple[int, int]) -> None:
        """The main window with each of its panels and docks, one at a time, and the dialogs."""
        window = self.window(size)
        self.qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=LONG_MS)
        self._look("invitation", window)
        window.starting.show_page()
        self._look("start", window)
        self.draw(window)
        self._look("drawing", window)
        window.findings.choose_next()
        self.qtbot.waitUntil(
            lambda: any(each.text() == tr("Do it") for each in window.findings.findChildren(QToolButton))
        )
        self._look("finding", window)
        window.findings.leave()
        (heat,) = (
            id for id, each in window.document.drawing.components.items() if each.kind.name == "heat_source"
        )
        window.sheet.select((heat,))
        self._look("details", window)
        window.sheet.select(())
        window.live.figures_action.trigger()
        panel = window._panes.figures
        self.qtbot.waitUntil(lambda: bool(panel.model.figures), timeout=LONG_MS)
        panel.open(panel.model.figures[0])
        self._look("figures", window)
        window.live.figures_action.trigger()
        for name, action in (
            ("fill in", window.tables.fill_in_action),
            ("outline", window._panes.dock.toggleViewAction()),
        ):
            action.trigger()
            self._look(name, window)
            action.trigger()
        shown = window.reviewing.dock.toggleViewAction()
        shown.trigger()
        tabs = window.reviewing.panel.tabs
        for page in range(tabs.count()):
            tabs.setCurrentIndex(page)
            self._look(f"review, {tabs.tabText(page)}", window)
        shown.trigger()
        window.actions_.search.trigger()
        self._look("search", window)
        window.sheet.setFocus()
        window.operate.action.trigger()
        view = window.operate.view
        self.qtbot.waitUntil(lambda: view.standing is not None and not view.is_busy, timeout=LONG_MS)
        self._look("operate", window)
        window.operate.action.trigger()
        window.tables.counted_action.trigger()
        self._look("counted", window.tables.counted)
        window.tables.counted.hide()
        self._dialogs(window)
        window.close()

    def _dialogs(self, window: MainWindow) -> None:
        drawing, finding = window.document.drawing, window.findings.findings[0]
        dialogs: tuple[tuple[str, QDialog], ...] = (
            ("hand over", HandOverDialog(window)),
            ("about", about_box(window)),
            ("report", noted_dialog(window, "What was noted", is_anything=True)),
            ("accept", AcceptDialog(window, drawing, finding, "", date.today())),
        )
        for name, dialog in dialogs:
            dialog.show()
            self._look(name, dialog)
            dialog.close()

    def learning(self, size: tuple[int, int]) -> None:
        """Lessons and practice."""
        theme = self.appearances.theme
        lessons = LessonsWindow(self.settings, theme)
        self.qtbot.addWidget(lessons)
        lessons.resize(*size)
        lessons.open("vessel-can-be-cut-off")
        lessons.show()
        self.qtbot.waitUntil(lambda: lessons.lesson is not None, timeout=LONG_MS)
        self._look("lessons", lessons)
        lessons.close_down()
        practice = PracticeWindow(self.folder / "practice.json", theme, surprise=lambda: 4711)
        self.qtbot.addWidget(practice)
        practice.resize(*size)
        practice.show()
        self._look("practice", practice)
        practice.setup.begin.click()
        self.qtbot.waitUntil(lambda: practice.exercise is not None, timeout=LONG_MS)
        self._look("exercise", practice)
        practice.close_down()

    def _look(self, name: str, window: QWidget) -> None:
        QApplication.processEvents()
        self._see(name, window)
