"""The window in German: nothing that it says is left in English."""

from __future__ import annotations

import re
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.hand_over_dialog import HandOverDialog
from circuitcheck.editor.learning.lessons_window import LessonsWindow
from circuitcheck.editor.learning.practice_window import PracticeWindow
from circuitcheck.editor.theme import light
from circuitcheck.editor.window import MainWindow
from circuitcheck.figures.catalogue import all_figures
from circuitcheck.figures.plant import Plant
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.languages.linguist import read as read_language
from tests.editor.languages.said import said
from tests.editor.languages.speaking import german

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]

LONG_MS = 60_000
SAMPLE, EVERY = "terrace-valve-before-vessel", ("terrace-as-found", "village-hall-near-miss")
"""The drawing shown every time, and those of an evening."""
ENGLISH = re.compile(r"\b(the|of|is|and|with|not|from|to|by|no|its|are|shut|for|that|or|which|be|can)\b")
"""Words that no German sentence has."""


class Tour:
    """Goes through the window and its dialogs, and keeps what they say by where it was said."""

    def __init__(self, qtbot: QtBot, folder: Path, monkeypatch: pytest.MonkeyPatch, pictures: str) -> None:
        self.qtbot, self.monkeypatch = qtbot, monkeypatch
        self.settings = QSettings(str(folder / "settings.ini"), QSettings.Format.IniFormat)
        self.folder, self.pictures = folder, pictures
        self.found: dict[str, set[str]] = {}

    def keep(self, place: str, top: QWidget) -> None:
        """Keep what a window says there; and its picture, where pictures are asked for."""
        QApplication.processEvents()
        self.found.setdefault(place, set()).update(said(top))
        if self.pictures:
            Path(self.pictures).mkdir(parents=True, exist_ok=True)
            top.grab().save(str(Path(self.pictures) / f"{place}.png"))

    def walk(self, *samples: str) -> None:
        """All of it, with these drawings in the window; dialogs and the other windows with the first."""
        for name in samples:
            self._window(name, whole=name == samples[0])
        self._dialogs()
        self._lessons()
        self._practice()

    def _window(self, name: str, *, whole: bool) -> None:
        drawing = read(data_path("samples") / f"{name}.wetcircuit")
        appearances = Appearances(self.settings)
        appearances.choose(Appearance.LIGHT)
        window = MainWindow(Document(), self.settings, appearances)
        self.monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.DISCARD)
        try:
            self._panels(window, drawing, name, whole=whole)
        finally:
            window.close()

    def _panels(self, window: MainWindow, drawing: Drawing, name: str, *, whole: bool) -> None:
        window.resize(1440, 900)
        window.show()
        self.qtbot.waitExposed(window)
        if whole:
            window.starting.show_page()
            self.keep("start", window)
            window.starting.show_if_empty()
        window.document.do("Draw", drawing)
        self.qtbot.waitUntil(lambda: bool(window.findings.findings), timeout=LONG_MS)
        window.sheet.fit()
        self.keep(f"{name}-findings", window)
        for finding in window.findings.findings:
            window.findings.choose(finding)
            self.keep(f"{name}-finding-{finding.check}", window.findings)
        window.findings.choose(window.findings.findings[0])
        self.keep(f"{name}-finding", window)
        self._details(window, drawing, name)
        self._figures(window, name)
        if whole:
            self._other_panels(window)

    def _details(self, window: MainWindow, drawing: Drawing, name: str) -> None:
        for id in (*drawing.components, next(iter(drawing.pipes)), *drawing.controls):
            window.sheet.select((id,))
            window.details_section.set_folded(False)
            self.keep(f"{name}-details", window.details)
        window.sheet.select(())
        self.keep(f"{name}-drawing", window)

    def _figures(self, window: MainWindow, name: str) -> None:
        window.live.figures_action.trigger()
        panel = window.panes.figures
        self.qtbot.waitUntil(lambda: bool(panel.model.figures), timeout=LONG_MS)
        self.keep(f"{name}-figures", window)
        for figure in panel.model.figures:
            panel.open(figure)
            self.keep(f"{name}-figure", panel)

    def _other_panels(self, window: MainWindow) -> None:
        window.tables.fill_in_action.trigger()
        window.tables.counted_action.trigger()
        self.keep("tables", window)
        window.reviewing.dock.show()
        self.keep("review", window)
        window.operate.action.trigger()
        view = window.operate.view
        self.qtbot.waitUntil(lambda: view.standing is not None and not view.is_busy, timeout=LONG_MS)
        self.keep("operate", window)
        window.operate.action.trigger()

    def _dialogs(self) -> None:
        dialog = HandOverDialog()
        self.qtbot.addWidget(dialog)
        dialog.show()
        self.keep("hand-over", dialog)

    def _lessons(self) -> None:
        lessons = LessonsWindow(self.settings, light())
        self.qtbot.addWidget(lessons)
        lessons.open("vessel-can-be-cut-off")
        lessons.show()
        self.qtbot.waitUntil(lambda: lessons.lesson is not None, timeout=LONG_MS)
        self.keep("lessons", lessons)
        lessons.close_down()

    def _practice(self) -> None:
        practice = PracticeWindow(self.folder / "practice.json", light(), surprise=lambda: 4711)
        self.qtbot.addWidget(practice)
        practice.show()
        self.keep("practice", practice)
        practice.close_down()


@pytest.mark.parametrize(
    "samples", [(SAMPLE,), pytest.param(EVERY, marks=pytest.mark.evening)], ids=["one drawing", "others"]
)
def test_nothing_is_left_in_english(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
    samples: tuple[str, ...],
) -> None:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    with german(qapp):
        tour = Tour(qtbot, tmp_path, monkeypatch, request.config.getoption("--pictures"))
        tour.walk(*samples)
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)
    known = {text for text, entry in read_language("de").items() if entry.told != text}
    named = _named(samples)
    left = {
        place: english
        for place, texts in tour.found.items()
        if (english := sorted(text for text in texts if _is_english(text, known, named)))
    }
    assert not left


def _is_english(text: str, known: set[str], named: list[str]) -> bool:
    if text in named:
        return False
    bare = text
    for name in named:
        bare = bare.replace(name, "")
    return text in known or bool(ENGLISH.search(bare))


def _named(samples: tuple[str, ...]) -> list[str]:
    """What the drawings call their things, and the symbols of formulas; the longest first."""
    found = {
        "Service valve",
        "Ground floor valve",
        "Upper floor valve",
        "copper",
    }
    for name in samples:
        drawing = read(data_path("samples") / f"{name}.wetcircuit")
        found |= {drawing.title, *drawing.components, *drawing.controls}
        found |= {each.label for each in drawing.components.values()}
        found |= {each.label for each in drawing.controls.values()}
        found |= {each.symbol for figure in all_figures(Plant(drawing)) for each in figure.inputs}
    return sorted((each for each in found if len(each) > 2), key=len, reverse=True)
