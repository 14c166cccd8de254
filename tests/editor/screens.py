"""Every screen of the program one after another, for whatever is to be seen to on each of them."""

from __future__ import annotations

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from PySide6.QtCore import QPoint, QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.learning.lessons_window import LessonsWindow
from circuitcheck.editor.learning.practice_window import PracticeWindow
from circuitcheck.editor.translating import tr
from circuitcheck.editor.window import MainWindow
from circuitcheck.review.acceptances import accept
from circuitcheck.review.notes import add_note, answer_note
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor import boxes

Seen = Callable[[str, QWidget], None]
NARROW, USUAL = (1024, 640), (1280, 800)
"""Sizes in px of a screen at 250 % and at 100 %."""
SAMPLE, EARLIER = "terrace-valve-before-vessel", "terrace-as-proposed"
CURE_STEP = 3
"""The step of the tour that waits for a cure."""
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
        # For good: a window left open by a test that fails is closed after everything patched is put back.
        vars(made.files)["ask_unsaved"] = lambda: Answer.DISCARD
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
        panel = window.panes.figures
        self.qtbot.waitUntil(lambda: bool(panel.model.figures), timeout=LONG_MS)
        panel.open(panel.model.figures[0])
        self._look("figures", window)
        window.live.figures_action.trigger()
        for name, action in (
            ("fill in", window.tables.fill_in_action),
            ("outline", window.panes.dock.toggleViewAction()),
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
        window.editing.finding.begin()
        window.editing.finding.box.edit.setText("valve")
        self._look("search the drawing", window)
        window.sheet.setFocus()
        window.sheet.finder.begin("va", window.sheet.mapToScene(200, 200), QPoint(200, 200))
        self._look("search a part", window)
        QTest.keyClick(window.sheet.finder.box.edit, Qt.Key.Key_Escape)
        window.sheet.select(())
        window.live.flows_action.trigger()
        self.qtbot.waitUntil(lambda: not window.live.is_busy, timeout=LONG_MS)
        self._look("flows", window)
        window.live.flows_action.trigger()
        window.operate.action.trigger()
        view = window.operate.view
        self.qtbot.waitUntil(lambda: view.standing is not None and not view.is_busy, timeout=LONG_MS)
        self._look("operate", window)
        window.operate.action.trigger()
        window.tables.counted_action.trigger()
        self._look("counted", window.tables.counted)
        window.tables.counted.hide()
        boxes.dialogs(window, self._look)
        boxes.messages(window, self.folder, self.monkeypatch, self._look)
        window.close()

    def reviewed(self, size: tuple[int, int]) -> None:
        """The pages of a review with something on each, and the steps of the tour."""
        window = self.window(size)
        self.draw(window)
        drawing, finding, day = window.document.drawing, window.findings.findings[0], date(2026, 11, 25)
        pipe = next(iter(drawing.pipes))
        noted, id = add_note(
            drawing, (pipe,), "J. Learner", day, "Is this as it stands on site? I found 15 mm."
        )
        noted = answer_note(noted, id, "R. Overseer", day, "As it stands.")
        window.document.do("Note", accept(noted, finding, "For the pressure test only.", "R. Overseer", day))
        self.qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=LONG_MS)
        window.reviewing.dock.toggleViewAction().trigger()
        panel = window.reviewing.panel
        panel.author.setText("R. Overseer")
        window.reviewing._sign("supervisor", "accepted", "")
        window.reviewing.comparing.compare_with(data_path("samples") / f"{EARLIER}.wetcircuit")
        self.qtbot.waitUntil(lambda: not window.reviewing.is_busy, timeout=LONG_MS)
        for page in range(panel.tabs.count()):
            panel.tabs.setCurrentIndex(page)
            self._look(f"reviewed, {panel.tabs.tabText(page)}", window)
        window.close()
        window = self.window(size)
        window.starting.begin_tour()
        tour = window.starting.tour
        assert tour is not None
        while tour.step >= 0:
            self.qtbot.waitUntil(lambda: window.document.analysis is not None, timeout=LONG_MS)
            if tour.step == CURE_STEP:
                self.qtbot.waitUntil(lambda: bool(tour._cures), timeout=LONG_MS)
            self._look(f"tour {tour.step + 1}", window)
            tour.card.next_button.click()
        window.close()

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
        practice.show_answer()
        self._look("result", practice)
        practice.show_progress()
        self._look("progress", practice)
        practice.close_down()

    def _look(self, name: str, window: QWidget) -> None:
        # Once more for what is put off until a window is shown.
        for _ in range(2):
            QApplication.processEvents()
        self._see(name, window)
