"""The window of lessons: listed, searched, read, operated and remedied, by mouse or by keys alone."""

from __future__ import annotations

from collections.abc import Iterator
from pathlib import Path
from threading import Event
from typing import Any

import pytest
from PySide6.QtCore import QSettings, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QLineEdit, QPushButton, QWidget
from pytestqt.qtbot import QtBot

from circuitcheck.checks.catalogue import checks
from circuitcheck.editor.appearance import Appearances
from circuitcheck.editor.document import Document
from circuitcheck.editor.learning import lessons_window
from circuitcheck.editor.learning.lessons_window import FIRST, LessonsWindow
from circuitcheck.editor.theme import dark, light
from circuitcheck.editor.window import MainWindow
from circuitcheck.lessons import lesson as lesson_module
from circuitcheck.lessons.consequence import Scene
from circuitcheck.lessons.lesson import Lesson, subjects
from tests.editor import made_once

CUT, SHORT = "vessel-can-be-cut-off", "floor-load"
LONG_MS = 90_000

pytestmark = pytest.mark.usefixtures("made_once")


@pytest.fixture
def settings(tmp_path: Path) -> QSettings:
    return QSettings(str(tmp_path / "settings.ini"), QSettings.Format.IniFormat)


@pytest.fixture
def lessons(qtbot: QtBot, settings: QSettings) -> Iterator[LessonsWindow]:
    """The window, shown at a check without a drawing, so that nothing is being made."""
    window = LessonsWindow(settings, light())
    qtbot.addWidget(window)
    window.open(SHORT)
    window.show()
    window.activateWindow()
    yield window
    window.close_down()


def opened(qtbot: QtBot, window: LessonsWindow, check: str = CUT) -> Lesson:
    window.open(check)
    qtbot.waitUntil(lambda: window.lesson is not None, timeout=LONG_MS)
    found = window.lesson
    assert found is not None and found.check == check
    return found


def settled(qtbot: QtBot, window: LessonsWindow) -> None:
    qtbot.waitUntil(lambda: window.live.standing is not None and not window.live.is_busy, timeout=LONG_MS)


def cut_off(window: LessonsWindow) -> bool:
    assert window.live.standing is not None
    return bool(window.live.standing.cut_off)


def press(button: QPushButton) -> None:
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)


