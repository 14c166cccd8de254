"""Pictures of every screen, to be looked at, and the README's own: no tests of themselves, run by their name.

`QT_SCALE_FACTOR=1.5 pytest -n 0 tests/editor/pictures.py -k every --pictures FOLDER --appearance dark --language de`
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from contextlib import nullcontext
from pathlib import Path

import pytest
from PySide6.QtGui import QFont
from PySide6.QtWidgets import QApplication, QToolButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearance
from circuitcheck.editor.fonts import FALLBACK_PX, sheet_family
from circuitcheck.shipped import data_path
from tests.editor.languages.speaking import german
from tests.editor.screens import LONG_MS, NARROW, SAMPLE, USUAL, Screens

pytestmark = pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
README_SIZE = (1440, 900)
LARGE = 2.0
"""From this scale on a usual screen has room for a narrow window only."""


def wanted_appearance(config: pytest.Config) -> Appearance:
    """How pictures are to look."""
    return Appearance[config.getoption("--appearance").upper().replace("-", "_")]


def wanted_folder(config: pytest.Config) -> Path:
    """Where pictures go."""
    wanted = config.getoption("--pictures")
    if not wanted:
        raise pytest.UsageError("Say where the pictures go: --pictures FOLDER")
    return Path(wanted)


@pytest.fixture
def dressed(qapp: QApplication) -> Iterator[None]:
    palette, sheet, font = qapp.palette(), qapp.styleSheet(), qapp.font()
    yield
    qapp.setFont(font)
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
    language = request.config.getoption("--language")
    appearance = request.config.getoption("--appearance")
    scale = qapp.primaryScreen().devicePixelRatio()
    folder = wanted_folder(request.config) / f"{appearance}-{language}-{scale * 100:.0f}"
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


@pytest.mark.usefixtures("dressed")
@pytest.mark.parametrize("appearance", [Appearance.LIGHT, Appearance.DARK])
def test_pictures_of_the_readme(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    request: pytest.FixtureRequest,
    appearance: Appearance,
) -> None:
    """`window-light.png` and `window-dark.png`: a finding with its cures, in the font that ships."""
    font = QFont(sheet_family())
    font.setPixelSize(FALLBACK_PX)
    qapp.setFont(font)
    screens = Screens(qtbot, tmp_path, monkeypatch, lambda name, window: None)
    screens.appearances.choose(appearance)
    window = screens.window(README_SIZE)
    window.files.open_path(data_path("samples") / f"{SAMPLE}.wetcircuit")
    qtbot.waitUntil(lambda: bool(window.findings.findings), timeout=LONG_MS)
    window.findings.choose_next()
    qtbot.waitUntil(
        lambda: any(each.text() == "Do it" for each in window.findings.findChildren(QToolButton)),
        timeout=LONG_MS,
    )
    window.sheet.fit()
    qtbot.wait(300)
    folder = wanted_folder(request.config)
    folder.mkdir(parents=True, exist_ok=True)
    assert window.grab().save(str(folder / f"window-{appearance.lower()}.png"))
    window.close()
