"""Icons as dense as the densest screen, also of one that comes later."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QRect, QSettings, QSize
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication
from pytestqt.qtbot import QtBot

from circuitcheck.editor import screens
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.icons import SHELF_PX, kind_icon
from circuitcheck.editor.screens import Screens, densest
from circuitcheck.editor.theme import Theme, light


@pytest.mark.parametrize("ratio", [1, 2, 3])
def test_an_icon_is_there_for_every_screen(ratio: int, qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("circuitcheck.editor.icons.densest", lambda: ratio)
    icon = kind_icon("pump", light())
    for each in range(1, ratio + 1):
        pixmap = icon.pixmap(QSize(SHELF_PX, SHELF_PX), float(each))
        assert pixmap.width() == SHELF_PX * each
        assert pixmap.devicePixelRatio() == each


def test_half_a_ratio_is_rounded_up(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    class Screen:
        def __init__(self, ratio: float) -> None:
            self._ratio = ratio

        def devicePixelRatio(self) -> float:
            return self._ratio

    monkeypatch.setattr(QGuiApplication, "screens", lambda: [Screen(1.0), Screen(1.25)])
    assert densest() == 2
    monkeypatch.setattr(QGuiApplication, "screens", list)
    assert densest() == 1


def test_only_a_denser_screen_is_told(qtbot: QtBot, monkeypatch: pytest.MonkeyPatch) -> None:
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    told: list[bool] = []
    watched = Screens(application)
    watched.denser.connect(lambda: told.append(True))
    screen = application.screens()[0]
    for ratio, count in ((1, 0), (2, 1), (2, 1), (1, 1), (3, 2)):
        monkeypatch.setattr(screens, "densest", lambda ratio=ratio: ratio)
        screen.geometryChanged.emit(QRect())
        assert len(told) == count
    application.screenAdded.emit(screen)
    assert len(told) == 2


def test_icons_are_painted_anew_for_it(
    qtbot: QtBot, monkeypatch: pytest.MonkeyPatch, tmp_path: object
) -> None:
    appearances = Appearances(QSettings(f"{tmp_path}/settings.ini", QSettings.Format.IniFormat))
    told: list[Theme] = []
    appearances.theme_changed.connect(told.append)
    monkeypatch.setattr(screens, "densest", lambda: 4)
    QGuiApplication.screens()[0].geometryChanged.emit(QRect())
    assert told == [appearances.theme]
