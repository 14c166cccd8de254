"""Pictures of every screen, to be looked at: no test of itself, run by its name.

`QT_SCALE_FACTOR=1.5 pytest -n 0 tests/editor/pictures.py --pictures FOLDER --appearance dark --language de`
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import nullcontext
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearance
from tests.editor.languages.speaking import german
from tests.editor.screens import NARROW, USUAL, Screens

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
LARGE = 2.0
"""From this scale on a usual screen has room for a narrow window only."""


def wanted_appearance(config: pytest.Config) -> Appearance:
    """How pictures are to look."""
    return Appearance[config.getoption("--appearance").upper().replace("-", "_")]


@pytest.fixture
def dressed(qapp: QApplication) -> Iterator[None]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    yield
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


@pytest.mark.usefixtures("dressed")
def test_pictures_of_every_screen(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
) -> None:
    wanted = request.config.getoption("--pictures")
    if not wanted:
        raise pytest.UsageError("Say where the pictures go: --pictures FOLDER")
    language = request.config.getoption("--language")
    appearance = request.config.getoption("--appearance")
    scale = qapp.primaryScreen().devicePixelRatio()
    folder = Path(wanted) / f"{appearance}-{language}-{scale * 100:.0f}"
    folder.mkdir(parents=True, exist_ok=True)
    taken: list[Path] = []

    def see(name: str, window: QWidget) -> None:
        words = re.sub(r"\W+", "-", name.lower()).strip("-")
        taken.append(folder / f"{len(taken) + 1:02d}-{words}.png")
        assert window.grab().save(str(taken[-1]))

    with german(qapp) if language == "de" else nullcontext():
        screens = Screens(qtbot, tmp_path, monkeypatch, see)
        screens.appearances.choose(wanted_appearance(request.config))
        size = NARROW if scale >= LARGE else USUAL
        screens.main(size)
        screens.reviewed(size)
        screens.learning(size)
    assert all(each.stat().st_size for each in taken)
