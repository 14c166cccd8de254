"""The window in German: nothing that it says is left in English."""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import pytest
from PySide6.QtCore import QLocale, QSettings
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.drawing.value import Drawing
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.hand_over_dialog import HandOverDialog
from circuitcheck.editor.language import install
from circuitcheck.editor.learning.lessons_window import LessonsWindow
from circuitcheck.editor.learning.practice_window import PracticeWindow
from circuitcheck.editor.theme import light
from circuitcheck.editor.window import MainWindow
from circuitcheck.shipped import data_path
from circuitcheck.storage.reading import read
from tests.editor.languages.said import said

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)

LONG_MS = 60_000
SAMPLES = ("terrace-valve-before-vessel", "terrace-as-found", "village-hall-near-miss")
ALIKE = re.compile(
    r"Thermostat|Name|Titel|Text|Symbol|circuitcheck|English|Deutsch|CSV|PDF|HTML|SVG|PNG|A[34]$|EN |BS |"
    r"Domestic|Copper|Glykol|WC|kPa|l/min|m³/h|kN/m²|mPa s|kJ|MP|bar|Q = |Pumpe"
)
"""What is the same in both languages: names of standards, units, and words that are."""


@contextmanager
def german(application: QApplication) -> Iterator[None]:
    """The application speaks German, with German numbers."""
    before = QLocale()
    translators = install("de", application)
    QLocale.setDefault(QLocale("de"))
    try:
        assert len(translators) == 2
        yield
    finally:
        for translator in translators:
            application.removeTranslator(translator)
        QLocale.setDefault(before)


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

    def walk(self) -> None:
        """All of it."""
        for name in SAMPLES:
            self._window(name)
        self._dialogs()
        self._lessons()
        self._practice()

    def _window(self, name: str) -> None:
        drawing = read(data_path("samples") / f"{name}.wetcircuit")
        appearances = Appearances(self.settings)
        appearances.choose(Appearance.LIGHT)
        window = MainWindow(Document(), self.settings, appearances)
        self.monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.DISCARD)
        try:
            self._panels(window, drawing, name)
        finally:
            window.close()

    def _panels(self, window: MainWindow, drawing: Drawing, name: str) -> None:
        window.resize(1440, 900)
        window.show()
        self.qtbot.waitExposed(window)
        if name == SAMPLES[0]:
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
        if name == SAMPLES[0]:
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
        panel = window._panes.figures
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


def test_nothing_is_left_in_english(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
) -> None:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    pictures = request.config.getoption("--pictures")
    english = Tour(qtbot, tmp_path, monkeypatch, "")
    english.walk()
    with german(qapp):
        told = Tour(qtbot, tmp_path, monkeypatch, pictures)
        told.walk()
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)
    named = _named()
    left = {
        place: sorted(text for text in texts & english.found.get(place, set()) if _is_text(text, named))
        for place, texts in told.found.items()
    }
    import json

    json.dump(left, open("/tmp/left.json", "w"), indent=1, ensure_ascii=False)
    json.dump(
        {k: sorted(v) for k, v in told.found.items()},
        open("/tmp/german.json", "w"),
        indent=1,
        ensure_ascii=False,
    )
    assert not {place: texts for place, texts in left.items() if texts}


def _is_text(text: str, named: set[str]) -> bool:
    bare = text
    for name in sorted(named, key=len, reverse=True):
        bare = bare.replace(name, "")
    return bool(re.search(r"[A-Za-z]{3}", bare)) and not ALIKE.search(bare)


def _named() -> set[str]:
    found: set[str] = set()
    for name in SAMPLES:
        drawing = read(data_path("samples") / f"{name}.wetcircuit")
        things = (*drawing.components.values(), *drawing.controls.values())
        found |= {each.label for each in things if each.label} | {each.id for each in things}
        found |= {drawing.title, name} | {
            str(value)
            for each in drawing.components.values()
            for value in each.data.values()
            if isinstance(value, str)
        }
    return {each for each in found if len(each) > 2}
