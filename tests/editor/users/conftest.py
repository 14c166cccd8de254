"""A window, and somebody at it."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.files import Answer
from circuitcheck.editor.window import MainWindow
from tests.editor.pictures import wanted_appearance

from .person import Person


@pytest.fixture
def arrives(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
) -> Iterator[Callable[[str], Person]]:
    """Makes a person of that name, at a window of their own. Files are asked for by Qt's own dialog."""
    before = qapp.testAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs)
    qapp.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs)
    palette, sheet = qapp.palette(), qapp.styleSheet()
    windows: list[MainWindow] = []
    wanted = request.config.getoption("--pictures")

    def arrive(name: str) -> Person:
        settings = QSettings(str(tmp_path / f"{name}.ini"), QSettings.Format.IniFormat)
        appearances = Appearances(settings)
        if wanted:
            appearances.choose(wanted_appearance(request.config))
        window = MainWindow(Document(), settings, appearances)
        monkeypatch.setattr(window.files, "ask_unsaved", lambda: Answer.DISCARD)
        window.resize(1440, 900)
        window.show()
        window.activateWindow()
        qtbot.waitUntil(window.isActiveWindow)
        windows.append(window)
        return Person(window, qtbot, Path(wanted) if wanted else None, name)

    yield arrive
    for window in windows:
        window.close()
    qapp.setAttribute(Qt.ApplicationAttribute.AA_DontUseNativeDialogs, before)
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)
