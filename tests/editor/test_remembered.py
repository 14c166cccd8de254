"""What the window remembers."""

from __future__ import annotations

from pathlib import Path

import pytest
from PySide6.QtCore import QRect, QSettings

from circuitcheck.editor import remembered


@pytest.fixture
def settings(tmp_path: Path, qapp: object) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


def test_recent_files_newest_first_and_each_once(settings: QSettings, tmp_path: Path) -> None:
    assert remembered.recent(settings) == []
    paths = [tmp_path / f"{n}.wetcircuit" for n in range(10)]
    for path in paths:
        remembered.add_recent(settings, path)
    remembered.add_recent(settings, paths[5])
    found = remembered.recent(settings)
    assert found[:2] == [paths[5], paths[9]]
    assert len(found) == len(set(found)) == remembered.MOST_RECENT
    remembered.forget_recent(settings, paths[5])
    assert paths[5] not in remembered.recent(settings)


def test_one_recent_file_is_read_back(settings: QSettings, tmp_path: Path) -> None:
    remembered.add_recent(settings, tmp_path / "one.wetcircuit")
    settings.sync()
    again = QSettings(settings.fileName(), QSettings.Format.IniFormat)
    assert remembered.recent(again) == [tmp_path / "one.wetcircuit"]


def test_settings_that_hold_nonsense_are_no_matter(settings: QSettings) -> None:
    settings.setValue("files/recent", 17)
    assert remembered.recent(settings) == []


SCREEN = QRect(0, 0, 1920, 1040)


@pytest.mark.parametrize(
    "frame",
    [QRect(100, 100, 1440, 900), QRect(-600, 50, 1440, 900), QRect(1800, 900, 1440, 900)],
)
def test_a_window_that_can_be_reached_stays_where_it_was(frame: QRect) -> None:
    assert remembered.on_screen(frame, [SCREEN]) == frame


@pytest.mark.parametrize(
    "frame",
    [
        QRect(3000, 100, 1440, 900),
        QRect(-1440, 50, 1440, 900),
        QRect(100, -300, 1440, 900),
        QRect(5000, 5000, 3000, 2000),
    ],
)
def test_a_window_off_every_screen_comes_back_whole(frame: QRect) -> None:
    assert SCREEN.contains(remembered.on_screen(frame, [SCREEN]))
