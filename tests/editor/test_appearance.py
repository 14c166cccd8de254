"""Light, dark and high contrast: chosen by hand, or as the system has it."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path

import pytest
from PySide6.QtCore import QSettings
from PySide6.QtGui import QPalette
from PySide6.QtWidgets import QApplication

from circuitcheck.editor.appearance import Appearance, Appearances


@pytest.fixture
def settings(tmp_path: Path, qapp: QApplication) -> Iterator[QSettings]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    yield QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


@pytest.mark.parametrize(
    ("choice", "name"),
    [
        (Appearance.LIGHT, "light"),
        (Appearance.DARK, "dark"),
        (Appearance.HIGH_CONTRAST_LIGHT, "high contrast light"),
        (Appearance.HIGH_CONTRAST_DARK, "high contrast dark"),
    ],
)
def test_a_choice_dresses_the_application_and_is_remembered(
    settings: QSettings, qapp: QApplication, choice: Appearance, name: str
) -> None:
    appearances = Appearances(settings)
    told: list[str] = []
    appearances.theme_changed.connect(lambda theme: told.append(theme.name))
    appearances.choose(choice)
    assert told[-1] == appearances.theme.name == name
    assert qapp.palette().color(QPalette.ColorRole.WindowText) == appearances.theme["ink"]
    assert qapp.palette().color(QPalette.ColorRole.Base) == appearances.theme["field"]
    assert appearances.theme.hex("chrome") in qapp.styleSheet()
    assert Appearances(settings).choice is choice


def test_as_the_system_is_the_first_choice(settings: QSettings) -> None:
    appearances = Appearances(settings)
    assert appearances.choice is Appearance.SYSTEM
    appearances.apply()
    assert not appearances.theme.is_dark


@pytest.mark.parametrize("choice", Appearance)
def test_before_the_first_window_only_what_was_chosen_by_hand_is_put_on(
    settings: QSettings, qapp: QApplication, choice: Appearance
) -> None:
    settings.setValue("window/appearance", choice.value)
    before = qapp.palette()
    appearances = Appearances(settings)
    appearances.begin()
    told: list[object] = []
    appearances.theme_changed.connect(told.append)
    if choice is Appearance.SYSTEM:
        assert qapp.palette() == before
    appearances.follow()
    assert len(told) == (choice is Appearance.SYSTEM), "nothing is put on twice"
    assert qapp.palette().color(QPalette.ColorRole.WindowText) == appearances.theme["ink"]


def test_a_choice_that_is_not_known_is_the_systems(settings: QSettings) -> None:
    settings.setValue("window/appearance", "Sepia")
    assert Appearances(settings).choice is Appearance.SYSTEM
