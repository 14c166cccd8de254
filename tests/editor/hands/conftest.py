"""A window on an empty drawing and a hand that counts."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QPointF, QSettings
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.window import MainWindow

from .counting import SQUARE_PX, CountedHand


@pytest.fixture
def hand(qtbot: QtBot, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[CountedHand]:
    """The window shown and active, its sheet holding the keyboard."""
    settings = QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    window = MainWindow(Document(), settings, Appearances(settings))
    monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.DISCARD)
    window.resize(1700, 1000)
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.sheet.setFocus()
    window.sheet.centerOn(QPointF(34 * SQUARE_PX, 25 * SQUARE_PX))
    yield CountedHand(window)
    window.close()
