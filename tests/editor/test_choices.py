"""Colours and language are chosen in the menu, remembered, and told."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtWidgets import QApplication, QMainWindow
from pytestqt.qtbot import QtBot

from circuitcheck.editor.actions import Actions
from circuitcheck.editor.appearance import Appearance, Appearances
from circuitcheck.editor.choices import Choices
from circuitcheck.editor.language import Language, chosen


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


@pytest.fixture
def as_before(qapp: QApplication) -> Iterator[None]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    yield
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


@pytest.mark.usefixtures("as_before")
def test_what_is_chosen_is_kept(qtbot: QtBot, qapp: QApplication, settings: QSettings) -> None:
    window, told = QMainWindow(), list[str]()
    qtbot.addWidget(window)
    appearances, actions = Appearances(settings, qapp), Actions(window)
    choices = Choices(window, actions, settings, appearances, told.append)
    assert choices.parent() is window
    assert actions.appearances[Appearance.SYSTEM].isChecked()
    assert actions.languages[Language.SYSTEM].isChecked()

    actions.appearances[Appearance.DARK].trigger()
    assert appearances.choice is Appearance.DARK
    assert Appearances(settings, qapp).choice is Appearance.DARK

    actions.languages[Language.GERMAN].trigger()
    assert chosen(settings) is Language.GERMAN
    assert told == ["The window speaks that language from the next start on."]
    assert actions.languages[Language.GERMAN].isChecked()
    assert not actions.languages[Language.SYSTEM].isChecked()
