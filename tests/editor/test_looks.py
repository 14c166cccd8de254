"""Looks: on every screen, in each theme and language, no text is cut, and every control has a word for a reader."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import nullcontext
from pathlib import Path

import pytest
from PySide6.QtWidgets import QApplication, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.editor.appearance import Appearance
from tests.editor.languages.speaking import german
from tests.editor.looking import cut, nameless
from tests.editor.screens import NARROW, USUAL, Screens

pytestmark = [
    pytest.mark.qt_log_ignore("This plugin does not support", extend=True),
    pytest.mark.usefixtures("made_once"),
]
EVENING = pytest.mark.evening


@pytest.fixture
def dressed(qapp: QApplication) -> Iterator[None]:
    palette, sheet = qapp.palette(), qapp.styleSheet()
    yield
    qapp.setStyleSheet(sheet)
    qapp.setPalette(palette)


@pytest.mark.usefixtures("dressed")
@pytest.mark.parametrize(
    ("language", "size", "appearance"),
    [
        # The longest words in the least room, and the widest edges.
        ("de", NARROW, Appearance.HIGH_CONTRAST_DARK),
        pytest.param("de", NARROW, Appearance.LIGHT, marks=EVENING),
        pytest.param("de", USUAL, Appearance.DARK, marks=EVENING),
        pytest.param("de", USUAL, Appearance.HIGH_CONTRAST_LIGHT, marks=EVENING),
        pytest.param("en", NARROW, Appearance.HIGH_CONTRAST_LIGHT, marks=EVENING),
        pytest.param("en", USUAL, Appearance.LIGHT, marks=EVENING),
    ],
)
def test_no_text_is_cut_and_everything_has_a_name(
    qtbot: QtBot,
    qapp: QApplication,
    tmp_path: Path,
    monkeypatch: pytest.MonkeyPatch,
    language: str,
    size: tuple[int, int],
    appearance: Appearance,
) -> None:
    wrong: dict[str, list[str]] = {}
    seen: list[str] = []

    def see(name: str, window: QWidget) -> None:
        seen.append(name)
        found = cut(window) + nameless(window)
        if window.width() > size[0] or window.height() > size[1]:
            found.append(f"{window.width()} by {window.height()} px, larger than the screen")
        if found:
            wrong[name] = found

    with german(qapp) if language == "de" else nullcontext():
        screens = Screens(qtbot, tmp_path, monkeypatch, see)
        screens.appearances.choose(appearance)
        screens.main(size)
        screens.reviewed(size)
        screens.learning(size)
    assert wrong == {}
    assert len(seen) >= 22