def key(widget: QWidget, which: Qt.Key, held: Qt.KeyboardModifier = Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(widget, which, held)


def test_every_check_is_listed_once(lessons: LessonsWindow) -> None:
    assert sorted(lessons.list.checks) == sorted(checks())
    assert lessons.list.checks[: len(subjects(live=True))] == subjects(live=True)


def test_a_check_without_a_drawing_has_its_text(lessons: LessonsWindow) -> None:
    text = checks()[SHORT].lesson
    for said in (text.title, text.flags, text.why, text.remedy, text.source):
        assert said in lessons.words.text
    assert not lessons.live.isVisible() and not lessons.happens.isVisible()
    assert lessons.read == {SHORT}


def test_what_happens_and_the_remedy_by_mouse(qtbot: QtBot, lessons: LessonsWindow) -> None:
    made = opened(qtbot, lessons)
    for said in (
        made.finding.message,
        made.happens,
        made.text.why,
        str(made.remedy.says),
        *map(str, made.scene.says),
    ):
        assert said in lessons.words.text
    assert lessons.live.isVisible() and lessons.live.drawing is made.drawing
    settled(qtbot, lessons)
    assert not cut_off(lessons)
    player = lessons.live.player
    assert player is not None and not player.is_playing
    press(lessons.happens)
    settled(qtbot, lessons)
    assert lessons.live.positions == made.scene.positions and cut_off(lessons)
    qtbot.waitUntil(lambda: player.is_playing and player.at_s > 0, timeout=LONG_MS)
    press(lessons.remedy)
    assert lessons.live.drawing is made.remedy.drawing and not player.is_playing
    assert "Remedied" in lessons.stands.text()
    settled(qtbot, lessons)
    assert not cut_off(lessons)
    press(lessons.fault)
    settled(qtbot, lessons)
    assert lessons.live.drawing is made.drawing and lessons.live.positions != made.scene.positions
    assert not player.is_playing


def test_searched_and_gone_through_by_keys(qtbot: QtBot, lessons: LessonsWindow) -> None:
    search = lessons.list.search
    search.setFocus()
    QTest.keyClicks(search, "cut off vessel")
    known = lessons.list.checks
    assert CUT in known and len(known) < 6
    key(search, Qt.Key.Key_Down)
    assert lessons.check == known[0] and lessons.list.rows.hasFocus()
    for _ in known:  # a heading may lie between
        if lessons.check == known[0]:
            key(lessons.list.rows, Qt.Key.Key_Down)
    assert lessons.check == known[1]
    key(lessons, Qt.Key.Key_Left, Qt.KeyboardModifier.AltModifier)
    assert lessons.check == known[0] and not lessons.previous.isEnabled()
    press(lessons.next)
    assert lessons.check == known[1]
    search.setText("no such words")
    assert lessons.list.checks == ()


def stands(qtbot: QtBot, window: LessonsWindow, *, cut: bool) -> None:
    """Wait until everything stands so: a button that is pressed by its letter is seen to go down first."""

    def is_so() -> bool:
        standing = window.live.standing
        return standing is not None and not window.live.is_busy and bool(standing.cut_off) is cut

    qtbot.waitUntil(is_so, timeout=LONG_MS)


def test_a_whole_lesson_by_keys_alone(qtbot: QtBot, lessons: LessonsWindow) -> None:
    """Found, read, a valve turned on the drawing, what happens seen, the remedy tried, and on to the next."""
    alt = Qt.KeyboardModifier.AltModifier
    qtbot.waitUntil(lessons.isActiveWindow)
    key(lessons, Qt.Key.Key_F, Qt.KeyboardModifier.ControlModifier)
    assert lessons.list.search.hasFocus()
    QTest.keyClicks(lessons.list.search, "cut off from its vessel")
    key(lessons.list.search, Qt.Key.Key_Return)
    assert lessons.check == CUT
    qtbot.waitUntil(lambda: lessons.lesson is not None, timeout=LONG_MS)
    made = lessons.lesson
    assert made is not None and made.finding.message in lessons.words.text
    settled(qtbot, lessons)
    for _ in range(30):
        if lessons.live.sheet.hasFocus():
            break
        key(lessons.focusWidget(), Qt.Key.Key_Tab)
    sheet = lessons.live.sheet
    assert sheet.hasFocus()
    (shut,) = made.scene.positions.shut
    for _ in range(60):
        if sheet.here == shut:
            break
        key(sheet, Qt.Key.Key_Tab)
    assert sheet.here == shut
    key(sheet, Qt.Key.Key_Space)
    settled(qtbot, lessons)
    assert cut_off(lessons)
    key(lessons, Qt.Key.Key_B, alt)
    stands(qtbot, lessons, cut=False)
    key(lessons, Qt.Key.Key_S, alt)
    stands(qtbot, lessons, cut=True)
    player = lessons.live.player
    assert player is not None
    qtbot.waitUntil(lambda: player.is_playing and player.at_s > 0, timeout=LONG_MS)
    key(lessons, Qt.Key.Key_T, alt)
    stands(qtbot, lessons, cut=False)
    assert lessons.live.drawing is made.remedy.drawing
    qtbot.waitUntil(lambda: player.is_playing, timeout=LONG_MS)
    lessons.list.search.clear()
    key(lessons, Qt.Key.Key_Right, alt)
    assert lessons.check not in ("", CUT)


def test_the_remedy_can_be_tried_before_what_comes_of_it_is_known(
    qtbot: QtBot, lessons: LessonsWindow, monkeypatch: pytest.MonkeyPatch
) -> None:
    """It is made anew up to the remedy; what comes of it is known, and held back."""
    held, known = Event(), made_once.lesson(CUT)

    def later(*args: Any, **kwargs: Any) -> Scene:
        held.wait(30)
        return known.scene

    monkeypatch.setattr(lessons_window, "lesson", made_once.MAKE)
    monkeypatch.setattr(lesson_module, "scene", later)
    try:
        lessons.open(CUT)
        qtbot.waitUntil(lessons.remedy.isEnabled, timeout=LONG_MS)
        assert lessons.lesson is None and not lessons.happens.isEnabled() and lessons.fault.isEnabled()
        assert lessons.busy.isVisible() and "Being worked out" in lessons.words.text
        press(lessons.remedy)
        assert "Remedied" in lessons.stands.text()
    finally:
        held.set()
    qtbot.waitUntil(lambda: lessons.lesson is not None, timeout=LONG_MS)
    assert "Remedied" in lessons.stands.text() and lessons.happens.isEnabled()
    assert "Being worked out" not in lessons.words.text


def test_who_has_read_none_begins_where_the_danger_is_seen(qtbot: QtBot, settings: QSettings) -> None:
    first = LessonsWindow(settings, light())
    qtbot.addWidget(first)
    first.show()
    assert first.check == FIRST and first.check in subjects(live=True)
    qtbot.waitUntil(lambda: first.lesson is not None, timeout=LONG_MS)
    first.close_down()
    again = LessonsWindow(settings, light())
    qtbot.addWidget(again)
    again.show()
    assert again.check == subjects(live=True)[0]
    again.close_down()


def test_what_was_read_is_kept(qtbot: QtBot, lessons: LessonsWindow, settings: QSettings) -> None:
    opened(qtbot, lessons)
    assert lessons.read == {SHORT, CUT}
    assert lessons.list.said.text() == f"1 of {len(subjects(live=True))} lessons read"
    again = LessonsWindow(settings, dark())
    qtbot.addWidget(again)
    assert again.read == {SHORT, CUT}
    again.close_down()


def test_another_lesson_is_wanted_before_the_first_is_made(qtbot: QtBot, lessons: LessonsWindow) -> None:
    lessons.open("safety-valve-too-small")
    made = opened(qtbot, lessons)
    assert lessons.live.drawing is made.drawing and lessons.read == {SHORT, CUT}


def test_everything_has_a_name(lessons: LessonsWindow) -> None:
    named = [lessons.list.rows, lessons.words, *lessons.findChildren(QLineEdit)]
    assert all(each.accessibleName() for each in named)
    assert all(each.text() for each in lessons.findChildren(QPushButton))


def test_from_the_menu_and_from_a_finding(qtbot: QtBot, settings: QSettings) -> None:
    document = Document()
    window = MainWindow(document, settings, Appearances(settings))
    qtbot.addWidget(window)
    window.show()
    assert window.lessons.action in window.menus.learn.actions()
    window.findings.lesson_wanted.emit(SHORT)
    assert window.lessons.lessons is not None and window.lessons.lessons.isVisible()
    assert window.lessons.lessons.check == SHORT
    window.close()
    document.close()
